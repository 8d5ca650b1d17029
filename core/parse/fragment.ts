import type { Entry, ValveEntry } from "../shapes/entry.ts";
import type { Lexicon } from "../vocabulary/lexicon.ts";
import { type Chunk, chunk } from "./chunks.ts";
import { range, readClauses } from "./clauses.ts";
import { findMeasures, isRate, type Measure, settleMeasures } from "./measures.ts";
import { knownConfusions, type Proposal, respell, soundAlikes } from "./mishearing.ts";
import { type Carry, type Draft, has, type Named, Scene } from "./scene.ts";
import { findTests, STROKING, settleTests } from "./tests.ts";

/** What a run of words, free of undo and amendment, says. */
export interface Fragment {
  scene: Scene;
  drafts: Draft[];
  /** parts that "it" and "them" stand for after it */
  named: Named[];
  recent: Named[];
  /** it was read with mishearings undone */
  respelled?: readonly Proposal[];
}

/**
 * Reads words as they were meant: as heard, and with known mishearings undone, and takes whichever makes more sense.
 * Phrases with talk of other things in them are taken as heard.
 */
export function readMeant(words: readonly string[], carry: Carry, lexicon: Lexicon): Fragment {
  const heard = readFragment(words, carry, lexicon);
  const confused = knownConfusions(words, lexicon);
  if (complete(heard) && confused.every((one) => settled(heard, one))) return heard;
  const first = confused.length > 0 ? best(heard, words, confused, carry, lexicon) : heard;
  if (first.scene.chunks.every((one) => !one.unknown && !one.talk)) return first;
  // sound alone is a weak witness: it is heard only where the phrase speaks of a valve anyway, and of nothing else
  if (first.scene.chunks.some((one) => one.talk || one.hazard) || !first.scene.chunks.some((one) => isTrade(one) || has(one, "again"))) return first;
  const unread = words.map(() => false);
  for (const one of first.scene.chunks) if (!one.used && one.unknown) unread.fill(true, one.from, one.to);
  const taken = first.respelled ?? [];
  const places = soundAlikes(words, unread, lexicon).filter((choices) => choices.some((one) => !overlaps(one, taken)));
  return places.length > 0 ? bySound(first, words, places, carry, lexicon) : first;
}

/** Every word that could mean something was made something of: there is nothing to put right. */
function complete({ scene, drafts }: Fragment): boolean {
  return drafts.length > 0 && scene.chunks.every((one) => one.used || !(one.unknown || one.talk || isTrade(one) || one.number));
}

/** What was heard there was read as it stands, and not as one of two parts side by side. */
function settled({ scene }: Fragment, proposal: Proposal): boolean {
  return scene.chunks.every((one, at) => {
    if (one.from >= proposal.to || proposal.from >= one.to) return true;
    return one.used === true && says(one) && !(one.senses.part && (scene.chunks[at + 1]?.senses.part || scene.chunks[at - 1]?.senses.part));
  });
}

const overlaps = (one: Proposal, others: readonly Proposal[]): boolean => others.some((other) => one.from < other.to && other.from < one.to);

/** What a step away in sound costs, beside the words that are explained by taking it. */
const PER_DISTANCE = 6;
/** So many places at most: a phrase with more strange words than this is about something else. */
const MOST_PLACES = 6;

/** From left to right, the word that makes most sense at each place; none where none is worth its distance. */
function bySound(first: Fragment, words: readonly string[], places: readonly (Proposal & { far: number })[][], carry: Carry, lexicon: Lexicon): Fragment {
  let kept: (Proposal & { far?: number })[] = [...(first.respelled ?? [])];
  let best = first;
  let worth = sense(first);
  for (const choices of places.slice(0, MOST_PLACES)) {
    let pick: { kept: typeof kept; meant: Fragment; worth: number } | undefined;
    for (const one of choices) {
      if (overlaps(one, kept)) continue;
      const next = [...kept, one].sort((a, b) => a.from - b.from);
      const meant = readRespelled(words, next, carry, lexicon);
      const gain = sense(meant) - PER_DISTANCE * one.far;
      if (gain <= (pick?.worth ?? worth) || meant.scene.chunks.some((chunk) => chunk.talk) || !supported(meant, one)) continue;
      pick = { kept: next, meant, worth: gain };
    }
    if (!pick) continue;
    kept = pick.kept;
    best = pick.meant;
    worth = pick.worth;
  }
  return best;
}

