import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { consequences, fitWeibull, fleetReliability, type Life } from "../../core/index.ts";
import { manyValves } from "../core/consequences/many-valves.ts";
import { figure, medians, took } from "./timing.ts";

const VALVES = 10_000;
const INSPECTIONS = 20;
const MOST_SECONDS = 10;
const TIMES_R = 10;

/** A fleet's follow-ups and dates from twenty inspections each; one Weibull fit, beside R's where R is. */
export function reckoning(): string[] {
  const all = manyValves(VALVES, INSPECTIONS);
  let lines = 0;
  const reckon = (some: typeof all) =>
    took(() => {
      for (const { valve, history, on } of some) {
        const after = consequences(valve, history, [], on);
        lines += after.followUps.length + after.due.length;
      }
    });
  const few = all.slice(0, VALVES / 4);
  reckon(few);
  const quarter = (reckon(few) + reckon(few)) / 2;
  lines = 0;
  const whole = reckon(all);
  const record = all.map(({ valve, history }, n) => ({ tag: `INV-${n}`, valve, jobs: history, open: [], due: [] }));
  const fleet = took(() => fleetReliability(record, "2026-09-15"));

  const lives: Life[] = Array.from({ length: 20 }, (_, n) =>
    n % 5 === 0 ? { lower: 3 + (n % 7) } : { lower: 2 + (n % 5), upper: 3 + (n % 5) },
  );
  const [fit = Number.NaN, bounds = Number.NaN] = medians(5, [
    () => {
      for (let i = 0; i < 50; i++) fitWeibull(lives);
    },
    () => {
      for (let i = 0; i < 50; i++) bound(lives);
    },
  ]);
  const oneFit = (fit / 50) * 1000;
  const r = fitInR(lives);
  return [
    `${figure(VALVES)} valves, half in severe service, ${INSPECTIONS} inspections each: ${figure(whole / 1000)} s (at most ${MOST_SECONDS} s asked: ${whole <= MOST_SECONDS * 1000 ? "met" : "NOT met"}), ${figure(whole / VALVES)} ms a valve, ${figure(lines)} follow-ups and dates`,
    `four times the valves take ${figure(whole / quarter)} times as long`,
    `failures, trends and ranking of those valves: ${figure(fleet / 1000)} s`,
    `one fit of 20 censored lives: ${figure(oneFit)} µs; with B10 and its 90 % lower bound: ${figure((bounds / 50) * 1000)} µs`,
    r === undefined
      ? "R's survreg on the same lives: no Rscript with survival here (apt-get install -y r-cran-survival)"
      : `R's survreg on the same lives: ${figure(r)} µs, ${figure(r / oneFit)} times ours (${TIMES_R} asked: ${r >= TIMES_R * oneFit ? "met" : "NOT met"})`,
  ];
}

function bound(lives: readonly Life[]): number {
  const fit = fitWeibull(lives);
  if (!fit.ok) throw new Error(fit.why);
  return fit.quantile(0.1) + fit.lowerBound(0.1, 0.9);
}

/** Microseconds of one survreg fit; undefined where there is no R to ask. */
function fitInR(lives: readonly Life[]): number | undefined {
  const run = spawnSync("Rscript", ["--vanilla", fileURLToPath(new URL("./survreg-speed.R", import.meta.url))], {
    input: `${lives.map(({ lower, upper }) => `${lower}:${upper ?? "NA"}`).join(" ")}\n`,
    encoding: "utf8",
  });
  const micros = Number(run.stdout?.trim());
  return run.status === 0 && micros > 0 ? micros : undefined;
}
