import { consequences, type Entry, fitWeibull, type Life, type PastJob } from "../../core/index.ts";
import { figure, medians, took } from "./timing.ts";

const VALVES = 1000;
const INSPECTIONS = 20;

/** A fleet's follow-ups and dates from twenty inspections each, and one Weibull fit. */
export function reckoning(): string[] {
  const histories = Array.from({ length: VALVES }, (_, n) => history(n));
  let lines = 0;
  const all = took(() => {
    for (const [n, past] of histories.entries()) {
      const after = consequences(valve(n), past, today(n), "2026-09-15");
      lines += after.followUps.length + after.due.length;
    }
  });
  const lives: Life[] = Array.from({ length: 20 }, (_, n) =>
    n % 5 === 0 ? { lower: 3 + (n % 7) } : { lower: 2 + (n % 5), upper: 3 + (n % 5) },
  );
  const [fit = Number.NaN] = medians(5, [() => void bounds(lives)]);
  return [
    `${figure(VALVES)} valves in severe service, ${INSPECTIONS} inspections each: ${figure(all)} ms, ${figure(all / VALVES)} ms a valve (${figure(lines)} follow-ups and dates)`,
    `so 10,000 valves in about ${figure((all * 10) / 1000)} s on one core (ten times the above, not run)`,
    `one fit of 20 censored lives with B10 and its 90 % lower bound: ${figure(fit)} ms`,
  ];
}

function bounds(lives: readonly Life[]): number {
  const fit = fitWeibull(lives);
  if (!fit.ok) throw new Error(fit.why);
  return fit.quantile(0.1) + fit.lowerBound(0.1, 0.9);
}

const valve = (n: number) => ({ tag: `LCV-${n}`, family: "balanced_dump", size_in: 2, service: "severe" as const });

/** Monthly looks; the seat wears every third or fourth, is turned over once, then replaced. */
function history(n: number): PastJob[] {
  return Array.from({ length: INSPECTIONS }, (_, k) => {
    const month = (k % 12) + 1;
    const on = `${2025 + Math.floor(k / 12)}-${String(month).padStart(2, "0")}-10`;
    return { on, entries: k % (3 + (n % 2)) === 2 ? worn(k) : sound() };
  });
}

const sound = (): Entry[] => [
  { type: "finding", condition: "ok", part: "seat" },
  { type: "test", test: "seat_leak", result: "pass" },
];
const worn = (k: number): Entry[] => [
  { type: "finding", condition: "worn", part: "seat", extent: k % 2 ? "one_side" : "both_sides" },
  { type: "work", work: k % 2 ? "flipped" : "replaced", status: "done", part: "seat" },
  { type: "test", test: "seat_leak", result: "pass" },
];
const today = (n: number): Entry[] => [
  ...(n % 3 ? sound() : worn(1)),
  { type: "finding", condition: "torn", part: "upper_diaphragm" },
];
