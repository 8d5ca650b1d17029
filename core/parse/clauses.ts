import type { Status } from "../shapes/codes.ts";
import type { Entry } from "../shapes/entry.ts";
import { copyOnto } from "./copying.ts";
import { readFindings, talkBehind, tightSaid } from "./findings.ts";
import { readNeed } from "./needs.ts";
import { has, type Named, type Noun, type Scene } from "./scene.ts";
import { readLeaving, readPlacing, readWork } from "./works.ts";

/**
 * Step 5: from left to right through the chunks, each part and what is said of it.
 * The state holds what a predicate further on may still refer to.
 */
export interface ClauseState {
  /** the parts something is said of; `open` until something has been */
  subject: { nouns: Noun[]; open: boolean } | undefined;
  not: number | undefined;
  hedge: number | undefined;
  owed: number | undefined;
  did: number | undefined;
  found: number | undefined;
  /** words of another visit or of other people's telling: what follows is not today's */
  elsewhere: number | undefined;
  /** something was said of the subject since the marks above were set */
  said: boolean;
  /** where the clause began: unknown or off-topic words from here on make a carried part doubtful */
  since: number;
}

export function newState(): ClauseState {
  return { subject: undefined, not: undefined, hedge: undefined, owed: undefined, did: undefined, found: undefined, elsewhere: undefined, said: false, since: 0 };
}

export function readClauses(scene: Scene): void {
  scene.settle();
  const state = newState();
  const { chunks } = scene;
  for (let at = 0; at < chunks.length; ) at = step(scene, state, at);
}

/** Reads what starts at `at`; returns the index to go on from. */
function step(scene: Scene, state: ClauseState, at: number): number {
  const chunk = scene.chunks[at];
  if (!chunk) return at + 1;
  if (chunk.hazard || chunk.command || chunk.tag) {
    endClause(state, at + 1);
    if (!chunk.hazard) return at + 1;
    // "mashed my thumb in the yoke": where it happened is no subject
    state.subject = undefined;
    const where = has(scene.chunks[at + 1], "prep") ? scene.noun(at + 2) : undefined;
    if (where) scene.use(...range(at + 1, where.to));
    return where ? where.to : at + 1;
  }
  if (chunk.talk) {
    if (state.subject) state.subject.open = false;
    return at + 1;
  }
  if (chunk.used) {
    if (chunk.senses.test || chunk.senses.outcome || chunk.senses.verdict || chunk.senses.testing) {
      state.said = true;
      if (state.subject) state.subject.open = false;
      state.not = undefined;
      state.since = at + 1;
    }
    const noun = chunk.senses.part ? scene.noun(at) : undefined;
    if (noun) scene.name([noun]);
    return at + 1;
  }
  if (has(chunk, "compare")) {
    if (chunk.text !== "again") return at + 1;
  }
  if (has(chunk, "past")) return setPast(scene, state, at);
  if (has(chunk, "reported")) {
    state.elsewhere = at;
    return at + 1;
  }
  const slipped = scene.drafts.length > 0 && /^(?:no|nope)$/.test(chunk.text) ? renamePart(scene, state, at) : undefined;
  if (slipped) return slipped;
  const again = has(chunk, "again") ? copyOnto(scene, state, at) : undefined;
  if (again) return again;
  const leaving = readLeaving(scene, state, at);
  if (leaving) return leaving;
  const need = readNeed(scene, state, at);
  if (need) return need;
  const placing = chunk.senses.placing ? readPlacing(scene, state, at) : undefined;
  if (placing) return placing;
  const noun = scene.noun(at);
  if (!noun || noun.core > at || !chunk.senses.part) {
    const work = chunk.senses.work ? readWork(scene, state, at) : undefined;
    if (work) return work;
    const finding = chunk.senses.condition || tightSaid(chunk) || (chunk.senses.severity && !noun) ? readFindings(scene, state, at) : undefined;
    if (finding) return finding;
  }
  const placeOf = noun ? undefined : readPlaceSubject(scene, state, at);
  if (placeOf) return placeOf;
  if (noun || (chunk.senses.place && scene.pairOfPlaces(at)) || (has(chunk, "det") && scene.pairOfPlaces(at))) return readSubject(scene, state, at);
  return mark(scene, state, at);
}

