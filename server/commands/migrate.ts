import { isPostgres, nameOf } from "../db/pg-url.ts";
import { helpText, readArguments, wrongUse } from "./arguments.ts";
import { withStore } from "./with-store.ts";

const OPTIONS = { help: { help: "this text" } };
const HELP = helpText(
  "npm run -s migrate",
  "Creates the database or brings it to this version's shape. The server does the same when it starts.",
  OPTIONS,
  ["DATA_DIR", "DATABASE_URL"],
);

const asked = readArguments(process.argv.slice(2), OPTIONS);
if (!asked.ok) wrongUse("migrate", asked.problem);
const { options, words } = asked.value;
if (options.has("help")) process.stdout.write(HELP);
else {
  if (words.length > 0) wrongUse("migrate", `${words[0]} is not known here; see --help`);
  await withStore("migrate", async (store, settings) => {
    await store.ping();
    const { databaseUrl: url } = settings;
    process.stdout.write(`${isPostgres(url) ? nameOf(url) : url} has this version's shape\n`);
  });
}
