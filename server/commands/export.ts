import { once } from "node:events";
import { createWriteStream } from "node:fs";
import { keptFiles, keptFolder } from "../keepsakes/files.ts";
import { exportAll } from "../transfer/export.ts";
import { helpText, readArguments, wrongUse } from "./arguments.ts";
import { withStore } from "./with-store.ts";

const OPTIONS = { help: { help: "this text" } };
const HELP = helpText(
  "npm run -s export -- FILE",
  "Writes everything into one file of JSON Lines: what was said, set up, decided and signed, people and devices\n(secrets as hashes only), clips and photographs. FILE must not exist yet; - writes to standard output.",
  OPTIONS,
  ["DATA_DIR", "DATABASE_URL"],
);

const asked = readArguments(process.argv.slice(2), OPTIONS);
if (!asked.ok) wrongUse("export", asked.problem);
const { options, words } = asked.value;
if (options.has("help")) process.stdout.write(HELP);
else {
  const [file] = words;
  if (!file || words.length > 1) wrongUse("export", "name the one file to write, or -; see --help");
  await withStore("export", async (store, settings) => {
    // nobody else on this machine reads it: it holds what the database holds
    const out = file === "-" ? process.stdout : createWriteStream(file, { flags: "wx", mode: 0o600 });
    if (out !== process.stdout) {
      const opened = await Promise.race([once(out, "open").then(() => undefined), failed(out)]);
      if (opened) wrongUse("export", `${file} cannot be written (${opened}): name a file that does not exist yet`);
    }
    const kept = keptFiles(keptFolder(settings.dataDir));
    const count = await exportAll(store, kept, async (text) => {
      if (!out.write(`${text}\n`)) await once(out, "drain");
    });
    if (out !== process.stdout) {
      out.end();
      await once(out, "finish");
    }
    process.stderr.write(`${count.rows} rows and ${count.files} files written\n`);
  });
}

async function failed(out: NodeJS.EventEmitter): Promise<string> {
  const [cause] = await new Promise<[Error]>((resolve) => out.once("error", (error: Error) => resolve([error])));
  return cause.message;
}
