/** Step 5: from left to right through the chunks, each part and what is said of it. */

import type { Entry } from "../shapes/entry.ts";
import { ROLE } from "../vocabulary/grammar.ts";
import { OF_THE_JOB } from "../vocabulary/talk.ts";
import { readAbsentPart } from "./absent-part.ts";
import { has, range } from "./chunks.ts";
import { type ClauseState, endClause, isYesterday, newState, renew, reset } from "./clause-state.ts";
import { tightSaid } from "./conditions-said.ts";
import { copyOnto } from "./copying.ts";
import { readCountBehind, readCountOwed } from "./count-behind.ts";
import { readFindings } from "./findings.ts";
import { readGoingOn } from "./going-on.ts";
import { readImmovable } from "./immovable.ts";
import { readLeaving } from "./leaving.ts";
import { readNeed } from "./needs.ts";
import { readNewOwed, readPlacing } from "./placing.ts";
import type { Scene } from "./scene.ts";
import { readPlaceSubject, readSubject, renamePart } from "./subjects.ts";
import { readToGo } from "./to-go.ts";
import { readTooling } from "./tooling.ts";
import { readTurning } from "./turning.ts";
import { readUndone } from "./undone.ts";
import { readCheckedFor, readWork } from "./works.ts";

/** "seat's washed out, replaced it": leaves findings, work and needs among the drafts of the scene. */
export function readClauses(scene: Scene): void {
  scene.settle();
  const state = newState();
  const { chunks } = scene;
  for (let at = 0; at < chunks.length; ) {
    const made = scene.drafts.length;
    const free = state.elsewhere === undefined ? [] : chunks.slice(at, at + 12).filter((one) => !one.used);
    const next = step(scene, state, at);
    // "last october put a new one in": nothing of today's came of it, so its words come back
    if (state.elsewhere !== undefined && scene.drafts.length === made)
      for (const one of chunks.slice(at, next)) if (free.includes(one)) one.used = false;
    at = next;
  }
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
    const behind = has(scene.chunks[at + 1], ROLE.prep) ? scene.noun(at + 2) : undefined;
    const where = behind?.count === undefined ? behind : undefined;
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
  if (has(chunk, ROLE.compare) && chunk.text !== "again") return at + 1;
  if (has(chunk, ROLE.past)) return setPast(scene, state, at);
  // "they would have run it again, I put a new one in": what I did is no supposing
  if (
    state.elsewhere !== undefined &&
    chunk.text === "i" &&
    /\b(?:would|id|wed|theyd)\b/.test(scene.at(state.elsewhere)?.text ?? "")
  )
    reset(state);
  // "last time it was good, this time it's worn": today's again
  if (state.elsewhere !== undefined && todayFrom(scene, at)) reset(state);
  if (scene.told.some((one) => one.from === at)) {
    state.elsewhere = at;
    return at + 1;
  }
  if (scene.told.some((one) => one.to === at)) {
    reset(state);
    if (state.subject) state.subject.open = false;
  }
  const going = readGoingOn(scene, state, at);
  if (going) return going;
  const counted = readCountBehind(scene, state, at) ?? readCountOwed(scene, state, at);
  if (counted) return counted;
  const undone = readUndone(scene, state, at);
  if (undone) return undone;
  const absent = readAbsentPart(scene, state, at);
  if (absent) return absent;
  const slipped =
    scene.drafts.length > 0 && /^(?:no|nope)$/.test(chunk.text) ? renamePart(scene, state, at) : undefined;
  if (slipped) return slipped;
  const again = has(chunk, ROLE.again) ? copyOnto(scene, state, at) : undefined;
  if (again) return again;
  const immovable = readImmovable(scene, state, at);
  if (immovable) return immovable;
  const leaving = readLeaving(scene, state, at);
  if (leaving) return leaving;
  const toGo = readToGo(scene, state, at);
  if (toGo) return toGo;
  const need = readNeed(scene, state, at);
  if (need) return need;
  const tooled = readTooling(scene, state, at);
  if (tooled) return tooled;
  const wantsNew = readNewOwed(scene, state, at);
  if (wantsNew) return wantsNew;
  const turning = readTurning(scene, state, at);
  if (turning) return turning;
  const placing = chunk.senses.placing ? readPlacing(scene, state, at) : undefined;
  if (placing) return placing;
  const checked = readCheckedFor(scene, state, at);
  if (checked) return checked;
  const noun = scene.noun(at);
  if (!noun || noun.core > at || !chunk.senses.part) {
    const work = chunk.senses.work ? readWork(scene, state, at) : undefined;
    if (work) return work;
    const finding =
      chunk.senses.condition || tightSaid(chunk) || (chunk.senses.severity && !noun)
        ? readFindings(scene, state, at)
        : undefined;
    if (finding) return finding;
  }
  const placeOf = noun ? undefined : readPlaceSubject(scene, state, at);
  if (placeOf) return placeOf;
  if (noun || (chunk.senses.place && scene.pairOfPlaces(at)) || (has(chunk, ROLE.det) && scene.pairOfPlaces(at)))
    return readSubject(scene, state, at);
  return mark(scene, state, at);
}

