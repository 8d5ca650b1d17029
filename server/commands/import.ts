import { existsSync } from "node:fs";
import { keptFiles, keptFolder } from "../keepsakes/files.ts";
import { ImportRefused, importAll } from "../transfer/import.ts";
import { helpText, readArguments, wrongUse } from "./arguments.ts";
import { AT_COMMAND } from "./at-command.ts";
import { withStore } from "./with-store.ts";

const OPTIONS = { help: { help: "this text" } };
const HELP = helpText(
  "npm run -s import -- FILE",
  "Reads a file that export wrote into an empty database, all of it or nothing.",
  OPTIONS,
  ["DATA_DIR", "DATABASE_URL"],
);

const asked = readArguments(process.argv.slice(2), OPTIONS);
if (!asked.ok) wrongUse("import", asked.problem);
const { options, words } = asked.value;
if (options.has("help")) process.stdout.write(HELP);
else {
  const [file] = words;
  if (!file || words.length > 1) wrongUse("import", "name the one file to read; see --help");
  if (!existsSync(file)) wrongUse("import", `there is no file ${file}`);
  await withStore("import", async (store, settings) => {
    try {
      const count = await importAll(store, keptFiles(keptFolder(settings.dataDir)), file, AT_COMMAND);
      process.stdout.write(`${count.rows} rows and ${count.files} files read; the log is as it was\n`);
    } catch (cause) {
      if (!(cause instanceof ImportRefused)) throw cause;
      process.stderr.write(`import: ${cause.message}\n`);
      process.exitCode = 1;
    }
  });
}
