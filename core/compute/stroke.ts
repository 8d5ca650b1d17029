/**
 * A stroke test: how far the valve moves, from which signal to which, and how much the way up differs from the way
 * down. Source: IEC 61298-2 (tests under reference conditions), its definitions of hysteresis and dead band as
 * remembered: hysteresis is the greatest difference of output between the two ways at one input, in per cent of the
 * output span, dead band included; dead band is the change of input that moves nothing when the input turns back.
 */

/** One pair read: the signal, and where the valve stood. Signals in one unit, positions in one unit. */
export interface StrokePoint {
  signal: number;
  position: number;
}

export interface Stroke {
  ok: true;
  /** positions at the ends, and how far apart they are, in the unit of the positions */
  from: number;
  to: number;
  travel: number;
  /** rising signal: the last at which it had not moved, and the first at which it was all the way */
  up?: { starts: number; full: number };
  /** falling signal: the last at which it had not moved back, where read, and the first at which it was home */
  down?: { starts?: number; home?: number };
  /** where both ways were read; `between`: the other way was not read at that signal but lies between two readings */
  hysteresis?: { percent: number; at: number; between: boolean };
  /** where the signal was read at which it started back; `percent` of the signal span */
  deadBand?: { signal: number; percent: number };
  /** what was not read, in words */
  lacking: string[];
}

export interface NotEnough {
  ok: false;
  problem: "not_enough";
  why: string;
}

/** Points in the order read. A record needs two signals in one direction between which the valve moved. */
export function strokeOf(points: readonly StrokePoint[]): Stroke | NotEnough {
  const no = (why: string): NotEnough => ({ ok: false, problem: "not_enough", why });
  if (points.some((one) => !Number.isFinite(one.signal) || !Number.isFinite(one.position)))
    return no("a reading is no number");
  if (points.length < 2) return no("one position at one signal says nothing of a stroke: read the ends, up and down");
  const rising = longestRun(points, 1);
  const falling = longestRun(points, -1);
  const run = rising ?? falling;
  if (!run) return no("every position was read at one signal");
  const ordered = [...run].sort((a, b) => a.signal - b.signal);
  const from = (ordered[0] as StrokePoint).position;
  const to = (ordered[ordered.length - 1] as StrokePoint).position;
  const sense = Math.sign(to - from);
  if (sense === 0) return no("the position did not change between the signals read");
  // Measured from where it stands at the lowest signal, whichever way the signal moves it.
  const moved = (one: StrokePoint): number => (one.position - from) * sense;
  const travel = (to - from) * sense;
  const lacking: string[] = [];

  const up = rising && {
    starts: Math.max(...rising.filter((one) => moved(one) <= 0).map((one) => one.signal)),
    full: Math.min(...rising.filter((one) => moved(one) >= travel).map((one) => one.signal)),
  };
  const down = falling && wayBack(falling, rising, moved, travel);
  if (!rising) lacking.push("nothing was read with the signal rising");
  if (!falling) lacking.push("nothing was read with the signal falling, so no hysteresis or dead band");
  const hysteresis = rising && falling && widest(rising, falling, moved, travel);
  const span = up ? up.full - up.starts : ordered[ordered.length - 1]?.signal;
  const deadBand = up && down && span && span > 0 ? slack(up, down, span) : undefined;
  if (rising && falling && !hysteresis) lacking.push("the two ways share no signal, so no hysteresis");
  if (rising && falling && !deadBand) lacking.push("the signal at which it starts back was not read, so no dead band");
  return {
    ok: true,
    from,
    to,
    travel,
    ...(up ? { up } : {}),
    ...(down ? { down } : {}),
    ...(hysteresis ? { hysteresis } : {}),
    ...(deadBand ? { deadBand } : {}),
    lacking,
  };
}

/** The run of readings, each signal no lower (or no higher) than the one before, that covers the most signal. */
function longestRun(points: readonly StrokePoint[], way: 1 | -1): StrokePoint[] | undefined {
  let best: StrokePoint[] | undefined;
  let run: StrokePoint[] = [];
  const reach = (some: readonly StrokePoint[]) =>
    Math.abs((some[some.length - 1]?.signal ?? 0) - (some[0]?.signal ?? 0));
  for (const point of points) {
    const last = run[run.length - 1];
    run = last && (point.signal - last.signal) * way < 0 ? [point] : [...run, point];
    if (reach(run) > (best ? reach(best) : 0)) best = run;
  }
  return best;
}

/** The falling way: `starts` only where a second reading at full travel shows that someone looked for the movement. */
function wayBack(
  falling: readonly StrokePoint[],
  rising: readonly StrokePoint[] | undefined,
  moved: (one: StrokePoint) => number,
  travel: number,
): NonNullable<Stroke["down"]> {
  const still = falling.filter((one) => moved(one) >= travel).map((one) => one.signal);
  const starts = Math.min(...still);
  const turned = rising ? Math.max(...rising.map((one) => one.signal)) : Number.POSITIVE_INFINITY;
  const home = Math.max(...falling.filter((one) => moved(one) <= 0).map((one) => one.signal));
  return {
    ...(still.length > 0 && starts < turned ? { starts } : {}),
    ...(Number.isFinite(home) ? { home } : {}),
  };
}

/** The greatest difference of position at one signal, read or between two readings, in per cent of travel. */
function widest(
  rising: readonly StrokePoint[],
  falling: readonly StrokePoint[],
  moved: (one: StrokePoint) => number,
  travel: number,
): Stroke["hysteresis"] {
  const back = [...falling].reverse();
  const low = Math.max(rising[0]?.signal ?? 0, back[0]?.signal ?? 0);
  const high = Math.min(rising[rising.length - 1]?.signal ?? 0, back[back.length - 1]?.signal ?? 0);
  if (!(high > low)) return undefined;
  let best: Stroke["hysteresis"];
  for (const { signal } of [...rising, ...falling]) {
    if (signal < low || signal > high) continue;
    const there = at(rising, signal, moved);
    const here = at(back, signal, moved);
    const percent = (100 * Math.abs(there.moved - here.moved)) / travel;
    const between = there.between || here.between;
    // Of two as wide, the one that was read on both ways.
    if (!best || percent > best.percent + 1e-9 || (percent > best.percent - 1e-9 && best.between && !between))
      best = { percent, at: signal, between };
  }
  return best;
}

/** Where it stood at that signal, on a straight line between readings; of two readings at it, the further moved. */
function at(
  run: readonly StrokePoint[],
  signal: number,
  moved: (one: StrokePoint) => number,
): { moved: number; between: boolean } {
  const read = run.filter((one) => one.signal === signal).map(moved);
  if (read.length > 0) return { moved: Math.max(...read), between: false };
  const after = run.findIndex((one) => one.signal > signal);
  const left = run[after - 1] as StrokePoint;
  const right = run[after] as StrokePoint;
  const part = (signal - left.signal) / (right.signal - left.signal);
  return { moved: moved(left) + part * (moved(right) - moved(left)), between: true };
}

/** The change of signal that moved nothing, at whichever end it was read and is the greater. */
function slack(up: { starts: number; full: number }, down: NonNullable<Stroke["down"]>, span: number) {
  const ends = [
    ...(down.starts === undefined ? [] : [up.full - down.starts]),
    ...(down.home === undefined || down.home === up.starts ? [] : [up.starts - down.home]),
  ];
  if (ends.length === 0) return undefined;
  const signal = Math.max(0, ...ends);
  return { signal, percent: (100 * signal) / span };
}
