import { resolve } from "node:path";
import { BackupRefused, toldOf } from "../backups/manifest.ts";
import { putBack } from "../backups/put-back.ts";
import { pathOf } from "../db/database-file.ts";
import { StoreBusy, StoreRefused } from "../db/failures.ts";
import { readSettings } from "../env.ts";
import { helpText, readArguments, wrongUse } from "./arguments.ts";

const OPTIONS = { help: { help: "this text" } };
const HELP = helpText(
  "npm run -s restore -- FOLDER",
  "Puts a backup back into an empty DATA_DIR, after proving that it is whole: the database's integrity, its shape and\ncounts, the audit trail, every clip and photograph. Prints what it holds. Anything wrong, and nothing is left there.",
  OPTIONS,
  ["DATA_DIR", "DATABASE_URL"],
);

const asked = readArguments(process.argv.slice(2), OPTIONS);
if (!asked.ok) wrongUse("restore", asked.problem);
const { options, words } = asked.value;
if (options.has("help")) process.stdout.write(HELP);
else {
  const [folder] = words;
  if (!folder || words.length > 1) wrongUse("restore", "name the one folder that backup wrote; see --help");
  const settings = readSettings(process.env, process.cwd());
  if (!settings.ok) wrongUse("restore", settings.problem);
  const { databaseUrl, dataDir } = settings.value;
  const path = pathOf(databaseUrl);
  if (!path) wrongUse("restore", "DATABASE_URL is a server's: restore into a file, then use export and import");
  try {
    const manifest = await putBack(resolve(folder), { path, dataDir });
    process.stdout.write(`${path}\n${toldOf(manifest)}\nIt is as it was at ${manifest.at}.\n`);
  } catch (cause) {
    if (!(cause instanceof BackupRefused || cause instanceof StoreRefused || cause instanceof StoreBusy)) throw cause;
    process.stderr.write(`restore: ${cause.message}\n`);
    process.exitCode = 1;
  }
}
