import { atMost, convert } from "../compute/convert.ts";
import { type StrokePoint, strokeOf } from "../compute/stroke.ts";
import { unitName } from "../compute/unit-names.ts";
import type { Unit } from "../shapes/codes.ts";
import type { Check } from "../shapes/consequence.ts";
import type { Entry, Reading } from "../shapes/entry.ts";
import type { Family } from "../shapes/valve.ts";

/** How far each end may lie off the bench range, as a share of its span: common practice, no source. */
const END_TOLERANCE = 0.1;
const DEFINITIONS = "hysteresis and dead band as IEC 61298-2 defines them (from memory)";

type StrokeCheck = Extract<Check, { check: "stroke" }>;

/**
 * The stroke that today's readings tell of, against the family's bench range; nothing where no signal was read beside
 * a position. Ends are judged with the signal rising, or falling where only that was read.
 */
export function judgeStroke(entries: readonly Entry[], family: Family): StrokeCheck | undefined {
  const { points, unit, travelUnit } = strokeReadings(entries);
  if (points.length === 0) return undefined;
  const source = [
    family.bench_range_psi ? `bench range: ${family.sources?.bench_range_psi ?? family.source}` : undefined,
    DEFINITIONS,
  ]
    .filter(Boolean)
    .join("; ");
  const stroke = strokeOf(points);
  if (!stroke.ok) return { check: "stroke", verdict: "not_enough", unit, source, note: stroke.why };
  const said = {
    check: "stroke",
    unit,
    travel: stroke.travel,
    travelUnit,
    ...(stroke.up ? { starts: stroke.up.starts, full: stroke.up.full } : {}),
    ...(stroke.down?.starts === undefined ? {} : { startsBack: stroke.down.starts }),
    ...(stroke.down?.home === undefined ? {} : { home: stroke.down.home }),
    ...(stroke.hysteresis ? { hysteresis: stroke.hysteresis.percent } : {}),
    ...(stroke.deadBand ? { deadBand: stroke.deadBand.signal, deadBandPercent: stroke.deadBand.percent } : {}),
    source,
  } as const;
  const notes = [...stroke.lacking];
  if (stroke.hysteresis?.between) notes.push("hysteresis taken on straight lines between the readings");
  const noted = (more: string[] = []) => {
    const all = [...more, ...notes];
    return all.length > 0 ? { note: all.join("; ") } : {};
  };

  if (!family.bench_range_psi)
    return { ...said, verdict: "no_limit", ...noted([`no bench range for a ${family.name}`]) };
  const [low, high] = family.bench_range_psi;
  const min = convert(low, "psi", unit);
  const max = convert(high, "psi", unit);
  if (typeof min !== "number" || typeof max !== "number")
    return {
      ...said,
      verdict: "no_limit",
      ...noted([`${unitName(unit)} is not a signal to set against ${low} to ${high} psi`]),
    };
  const starts = stroke.up?.starts ?? stroke.down?.home;
  const full = stroke.up?.full ?? stroke.down?.starts;
  if (starts === undefined || full === undefined)
    return { ...said, verdict: "not_enough", min, max, ...noted(["an end of the travel was not read"]) };
  const allowed = END_TOLERANCE * (max - min);
  const off = Math.max(Math.abs(starts - min), Math.abs(full - max));
  const within = atMost(Math.abs(starts - min), allowed) && atMost(Math.abs(full - max), allowed);
  return {
    ...said,
    verdict: within ? "within" : "off",
    min,
    max,
    margin: allowed - off,
    ...noted([`each end may lie ${figure(allowed)} off, a tenth of the span`]),
  };
}

/**
 * Signals with the positions read beside them, in the order said: in one phrase the first signal with the first
 * position and so on, else a signal and a position next to each other. After the last work of the job where two or
 * more were read after it: a stroke before a repair says nothing of the valve as left.
 */
export function strokeReadings(entries: readonly Entry[]): { points: StrokePoint[]; unit: Unit; travelUnit: Unit } {
  const worked = entries.findLastIndex((entry) => entry.type === "work" && entry.status === "done");
  const after = pairs(entries.slice(worked + 1));
  const taken = after.length >= 2 ? after : pairs(entries);
  const [first] = taken;
  const unit = first?.signal.unit ?? "psi";
  // Openings in per cent where any were, else travel in the unit first said; the two do not mix.
  const kind = taken.some((one) => one.position.quantity === "percent_open") ? "percent_open" : "travel";
  const travelUnit = taken.find((one) => one.position.quantity === kind)?.position.unit ?? "%";
  const points = taken.flatMap(({ signal, position }) => {
    if (position.quantity !== kind) return [];
    const pressure = convert(signal.value, signal.unit, unit);
    const moved = convert(position.value, position.unit, travelUnit);
    return typeof pressure === "number" && typeof moved === "number" ? [{ signal: pressure, position: moved }] : [];
  });
  return { points, unit, travelUnit };
}

interface Pair {
  signal: Reading;
  position: Reading;
}

const isSignal = (entry: Entry): entry is Reading => entry.type === "reading" && entry.quantity === "signal_pressure";
const isPosition = (entry: Entry): entry is Reading =>
  entry.type === "reading" && (entry.quantity === "percent_open" || entry.quantity === "travel");

function pairs(entries: readonly Entry[]): Pair[] {
  const found: Pair[] = [];
  let at = 0;
  while (at < entries.length) {
    const { phrase } = entries[at] as Entry & { phrase?: number };
    let end = at + 1;
    while (end < entries.length && phrase !== undefined && (entries[end] as { phrase?: number }).phrase === phrase)
      end += 1;
    const here = entries.slice(at, end);
    const signals = here.filter(isSignal);
    const positions = here.filter(isPosition);
    if (signals.length > 0 && signals.length === positions.length) {
      found.push(...signals.map((signal, i) => ({ signal, position: positions[i] as Reading })));
      at = end;
      continue;
    }
    const one = entries[end - 1];
    const next = entries[end];
    if (one && next && isSignal(one) && isPosition(next)) found.push({ signal: one, position: next });
    else if (one && next && isPosition(one) && isSignal(next)) found.push({ signal: next, position: one });
    else {
      at = end;
      continue;
    }
    at = end + 1;
  }
  return found;
}

function figure(value: number): string {
  return String(Number(value.toPrecision(3)));
}
