/** Step 5b: what was done, is owed, or was declined. */

import type { Work } from "../shapes/codes.ts";
import { ROLE } from "../vocabulary/grammar.ts";
import type { WorkForm } from "../vocabulary/senses.ts";
import { type Chunk, has, range } from "./chunks.ts";
import { type ClauseState, clauseIsOurs, emitWork, settleSubject } from "./clause-state.ts";
import { NOT_YET } from "./mishearing.ts";
import { isPutOn, objectAhead, talkBehind } from "./neighbours.ts";
import type { Noun } from "./noun.ts";
import { trail } from "./said-around.ts";
import type { Scene } from "./scene.ts";
import { statusOf } from "./work-status.ts";
import { workTarget } from "./work-target.ts";

/** "was checked for straightness": looked at, whatever it was looked for. */
export function readCheckedFor(scene: Scene, state: ClauseState, at: number): number | undefined {
  if (!state.subject?.open || !/^(?:checked|inspected) for$/.test(scene.at(at)?.text ?? "")) return undefined;
  if (!has(scene.at(at - 1), ROLE.is) || scene.at(at + 1)?.senses.condition || scene.at(at + 1)?.senses.severity)
    return undefined;
  for (const noun of state.subject.nouns)
    emitWork(scene, state, "inspected", "done", noun, [state.subject.nouns[0]?.from ?? at, at + 1], "work_done");
  return at + 1;
}

/** "lapped the seat", "needs new packing": the work that starts at `at`; the index to go on from. */
export function readWork(scene: Scene, state: ClauseState, at: number): number | undefined {
  const chunk = scene.at(at);
  const options = chunk?.senses.work;
  if (!chunk || !options || chunk.used) return undefined;
  // "swapped it end for end": with its small word the verb says more than without
  for (const option of options.length > 1 ? [...options].sort(byFullness) : options) {
    const small = option.with ? smallWordAt(scene, at, option.with) : undefined;
    const topsUp = option.code === "filled" && (state.subject?.nouns[0] ?? scene.named[0])?.part === "oil";
    if (option.with && small === undefined && !topsUp) continue;
    // "spring's broke, it's in pieces down in there": what happened to it, not what was done
    if (option.with && small !== at + 1 && chunk.senses.condition && state.subject?.open) continue;
    // "on this rebuild": with an article it is a thing, not an order
    if (
      option.form === "base" &&
      !option.with &&
      has(scene.at(at - 1), ROLE.det) &&
      /^(?:a|an|the|this|that|every|each|our|last|my|some|any|more)$/.test(scene.at(at - 1)?.text ?? "")
    )
      continue;
    if (isPutOn(scene, at)) continue;
    // "gauge reads zero", "sheared off flush": said of how it stands, and no order
    if (option.form === "base" && STANDS.test(chunk.text) && state.owed === undefined && !objectAhead(scene, at))
      continue;
    // "not bad enough to change"
    if (state.not !== undefined && scene.at(at - 1)?.text === "to" && scene.at(at - 2)?.text === "enough") continue;
    // "when you come back out"
    if (
      /^back /.test(chunk.text) &&
      /^(?:come|comes|came|coming|go|going|head|heading|be|ride)$/.test(scene.at(at - 1)?.text ?? "")
    )
      continue;
    // "five point check good": the thing, and how it went
    if (option.form === "base" && chunk.text === "check" && scene.at(at + 1)?.senses.verdict) continue;
    // "wound up replacing it": how it came to the work behind
    if (chunk.text === "wound up" && scene.at(at + 1)?.senses.work?.some((one) => one.form === "ing")) continue;
    // "a crack running down it": which way it goes
    if (
      option.form === "ing" &&
      /^running\b/.test(chunk.text) &&
      scene.at(at - 1)?.senses.condition?.some((one) => one.form === "has")
    )
      continue;
    // "can't tell till I get it out": not yet
    if (
      option.form === "base" &&
      /^(?:i|we)$/.test(scene.at(at - 1)?.text ?? "") &&
      NOT_YET.test(scene.at(at - 2)?.text ?? "")
    )
      continue;
    // "getting out of there": nothing is got out
    if (
      /^(?:get|gets|got|getting|gotten) (?:out|off|apart)$/.test(chunk.text) &&
      scene.noun(at + 1)?.part === undefined
    )
      continue;
    if (option.with && small === at + 1 && /^get|^got/.test(chunk.text) && !objectAhead(scene, small)) continue;
    // "regulator won't adjust": what it does not do, and nobody's choice
    if (option.form === "base" && refuses(scene, state, at)) continue;
    if (option.form === "noun" && !nounIsWork(scene, state, at)) continue;
    // "cut the bolts off", "cut off the bolts": of verbs that are the same in past and order, what is told is done
    const told = options.some((one) => one.code === option.code && one.form === "past" && !one.with === !option.with);
    if (option.form === "base" && told && (option.with || chunk.text.includes(" "))) continue;
    // "sand on the stem", "trash in the cage": the dirt, and where it is
    if (option.form === "base" && !option.with && liesOn(scene, at)) continue;
    // "old seat's in the scrap bin": where its part is
    if (option.form === "where" && !liesThere(scene, state, at)) continue;
    if (!option.with && chunk.senses.condition && !verbFits(scene, state, at, option.form)) continue;
    if (option.code === "vented" && option.form === "ing" && !objectAhead(scene, at)) continue;
    if (option.code === "reused" && option.form !== "noun" && chunk.text.startsWith("ke") && !objectAhead(scene, at))
      continue;
    if (measuredTorque(scene, at, option.code)) return undefined;
    const end = logWork(scene, state, at, option.code, option.form, small);
    if (end) return end;
  }
  return undefined;
}

