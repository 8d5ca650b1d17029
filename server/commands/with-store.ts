import { StoreBusy, StoreFull, StoreRefused } from "../db/failures.ts";
import { openStore, type Store } from "../db/open.ts";
import { readSettings, type Settings } from "../env.ts";
import { wrongUse } from "./arguments.ts";

/** Opens the database that the settings name, does the work, closes it; a database that cannot be used is told in words. */
export async function withStore(
  command: string,
  work: (store: Store, settings: Settings) => Promise<void>,
): Promise<void> {
  const settings = readSettings(process.env, process.cwd());
  if (!settings.ok) wrongUse(command, settings.problem);
  let store: Store | undefined;
  try {
    store = await openStore(settings.value.databaseUrl);
    await work(store, settings.value);
  } catch (cause) {
    if (!(cause instanceof StoreRefused || cause instanceof StoreBusy || cause instanceof StoreFull)) throw cause;
    process.stderr.write(`${command}: ${cause.message}\n`);
    process.exitCode = 1;
  } finally {
    await store?.close();
  }
}
