import { type Change, readAgain } from "../reading/read-again.ts";
import { READER } from "../reading/version.ts";
import { helpText, readArguments, wrongUse } from "./arguments.ts";
import { withStore } from "./with-store.ts";

const OPTIONS = {
  apply: { help: "store the new readings; without it nothing is changed" },
  help: { help: "this text" },
};
const HELP = helpText(
  "npm run -s reread [-- --apply]",
  "Reads every stored phrase with the present reader and prints what changed. Phrases stay as heard.",
  OPTIONS,
  ["DATA_DIR", "DATABASE_URL"],
);

const asked = readArguments(process.argv.slice(2), OPTIONS);
if (!asked.ok) wrongUse("reread", asked.problem);
const { options, words } = asked.value;
if (options.has("help")) process.stdout.write(HELP);
else {
  if (words.length > 0) wrongUse("reread", `${words[0]} is not known here; see --help`);
  const apply = options.has("apply");
  await withStore("reread", async (store) => {
    const { jobs, changed } = await readAgain(store, apply, (change) => process.stdout.write(tell(change)));
    const done = apply ? "stored" : changed > 0 ? "not stored: add --apply" : "nothing to store";
    process.stdout.write(`reader ${READER}: ${jobs} jobs read, ${changed} changed, ${done}\n`);
  });
}

function tell(change: Change): string {
  const lines = [`job ${change.job}${change.tag ? ` ${change.tag}` : ""}`];
  for (const { text, before, after, reader } of change.phrases) {
    lines.push(`  "${text}" (read by ${reader})`);
    lines.push(...before.map((entry) => `    - ${entry}`), ...after.map((entry) => `    + ${entry}`));
  }
  lines.push(...change.gone.map((entry) => `  no longer stands: ${entry}`));
  lines.push(...change.come.map((entry) => `  stands now: ${entry}`));
  return `${lines.join("\n")}\n`;
}
