import { atMost, convert } from "../compute/convert.ts";
import { LEAKAGE_SOURCE, seatLeakageLimit } from "../compute/leakage-limit.ts";
import { unitName } from "../compute/unit-names.ts";
import type { Check } from "../shapes/consequence.ts";
import type { Reading } from "../shapes/entry.ts";
import type { Family, Valve } from "../shapes/valve.ts";
import type { Visit } from "./visit.ts";

/** The drop of a standard seat test, psi, where the valve is not rated for less. */
const TEST_PSI = 50;
/** IEC's 3.5 bar is the same test as ANSI's 50 psi. */
const SAME_PRESSURE = 0.02;

/**
 * A measured seat leak against the limit of the valve's class. Bubbles are judged by the bubble column and never
 * converted; at a pressure that is not the test's, or not said, the rate is judged all the same and noted.
 */
export function judgeLeak(
  visit: Visit,
  index: number,
  valve: Valve,
  family: Family,
): Extract<Check, { check: "seat_leakage" }> {
  const reading = visit.entries[index] as Reading;
  const measured = Math.max(reading.value, reading.upper ?? reading.value);
  const { unit } = reading;
  const leakClass = valve.leak_class ?? family.leak_class;
  const notes: string[] = [];
  const said = { check: "seat_leakage", measured, unit, ...(leakClass ? { class: leakClass } : {}) } as const;
  const none = (why: string) =>
    ({ ...said, verdict: "no_limit", source: LEAKAGE_SOURCE, note: [why, ...notes].join("; ") }) as const;

  if (unit === "drop/min") return none("a drop has no settled volume, so drops are not judged");
  if (unit !== "bubble/min" && unit !== "mL/min") return none(`${unitName(unit)} is not a leak rate`);
  if (!leakClass) return none("no leakage class is known for this valve");
  if (!valve.leak_class) notes.push(`class ${leakClass} is the usual one of a ${family.name}`);
  if (unit === "bubble/min" && leakClass !== "VI") return none(`class ${leakClass} is not counted in bubbles`);

  const port = valve.port_in ?? valve.size_in;
  if (valve.port_in === undefined && port !== undefined && (leakClass === "VI" || leakClass === "V"))
    notes.push(`port taken as the nominal ${port} inch`);
  const testPsi = Math.min(TEST_PSI, valve.rated_dp_psi ?? TEST_PSI);
  const saidPsi = pressureOf(visit, index);
  if (saidPsi === undefined) notes.push(`no test pressure said; judged as at ${testPsi} psi`);
  else if (leakClass === "VI" || leakClass === "V") {
    const standard = leakClass === "V" ? TEST_PSI : testPsi;
    if (Math.abs(saidPsi - standard) > SAME_PRESSURE * standard)
      notes.push(`measured at ${Number(saidPsi.toFixed(1))} psi; the limit is for ${standard} psi`);
  }
  // For classes I to V the test may be on water; a valve that passes gas is tested on gas, and the note says so.
  if (leakClass !== "VI") notes.push("judged as a gas test");

  const limit = seatLeakageLimit({
    class: leakClass,
    port_in: port,
    cv: valve.cv ?? family.rated_cv.find((line) => line.size_in === valve.size_in)?.cv,
    xT: valve.xT ?? family.xT,
    dp_psi: saidPsi !== undefined && saidPsi > 0 ? saidPsi : testPsi,
    medium: "gas",
  });
  if (!limit.ok) return none(limit.why);
  const allowed = unit === "bubble/min" ? limit.bubblesPerMin : limit.mLPerMin;
  if (allowed === undefined) return none("the bubble column ends below this port size");
  return {
    ...said,
    verdict: atMost(measured, allowed) ? "pass" : "fail",
    allowed,
    margin: allowed - measured,
    source: limit.source,
    ...(notes.length > 0 ? { note: notes.join("; ") } : {}),
  };
}

/** The pressure said with that rate, in psi: among the readings beside it, up to the test they belong to. */
function pressureOf(visit: Visit, index: number): number | undefined {
  const phrase = visit.entries[index]?.phrase;
  const beside = (at: number): number | undefined => {
    const entry = visit.entries[at];
    if (entry?.type !== "reading" || (phrase !== undefined && entry.phrase !== undefined && entry.phrase !== phrase))
      return undefined;
    if (entry.quantity !== "upstream_pressure" && entry.quantity !== "pressure") return undefined;
    const psi = convert(entry.value, entry.unit, "psi");
    return typeof psi === "number" ? psi : undefined;
  };
  const isReading = (at: number) => visit.entries[at]?.type === "reading";
  for (let at = index + 1; isReading(at); at++) {
    const psi = beside(at);
    if (psi !== undefined) return psi;
  }
  for (let at = index - 1; isReading(at); at--) {
    const psi = beside(at);
    if (psi !== undefined) return psi;
  }
  return undefined;
}
