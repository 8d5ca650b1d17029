/** Step 5: a part is named, and what follows is said of it. */

import type { Status } from "../shapes/codes.ts";
import type { Entry } from "../shapes/entry.ts";
import { ROLE } from "../vocabulary/grammar.ts";
import { has, range } from "./chunks.ts";
import { type ClauseState, emitWork, renew, settleSubject } from "./clause-state.ts";
import { copyOnto } from "./copying.ts";
import { onTheirs, talkBehind } from "./neighbours.ts";
import type { Noun } from "./noun.ts";
import { placed } from "./places.ts";
import { trail } from "./said-around.ts";
import type { Scene } from "./scene.ts";

/** "seat's worn, no, the plug": what was just said is said of another part. */
export function renamePart(scene: Scene, state: ClauseState, at: number): number | undefined {
  const noun = scene.noun(at + 1);
  const old = state.subject?.nouns[0]?.part;
  if (
    !noun?.part ||
    !old ||
    old === noun.part ||
    noun.count ||
    scene.predicateFollows(noun.to) ||
    scene.chunks[noun.to]?.senses.work
  )
    return undefined;
  const { part, place } = noun;
  for (const draft of scene.drafts)
    if ("part" in draft.entry && draft.entry.part === old)
      draft.entry = { ...draft.entry, part, ...(place ? { place } : {}) } as Entry;
  scene.use(...range(at, noun.to));
  settleSubject(scene, state, [noun], false);
  return noun.to;
}

/** "but the inside's clean": a place of the part named last. */
export function readPlaceSubject(scene: Scene, state: ClauseState, at: number): number | undefined {
  const chunk = scene.chunks[at];
  const last = scene.named.at(-1);
  // "outlet's the same"
  const behind = scene.chunks[has(scene.chunks[at + 1], ROLE.is) ? at + 2 : at + 1];
  if (
    chunk?.senses.place &&
    last?.part &&
    !state.subject?.open &&
    /^(?:the same|same|too|as well)$/.test(behind?.text ?? "") &&
    has(behind, ROLE.too)
  )
    return copyOnto(scene, state, at);
  if (!chunk?.senses.place || !last?.part || state.subject?.open || !scene.predicateFollows(at + 1)) return undefined;
  settleSubject(
    scene,
    state,
    [
      {
        ...last,
        ...placed({ part: last.part, place: chunk.senses.place }),
        from: at,
        to: at + 1,
        core: at,
        count: undefined,
      },
    ],
    true,
  );
  scene.use(at);
  state.since = at;
  return at + 1;
}

