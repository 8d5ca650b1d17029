import { statSync } from "node:fs";
import { dirname, resolve } from "node:path";
import { BackupRefused, toldOf } from "../backups/manifest.ts";
import { takeBackup } from "../backups/take.ts";
import { pathOf } from "../db/database-file.ts";
import { StoreBusy, StoreRefused, whenFree } from "../db/failures.ts";
import { isPostgres } from "../db/pg-url.ts";
import { readSettings } from "../env.ts";
import { keptFiles, keptFolder } from "../keepsakes/files.ts";
import { now } from "../moments.ts";
import { helpText, readArguments, wrongUse } from "./arguments.ts";

const OPTIONS = { help: { help: "this text" } };
const HELP = helpText(
  "npm run -s backup [-- FOLDER]",
  "Copies the database, clips and photographs into a new folder while the log goes on, and prints what the copy holds.\nWithout FOLDER it is named by the time, in ./backups. It holds what the log holds: keep it as safe, on another disk.",
  OPTIONS,
  ["DATA_DIR", "DATABASE_URL"],
);

const asked = readArguments(process.argv.slice(2), OPTIONS);
if (!asked.ok) wrongUse("backup", asked.problem);
const { options, words } = asked.value;
if (options.has("help")) process.stdout.write(HELP);
else {
  if (words.length > 1) wrongUse("backup", "name one folder to write; see --help");
  const settings = readSettings(process.env, process.cwd());
  if (!settings.ok) wrongUse("backup", settings.problem);
  const { databaseUrl, dataDir } = settings.value;
  const path = pathOf(databaseUrl);
  if (!path)
    wrongUse(
      "backup",
      isPostgres(databaseUrl)
        ? "DATABASE_URL is a PostgreSQL server: copy the database with pg_dump or pg_basebackup and DATA_DIR/kept with it; or use npm run export, which holds both"
        : "DATABASE_URL is a libSQL server, which has backups of its own; or use npm run export",
    );
  const folder = resolve(words[0] ?? `backups/${now().utc.slice(0, 19).replaceAll(/[-:]/g, "")}Z`);
  try {
    const manifest = await whenFree(path, () => takeBackup(path, keptFiles(keptFolder(dataDir)), folder));
    process.stdout.write(`${folder}\n${toldOf(manifest)}\n`);
    const { lost } = manifest.files;
    if (lost.length > 0)
      process.stderr.write(
        `backup: ${lost.length} clips or photographs were not to be had: kept/ lacks them or they are damaged\n`,
      );
    if (statSync(dirname(path)).dev === statSync(folder).dev)
      process.stderr.write("backup: it is on the same disk as the log: carry it to another one\n");
  } catch (cause) {
    if (!(cause instanceof BackupRefused || cause instanceof StoreRefused || cause instanceof StoreBusy)) throw cause;
    process.stderr.write(`backup: ${cause.message}\n`);
    process.exitCode = 1;
  }
}
