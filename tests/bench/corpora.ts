import { CORPORA, isLookedAt, loadCases, type Scored, score, summary } from "../corpora/corpus.ts";

/** How the reader does on each corpus. The cases that were only scored say what a stranger's phrases may expect. */
export function corpora(): string[] {
  const lines = [`${"".padEnd(27)}cases right        entries F1   invented on chatter`];
  for (const name of CORPORA) {
    const scored = loadCases(name).map(score);
    lines.push(
      ...line(
        name,
        "looked at",
        scored.filter(({ one }) => isLookedAt(one)),
      ),
    );
    lines.push(
      ...line(
        name,
        "only scored",
        scored.filter(({ one }) => !isLookedAt(one)),
      ),
    );
  }
  return lines;
}

function line(name: string, label: string, part: readonly Scored[]): string[] {
  if (part.length === 0) return [];
  const { cases, right, chatter, invented, f1 } = summary(part);
  const share = `${right}/${cases}`.padEnd(9) + `${((100 * right) / cases).toFixed(1)} %`.padStart(7);
  return [`${name.padEnd(14)}${label.padEnd(13)}${share}   ${f1.toFixed(3).padStart(6)}       ${invented}/${chatter}`];
}
