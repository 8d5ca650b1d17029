/** Step 5e: each entry once, and in the order the log keeps them. */

import type { Entry } from "../shapes/entry.ts";
import { ROLE } from "../vocabulary/grammar.ts";
import { has, range } from "./chunks.ts";
import type { Draft, Scene } from "./scene.ts";

/** One entry per condition per part, however many synonyms were said. */
export function oneEach(drafts: readonly Draft[]): Draft[] {
  const kept: { draft: Draft; chunks: Set<number> }[] = [];
  const alike = new Map<string, typeof kept>();
  for (const draft of drafts) {
    const about = aboutOf(draft.entry);
    const others = alike.get(about) ?? [];
    const same = about ? others.find((other) => isSame(draft.entry, other.draft.entry)) : undefined;
    if (same) {
      same.draft.entry = { ...draft.entry, ...same.draft.entry } as Entry;
      same.draft.named ||= draft.named;
      for (const at of draft.chunks) same.chunks.add(at);
      continue;
    }
    const one = { draft: { ...draft }, chunks: new Set(draft.chunks) };
    kept.push(one);
    alike.set(about, [...others, one]);
  }
  return kept.map(({ draft, chunks }) => ({ ...draft, chunks: [...chunks] }));
}

/** What two entries must share to be one at all; empty for entries that always stand by themselves. */
function aboutOf(entry: Entry): string {
  if (entry.type === "finding") return `finding ${entry.condition}`;
  if (entry.type === "work") return `work ${entry.work}`;
  if (entry.type === "command") return `command ${entry.command}`;
  return entry.type === "hazard" ? `hazard ${entry.hazard}` : "";
}

function isSame(entry: Entry, other: Entry): boolean {
  if (entry.type === "finding" && other.type === "finding") {
    if (entry.absent !== other.absent) return false;
    // "is that a crack? that's a crack in the yoke": the part may be said the second time
    if (entry.part === undefined || other.part === undefined) return true;
    return entry.part === other.part && agree(entry.place, other.place) && agree(entry.count, other.count);
  }
  if (entry.type === "work" && other.type === "work")
    return entry.part === other.part && entry.status === other.status && agree(entry.count, other.count);
  return true;
}

/** Said of both, the two are the same; said of one, the other goes with it. */
const agree = <Value>(one: Value | undefined, other: Value | undefined): boolean =>
  one === undefined || other === undefined || one === other;

/** Entries of one phrase in the log's order, for when an amendment has moved them. */
export function ranked(entries: readonly Entry[]): Entry[] {
  if (entries.filter((entry) => entry.type === "valve" && entry.tag).length > 1) return [...entries];
  return entries
    .map((entry, nth) => ({ entry, nth }))
    .sort((a, b) => RANK[a.entry.type] - RANK[b.entry.type] || a.nth - b.nth)
    .map(({ entry }) => entry);
}

const RANK: Record<Entry["type"], number> = {
  valve: 0,
  finding: 1,
  work: 2,
  reading: 3,
  test: 3,
  hazard: 4,
  need: 5,
  note: 6,
  command: 7,
};

/** Valve first, then findings, work, readings each before its test, hazards, needs, notes, commands; each kind as spoken. */
export function order(
  scene: Scene,
  drafts: readonly Draft[],
  readings: readonly Draft[],
  tests: readonly Draft[],
): Draft[] {
  const start = (draft: Draft) => (draft.chunks.length > 0 ? Math.min(...draft.chunks) : 0);
  const measured = [...readings, ...tests].sort((a, b) => endOf(a) - endOf(b) || (a.entry.type === "reading" ? -1 : 1));
  // a reading said behind its test ("bubble tight at sixty") stands before it
  for (let at = 0; at < measured.length; at += 1) {
    const test = measured[at];
    if (test?.entry.type !== "test" || (at > 0 && isOfTest(measured[at - 1]) && !testAlready(measured, at))) continue;
    let last = at;
    while (measured[last + 1]?.entry.type === "reading" && (measured[last + 2]?.entry.type !== "test" || last === at))
      last += 1;
    if (last > at && !(measured[last + 1]?.entry.type === "test" && last === at + 0)) {
      measured.splice(at, 1);
      measured.splice(last, 0, test);
      at = last;
    }
  }
  // "full travel in five seconds": tied to its test by the small word between
  for (let at = 0; at + 1 < measured.length; at += 1) {
    const test = measured[at];
    const reading = measured[at + 1];
    if (test?.entry.type !== "test" || reading?.entry.type !== "reading") continue;
    let joint = Math.min(...reading.chunks) - 1;
    if (scene.at(joint)?.senses.bound) joint -= 1;
    const tied = has(scene.at(joint), ROLE.prep) && joint - 1 === endOf(test);
    // "stroke test, fifteen psi, full travel, four seconds": the time a stroke took is the stroke's
    const timed =
      test.entry.test === "stroke" &&
      reading.entry.quantity === "duration" &&
      joint === endOf(test) &&
      test.chunks.length > 1;
    // "ten seconds to open and eight to close"
    const bothWays =
      test.entry.test === "stroke" && test.entry.result === null && reading.entry.quantity === "duration";
    // "no bubbles were seen over a three minute period"
    const watched =
      reading.entry.quantity === "duration" && isTied(scene, endOf(test) + 1, Math.min(...reading.chunks));
    if (tied || timed || bothWays || watched) measured.splice(at, 2, reading, test);
  }
  const rest = drafts.map((draft, nth) => ({ draft, nth }));
  const valves = rest
    .filter(({ draft }) => draft.entry.type === "valve" && draft.entry.tag)
    .map(({ draft }) => start(draft));
  const stretch = (draft: Draft) => (valves.length > 1 ? valves.filter((at) => at <= start(draft)).length : 0);
  const all = [
    ...rest.map(({ draft, nth }) => ({ draft, nth })),
    ...measured.map((draft, nth) => ({ draft, nth: nth + 1000 })),
  ];
  return all
    .sort(
      (a, b) =>
        stretch(a.draft) - stretch(b.draft) || RANK[a.draft.entry.type] - RANK[b.draft.entry.type] || byPlace(a, b),
    )
    .map(({ draft }) => draft);
}

/** Nothing but small words between a test and how long it was watched, and one that ties them among these. */
const isTied = (scene: Scene, from: number, to: number): boolean =>
  range(from, to).every(
    (at) => scene.isPlain(at) || [ROLE.prep, ROLE.is, ROLE.found, ROLE.det].some((role) => has(scene.at(at), role)),
  ) && range(from, to).some((at) => /^(?:for|over|in|after|during)(?: the)?$/.test(scene.at(at)?.text ?? ""));

/** "torqued to forty and holding eighty": no test is made with a wrench. */
const isOfTest = (draft: Draft | undefined): boolean =>
  draft?.entry.type === "reading" && draft.entry.quantity !== "torque" && draft.entry.quantity !== "length";

const byPlace = (a: { draft: Draft; nth: number }, b: { draft: Draft; nth: number }) => a.nth - b.nth;

const endOf = (draft: Draft) => (draft.chunks.length > 0 ? Math.max(...draft.chunks) : 0);

const testAlready = (list: readonly Draft[], at: number) => list.slice(0, at).some((one) => one.entry.type === "test");
