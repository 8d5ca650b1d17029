/** Step 5a: what was found, and on which part. */

import type { Finding } from "../shapes/entry.ts";
import { DEEDS } from "../vocabulary/conditions.ts";
import { ROLE } from "../vocabulary/grammar.ts";
import { OWNED } from "../vocabulary/parts.ts";
import { has, range } from "./chunks.ts";
import { type ClauseState, clauseIsOurs, settleSubject } from "./clause-state.ts";
import { readGroup, type Said } from "./conditions-said.ts";
import { strangeBehind, talkBehind } from "./neighbours.ts";
import type { Named, Noun } from "./noun.ts";
import { trail } from "./said-around.ts";
import type { Scene } from "./scene.ts";
import { sharpen } from "./which-condition.ts";
import { partOf, type Target } from "./which-part.ts";

/** Parts that hold no fluid and so cannot leak. */
const DRY = /^(?:spring|actuator_spring|indicator_spring|linkage|handwheel|travel_indicator|yoke)$/;

/** "badly scored and pitted on the plug": the conditions that start at `start`; the index to go on from. */
export function readFindings(scene: Scene, state: ClauseState, start: number): number | undefined {
  if (isAgent(scene, start)) return start + 1;
  if (isCause(scene, start)) return start + 1;
  if (isWhere(scene, start)) return start + 1;
  if (isLikeness(scene, start)) return undefined;
  // "dropped a bolt in the mud": where it lies
  const dirt = scene.at(start)?.senses.condition?.every((one) => one.form === "has" && one.code === "fouled");
  if (dirt && state.found === undefined && liesIn(scene, start)) return start + 1;
  const group = readGroup(scene, state, start);
  if (!group) return undefined;
  // "plugged with bugs": no other talk, as long as something is made of it
  const heard = group.stuff.map(({ talk, unknown }) => ({ talk, unknown }));
  for (const one of group.stuff) Object.assign(one, { used: true, talk: undefined, unknown: undefined });
  const end = placeFindings(scene, state, group, start);
  if (end === undefined)
    for (const [nth, one] of group.stuff.entries()) Object.assign(one, { used: undefined, ...heard[nth] });
  return end;
}

/** Leaves what was said on the part it is said of; the index to go on from. */
function placeFindings(
  scene: Scene,
  state: ClauseState,
  group: { said: Said[]; end: number },
  start: number,
): number | undefined {
  const { said, end } = group;
  const targetRead = partOf(scene, state, said, start, end);
  if (!targetRead) return undefined;
  // no fluid stands behind these: "the roof leaks every spring" is about a roof
  if (said.some((one) => one.code === "leaking") && targetRead.nouns.every((noun) => DRY.test(noun.part ?? "")))
    return undefined;
  const { nouns, named, to, span } = ofOwner(scene, targetRead, end);
  if (!named && !clauseIsOurs(scene, Math.min(state.since, start), end + 1)) return undefined;
  if (named ? talkBehind(scene, to) : strangeBehind(scene, to)) return undefined;
  // "crack in the upper housing, right side": a detail may stand behind the part
  const late = to > end ? trail(scene, to) : undefined;
  const lastSaid = said.at(-1);
  if (late && late.end > to && lastSaid) {
    lastSaid.place ??= late.place;
    lastSaid.extent ??= late.extent;
    lastSaid.severity ??= late.severity;
    scene.use(...range(to, late.end));
  }
  const kept = emit(scene, state, said, nouns, named, [Math.min(span, start), Math.max(to, late?.end ?? 0)]);
  if (!kept) return undefined;
  settleSubject(scene, state, nouns as Noun[], false);
  for (const one of said) scene.use(one.at);
  scene.use(...range(start, to).filter((at) => !scene.at(at)?.unknown));
  state.not = undefined;
  // "was loose, tighten it up": the verb of what was found does nothing for what follows
  if (/^(?:was|were|been|has|have|had|got)$/.test(scene.at(state.did ?? -1)?.text ?? "")) state.did = undefined;
  state.since = to;
  return Math.max(to, late?.end ?? 0);
}

/** "two bolts gone out of the bonnet": whose they are is said behind what was found. */
function ofOwner(scene: Scene, target: Target, end: number): Target {
  const [noun, more] = target.nouns;
  const prep = scene.at(end);
  if (
    !noun?.part ||
    more ||
    target.to !== end ||
    !/^(?:from|out|out of|off|off of|in|on)(?: the)?$/.test(prep?.text ?? "")
  )
    return target;
  const owner = scene.noun(end + 1);
  const own = owner?.part && OWNED[noun.part]?.[owner.part];
  if (!own || !(owner.det || prep?.text.endsWith("the")) || scene.predicateFollows(owner.to)) return target;
  return { ...target, nouns: [{ ...noun, part: own }], to: owner.to };
}

