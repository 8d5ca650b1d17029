import { daysBetween, spokenDate } from "../../compute/calendar.ts";
import { failureRate, RATE_SOURCE } from "../../compute/failure-rate.ts";
import { type FailureTrend, failureTrend, TREND_SOURCE } from "../../compute/failure-trend.ts";
import type { FleetRate, Reliability, TroubledValve } from "../../shapes/fleet.ts";
import type { Family } from "../../shapes/valve.ts";
import { type FailureEvent, failureEvents } from "./failures.ts";
import { benchOf, type RecordedValve } from "./recorded.ts";

const YEAR_DAYS = 365.25;
const CONFIDENCE = 0.9;
/** A trend is not followed further than this, up or down: few failures draw it. */
const MOST_GROWTH = 3;

const COUNTS =
  "A failure is a day on which a test failed, or a part was found that no longer did its work (torn, holed, cracked, broken, seized, leaking, washed out); " +
  "wear is counted apart. What an earlier job left unmended is not counted again. Years run from a valve's first job to today; what that first job found is not counted.";

interface Counted {
  from: RecordedValve;
  family: string;
  service: "normal" | "severe";
  years: number;
  /** years after the first job, one a day of failure */
  ages: number[];
  degraded: number;
  events: FailureEvent[];
}

/**
 * Failures per valve-year with exact bounds, over the fleet and by family, and its valves, those first of which most
 * trouble is to be expected. `today`: looking stops here, so that a valve long without a failure gets its credit.
 */
export function fleetReliability(
  valves: readonly RecordedValve[],
  today: string,
  families: readonly Family[] = [],
  site?: string,
): Reliability {
  const counted = valves.flatMap((one) => count(one, today, families));
  const fleet = rateOf(counted);
  const names = [...new Set(counted.map((one) => one.family))].sort();
  return {
    ...(site === undefined ? {} : { site }),
    today,
    confidence: CONFIDENCE,
    fleet,
    families: names.map((family) => ({ family, ...rateOf(counted.filter((one) => one.family === family)) })),
    valves: counted
      .map((one) => judge(one, fleet))
      .sort(
        (a, b) => b.expected - a.expected || b.failures - a.failures || (a.tag < b.tag ? -1 : a.tag > b.tag ? 1 : 0),
      ),
    counts: COUNTS,
    source: `${RATE_SOURCE}; ${TREND_SOURCE}; expected trouble: a valve's own count drawn towards the fleet's rate, as a gamma prior of one failure does`,
  };
}

function count(from: RecordedValve, today: string, families: readonly Family[]): Counted[] {
  const bench = benchOf(from, today, families);
  const first = bench?.visits[0];
  if (!bench || !first) return [];
  const events = failureEvents(bench).filter((one) => one.on > first.on);
  const days = (some: readonly FailureEvent[]) => [...new Set(some.map((one) => one.on))];
  const failed = days(events.filter((one) => one.severity === "critical"));
  return [
    {
      from,
      family: bench.family.name,
      service: bench.valve.service ?? "normal",
      years: daysBetween(first.on, today) / YEAR_DAYS,
      ages: failed.map((on) => daysBetween(first.on, on) / YEAR_DAYS),
      degraded: days(events.filter((one) => one.severity === "degraded")).filter((on) => !failed.includes(on)).length,
      events,
    },
  ];
}

function rateOf(some: readonly Counted[]): FleetRate {
  const failures = some.reduce((sum, one) => sum + one.ages.length, 0);
  const years = some.reduce((sum, one) => sum + one.years, 0);
  const { rate, lower, upper } = failureRate(failures, years, CONFIDENCE);
  return {
    valves: some.length,
    failures,
    degraded: some.reduce((sum, one) => sum + one.degraded, 0),
    years,
    ...(rate === undefined ? {} : { rate }),
    ...(lower === undefined ? {} : { lower }),
    ...(upper === undefined ? {} : { upper }),
  };
}

function judge(one: Counted, fleet: FleetRate): TroubledValve {
  const failures = one.ages.length;
  const trend = failureTrend(one.ages, one.years);
  // Half a failure where there was none: no fleet is proof against the next one.
  const usual = fleet.years > 0 ? Math.max(0.5, fleet.failures) / fleet.years : 0;
  const drawn = usual > 0 ? (failures + 1) / (one.years + 1 / usual) : 0;
  const growth = trend.ok && trend.says !== "none" ? Math.min(MOST_GROWTH, Math.max(1 / MOST_GROWTH, trend.growth)) : 1;
  return {
    ...(one.from.site === undefined ? {} : { site: one.from.site }),
    tag: one.from.tag,
    family: one.family,
    service: one.service,
    failures,
    degraded: one.degraded,
    years: one.years,
    expected: drawn * growth,
    trend: trend.ok ? trend.says : "too_few",
    ...(trend.ok ? { laplace: trend.laplace, handbook: trend.handbook, growth: trend.growth } : {}),
    evidence: evidence(one, drawn * growth, trend.ok ? trend : undefined),
  };
}

function evidence(one: Counted, expected: number, trend: FailureTrend | undefined): string[] {
  const failures = one.ages.length;
  const times = failures === 0 ? "no failure" : failures === 1 ? "1 failure" : `${failures} failures`;
  const about = `about ${figure(expected)} to be expected in the next year`;
  const lines = [
    one.years === 0
      ? `first seen today, so the fleet's rate is taken: ${about}`
      : `${times} in ${figure(one.years)} ${one.years === 1 ? "year" : "years"}${one.degraded > 0 ? `, and worn parts found on ${one.degraded === 1 ? "1 other day" : `${one.degraded} other days`}` : ""}; ${about}`,
  ];
  const last = one.events.findLast((event) => event.severity === "critical");
  if (last) lines.push(`last failure ${spokenDate(last.on)}: ${eventWords(last)}`);
  if (trend && trend.says !== "none")
    lines.push(
      `failures come ${trend.says} as it ages (Laplace ${figure(trend.laplace.u)}, p ${figure(trend.laplace.p)}; MIL-HDBK-189 p ${figure(trend.handbook.p)}; growth ${figure(trend.growth)})`,
    );
  else if (trend) lines.push("its failures come neither faster nor slower as far as both tests can tell");
  const often = mostOften(one.events);
  if (often) lines.push(often);
  const now = one.from.open.filter((line) => line.when === "now").length;
  if (now > 0) lines.push(`${now} ${now === 1 ? "thing stands" : "things stand"} open that should be done now`);
  return lines;
}

/** The part found wrong most often, where that is more than once. */
function mostOften(events: readonly FailureEvent[]): string | undefined {
  const counts = new Map<string, number>();
  for (const { part } of events) if (part) counts.set(part, (counts.get(part) ?? 0) + 1);
  const [top] = [...counts].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1));
  return top && top[1] > 1 ? `${words(top[0])} found wrong ${top[1]} times` : undefined;
}

function eventWords({ part, found }: FailureEvent): string {
  return words(part === undefined ? found : `${part} ${found}`);
}

const words = (code: string): string => code.replaceAll("o_ring", "O-ring").replaceAll("_", " ");

function figure(value: number): string {
  return String(Number(value.toPrecision(2)));
}
