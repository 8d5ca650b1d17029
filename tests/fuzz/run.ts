import { fuzzBodies } from "./bodies.ts";
import { chance } from "./chance.ts";
import { fuzzFiles } from "./files.ts";
import { type Broken, tryOne } from "./promises.ts";

/**
 * A million random token strings against every promise of the reader, and a twentieth as many calls of the API and
 * spoilt files against those of the server; `npm run fuzz -- COUNT SEED` for other numbers.
 * Without a seed the day gives it, so that each night tries other phrases and a failure can still be said again.
 * Prints each broken promise with the phrases that show it, the shortest of each kind last, and exits 1.
 */
const today = Number(new Date().toISOString().slice(0, 10).replaceAll("-", ""));
const [count = 1_000_000, seed = today] = process.argv.slice(2).map(Number);
const by = chance(seed);
const shortest = new Map<string, Broken>();
const tally = new Map<string, number>();
for (let nth = 1; nth <= count; nth += 1) {
  for (const broken of tryOne(by)) {
    tally.set(broken.promise, (tally.get(broken.promise) ?? 0) + 1);
    const known = shortest.get(broken.promise);
    if (!known || broken.say.join().length < known.say.join().length) shortest.set(broken.promise, broken);
  }
  if (nth % 100_000 === 0)
    console.log(`${nth} phrases, ${[...tally.values()].reduce((sum, one) => sum + one, 0)} promises broken`);
}
for (const { promise, say, detail } of shortest.values())
  console.log(`\n${promise}: ${tally.get(promise)} times, as in\n${JSON.stringify(say)}\n${detail}`);
console.log(
  `\n${count} phrases from seed ${seed}: ${shortest.size === 0 ? "every promise held" : "promises were broken"}`,
);
const runs = Math.ceil(count / 20);
const ofServer = [...(await fuzzBodies({ runs, seed })), ...fuzzFiles({ runs, seed })];
for (const one of ofServer) console.log(`\n${one}`);
console.log(`${runs} calls and files: ${ofServer.length === 0 ? "every promise held" : "promises were broken"}`);
process.exitCode = shortest.size + ofServer.length === 0 ? 0 : 1;