/** "seat's worn, no, the plug": what was just said is said of another part. */
function renamePart(scene: Scene, state: ClauseState, at: number): number | undefined {
  const noun = scene.noun(at + 1);
  const old = state.subject?.nouns[0]?.part;
  if (!noun?.part || !old || old === noun.part || noun.count || scene.predicateFollows(noun.to) || scene.chunks[noun.to]?.senses.work) return undefined;
  const { part, place } = noun;
  for (const draft of scene.drafts) if ("part" in draft.entry && draft.entry.part === old) draft.entry = { ...draft.entry, part, ...(place ? { place } : {}) } as Entry;
  scene.use(...range(at, noun.to));
  settleSubject(scene, state, [noun], false);
  return noun.to;
}

/** "but the inside's clean": a place of the part named last. */
function readPlaceSubject(scene: Scene, state: ClauseState, at: number): number | undefined {
  const chunk = scene.chunks[at];
  const last = scene.named.at(-1);
  if (!chunk?.senses.place || !last?.part || state.subject?.open || !scene.predicateFollows(at + 1)) return undefined;
  settleSubject(scene, state, [{ ...last, place: chunk.senses.place, from: at, to: at + 1, core: at, count: undefined }], true);
  scene.use(at);
  state.since = at;
  return at + 1;
}

/** Small words that change what a later predicate means. */
function mark(scene: Scene, state: ClauseState, at: number): number {
  const chunk = scene.chunks[at];
  if (!chunk) return at + 1;
  if (has(chunk, "but") && !has(chunk, "is")) {
    reset(state);
    if (/^(?:so|but|because|cause|since)$/.test(chunk.text)) state.since = at + 1;
    return at + 1;
  }
  const before = { ...state };
  if (has(chunk, "hedge") && hedgeLeads(scene, at)) {
    renew(state);
    state.hedge = at;
  } else if (has(chunk, "hedge")) hedgeLast(scene);
  if (has(chunk, "notAfter")) {
    // "didn't see any cracks" looks ahead, "looked for cracks and didn't see any" back
    if (scene.chunks[at + 1]?.senses.condition || scene.chunks[at + 1]?.senses.severity) state.not = at;
    else negateLast(scene, at);
    return at + 1;
  }
  if (has(chunk, "owed")) {
    renew(state);
    state.owed = at;
    state.did = undefined;
  }
  if (has(chunk, "did")) {
    if (before.said) renew(state);
    // "needs to have been", "gotta get": an owed word still rules a weak one
    if (state.owed === undefined || !/^(?:have|has|been|got|was|were)$/.test(chunk.text)) state.did = at;
    if (/^(?:had to|went ahead and|already|just|ended up|wound up|did|i did|went on and|managed to)$/.test(chunk.text)) state.owed = undefined;
  }
  if (has(chunk, "not") || (has(chunk, "declined") && !has(chunk, "owed"))) {
    if (before.said && state.subject && !state.subject.open) state.found = undefined;
    state.not = at;
  }
  if (has(chunk, "found")) {
    state.found = at;
    if (state.subject?.open && !has(chunk, "has") && !has(chunk, "is")) state.subject.open = false;
  }
  if (has(chunk, "and") && state.said) state.hedge = undefined;
  return at + 1;
}

function renew(state: ClauseState): void {
  if (!state.said) return;
  state.not = undefined;
  state.owed = undefined;
  state.did = undefined;
  state.found = undefined;
  state.hedge = undefined;
  state.said = false;
}

export function reset(state: ClauseState): void {
  state.not = undefined;
  state.hedge = undefined;
  state.owed = undefined;
  state.did = undefined;
  state.found = undefined;
  state.elsewhere = undefined;
}

export function endClause(state: ClauseState, at: number): void {
  reset(state);
  state.said = true;
  state.since = at;
}