function refuses(scene: Scene, state: ClauseState, at: number): boolean {
  const subject = state.subject?.open ? state.subject.nouns.at(-1) : undefined;
  if (state.not !== at - 1 || !subject?.part || subject.to !== at - 1 || objectAhead(scene, at)) return false;
  return /^(?:wont|will not|doesnt|does not|cant|cannot|wouldnt|would not|couldnt)$/.test(scene.at(at - 1)?.text ?? "");
}

function liesOn(scene: Scene, at: number): boolean {
  if (!scene.at(at)?.senses.condition?.some((one) => one.form === "has")) return false;
  return (
    /^(?:on|in|in the|inside|around|all over|under|behind)$/.test(scene.at(at + 1)?.text ?? "") &&
    scene.noun(at + 2)?.part !== undefined
  );
}

/** Verbs that also say how a thing stands, or call somebody by his name. */
const STANDS = /^(?:snug|firm|zero|span|flush|file|stone|oil|blast|sand|clear|mike|mic|chuck)$/;

/** A part, or what stands for it, with nothing but "is", "went" and the like before where it is. */
function liesThere(scene: Scene, state: ClauseState, at: number): boolean {
  let back = at - 1;
  while (has(scene.at(back), ROLE.is) && !has(scene.at(back), ROLE.it)) back -= 1;
  if (has(scene.at(back), ROLE.it)) return true;
  const before = scene.at(at - 1);
  return (
    state.subject?.open === true &&
    (back < at - 1 || before?.senses.part !== undefined || /^(?:go|belongs|already)$/.test(before?.text ?? ""))
  );
}

const byFullness = (one: { with?: string[] }, other: { with?: string[] }) =>
  Number(other.with !== undefined) - Number(one.with !== undefined);

/** "torqued to thirty" is the reading alone. */
function measuredTorque(scene: Scene, at: number, code: Work): boolean {
  const text = scene.at(at)?.text ?? "";
  if (code !== "tightened" || !/torqu/.test(text)) return false;
  for (let next = at + 1; next < Math.min(scene.chunks.length, at + 9); next += 1) {
    const chunk = scene.at(next);
    if (chunk?.used && chunk.number) return true;
    if (chunk?.senses.work && !/torqu/.test(chunk.text)) return false;
  }
  return false;
}

/** The small word that makes a work of a verb ("took … off"), at once or behind its object. */
export function smallWordAt(scene: Scene, at: number, words: readonly string[]): number | undefined {
  for (let next = at + 1; next <= at + 7; next += 1) {
    const chunk = scene.at(next);
    if (!chunk) return undefined;
    const first = chunk.text.split(" ")[0] ?? "";
    // "he got run off": what stands between a verb and its small word is an object
    if (
      next === at + 1 &&
      /^(?:got|get|gotten)$/.test(scene.at(at)?.text ?? "") &&
      !takesObject(scene, next) &&
      !words.includes(chunk.text)
    )
      return undefined;
    // "ran it down tight"
    if (words.includes(`${chunk.text} ${scene.at(next + 1)?.text}`)) return next + 1;
    // "got three bad studs out of eight"
    if (chunk.text === "out of" && scene.at(next + 1)?.number) return undefined;
    if (words.includes(chunk.text) || (words.includes(first) && !chunk.senses.part)) return next;
    // "threw it in the scrap bin"
    if (chunk.senses.work?.some((one) => one.form === "where") && words.includes(chunk.text.split(" ").at(-1) ?? ""))
      return next;
    if (
      next > at + 1 &&
      chunk.text !== "back" &&
      (chunk.senses.work || chunk.senses.placing || has(chunk, ROLE.is) || has(chunk, ROLE.owed)) &&
      !chunk.senses.part &&
      !scene.isPlain(next)
    )
      return undefined;
    if (chunk.hazard || chunk.talk || chunk.number?.fraction || (chunk.number && scene.at(next + 1)?.senses.unit))
      return undefined;
  }
  return undefined;
}

