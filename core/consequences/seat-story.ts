import { daysBetween, MONTH_DAYS } from "../compute/calendar.ts";
import type { Condition, Place, Service } from "../shapes/codes.ts";
import type { Entry, Finding } from "../shapes/entry.ts";
import type { Family, Life } from "../shapes/valve.ts";
import { isFault, isSound, type Visit } from "./visit.ts";

/** What the visits tell of the seat: its sides, how long each lasted, and how the one in place stands. */
export interface SeatStory {
  /** times the seat had been flipped since it was fitted, before each visit */
  flipsBefore: readonly number[];
  /** seat-side lives, in months of 30.4375 days */
  lives: readonly Life[];
  /** how many of those lives ran through a change of service, as far as it was said */
  changed: number;
  /** those of the lives that ran wholly in the service the valve is in at the end, as far as it was said */
  steady: readonly Life[];
  /** the last visit that saw the seat */
  seenOn?: string;
  /** how the side in place stood then; `unknown` where nobody saw it go in, or its day is gone */
  side: "sound" | "worn" | "unknown";
  /** its age then, in months, where it is known */
  age?: number;
}

/** What a technician calls a worn seat: wear, and whatever flow does to it. */
const WEAR = new Set<Condition>(["worn", "eroded", "washed_out", "corroded", "pitted", "scored", "cut", "nicked"]);
/** Nor is a broken side a sound one: its life has ended too. */
const ENDED = new Set<Condition>([...WEAR, "cracked", "broken", "chipped", "damaged"]);

const SIDES = new Set<Place>(["top", "bottom", "upper", "lower", "inlet", "outlet", "left", "right"]);

/** A worn seat, and which of its sides was said. */
export function wearOf(entry: Entry): { finding: Finding; sides: "one" | "both" | "unsaid" } | undefined {
  if (!isFault(entry) || entry.part !== "seat" || !WEAR.has(entry.condition)) return undefined;
  if (entry.extent === "both_sides") return { finding: entry, sides: "both" };
  const one = entry.extent === "one_side" || (entry.place !== undefined && SIDES.has(entry.place));
  return { finding: entry, sides: one ? "one" : "unsaid" };
}

/** True where the entry puts in a new seat. */
export function newSeat(entry: Entry): boolean {
  return (
    entry.type === "work" &&
    entry.work === "replaced" &&
    entry.status === "done" &&
    !entry.unsure &&
    (entry.part === "seat" || entry.part === "trim" || entry.part === "valve" || entry.resolved === "seat")
  );
}

/** True where a flip of the seat was said, done or wanted; only a seat is ever flipped, so it need not be named. */
export function isFlip(entry: Entry, status: "done" | "needed"): boolean {
  return (
    entry.type === "work" &&
    entry.work === "flipped" &&
    entry.status === status &&
    !entry.unsure &&
    (entry.part === "seat" || entry.part === undefined || entry.resolved === "seat")
  );
}

/** True where the entry shows that the seat was looked at or handled; a leak test is not a look. */
function sees(entry: Entry): boolean {
  if (entry.type === "finding") return entry.part === "seat" || entry.resolved === "seat";
  return newSeat(entry) || (entry.type === "work" && (entry.part === "seat" || isFlip(entry, "done")));
}

/** How a visit found the side that was in when it began; only a finding without a doubt tells. */
function foundAs(visit: Visit): "ended" | "sound" | undefined {
  let sound = false;
  for (const entry of visit.entries) {
    if (entry.type !== "finding" || entry.part !== "seat") continue;
    if (isFault(entry) && !entry.unsure && ENDED.has(entry.condition)) return "ended";
    if (isSound(entry)) sound = true;
  }
  return sound ? "sound" : undefined;
}

/**
 * Follows the seat through the visits. A life starts when a fresh side goes in, ends between the last look that found
 * it sound and the first that found it worn, and is cut short where it was taken out sound or is sound still.
 * `setUpIn`: the service until another is said.
 */
export function tellSeat(visits: readonly Visit[], family: Family, setUpIn?: Service): SeatStory {
  const flipsBefore: number[] = [];
  const lives: Life[] = [];
  let flips = 0;
  let freshOn: string | undefined;
  let soundAges: number[] = [];
  let endedAge: number | undefined;
  let side: SeatStory["side"] = "unknown";
  let seenOn: string | undefined;
  let service = setUpIn;
  let firstService = setUpIn;
  let changed = 0;
  let changedNow = false;
  const ran: { life: Life; service: Service | undefined; changed: boolean }[] = [];
  let ranIn: Service | undefined;

  const ageOn = (date: string): number => daysBetween(freshOn as string, date) / MONTH_DAYS;
  const close = (): void => {
    if (freshOn === undefined) return;
    const sound = soundAges.filter((age) => endedAge === undefined || age < endedAge);
    const lower = Math.max(0, ...sound);
    const life = endedAge === undefined ? { lower } : { lower, upper: endedAge };
    if (!((endedAge ?? lower) > 0)) return;
    lives.push(life);
    if (changedNow) changed += 1;
    ran.push({ life, service: ranIn, changed: changedNow });
  };

  for (const visit of visits) {
    flipsBefore.push(flips);
    for (const entry of visit.entries) {
      if (entry.type !== "valve" || entry.service === undefined) continue;
      // Once the side has ended, what it ran in before is all that counts.
      if (service !== undefined && entry.service !== service && endedAge === undefined) changedNow = true;
      service = entry.service;
      firstService ??= service;
      if (endedAge === undefined) ranIn = service;
    }
    if (!visit.entries.some(sees)) continue;
    seenOn = visit.on;
    const found = foundAs(visit);
    if (found === "ended") side = "worn";
    // Of a side nobody saw go in, a good look says that it is good, but not how old it is.
    if (found === "sound" && side === "worn") side = freshOn === undefined ? "unknown" : "sound";
    if (freshOn !== undefined) {
      if (found === "ended") endedAge ??= ageOn(visit.on);
      if (found === "sound" && endedAge === undefined) soundAges.push(ageOn(visit.on));
    }
    let flippedHere = false;
    for (const entry of visit.entries) {
      const fresh = newSeat(entry);
      // Said twice in one job, it is still one flip.
      const flip: boolean = family.reversible_seat && !flippedHere && isFlip(entry, "done");
      if (!fresh && !flip) continue;
      close();
      flippedHere = flip;
      flips = fresh ? 0 : flips + 1;
      // A second flip brings back the side that was used first: not a fresh one.
      const used = flip && flips > 1;
      freshOn = used ? undefined : visit.on;
      side = used ? "unknown" : "sound";
      soundAges = [];
      endedAge = undefined;
      changedNow = false;
      ranIn = service;
    }
  }
  close();
  return {
    flipsBefore,
    lives,
    changed,
    // A life before any service was said ran in the first one said, as far as anybody knows.
    steady: ran.flatMap((one) => (!one.changed && (one.service ?? firstService) === service ? [one.life] : [])),
    seenOn,
    side,
    age: freshOn && seenOn && side === "sound" ? ageOn(seenOn) : undefined,
  };
}