/** A part is named: what comes next is said of it, unless it is new, wanted, or like the one before. */
function readSubject(scene: Scene, state: ClauseState, at: number): number {
  const list = scene.nouns(at, "subject");
  if (!list) return at + 1;
  const { nouns, end } = list;
  const first = nouns[0] as Noun;
  if ((scene.chunks[at - 1]?.talk && first.from === at) || ofTheirs(scene, first)) {
    // "truck seat", "boat gasket": not this valve's
    return end;
  }
  if (state.said) {
    state.not = undefined;
    state.owed = undefined;
    state.did = undefined;
    state.found = undefined;
    state.hedge = undefined;
    state.said = false;
  }
  state.since = at;
  const after = scene.chunks[end];
  if (first.fresh && (talkBehind(scene, end) || (scene.drafts.length === 0 && scene.chunks.slice(0, at).some((one) => one.talk)))) return end;
  if (first.fresh) {
    const owed = state.owed !== undefined;
    const declined = state.not !== undefined;
    const wanted = has(after, "owed") || after?.text === "needed";
    if (!scene.predicateFollows(end) || has(after, "is") || owed) {
      const status: Status = declined ? "declined" : owed || wanted ? "needed" : "done";
      const fitted = wanted ? end + 1 : pastFitting(scene, end);
      for (const noun of nouns) emitWork(scene, state, "replaced", status, noun, [at, fitted], "new_part");
      settleSubject(scene, state, nouns, false);
      return fitted;
    }
  }
  if (state.owed !== undefined && !first.one && (scene.at(state.owed)?.text.startsWith("need") || scene.at(state.owed)?.text.endsWith("use")) && !scene.predicateFollows(end) && !scene.chunks[end]?.senses.work && (first.det || first.count) && state.owed >= at - 2) {
    for (const noun of nouns) emitWork(scene, state, "replaced", "needed", noun, [state.owed, end], "needs_part");
    settleSubject(scene, state, nouns, false);
    return end;
  }
  const too = has(after, "too") && !scene.predicateFollows(end + 1) ? end : -1;
  if (too >= 0 && after && !after.used) {
    const next = copyOnto(scene, state, at);
    if (next) return next;
  }
  // "lower one ain't", "the other one isn't": the last finding, denied of another part
  if (has(after, "not") && (end + 1 >= scene.chunks.length || scene.noun(end + 1)) && denyLast(scene, state, nouns, at, end)) return end + 1;
  settleSubject(scene, state, nouns, true);
  return end;
}

/** "a new one was fitted", "new packing has been put in": the fitting is the replacing. */
function pastFitting(scene: Scene, from: number): number {
  let at = from;
  while (has(scene.at(at), "is") || has(scene.at(at), "did") || scene.isPlain(at)) {
    if (has(scene.at(at), "and") || at > from + 4) return from;
    at += 1;
  }
  const chunk = scene.at(at);
  if (at === from && /^(?:in|on|put in|installed|fitted)$/.test(chunk?.text ?? "")) return at + 1;
  if (chunk?.senses.work?.some((one) => one.code === "installed")) return at + 1;
  if (chunk?.senses.placing) return /^(?:in|on|back in)$/.test(scene.at(at + 1)?.text ?? "") ? at + 2 : at + 1;
  return from;
}

/** "the forklift … its hydraulic oil": a part of something else that the phrase talks about. */
function ofTheirs(scene: Scene, noun: Noun): boolean {
  const owner = [scene.at(noun.from), scene.at(noun.from - 1), scene.at(noun.from - 2)].some((one) => one && /^(?:its|his|her|their|your)$/.test(one.text));
  return owner && scene.chunks.slice(0, noun.from).some((one) => one.talk) && scene.drafts.length === 0;
}

function denyLast(scene: Scene, state: ClauseState, nouns: Noun[], at: number, end: number): boolean {
  const last = [...scene.drafts].reverse().find((draft) => draft.entry.type === "finding");
  if (!last || last.entry.type !== "finding") return false;
  for (const noun of nouns)
    scene.drafts.push({ entry: { ...last.entry, part: noun.part, place: noun.place, absent: true }, chunks: range(at, end + 1), rule: "finding_denied", named: true });
  scene.use(...range(at, end + 1));
  settleSubject(scene, state, nouns, false);
  return true;
}