/** "salt's ate up the bolts", "sand cut the plug": dirt that does something to a part is not itself what was found. */
function isAgent(scene: Scene, at: number): boolean {
  const dirt = scene.at(at)?.senses.condition;
  if (!dirt?.every((one) => one.form === "has" && (one.code === "fouled" || one.code === "corroded"))) return false;
  let next = at + 1;
  while (has(scene.at(next), ROLE.has) || has(scene.at(next), ROLE.did) || has(scene.at(next), ROLE.is)) next += 1;
  const deed = scene.at(next)?.senses.condition;
  return (deed?.some((one) => one.form === "is" && DEEDS.has(one.code)) ?? false) && scene.noun(next + 1)?.det === true;
}

/** "running like a leaking packing gland": what a thing is likened to is not found. */
const isLikeness = (scene: Scene, at: number): boolean =>
  /^(?:a|an)$/.test(scene.at(at - 1)?.text ?? "") &&
  /^like$/.test(scene.at(at - 2)?.text ?? "") &&
  scene.drafts.length === 0;

/** A verb of falling or lying, a part, and "in the" before the dirt. */
const liesIn = (scene: Scene, at: number): boolean =>
  /^(?:in the|into|into the)$/.test(scene.at(at - 1)?.text ?? "") ||
  (has(scene.at(at - 1), ROLE.det) && /^(?:in|into)$/.test(scene.at(at - 2)?.text ?? ""));

/** "washed where it was leaking": where it is washed, and no second finding. */
function isWhere(scene: Scene, at: number): boolean {
  let back = at - 1;
  while (has(scene.at(back), ROLE.is) && !has(scene.at(back), ROLE.it)) back -= 1;
  const last = scene.drafts.at(-1);
  if (!has(scene.at(back), ROLE.it) || scene.at(back - 1)?.text !== "where" || last?.entry.type !== "finding")
    return false;
  if (Math.max(...last.chunks) < back - 2) return false;
  last.also = [...(last.also ?? []), ...range(back - 1, at + 1)];
  scene.use(...range(back - 1, at + 1));
  return true;
}

/** "split from the frost": what made it so is no second finding. */
function isCause(scene: Scene, at: number): boolean {
  let back = at - 1;
  while (has(scene.at(back), ROLE.det)) back -= 1;
  if (!/^(?:from|due to|because of)(?: the)?$/.test(scene.at(back)?.text ?? "")) return false;
  const last = scene.drafts.at(-1);
  // "that's from the sand", said of what was found before
  if (/^(?:thats|that is|its|thatll be)$/.test(scene.at(back - 1)?.text ?? "") && back <= 2) return true;
  if (last?.entry.type !== "finding" || Math.max(...last.chunks) < back - 2) return false;
  last.also = [...(last.also ?? []), ...range(back, at + 1)];
  scene.use(...range(back, at + 1));
  return true;
}

/** One finding for each condition of each part. */
function emit(
  scene: Scene,
  state: ClauseState,
  said: readonly Said[],
  nouns: readonly Named[],
  named: boolean,
  span: [number, number],
): boolean {
  if (state.elsewhere !== undefined) return false;
  for (const noun of nouns) {
    for (const one of said) {
      const text = scene.at(one.at)?.text ?? "";
      const code = sharpen(one.code, text, noun.part) ?? one.code;
      const entry: Finding = { type: "finding", condition: code };
      if (noun.part) entry.part = noun.part;
      if (one.extent) entry.extent = one.extent;
      if (one.severity && code !== "ok" && code !== "intact" && !(code === "missing" && one.severity === "slight"))
        entry.severity = one.severity;
      const place = one.place ?? noun.place;
      if (place && !noun.part?.startsWith(`${place}_`)) entry.place = place;
      if (noun.count !== undefined) entry.count = noun.count;
      if (one.absent) entry.absent = true;
      if (state.hedge !== undefined) entry.unsure = true;
      const chunks = [...range(Math.max(0, span[0]), span[1])];
      for (const mark of [state.not, state.hedge])
        if (mark !== undefined && !chunks.includes(mark)) chunks.unshift(mark);
      if (state.not !== undefined) scene.use(state.not);
      if (state.hedge !== undefined) scene.use(state.hedge);
      scene.drafts.push({ entry, chunks, rule: one.absent ? "finding_absent" : `finding_${one.form}`, named });
    }
  }
  state.said = true;
  return nouns.length > 0;
}