const THAT_BAD = /^(?:saw|seen|had) .*\b(?:that bad(?:ly)?|so bad(?:ly)?|like (?:that|this))\b/;

const textFrom = (scene: Scene, at: number): string =>
  scene.chunks
    .slice(at)
    .map((one) => one.text)
    .join(" ");

/** Small words that change what a later predicate means. */
function mark(scene: Scene, state: ClauseState, at: number): number {
  const chunk = scene.chunks[at];
  if (!chunk) return at + 1;
  // "cleaned the cage with a wire brush"
  const worked = scene.drafts.at(-1);
  if (chunk.senses.tool && worked?.entry.type === "work") {
    worked.chunks.push(at);
    scene.use(at);
    return at + 1;
  }
  if (has(chunk, ROLE.but) && !has(chunk, ROLE.is)) {
    reset(state);
    if (/^(?:although|though|however)$/.test(chunk.text)) state.said = false;
    if (/^(?:so|but|because|cause|since|although|though|however)$/.test(chunk.text)) state.since = at + 1;
    return at + 1;
  }
  const saidBefore = state.said;
  if (has(chunk, ROLE.hedge) && hedgeLeads(scene, at)) {
    renew(state);
    // "not clicking, might be burnt": what was denied stands before the hedge
    if (state.not !== undefined && state.not < at - 1) state.not = undefined;
    state.hedge = at;
  } else if (has(chunk, ROLE.hedge) && !hedgesElse(scene, at)) hedgeLast(scene);
  if (has(chunk, ROLE.notAfter)) {
    // "didn't see any cracks" looks ahead, "looked for cracks and didn't see any" back
    const noun = scene.noun(at + 1);
    // "didn't see any bolts loose"
    const onPart = noun?.part && scene.chunks[noun.to]?.senses.condition;
    if (scene.chunks[at + 1]?.senses.condition || scene.chunks[at + 1]?.senses.severity || onPart) state.not = at;
    else if (!/^(?:none|nope|negative)$/.test(chunk.text) || at === scene.chunks.length - 1) negateLast(scene, at);
    return at + 1;
  }
  if (has(chunk, ROLE.owed)) {
    renew(state);
    state.owed = at;
    state.did = undefined;
  }
  if (has(chunk, ROLE.did)) {
    if (saidBefore) renew(state);
    // "needs to have been", "gotta get": an owed word still rules a weak one
    if (state.owed === undefined || !/^(?:have|has|been|got|was|were)$/.test(chunk.text)) state.did = at;
    if (/^(?:had to|went ahead and|already|just|ended up|wound up|did|i did|went on and|managed to)$/.test(chunk.text))
      state.owed = undefined;
  }
  // "never saw a stem bent that bad": there it is
  if (/^never/.test(chunk.text) && THAT_BAD.test(textFrom(scene, at + 1))) return at + 1;
  // "yeah no, the packing is fine", "no, just a scratch": the no is said of what came before
  if (
    chunk.text === "no" &&
    /^(?:the|that|this|its|thats|just|only|uh|um|er|ah|well|wait|so|sir)$/.test(scene.chunks[at + 1]?.text ?? "")
  )
    return at + 1;
  if (has(chunk, ROLE.not) || (has(chunk, ROLE.declined) && !has(chunk, ROLE.owed))) {
    if (saidBefore && state.subject && !state.subject.open) state.found = undefined;
    state.not = at;
  }
  if (has(chunk, ROLE.found)) {
    state.found = at;
    if (state.subject?.open && !has(chunk, ROLE.has) && !has(chunk, ROLE.is)) state.subject.open = false;
    // "the plug shows galling along the guide": the plug's
    if (state.subject?.open && /^show/.test(chunk.text)) state.found = undefined;
  }
  if (has(chunk, ROLE.and) && state.said) state.hedge = undefined;
  return at + 1;
}