export function settleSubject(scene: Scene, state: ClauseState, nouns: Noun[], open: boolean): void {
  state.subject = { nouns, open };
  if (!open) {
    state.said = true;
    for (const noun of nouns) if (noun.to > noun.from && scene.at(noun.core)?.senses.part === noun.part) scene.use(...range(noun.from, noun.to));
  }
  scene.name(nouns);
}

export const range = (from: number, to: number): number[] => Array.from({ length: Math.max(0, to - from) }, (_, nth) => from + nth);

/** "last time it was worn": of another visit, so not today's. */
function setPast(scene: Scene, state: ClauseState, at: number): number {
  const next = scene.chunks[at + 1];
  if (state.said && scene.drafts.length > 0 && (!next || has(next, "and") || has(next, "but"))) {
    const last = scene.drafts.pop();
    for (const index of last?.chunks ?? []) {
      const chunk = scene.chunks[index];
      if (chunk) chunk.used = false;
    }
    return at + 1;
  }
  state.elsewhere = at;
  return at + 1;
}

/** A hedge at the end of what is said belongs to it: "cage is cracked I think". */
function hedgeLeads(scene: Scene, at: number): boolean {
  for (let next = at + 1; next < scene.chunks.length; next += 1) {
    const chunk = scene.chunks[next];
    if (chunk?.senses.part || chunk?.senses.condition || chunk?.senses.work || has(chunk, "owed") || chunk?.senses.placing || has(chunk, "fresh")) return true;
  }
  return false;
}

function hedgeLast(scene: Scene): void {
  const last = scene.drafts.at(-1);
  if (last && (last.entry.type === "finding" || last.entry.type === "work")) last.entry = { ...last.entry, unsure: true } as Entry;
}

/** "looked for cracks in the bonnet and didn't find any". */
function negateLast(scene: Scene, at: number): void {
  const last = scene.drafts.at(-1);
  if (last?.entry.type !== "finding") return;
  last.entry = { ...last.entry, absent: true };
  last.chunks.push(at);
  scene.use(at);
}

/** Whether a carried part may be trusted: nothing in the clause that the log does not understand. */
export function clauseIsOurs(scene: Scene, from: number, to: number): boolean {
  for (let at = Math.max(0, from); at < Math.min(scene.chunks.length, to); at += 1) {
    const chunk = scene.chunks[at];
    if (chunk?.talk || (chunk?.unknown && !chunk.used) || /^(?:my|his|your|our|their)$/.test(chunk?.text ?? "")) return false;
  }
  return true;
}

/** The parts that a predicate without its own is said of. */
export function carried(scene: Scene, state: ClauseState): Named[] {
  if (state.subject) return state.subject.nouns;
  return scene.named.length > 0 ? scene.named : [{ part: undefined }];
}

export function emitWork(scene: Scene, state: ClauseState, work: Extract<Entry, { type: "work" }>["work"], status: Status, target: Named, span: [number, number], rule: string): void {
  if (state.elsewhere !== undefined) return;
  const entry: Extract<Entry, { type: "work" }> = { type: "work", work, status };
  if (target.part) entry.part = target.part;
  const count = target.count ?? (target.both ? 2 : undefined);
  if (count !== undefined) entry.count = count;
  // a hedge said of a finding does not reach the work after it
  if (state.hedge !== undefined && !scene.drafts.some((draft) => draft.entry.type === "finding" && draft.chunks.includes(state.hedge as number))) entry.unsure = true;
  const chunks = range(span[0], span[1]);
  for (const mark of [state.not, state.owed, state.did, state.hedge]) if (mark !== undefined && mark < span[0]) chunks.unshift(mark);
  scene.drafts.push({ entry, chunks, rule, named: target.part !== undefined });
  scene.use(...chunks);
  state.said = true;
}