/** A part is named: what comes next is said of it, unless it is new, wanted, or like the one before. */
export function readSubject(scene: Scene, state: ClauseState, at: number): number {
  const list = scene.nouns(at, "subject");
  if (!list) return at + 1;
  const { end } = list;
  const nouns = meantInstead(scene, at, list.nouns);
  const first = nouns[0] as Noun;
  if ((scene.chunks[at - 1]?.talk && first.from === at) || ofTheirs(scene, first) || onTheirs(scene, end)) {
    // "truck seat", "boat gasket": not this valve's
    return end;
  }
  // "everything except the plug was replaced": that alone was not
  const done = has(scene.at(end), ROLE.is) && scene.at(end + 1)?.senses.work !== undefined;
  if (done && EXCEPTED.test(scene.at(first.from - 1)?.text ?? "")) return end;
  // "found it in the body": where it was, and not what "it" is
  if (wasThere(scene, state, first, end)) return end;
  // "scored where the packing rides": where it is, and no new subject
  if (
    has(scene.at(first.from - 1), ROLE.prep) &&
    scene.at(first.from - 1)?.text === "where" &&
    RIDES.test(scene.at(end)?.text ?? "")
  ) {
    scene.drafts.at(-1)?.chunks.push(...range(first.from - 1, end + 1));
    if (scene.drafts.length > 0) scene.use(...range(first.from - 1, end + 1));
    return end + 1;
  }
  // "scored where it rides in the bushing"
  if (
    has(scene.at(first.from - 1), ROLE.prep) &&
    ridesBefore(scene, first.from - 1) &&
    scene.drafts.length > 0 &&
    !scene.predicateFollows(end)
  ) {
    scene.drafts.at(-1)?.chunks.push(...range(first.from - 4, end));
    scene.use(...range(first.from - 4, end));
    return end;
  }
  const where = whereabouts(scene, state, first, end);
  if (where) return where;
  renew(state);
  state.since = at;
  if (deniedBefore(scene, state, first, end)) state.not = undefined;
  const after = scene.chunks[end];
  if (first.fresh && (talkBehind(scene, end) || (scene.drafts.length === 0 && talkedOf(scene, at)))) return end;
  // "new packing is on order": wanted, and not yet put in
  const listed = scene.at(has(after, ROLE.is) ? end + 1 : end);
  if (first.fresh && /^(?:on order|ordered|on the (?:parts |order )?list)$/.test(listed?.text ?? "")) {
    settleSubject(scene, state, nouns, true);
    return end;
  }
  // "didn't have a new one": none to put in
  if (first.fresh && /\b(?:have|had|got)$/.test(scene.at(at - 1)?.text ?? "") && has(scene.at(at - 1), ROLE.not))
    return end;
  // "somebody buy a new one": bought, and not put in yet
  if (first.fresh && /^(?:buy|buys|buying|bought)$/.test(scene.at(at - 1)?.text ?? "")) {
    settleSubject(scene, state, nouns, false);
    return end;
  }
  // "the new seat doesn't fit"
  if (
    first.fresh &&
    first.det &&
    has(after, ROLE.not) &&
    scene.at(end + 1)?.senses.work?.some((one) => one.form === "base")
  ) {
    settleSubject(scene, state, nouns, true);
    return end;
  }
  if (first.fresh) {
    const owed = state.owed !== undefined;
    const declined = state.not !== undefined;
    const wanted = has(after, ROLE.owed) || after?.text === "needed";
    // "the new packing is in" was put in; "the new seat is worn" tells nothing of when
    const placedIn = has(after, ROLE.is) && !scene.at(end + 1)?.senses.condition && !scene.at(end + 1)?.senses.severity;
    // "new spring in the actuator, strokes full": the whole valve strokes
    // "packed the spare seats": carried along, and not put in
    const spare = /^(?:spare|replacement)$/.test(scene.chunks[first.core - 1]?.text ?? "");
    if (spare && !owed && pastFitting(scene, end) === end) return end;
    if (!scene.predicateFollows(end) || placedIn || owed || wanted || after?.senses.outcome) {
      const status: Status = declined ? "declined" : owed || wanted ? "needed" : "done";
      const fitted = wanted ? end + 1 : pastFitting(scene, end);
      for (const noun of nouns) emitWork(scene, state, "replaced", status, noun, [at, fitted], "new_part");
      // "maybe needs a new solenoid, that one's burnt": the guess is said
      state.hedge = undefined;
      settleSubject(scene, state, nouns, false);
      return fitted;
    }
  }
  if (
    state.owed !== undefined &&
    !first.one &&
    (scene.at(state.owed)?.text.includes("need") ||
      /(?:use|to have|requires?)$/.test(scene.at(state.owed)?.text ?? "")) &&
    !scene.predicateFollows(end) &&
    // "need to get the bonnet off"
    !/^(?:off|out|apart|loose|open|back|back on|back in|together)$/.test(after?.text ?? "") &&
    !scene.chunks[end]?.senses.work &&
    (first.det || first.count) &&
    state.owed >= at - 2
  ) {
    // "need a seat for the pickup"
    if (talkBehind(scene, end)) return end;
    for (const noun of nouns) emitWork(scene, state, "replaced", "needed", noun, [state.owed, end], "needs_part");
    settleSubject(scene, state, nouns, false);
    return end;
  }
  // "the plug is too": with its verb, and nothing more
  const isToo =
    has(after, ROLE.is) &&
    has(scene.at(end + 1), ROLE.too) &&
    /^(?:too|as well|also|likewise)$/.test(scene.at(end + 1)?.text ?? "") &&
    !scene.predicateFollows(end + 2) &&
    !scene.at(end + 2)?.number;
  const too = has(after, ROLE.too) && !scene.predicateFollows(end + 1) ? end : -1;
  if ((too >= 0 || isToo) && after && !after.used) {
    const next = copyOnto(scene, state, at);
    if (next) return next;
  }
  // "pilot ain't leaking any more, supply fitting still is"
  if (/^still$/.test(after?.text ?? "") && has(scene.at(end + 1), ROLE.is) && end + 2 >= scene.chunks.length) {
    const next = copyOnto(scene, state, at);
    if (next) return stillIs(scene, next);
  }
  // "two gaskets will be required"
  const told = first.det || first.plural || first.count !== undefined;
  if (told && has(after, ROLE.owed) && /(?:required|needed)$/.test(after?.text ?? "") && isEnd(scene, end + 1)) {
    for (const noun of nouns) emitWork(scene, state, "replaced", "needed", noun, [at, end + 1], "needs_part");
    settleSubject(scene, state, nouns, false);
    return end + 1;
  }
  // "bonnet gasket's new"
  const fresh = has(after, ROLE.is) ? end + 1 : end;
  if (
    /^(?:new|brand new)$/.test(scene.at(fresh)?.text ?? "") &&
    (isEnd(scene, fresh + 1) || scene.predicateFollows(scene.noun(fresh)?.to ?? fresh)) &&
    state.not === undefined
  ) {
    for (const noun of nouns) emitWork(scene, state, "replaced", "done", noun, [at, fresh + 1], "new_part");
    settleSubject(scene, state, nouns, false);
    return fresh + 1;
  }
  // "lower one ain't", "the other one isn't": the last finding, denied of another part
  if (
    has(after, ROLE.not) &&
    (end + 1 >= scene.chunks.length || scene.noun(end + 1)) &&
    denyLast(scene, state, nouns, at, end)
  )
    return end + 1;
  settleSubject(scene, state, nouns, true);
  return end;
}

