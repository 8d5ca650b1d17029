import { execFileSync } from "node:child_process";
import { cpus } from "node:os";
import { fileURLToPath } from "node:url";
import { byEar } from "./by-ear.ts";
import { clientSize } from "./client-size.ts";
import { corpora } from "./corpora.ts";
import { growth } from "./growth.ts";
import { hearing } from "./hearing.ts";
import { hostile } from "./hostile.ts";
import { load, loadMemory } from "./load.ts";
import { lookingUp } from "./looking-up.ts";
import { benchMemory, earMemory } from "./memory.ts";
import { reading } from "./reading.ts";
import { reckoning } from "./reckoning.ts";
import { reliability } from "./reliability.ts";
import { reporting } from "./reporting.ts";
import { scale, WHOLE } from "./scale.ts";
import { storing } from "./storing.ts";

/** Every figure that the project gives of itself, each beside a peer or a target of the same run. */
const ROOT = fileURLToPath(new URL("../..", import.meta.url));
const SECTIONS: [name: string, heading: string, run: () => string[] | Promise<string[]>][] = [
  ["reading", "Phrases read per second", reading],
  ["growth", "Ten times the text", growth],
  ["hostile", "Hostile phrases", hostile],
  ["storing", "Phrases stored through HTTP", storing],
  ["load", "Fifty devices at once", load],
  ["load-memory", "Memory of the server under fifty devices for five minutes", loadMemory],
  ["looking-up", "Pages of the desk", lookingUp],
  ["report", "The day's report", reporting],
  ["size", "Client size", () => clientSize(ROOT)],
  ["reckoning", "Reckoning", reckoning],
  ["hearing", "Hearing: phrases spoken by synthesis, none in the language model", hearing],
  ["by-ear", "From the end of a spoken phrase to the screen", byEar],
  ["memory", "Memory of the bench over a long job", benchMemory],
  ["ear-memory", "Memory of the ear over a long job", earMemory],
  ["corpora", "Corpora: jobs read wholly right", corpora],
  ["reliability", "Reliability of an entry's confidence", reliability],
  ["scale", "From one valve to a hundred thousand", () => scale()],
  ["scale-whole", "Ten million entries", () => scale(WHOLE)],
];
/** Five minutes of a machine, or an hour and gigabytes of its disk: only where they are named. */
const WHEN_NAMED = ["load-memory", "scale-whole"];

const wanted = process.argv.slice(2);
const names = SECTIONS.map(([name]) => name).join(" ");
if (wanted.includes("--help")) {
  process.stdout.write(
    `npm run bench [-- SECTION ...]\n\nSections: ${names}\nOnly where named: ${WHEN_NAMED.join(" ")}\nReads no settings from the environment.\n`,
  );
  process.exit(0);
}
const unknown = wanted.find((word) => !SECTIONS.some(([name]) => name === word));
if (unknown) {
  process.stderr.write(`bench: ${unknown} is no section; there are ${names}\n`);
  process.exit(2);
}
execFileSync(process.execPath, ["server/commands/build.mjs"], { cwd: ROOT, stdio: ["ignore", "ignore", "ignore"] });
process.stdout.write(
  `Node ${process.version}, ${cpus().length} × ${cpus()[0]?.model ?? "unknown"}. Trust the ratios, not the speeds.\n`,
);
for (const [name, heading, run] of SECTIONS) {
  if (wanted.length > 0 ? !wanted.includes(name) : WHEN_NAMED.includes(name)) continue;
  process.stdout.write(`\n${heading}\n`);
  for (const line of await run()) process.stdout.write(`  ${line}\n`);
}