const takesObject = (scene: Scene, at: number): boolean =>
  scene.noun(at) !== undefined ||
  has(scene.at(at), ROLE.it) ||
  has(scene.at(at), ROLE.det) ||
  scene.at(at)?.number !== undefined;

const REPACKS = /^re ?pack/;

const isDirt = (chunk: Chunk | undefined): boolean =>
  chunk?.senses.condition?.some((one) => one.form === "has" && /^(?:fouled|corroded|frozen)$/.test(one.code)) ?? false;

/** "took the rust off": the object of the verb is dirt. */
function dirtAhead(scene: Scene, at: number): boolean {
  let next = at + 1;
  while (has(scene.at(next), ROLE.det) || scene.at(next)?.senses.severity) next += 1;
  const dirt = scene.at(next);
  return (
    !dirt?.senses.part &&
    (dirt?.senses.condition?.some((one) => one.form === "has" && /^(?:fouled|corroded|frozen)$/.test(one.code)) ??
      false)
  );
}

/** "gave it a cleaning", "needs a rebuild": the noun of a work is work behind such words alone. */
function nounIsWork(scene: Scene, state: ClauseState, at: number): boolean {
  if (state.owed !== undefined) return true;
  if (state.not !== undefined && /^(?:didnt get|no need|didnt bother|dont need)/.test(scene.at(state.not)?.text ?? ""))
    return true;
  const before = scene.at(at - 1);
  return (
    /^(?:did|gave|finished|done|started|needs|bother|bothering)$/.test(before?.text ?? "") ||
    has(before, ROLE.owed) ||
    (state.not !== undefined && has(before, ROLE.declined))
  );
}

const BACKS_OFF = /nut|bolting|screw|fitting|connector/;

/** Words that name both a work and a condition ("cut", "clean", "sand"): the work needs an object or its place. */
function verbFits(scene: Scene, state: ClauseState, at: number, form: WorkForm): boolean {
  // "got washed" was cleaned, "is washed on the outlet side" was cut away by the flow
  if (scene.at(at)?.text === "washed" && form === "past")
    return !(
      /^(?:is|are|looks|s|pretty|badly|a little|bad)$/.test(scene.at(at - 1)?.text ?? "") ||
      trail(scene, at + 1).place ||
      trail(scene, at + 1).extent
    );
  // "the jam nut had backed off on me": what it did by itself
  if (
    /^back/.test(scene.at(at)?.text ?? "") &&
    state.subject?.open &&
    BACKS_OFF.test(state.subject.nouns.at(-1)?.part ?? "")
  )
    return scene.noun(at + 1)?.part !== undefined;
  // "stem has build up", "cage has trash in it"
  if (form === "base" && /^(?:has|had|have|got)$/.test(scene.at(at - 1)?.text ?? "")) return false;
  // "supply port clean, signal port blocked": right behind its part the word is a verdict
  if (form === "base" && state.subject?.open && state.subject.nouns.at(-1)?.to === at) return false;
  // "seat's washed out, plug's scored": what stands behind has a predicate of its own
  const next = scene.noun(at + 1);
  if (
    state.subject?.open &&
    state.subject.nouns.at(-1)?.to === at &&
    next &&
    !next.det &&
    (scene.predicateFollows(next.to) || has(scene.at(next.to), ROLE.too))
  )
    return false;
  if (objectAhead(scene, at))
    return (
      !(has(scene.at(at - 1), ROLE.is) && state.subject?.open) &&
      !has(scene.at(at - 1), ROLE.found) &&
      !has(scene.at(at - 1), ROLE.has)
    );
  if (state.owed !== undefined || state.did !== undefined) return form !== "noun" && !has(scene.at(at - 1), ROLE.is);
  return false;
}

const textBefore = (scene: Scene, at: number): string =>
  /^(?:i|we)$/.test(scene.at(at - 1)?.text ?? "")
    ? `${scene.at(at - 2)?.text} ${scene.at(at - 1)?.text}`
    : (scene.at(at - 1)?.text ?? "");