const isEnd = (scene: Scene, at: number): boolean =>
  !scene.at(at) || has(scene.at(at), ROLE.and) || has(scene.at(at), ROLE.but);

/** What was denied of the first is so of the second; the index behind the phrase. */
function stillIs(scene: Scene, from: number): number {
  for (const draft of scene.drafts)
    if (draft.rule === "copied" && draft.entry.type === "finding") {
      const { absent: _absent, ...rest } = draft.entry;
      draft.entry = rest;
    }
  scene.use(...range(from, scene.chunks.length));
  return scene.chunks.length;
}

/** "it's not the packing, bonnet gasket's leaking": of two side by side the denied one is not spoken of. */
function meantInstead(scene: Scene, at: number, nouns: Noun[]): Noun[] {
  const [denied, meant] = nouns;
  if (nouns.length !== 2 || !denied?.det || !meant || meant.from !== denied.to) return nouns;
  if (!/^(?:not|aint|isnt|wasnt)$/.test(scene.at(at - 1)?.text ?? "")) return nouns;
  return [meant];
}

/** "isn't putting out anything, supply port's plugged": what a verb denied ends where the next part has its own. */
function deniedBefore(scene: Scene, state: ClauseState, first: Noun, end: number): boolean {
  if (state.not === undefined || first.from - state.not < 2) return false;
  if (!DENIES_VERB.test(scene.at(state.not)?.text ?? "")) return false;
  // "it's not the packing, it's the bonnet gasket leaking"
  if ([first.from - 1, first.from].some((at) => /^(?:its|thats)$/.test(scene.at(at)?.text ?? ""))) return true;
  const verb = scene.at(end);
  if (has(verb, ROLE.is)) return !/^(?:look|be|been|being|get|just|still|also|both|all)$/.test(verb?.text ?? "");
  // an apostrophe is not heard: "port's" and "ports" are one word
  return scene.at(first.core)?.text.endsWith("s") === true && scene.predicateFollows(end);
}

const DENIES_VERB =
  /^(?:isnt|aint|wasnt|arent|werent|dont|doesnt|didnt|hasnt|havent|hadnt|wont|cant|couldnt|wouldnt|cannot|never|not)$/;

function wasThere(scene: Scene, state: ClauseState, noun: Noun, end: number): boolean {
  const prep = scene.at(noun.from - 1);
  if (!/^(?:in|in the|on|under|behind|inside|down in|at)$/.test(prep?.text ?? "") || scene.predicateFollows(end))
    return false;
  return (
    !state.said &&
    scene.at(end) === undefined &&
    /^(?:it|them|em)$/.test(scene.at(noun.from - 2)?.text ?? "") &&
    /^(?:found|find|had|got|dropped|left|saw)\b/.test(scene.at(noun.from - 3)?.text ?? "")
  );
}

const EXCEPTED = /^(?:except(?: for)?|excepting|besides|apart from|aside from|other than|all but)$/;

const ridesBefore = (scene: Scene, prep: number): boolean =>
  RIDES.test(scene.at(prep - 1)?.text ?? "") &&
  has(scene.at(prep - 2), ROLE.it) &&
  scene.at(prep - 3)?.text === "where";

const RIDES =
  /^(?:rides?|goes|sits|seats|runs|lands|rubs|contacts|touches|meets|slides|bolts|screws|threads|fits|is|was|were)$/;

/** Other talk before it, and no "but" or "so" since. */
function talkedOf(scene: Scene, at: number): boolean {
  const turn = scene.chunks.findLastIndex((one, index) => index < at && /^(?:but|so|anyway|anyhow)$/.test(one.text));
  return scene.chunks.slice(Math.max(0, turn), at).some((one) => one.talk);
}

