import { resolve } from "node:path";
import { StoreBusy, StoreFull, StoreRefused } from "../db/failures.ts";
import { openStore } from "../db/open.ts";
import { keptFiles, keptFolder } from "../keepsakes/files.ts";
import { MoveRefused, moveSite } from "../transfer/move-site.ts";
import { helpText, readArguments, wrongUse } from "./arguments.ts";
import { AT_COMMAND } from "./at-command.ts";
import { withStore } from "./with-store.ts";

const OPTIONS = {
  to: { value: "URL", help: "the other log's database: file:, libsql: or postgres:" },
  data: { value: "FOLDER", help: "the other log's DATA_DIR, for clips and photographs" },
  at: { value: "ADDRESS", help: "where people open the other log: they are told so here" },
  help: { help: "this text" },
};
const HELP = helpText(
  "npm run -s move-site -- SITE --to URL --data FOLDER --at ADDRESS",
  "Moves one site's record to another log's database while both are served. Its people are known there by name, and are\nenrolled there anew. Whatever goes wrong, the site goes on here.",
  OPTIONS,
  ["DATA_DIR", "DATABASE_URL"],
);

const asked = readArguments(process.argv.slice(2), OPTIONS);
if (!asked.ok) wrongUse("move-site", asked.problem);
const { options, words } = asked.value;
if (options.has("help")) process.stdout.write(HELP);
else {
  const [site] = words;
  const [url, data, address] = ["to", "data", "at"].map((name) => options.get(name));
  if (!site || words.length > 1 || !url || !data || !address)
    wrongUse("move-site", "name one site, and give --to, --data and --at; see --help");
  if (!URL.canParse(address)) wrongUse("move-site", `--at ${address} is no address: write https://...`);
  await withStore("move-site", async (store, settings) => {
    if (url === settings.databaseUrl) wrongUse("move-site", "--to is the database that the site is in");
    try {
      const other = await openStore(url);
      try {
        const kept = (folder: string) => keptFiles(keptFolder(folder));
        const from = { store, kept: kept(settings.dataDir) };
        const to = { store: other, kept: kept(resolve(data)) };
        const { rows, files } = await moveSite({ site, from, to, address, who: AT_COMMAND });
        process.stdout.write(
          `${site}: ${rows} rows and ${files} files are at ${address} now; here they take nothing more\n`,
        );
      } finally {
        await other.close();
      }
    } catch (cause) {
      if (![MoveRefused, StoreRefused, StoreBusy, StoreFull].some((one) => cause instanceof one)) throw cause;
      process.stderr.write(`move-site: ${(cause as Error).message}. ${site} goes on here.\n`);
      process.exitCode = 1;
    }
  });
}