/** "now it's worn", "this time around it leaks". */
const todayFrom = (scene: Scene, at: number): boolean =>
  scene.at(at)?.text === "now" ||
  scene.at(at)?.text === "today" ||
  (scene.at(at)?.text === "this" && /^(?:time|trip|visit)\b/.test(scene.at(at + 1)?.text ?? ""));

/** "last time it was worn": of another visit, so not today's. */
function setPast(scene: Scene, state: ClauseState, at: number): number {
  const next = scene.chunks[at + 1];
  // "leaking since last spring" still leaks
  if (/^since/.test(scene.chunks[at - 1]?.text ?? "")) return at + 1;
  if (
    state.said &&
    scene.drafts.length > 0 &&
    (!next || has(next, ROLE.and) || has(next, ROLE.but) || todayFrom(scene, at + 1))
  ) {
    if (isYesterday(scene.chunks[at]) && scene.drafts.at(-1)?.entry.type === "work") return at + 1;
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
  // "spring is weak I think, maybe replace it": each has its own
  const last = scene.drafts.at(-1);
  if (has(scene.chunks[at + 1], ROLE.hedge) && last?.entry.type === "finding" && Math.max(...last.chunks) === at - 1)
    return false;
  // "plug's okay I think, but the seat's shot"
  if (has(scene.chunks[at + 1], ROLE.but) && scene.drafts.length > 0) return false;
  for (let next = at + 1; next < scene.chunks.length; next += 1) {
    const chunk = scene.chunks[next];
    if (
      chunk?.senses.part ||
      chunk?.senses.condition ||
      chunk?.senses.work ||
      has(chunk, ROLE.owed) ||
      chunk?.senses.placing ||
      has(chunk, ROLE.fresh)
    )
      return true;
  }
  return false;
}

/** "solenoid's burnt, probably the coil": what is doubted is a thing that the log does not know. */
function hedgesElse(scene: Scene, at: number): boolean {
  if (!has(scene.at(at + 1), ROLE.det)) return false;
  const thing = scene.at(at + 2);
  return thing?.unknown === true || OF_THE_JOB.includes(thing?.text ?? "");
}

/** "cage is cracked, maybe". */
function hedgeLast(scene: Scene): void {
  const last = scene.drafts.at(-1);
  if (last && (last.entry.type === "finding" || last.entry.type === "work"))
    last.entry = { ...last.entry, unsure: true } as Entry;
}

/** "looked for cracks in the bonnet and didn't find any". */
function negateLast(scene: Scene, at: number): void {
  const last = scene.drafts.at(-1);
  if (last?.entry.type !== "finding") return;
  last.entry = { ...last.entry, absent: true };
  last.chunks.push(at);
  scene.use(at);
}