/** Leaves the work on its parts; the index to go on from, or nothing where it is about something else. */
function logWork(
  scene: Scene,
  state: ClauseState,
  at: number,
  code: Work,
  form: WorkForm,
  small: number | undefined,
): number | undefined {
  const repacked = REPACKS.test(scene.at(at)?.text ?? "");
  const aimed = workTarget(scene, state, at, form);
  // "repacked it", "repacked the valve": what was renewed is the packing
  const found: typeof aimed = repacked
    ? { from: at, to: at + 1, ...aimed, nouns: [{ part: "packing" }], named: true }
    : aimed;
  if (!found) return undefined;
  // "took the rust off the body": the body was cleaned
  if (code === "removed" && found.named && found.nouns[0] && dirtAhead(scene, at)) code = "cleaned";
  const status = statusOf(scene, state, at, form, code);
  // "plugged with paint, drilled it out": what came out is what plugged it
  const before = scene.carry.last.at(-1);
  const blocked = before?.type === "finding" && before.condition === "plugged" ? before : undefined;
  const last = scene.drafts.at(-1)?.entry ?? blocked;
  // "scale in the cage, which I removed": the scale
  const made = scene.drafts.at(-1);
  const passive = made?.rule === "finding_has" && has(scene.at(at - 1), ROLE.is) && Math.max(...made.chunks) >= at - 3;
  const tookOut =
    passive || scene.at(small ?? at)?.text.endsWith("out") || /^which(?: i| we)?$/.test(textBefore(scene, at));
  if (
    code === "removed" &&
    !found.named &&
    last?.type === "finding" &&
    /^(?:plugged|fouled|frozen)$/.test(last.condition) &&
    found.nouns[0]?.part === last.part &&
    tookOut
  )
    return logWork(scene, state, at, "cleaned", form, small);
  const fitsNew =
    code === "installed" &&
    (found.nouns.some((one) => (one as Noun).fresh) ||
      // "missing, installed new"
      (!found.nouns.some((one) => (one as Noun).from > at) && has(scene.at(at + 1), ROLE.fresh)));
  const span: [number, number] = [found.from, Math.max(found.to, small === undefined ? 0 : small + 1, at + 1)];
  // "vent cleared of debris"
  if (code === "cleaned" && /\bof$/.test(scene.at(span[1] - 1)?.text ?? ""))
    while (isDirt(scene.at(span[1]))) span[1] += 1;
  // "chucked the old packing in the trash"
  if (scene.at(span[1])?.senses.work?.some((one) => one.form === "where" && one.code === code)) span[1] += 1;
  if (found.named && talkBehind(scene, span[1])) return undefined;
  if (
    !found.nouns.some((one) => one.part) &&
    scene.chunks
      .slice(Math.max(0, state.since), at)
      .some((one) => /^(?:he|hes|they|theyre|theyll|hell|you|who|guys|theyve|hed)$/.test(one.text))
  )
    return undefined;
  if (!found.named && !clauseIsOurs(scene, Math.min(state.since, at), span[1] + 1)) return undefined;
  for (const one of found.nouns) {
    emitWork(scene, state, fitsNew ? "replaced" : code, status, one, span, `work_${status}`);
    const made = scene.drafts.at(-1);
    if (aimed?.also && made) made.also = aimed.also;
  }
  if (small !== undefined) scene.use(small);
  if (found.named) settleSubject(scene, state, found.nouns as Noun[], false);
  else if (state.subject) state.subject.open = false;
  // "swapped the guide for a new one": the new one is what the swap was for
  if (code === "replaced" && /^(?:for|with)$/.test(scene.at(span[1])?.text ?? "") && scene.noun(span[1] + 1)?.fresh) {
    const to = scene.noun(span[1] + 1)?.to ?? span[1];
    scene.use(...range(span[1], to));
    scene.drafts.at(-1)?.chunks.push(...range(span[1], to));
    state.since = to;
    return to;
  }
  // "checked it over real good", "needs cleaned bad": how well, or how much
  if (
    found.named &&
    (status === "needed" ? /^(?:real |pretty |so )?bad(?:ly)?$/ : /^real good$/).test(scene.at(span[1])?.text ?? "")
  ) {
    scene.use(span[1]);
    span[1] += 1;
  }
  const nextJoins = has(scene.at(span[1]), ROLE.and) && scene.at(span[1] + 1)?.senses.work;
  if (!nextJoins) {
    state.hedge = undefined;
    if (status === "declined" && !has(scene.at(span[1]), ROLE.or)) state.not = undefined;
  }
  state.since = span[1];
  return span[1];
}