/** Takes the proposals that help: all of them at first, then without each that is not missed. */
function best(heard: Fragment, words: readonly string[], proposals: readonly Proposal[], carry: Carry, lexicon: Lexicon): Fragment {
  const floor = sense(heard);
  let kept = [...proposals].sort((a, b) => a.from - b.from).slice(0, 10);
  let meant = readRespelled(words, kept, carry, lexicon);
  let worth = sense(meant);
  for (const one of [...kept]) {
    const without = kept.filter((other) => other !== one);
    const next = readRespelled(words, without, carry, lexicon);
    const nextWorth = sense(next);
    if (nextWorth < worth) continue;
    kept = without;
    meant = next;
    worth = nextWorth;
  }
  // a phrase made of nothing but corrections is no witness for any of them
  const plainly = meant.scene.chunks.some((one) => isTrade(one) && !overlaps({ from: one.from, to: one.to, mean: [] }, kept));
  return kept.length > 0 && worth > floor && (plainly || heard.drafts.length > 0 || kept.length < words.length - 1) && !meant.scene.chunks.some((one) => one.talk) ? meant : heard;
}

const isTrade = (one: Chunk): boolean => one.senses.part !== undefined || one.senses.condition !== undefined || one.senses.work !== undefined || one.senses.test !== undefined || one.senses.unit !== undefined || one.senses.outcome !== undefined || one.tag !== undefined;

/** A word put right must be read together with a trade word that was heard as it is, and never onto a carried part alone. */
function supported(meant: Fragment, proposal: Proposal): boolean {
  const inside = (one: Chunk | undefined) => one !== undefined && one.from < proposal.to && proposal.from < one.to;
  return meant.drafts.some((draft) => {
    const chunks = [...draft.chunks, ...(draft.also ?? [])].map((at) => meant.scene.chunks[at]);
    if (!chunks.some(inside)) return false;
    const whole = draft.entry.type !== "finding" && draft.entry.type !== "work";
    return draft.named || whole || meant.scene.chunks.some((one) => isTrade(one) && one.senses.part !== undefined && one.used);
  });
}

function readRespelled(words: readonly string[], proposals: readonly Proposal[], carry: Carry, lexicon: Lexicon): Fragment {
  const respelled = respell(words, proposals);
  const meant = readFragment(respelled.words, carry, lexicon);
  // its words stand for others in the phrase: point back at those
  for (const one of meant.scene.chunks) {
    const first = respelled.origin[one.from];
    const last = respelled.origin[one.to - 1];
    if (first && last) Object.assign(one, { from: first[0], to: last[1] });
  }
  return { ...meant, respelled: proposals };
}

/** How much of the words a reading makes something of, less what it leaves over or has to carry. */
function sense(fragment: Fragment): number {
  let total = 0;
  const { chunks } = fragment.scene;
  for (const { entry, named } of fragment.drafts) if ((entry.type === "finding" || entry.type === "work") && (!entry.part || !named)) total -= entry.part ? 0.5 : 2;
  for (const [at, one] of chunks.entries()) {
    if (one.unknown || one.talk) total -= one.used ? 0 : 2;
    else if (one.used) total += says(one) ? one.to - one.from : 0;
    else if (one.senses.part || one.senses.condition || one.senses.work || one.number) total -= 1.5;
    // two parts side by side are seldom two parts: "bonnet balls"
    if (one.senses.part && chunks[at + 1]?.senses.part) total -= 1;
  }
  return total;
}

/** Whether a chunk carries meaning of its own, rather than holding others together. */
const says = (one: Chunk): boolean => isTrade(one) || one.number !== undefined || one.hazard !== undefined || one.command !== undefined || one.senses.place !== undefined || one.senses.severity !== undefined || one.senses.extent !== undefined || one.senses.quantity !== undefined || one.senses.acts !== undefined || one.senses.service !== undefined || one.senses.verdict !== undefined || one.senses.placing !== undefined;