/** "fitting on the signal line is leaking": the second part tells where the first is, and nothing is said of it. */
function whereabouts(scene: Scene, state: ClauseState, noun: Noun, end: number): number | undefined {
  const subject = state.subject;
  // "packing of the valve leaks": the small word stands with the name
  const own = /^of(?: the)?$/.test(scene.at(noun.from)?.text ?? "") && noun.core > noun.from;
  if (own && subject?.open && subject.nouns.at(-1)?.to === noun.from && scene.predicateFollows(end)) {
    scene.use(...range(noun.from, end));
    return end;
  }
  const before = scene.at(noun.from - 1);
  if (
    !subject ||
    !(noun.det || before?.text === "in the") ||
    noun.fresh ||
    !has(before, ROLE.prep) ||
    has(before, ROLE.and)
  )
    return undefined;
  // "oil's low in the controller, topped it off"
  // "crack in the yoke by the bonnet", "leak at the fitting on the positioner": of the yoke, of the fitting
  const rule = scene.drafts.at(-1)?.rule;
  const behind =
    state.since < noun.from &&
    range(state.since, noun.from - 1).every((one) => scene.isPlain(one) || has(scene.at(one), ROLE.prep)) &&
    (rule === "finding_is"
      ? /^(?:in|in the|at|under|underneath|below|above|beside|next to|behind|by|near|around|inside)$/.test(
          before?.text ?? "",
        )
      : rule === "finding_has" || rule === "finding_does");
  if (!subject.open && !behind) return undefined;
  if (subject.open && (subject.nouns.at(-1)?.to !== noun.from - 1 || !scene.predicateFollows(end))) return undefined;
  // "cracked at the vent hole, needs replacing": what is owed is owed to what was cracked
  const owed = /^at/.test(before?.text ?? "") && has(scene.at(end), ROLE.owed);
  // "pitting by the seat area, not too bad"
  const howBad = behind && scene.at(end)?.senses.severity !== undefined;
  if (!subject.open && scene.predicateFollows(end) && !owed && !howBad) return undefined;
  if (behind) return tellWhere(scene, noun.from - 1, end);
  scene.use(...range(noun.from - 1, end));
  return end;
}

/** Where a thing was found is kept with it, and what is said behind that: "pitting by the seat area, not too bad". */
function tellWhere(scene: Scene, from: number, end: number): number {
  const last = scene.drafts.at(-1);
  if (last?.entry.type !== "finding") return end;
  const { severity, extent, end: to } = trail(scene, end);
  last.entry = {
    ...last.entry,
    ...(severity && !last.entry.severity ? { severity } : {}),
    ...(extent && !last.entry.extent ? { extent } : {}),
  };
  last.also = [...(last.also ?? []), ...range(from, to)];
  scene.use(...range(from, to));
  return to;
}

/** "a new one was fitted", "new packing has been put in": the fitting is the replacing. */
function pastFitting(scene: Scene, from: number): number {
  let at = from;
  while (has(scene.at(at), ROLE.is) || has(scene.at(at), ROLE.did) || scene.isPlain(at)) {
    if (has(scene.at(at), ROLE.and) || at > from + 4) return from;
    at += 1;
  }
  const chunk = scene.at(at);
  if (at === from && /^(?:in|on|put in|installed|fitted)$/.test(chunk?.text ?? "")) return at + 1;
  if (chunk?.senses.work?.some((one) => one.code === "installed")) return at + 1;
  // "need a new gauge, put it on the list": what is put is something else
  if (chunk?.senses.placing && (has(scene.at(at + 1), ROLE.it) || has(scene.at(at + 1), ROLE.det))) return from;
  if (chunk?.senses.placing) return /^(?:in|on|back in)$/.test(scene.at(at + 1)?.text ?? "") ? at + 2 : at + 1;
  return from;
}

/** "the forklift … its hydraulic oil": a part of something else that the phrase talks about. */
function ofTheirs(scene: Scene, noun: Noun): boolean {
  const owner = [scene.at(noun.from), scene.at(noun.from - 1), scene.at(noun.from - 2)].some(
    (one) => one && /^(?:its|his|her|their|your)$/.test(one.text),
  );
  return owner && scene.chunks.slice(0, noun.from).some((one) => one.talk) && scene.drafts.length === 0;
}

/** "upper one's torn, lower one ain't". */
function denyLast(scene: Scene, state: ClauseState, nouns: Noun[], at: number, end: number): boolean {
  const last = scene.drafts.at(-1)?.entry;
  if (last?.type !== "finding" && !(last?.type === "work" && last.status === "done")) return false;
  for (const noun of nouns) {
    // "upper one's replaced, lower one not"
    if (last.type === "work") {
      emitWork(scene, state, last.work, "declined", noun, [at, end + 1], "work_declined");
      continue;
    }
    scene.drafts.push({
      entry: { ...last, part: noun.part, place: noun.place, absent: true },
      chunks: range(at, end + 1),
      rule: "finding_denied",
      named: true,
    });
  }
  scene.use(...range(at, end + 1));
  settleSubject(scene, state, nouns, false);
  return true;
}
