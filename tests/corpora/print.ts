import { CORPORA, isLookedAt, loadCases, type Scored, score, summary } from "./corpus.ts";

/** Prints how the reader does on each corpus; `--misses NAME` shows the looked-at cases it gets wrong. */
const [flag, name] = process.argv.slice(2);
for (const corpus of CORPORA) {
  const scored = loadCases(corpus).map(score);
  for (const [label, part] of [
    ["looked at", scored.filter(({ one }) => isLookedAt(one))],
    ["only scored", scored.filter(({ one }) => !isLookedAt(one))],
  ] as [string, Scored[]][]) {
    const { cases, right, chatter, invented, f1 } = summary(part);
    console.log(
      `${corpus.padEnd(12)} ${label.padEnd(12)} ${right}/${cases} ${((100 * right) / cases).toFixed(1)} %  entries F1 ${f1.toFixed(3)}  invented on chatter ${invented}/${chatter}`,
    );
    if (flag === "--misses" && name === corpus && label === "looked at")
      for (const { one, right: ok, got, want, unread } of part) {
        if (ok) continue;
        console.log(`\n${one.id} ${JSON.stringify(one.say)}`);
        for (const text of want.filter((each) => !got.includes(each))) console.log(`   - ${text}`);
        for (const text of got.filter((each) => !want.includes(each))) console.log(`   + ${text}`);
        if (want.every((each) => got.includes(each)) && got.every((each) => want.includes(each)))
          console.log(`   order ${got.join(" ")}`);
        if (unread.length > 0) console.log(`   unread ${JSON.stringify(unread)}`);
      }
  }
}