/** Reads words (already lower case) into entries, in the order the log keeps them. */
export function readFragment(words: readonly string[], carry: Carry, lexicon: Lexicon): Fragment {
  const scene = new Scene(chunk(words, lexicon), carry);
  const tests = findTests(scene);
  const found = findMeasures(scene);
  const rated = found.some((one) => isRate(one.unit));
  const testAt = (at: number) => {
    // "passed at eighty pounds": a small word ties a number to the test before it
    const tied = has(scene.at(at - 1), "prep") || has(scene.at(at - 2), "prep");
    const before = scene.at(at - (has(scene.at(at - 1), "prep") ? 2 : 3));
    if (tied && before?.senses.verdict && !before.senses.test && /leak|hold|held|tight|drop/.test(before.text) && !tests.some((one) => one.chunks.includes(at - 2) || one.at === at - 3)) return "seat_leak";
    if (tied && rated) return tests.find((one) => one.at < at)?.test ?? "seat_leak";
    const far = (one: { at: number }) => (one.at < at ? (at - one.at) / (tied ? 3 : 1) : one.at - at);
    const nearest = [...tests].sort((a, b) => far(a) - far(b))[0];
    if (!nearest && scene.chunks.some((one) => STROKING.test(one.text))) return "stroke";
    return nearest?.test ?? (rated || leakSaid(scene) ? "seat_leak" : undefined);
  };
  const measures = settleMeasures(scene, found, testAt);
  const settled = settleTests(scene, tests, measures.readings, carry.lastTest);
  readValve(scene, measures.sizes);
  readClauses(scene);
  answerOneself(scene);
  for (const [at, one] of scene.chunks.entries()) {
    if (one.hazard) scene.drafts.push({ entry: { type: "hazard", hazard: one.hazard }, chunks: [at], rule: "hazard", named: true });
    if (one.command) scene.drafts.push({ entry: { type: "command", command: one.command }, chunks: [at], rule: "command", named: true });
    if (one.hazard || one.command) one.used = true;
  }
  for (const { noun } of measures.readings) if (noun) scene.use(...range(noun.from, noun.to));
  const readings = measures.readings.map((measure) => readingDraft(measure));
  for (const draft of readings) scene.use(...draft.chunks);
  const tested = settled.map((test): Draft => ({ entry: { type: "test", test: test.test, result: test.result }, chunks: test.chunks.length > 0 ? test.chunks : [test.at], rule: "test", named: true }));
  return { scene, drafts: order(scene, oneEach(scene.drafts), readings, tested), named: scene.named, recent: scene.recent };
}

/** "is the yoke cracked? nope": a question to oneself is what its answer makes of it; unanswered it says nothing. */
function answerOneself(scene: Scene): void {
  const first = scene.skipPlain(0) > 0 && !/^(?:is|are|was|were|does|did|do)$/.test(scene.at(0)?.text ?? "") ? scene.skipPlain(0) : 0;
  if (!/^(?:is|are|was|were|does)$/.test(scene.at(first)?.text ?? "") || !(has(scene.at(first + 1), "it") || scene.noun(first + 1))) return;
  const answer = scene.chunks.findIndex((one, at) => at > first + 1 && /^(?:no|nope|nah|not|no sir|yes|yeah|yep|yup|it is)$/.test(one.text));
  const no = answer > 0 && /^n/.test(scene.at(answer)?.text ?? "");
  for (const draft of [...scene.drafts]) {
    if (draft.entry.type !== "finding" || (answer > 0 && Math.min(...draft.chunks.filter((at) => at > first)) > answer)) continue;
    if (no) draft.entry = { ...draft.entry, absent: true };
    else if (answer < 0) {
      scene.drafts.splice(scene.drafts.indexOf(draft), 1);
      for (const at of draft.chunks) Object.assign(scene.chunks[at] ?? {}, { used: false });
    }
  }
}

/** "no leak at sixty", "leaking at fifty pounds": a leak and a pressure are a seat test even before it is settled. */
function leakSaid(scene: Scene): boolean {
  for (let at = 0; at < scene.chunks.length; at += 1) {
    const text = scene.at(at)?.text ?? "";
    const part = scene.at(at)?.senses.part;
    if (part && part !== "valve" && part !== "seat") return false;
    if (/^(?:no leaks?|leaking|leaks|no leakage|zero leakage|not leaking|holding?|held|holds|isnt leaking|leaked|didnt leak|no drop)\b/.test(text)) return true;
  }
  return false;
}

function readingDraft(measure: Measure): Draft {
  const entry: Entry = { type: "reading", quantity: measure.quantity ?? "pressure", value: measure.value, unit: (measure.unit ?? "psi") as "psi" };
  if (measure.upper !== undefined) entry.upper = measure.upper;
  if (measure.bound) entry.bound = measure.bound;
  if (measure.noun?.part) entry.part = measure.noun.part;
  return { entry, chunks: range(measure.from, measure.to), also: [...(measure.noun ? range(measure.noun.from, measure.noun.to) : []), ...(measure.word === undefined ? [] : [measure.word])], rule: "reading", named: true };
}

/** Tag, size, action and service said together are one entry; another tag is another valve. */
function readValve(scene: Scene, sizes: readonly Measure[]): void {
  let current: { entry: ValveEntry; chunks: number[] } | undefined;
  const found: { entry: ValveEntry; chunks: number[] }[] = [];
  const open = (): { entry: ValveEntry; chunks: number[] } => {
    if (!current) {
      current = { entry: { type: "valve" }, chunks: [] };
      found.push(current);
    }
    return current;
  };
  for (const [at, one] of scene.chunks.entries()) {
    if (one.talk) continue;
    const size = sizes.find((measure) => measure.from === at);
    if (one.tag) {
      if (current?.entry.tag) current = undefined;
      open().entry.tag = one.tag;
    } else if (size) open().entry.size_in = size.value;
    else if (one.senses.acts && !one.used && !one.senses.part) open().entry.acts = one.senses.acts;
    else if (one.senses.service && !one.used) open().entry.service = one.senses.service;
    else continue;
    (current as unknown as { chunks: number[] }).chunks.push(at);
    one.used = true;
    if (size) scene.use(...range(size.from, size.to + (scene.at(size.to)?.senses.part === "valve" ? 1 : 0)));
  }
  for (const one of found) scene.drafts.push({ ...one, rule: "valve", named: true });
}

