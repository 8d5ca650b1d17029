import { consequences, type Entry, listen, type PastJob, startListening } from "../core/index.ts";
import type { Chance } from "./chance.ts";
import { DUMP_FAULTS, type Fault, GLOBE_FAULTS } from "./faults.ts";
import { type DemoValve, PEOPLE, type Style } from "./field.ts";
import type { DemoJob } from "./job.ts";
import {
  bubbles,
  CLOSE_TALK,
  DUMP_TALK,
  GLOBE_TALK,
  opening,
  REWORK,
  type Saying,
  SEAT_TALK,
  STRANGE_TALK,
  STROKES,
  seatHolds,
  seatLeaks,
  torqued,
  torqueSlip,
} from "./sayings.ts";
import { daysAfter, daysFrom, workday } from "./times.ts";

/** The invented truth about a valve, of which the log learns only what is said. */
interface Truth {
  /** when the side of the seat now in use went in, and how many months it will last */
  sideFrom: string;
  sideLasts: number;
  flipped: boolean;
  sealsFrom: string;
  owed: Fault | undefined;
}

const MONTH_DAYS = 30.4375;
const SEAL_DAYS = 360;

/**
 * Every visit to one valve from `first` on, each at the date that the log itself gave after the one before, give or
 * take what `late` says: so the monthly looks of severe service stretch or shrink as its pattern shows.
 */
export function visitsOf(at: DemoValve, first: string, last: string, luck: Chance): DemoJob[] {
  const jobs: DemoJob[] = [];
  const history: PastJob[] = [];
  const end = at.forgotten ? daysAfter(last, -Math.round(at.forgotten * MONTH_DAYS)) : daysAfter(last, -1);
  let day = workday(daysAfter(first, luck.between(0, at.valve.service === "severe" ? 12 : 70)));
  const truth: Truth = { ...freshSide(at, day, luck), flipped: false, sealsFrom: day, owed: undefined };
  while (day <= end) {
    const { name: person, style } = luck.pick(PEOPLE);
    const say = jobs.length === 0 ? overhaul(at, style, luck) : visit(at, truth, day, style, luck);
    jobs.push({ site: at.site, tag: at.tag, day, starts: luck.between(7 * 60, 15 * 60) * 60, person, style, say });
    const entries = heardAs(say);
    const { due } = consequences(at.valve, history, entries, day);
    history.push({ on: day, entries });
    const next = due.find((one) => one.task === "seat_inspection")?.on ?? daysAfter(day, 180);
    const planned = daysAfter(next, luck.between(...at.late));
    day = workday(planned > day ? planned : daysAfter(day, 3));
  }
  return jobs;
}

/** What the log makes of these phrases, for deciding when somebody comes again. */
function heardAs(say: readonly Saying[]): Entry[] {
  let heard = startListening();
  for (const one of say) heard = listen(heard, one.say);
  return [...heard.entries];
}

function freshSide(at: DemoValve, day: string, luck: Chance): Pick<Truth, "sideFrom" | "sideLasts"> {
  return { sideFrom: day, sideLasts: luck.life(at.shape, at.lasts) };
}

/** The first job on record: everything new. */
function overhaul(at: DemoValve, style: Style, luck: Chance): Saying[] {
  const talk = talkOf(at);
  return [
    opening(at.tag, style),
    luck.pick(SEAT_TALK.fresh[style]),
    luck.pick(talk.seals[style]),
    luck.pick(talk.trim[style]),
    ...bolting(at, style, luck),
    seatHolds(60, style),
    luck.pick(STROKES[style]),
    luck.pick(CLOSE_TALK[style]),
  ];
}

function visit(at: DemoValve, truth: Truth, day: string, style: Style, luck: Chance): Saying[] {
  const talk = talkOf(at);
  const say = [opening(at.tag, style)];
  if (luck.happens(0.6)) say.push(luck.pick(talk.outside[style]));
  if (luck.happens(0.6)) say.push(luck.pick(talk.actuator[style]));
  const mended = truth.owed?.mended?.[style];
  if (mended && luck.happens(0.7)) {
    say.push(mended);
    truth.owed = undefined;
  }
  say.push(luck.pick(talk.trim[style]));
  say.push(seat(at, truth, day, style, luck));
  if (daysFrom(truth.sealsFrom, day) > SEAL_DAYS && luck.happens(0.75)) {
    say.push(luck.pick(talk.seals[style]));
    truth.sealsFrom = day;
  }
  if (!truth.owed && luck.happens(0.3)) {
    const fault = luck.pick(at.valve.family === "globe_control" ? GLOBE_FAULTS : DUMP_FAULTS);
    say.push(fault.found[style]);
    truth.owed = fault.mended ? fault : undefined;
  }
  if (luck.happens(0.05)) say.push(luck.pick(STRANGE_TALK[style]));
  say.push(...bolting(at, style, luck), ...tested(at, style, luck), luck.pick(CLOSE_TALK[style]));
  return say;
}

/** How the seat is found today by the invented truth, and what is done about it. */
function seat(at: DemoValve, truth: Truth, day: string, style: Style, luck: Chance): Saying {
  const worn = daysFrom(truth.sideFrom, day) / MONTH_DAYS >= truth.sideLasts;
  if (!worn) return luck.pick(SEAT_TALK.sound[style]);
  const reversible = at.valve.family === "balanced_dump";
  const second = truth.flipped;
  Object.assign(truth, freshSide(at, day, luck), { flipped: reversible && !second });
  if (!reversible) return luck.pick(SEAT_TALK.worn[style]);
  return luck.pick(second ? SEAT_TALK.secondSide[style] : SEAT_TALK.firstSide[style]);
}

function bolting(at: DemoValve, style: Style, luck: Chance): Saying[] {
  const pounds = boltPounds(at);
  if (luck.happens(0.06)) return torqueSlip(pounds, style);
  return [torqued("bonnet", pounds + luck.between(-2, 2), style)];
}

/** In the middle of what the family allows; see the torque limits of `core/families`. */
function boltPounds(at: DemoValve): number {
  if (at.valve.family === "balanced_dump") return 28;
  const size = at.valve.size_in ?? 2;
  return size < 2 ? 40 : size < 4 ? 68 : 105;
}

/** Mostly it holds; now and then it does not, is taken apart again, and holds the second time. */
function tested(at: DemoValve, style: Style, luck: Chance): Saying[] {
  const stroke = luck.pick(STROKES[style]);
  if (luck.happens(0.09)) return [seatLeaks(50, style), luck.pick(REWORK[style]), seatHolds(50, style), stroke];
  if (at.valve.family === "balanced_dump" && luck.happens(0.15))
    return [bubbles(luck.between(1, 3), 50, style), stroke];
  return [seatHolds(luck.pick([50, 60]), style), stroke];
}

const talkOf = (at: DemoValve) => (at.valve.family === "globe_control" ? GLOBE_TALK : DUMP_TALK);
