import { verifyTrail } from "../audit/read.ts";
import { helpText, readArguments, wrongUse } from "./arguments.ts";
import { withStore } from "./with-store.ts";

const OPTIONS = {
  expect: { value: "N:HASH", help: "a record noted down earlier, which must still be there: shows what was cut off" },
  help: { help: "this text" },
};
const HELP = helpText(
  "npm run -s audit [-- --expect N:HASH]",
  "Verifies the chain of the audit trail from its first record and prints where it breaks (exit code 1), or the last\nrecord's number and hash. Note those down elsewhere: the chain alone cannot show that its end was cut off.",
  OPTIONS,
  ["DATA_DIR", "DATABASE_URL"],
);

const asked = readArguments(process.argv.slice(2), OPTIONS);
if (!asked.ok) wrongUse("audit", asked.problem);
const { options, words } = asked.value;
if (options.has("help")) process.stdout.write(HELP);
else {
  if (words.length > 0) wrongUse("audit", `${words[0]} is not known here; see --help`);
  const text = options.get("expect");
  const [, n, hash] = /^(\d+):([0-9a-f]{64})$/.exec(text ?? "") ?? [];
  if (text !== undefined && hash === undefined) {
    wrongUse("audit", `--expect ${text} is no record: write N:HASH, as this command printed it`);
  }
  await withStore("audit", async (store) => {
    const found = await verifyTrail(store, hash === undefined ? undefined : { n: Number(n), hash });
    if (found.ok)
      process.stdout.write(`${found.records} records, unbroken; the last is ${found.records}:${found.last}\n`);
    else {
      process.stdout.write(`broken at record ${found.n}: ${found.problem}\n`);
      process.exitCode = 1;
    }
  });
}