/** One entry per condition per part, however many synonyms were said. */
function oneEach(drafts: readonly Draft[]): Draft[] {
  const kept: Draft[] = [];
  for (const draft of drafts) {
    const { entry } = draft;
    const same = kept.find(({ entry: other }) => {
      // "is that a crack? that's a crack in the yoke": the part may be said the second time
      if (entry.type === "finding" && other.type === "finding" && entry.condition === other.condition && entry.absent === other.absent && (entry.part === undefined || other.part === undefined)) return true;
      if (entry.type === "finding" && other.type === "finding") return entry.condition === other.condition && entry.part === other.part && (entry.place ?? other.place) === (other.place ?? entry.place) && entry.absent === other.absent && (entry.count ?? other.count) === (other.count ?? entry.count);
      if (entry.type === "work" && other.type === "work") return entry.work === other.work && entry.part === other.part && entry.status === other.status && (entry.count ?? other.count) === (other.count ?? entry.count);
      if (entry.type === "hazard" && other.type === "hazard") return entry.hazard === other.hazard;
      return false;
    });
    if (!same) kept.push({ ...draft });
    else {
      same.entry = { ...entry, ...same.entry } as Entry;
      same.named ||= draft.named;
      same.chunks = [...new Set([...same.chunks, ...draft.chunks])];
    }
  }
  return kept;
}

/** Entries of one phrase in the log's order, for when an amendment has moved them. */
export function ranked(entries: readonly Entry[]): Entry[] {
  if (entries.filter((entry) => entry.type === "valve" && entry.tag).length > 1) return [...entries];
  return entries.map((entry, nth) => ({ entry, nth })).sort((a, b) => RANK[a.entry.type] - RANK[b.entry.type] || a.nth - b.nth).map(({ entry }) => entry);
}

const RANK: Record<Entry["type"], number> = { valve: 0, finding: 1, work: 2, reading: 3, test: 3, hazard: 4, need: 5, note: 6, command: 7 };

/** Valve first, then findings, work, readings each before its test, hazards, needs, notes, commands; each kind as spoken. */
function order(scene: Scene, drafts: readonly Draft[], readings: readonly Draft[], tests: readonly Draft[]): Draft[] {
  const start = (draft: Draft) => (draft.chunks.length > 0 ? Math.min(...draft.chunks) : 0);
  const measured = [...readings, ...tests].sort((a, b) => endOf(a) - endOf(b) || (a.entry.type === "reading" ? -1 : 1));
  // a reading said behind its test ("bubble tight at sixty") stands before it
  for (let at = 0; at < measured.length; at += 1) {
    const test = measured[at];
    if (test?.entry.type !== "test" || (at > 0 && measured[at - 1]?.entry.type === "reading" && !testAlready(measured, at))) continue;
    let last = at;
    while (measured[last + 1]?.entry.type === "reading" && (measured[last + 2]?.entry.type !== "test" || last === at)) last += 1;
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
    if (has(scene.at(joint), "prep") && joint - 1 === endOf(test)) measured.splice(at, 2, reading, test);
  }
  const rest = drafts.map((draft, nth) => ({ draft, nth }));
  const valves = rest.filter(({ draft }) => draft.entry.type === "valve" && draft.entry.tag).map(({ draft }) => start(draft));
  const stretch = (draft: Draft) => (valves.length > 1 ? valves.filter((at) => at <= start(draft)).length : 0);
  const all = [...rest.map(({ draft, nth }) => ({ draft, nth })), ...measured.map((draft, nth) => ({ draft, nth: nth + 1000 }))];
  return all
    .sort((a, b) => stretch(a.draft) - stretch(b.draft) || RANK[a.draft.entry.type] - RANK[b.draft.entry.type] || byPlace(a, b))
    .map(({ draft }) => draft);
}

const byPlace = (a: { draft: Draft; nth: number }, b: { draft: Draft; nth: number }) => a.nth - b.nth;
const endOf = (draft: Draft) => (draft.chunks.length > 0 ? Math.max(...draft.chunks) : 0);
const testAlready = (list: readonly Draft[], at: number) => list.slice(0, at).some((one) => one.entry.type === "test");

/** The drafts that name a part, in order. */
export const partsOf = (fragment: Fragment): Named[] => fragment.named;
export { has };
