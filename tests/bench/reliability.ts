import { hear } from "../../core/index.ts";
import { bare, CORPORA, isLookedAt, loadCases } from "../corpora/corpus.ts";

const EDGES = [0, 0.6, 0.7, 0.8, 0.85, 0.9, 0.95, 0.97, 1.001];

/** Of the entries that came with a confidence, how many were right: looked-at cases beside those only scored. */
export function reliability(): string[] {
  const bins = EDGES.slice(1).map((to, n) => ({ from: EDGES[n] ?? 0, to, seen: [0, 0], right: [0, 0], sum: [0, 0] }));
  for (const one of CORPORA.flatMap((name) => loadCases(name))) {
    const which = isLookedAt(one) ? 0 : 1;
    const left = one.entries.map(bare);
    for (const entry of hear({ id: one.id, say: one.say }).entries) {
      const confidence = entry.confidence ?? 0;
      const bin = bins.find(({ from, to }) => confidence >= from && confidence < to);
      const at = left.indexOf(bare(entry));
      if (at >= 0) left.splice(at, 1);
      if (!bin) continue;
      bin.seen[which] = (bin.seen[which] ?? 0) + 1;
      bin.sum[which] = (bin.sum[which] ?? 0) + confidence;
      if (at >= 0) bin.right[which] = (bin.right[which] ?? 0) + 1;
    }
  }
  const share = (right = 0, seen = 0) =>
    (seen ? `${right}/${seen} ${((100 * right) / seen).toFixed(1)} %` : "none").padEnd(20);
  return [
    `${"confidence".padEnd(14)}${"looked at, right".padEnd(20)}only scored, right`,
    ...bins
      .filter(({ seen }) => (seen[0] ?? 0) + (seen[1] ?? 0) > 0)
      .map(
        ({ from, to, seen, right }) =>
          `${`${from} to ${Math.min(to, 1)}`.padEnd(14)}${share(right[0], seen[0])}${share(right[1], seen[1]).trim()}`,
      ),
  ];
}
