/** Step 5b: what was put in or back on. */

import type { Status, Work } from "../shapes/codes.ts";
import { ROLE } from "../vocabulary/grammar.ts";
import type { VerbForm } from "../vocabulary/senses.ts";
import { TOOLS } from "../vocabulary/talk.ts";
import { has } from "./chunks.ts";
import { type ClauseState, carried, clauseIsOurs, emitWork, settleSubject } from "./clause-state.ts";
import { isPutOn, onTheirs } from "./neighbours.ts";
import type { Named, Noun } from "./noun.ts";
import { pronoun } from "./pronouns.ts";
import type { Scene } from "./scene.ts";
import { smallWordAt } from "./works.ts";

/** "put a new one in", "put the bonnet back on", "stuck the old spring back in", "put grease on the stem". */
export function readPlacing(scene: Scene, state: ClauseState, at: number): number | undefined {
  const chunk = scene.at(at);
  const form = chunk?.senses.placing;
  if (!chunk || !form || chunk.used) return undefined;
  // "stuck down in the body": nothing placed, so it is what sticks
  if (
    chunk.text === "stuck" &&
    (has(scene.at(at + 1), ROLE.prep) || scene.isPlain(at + 1)) &&
    !has(scene.at(at + 1), ROLE.it) &&
    !has(scene.at(at + 1), ROLE.det)
  )
    return undefined;
  // "threw it away", "slid the stem out": with its small word the verb is a work of its own
  if (
    chunk.senses.work?.some(
      (one) => one.with && smallWordAt(scene, at, one.with) !== undefined && !freshAhead(scene, at),
    )
  )
    return undefined;
  // "set it back to thirty pounds": to what it is set, and not where
  if (/^set/.test(chunk.text) && setsTo(scene, at)) return undefined;
  let noun: { nouns: Noun[]; end: number } | undefined;
  let it: number | undefined;
  let substance: { code: Work; at: number; turn?: true } | undefined = substanceBehind(scene, at);
  const start = substance?.at ?? at;
  const isGive = /^g[ai]v/.test(chunk.text);
  let back = false;
  let inOn = "";
  let end = at + 1;
  let old = false;
  for (let next = at + 1; next < Math.min(scene.chunks.length, at + 9); next += 1) {
    const one = scene.at(next);
    if (!one || one.hazard || one.talk || one.command || (one.used && !one.senses.part)) break;
    // "a lick of grease": so much of it, whatever the measure is called
    if (one.unknown && scene.at(next + 1)?.text === "of") continue;
    if (one.unknown) break;
    const turned = isGive && !substance ? turnEnd(scene, next) : undefined;
    if (turned !== undefined) {
      substance = { code: "adjusted", at: turned - 1, turn: true };
      end = turned;
      next = turned - 1;
      continue;
    }
    const nounWork = one.senses.work?.find(
      (sense) =>
        (sense.form === "noun" || (isGive && sense.form === "base" && !sense.with && afterArticle(scene, next))) &&
        PUT_ON.has(sense.code),
    );
    if (nounWork && (!noun || isGive) && !one.senses.part && !substance) {
      substance = { code: nounWork.code, at: next };
      end = next + 1;
      continue;
    }
    if (!noun || (substance && !noun)) {
      const found = scene.nouns(next, "object");
      // "squirted some oil on the stem"
      const oiled = found?.nouns.length === 1 && found.nouns[0]?.part === "oil" && !substance;
      if (found && oiled && /^on\b/.test(scene.at(found.end)?.text ?? "") && scene.noun(found.end + 1)?.part) {
        substance = { code: "greased", at: found.end - 1 };
        end = found.end;
        next = found.end - 1;
        continue;
      }
      if (found && (!it || found.nouns[0]?.from === next)) {
        if (noun === undefined) {
          noun = found;
          old = found.nouns.some((each) => each.old);
          next = found.end - 1;
          end = found.end;
          continue;
        }
      }
    }
    // "put it on", "put one on"
    if ((has(one, ROLE.it) || (one.number?.bareOne && next === at + 1)) && it === undefined && !noun) {
      it = next;
      end = next + 1;
      continue;
    }
    const small =
      /^(back|in|on|back in|back on|into|onto|in there|together|back together|on it|in it|it|her|there|inside|over|up|down|away|off|out)\b/.exec(
        one.text,
      );
    if (small) {
      if (one.text.startsWith("back")) back = true;
      if (/\b(?:in|into|inside)\b/.test(one.text)) inOn = "in";
      if (/\b(?:on|onto)\b/.test(one.text)) inOn = "on";
      if (!/^(?:it|her|there)$/.test(one.text) || inOn || back) end = next + 1;
      if (substance && (inOn || has(one, ROLE.prep))) continue;
      continue;
    }
    if (
      has(one, ROLE.det) ||
      one.senses.severity ||
      has(one, ROLE.prep) ||
      (scene.isPlain(next) && !has(one, ROLE.and)) ||
      (has(one, ROLE.fresh) && !noun)
    )
      continue;
    // "a shot of grease", "a good scrub"
    if (one.text === "shot" || (isGive && one.senses.condition?.some((each) => each.code === "ok"))) continue;
    break;
  }
  const done: Status = statusFrom(scene, state, form);
  const isGet = /^(?:get|gets|got|gotten|getting|give|gives|gave|giving|go|goes|going|went|gone)$/.test(chunk.text);
  if (substance) {
    const target =
      noun?.nouns ?? (it !== undefined ? pronoun(scene, state, scene.at(it)?.text ?? "it") : carried(scene, state));
    if (!noun && !clauseIsOurs(scene, at, end)) return undefined;
    if (substance.turn && target.some((one) => !one.part)) return undefined;
    // a turn given a nut tightens it, a turn given a screw that sets something sets it
    const tightens = substance.turn && target.every((one) => TURNED_TIGHT.test(one.part ?? ""));
    const code = tightens ? "tightened" : substance.code;
    return logPlacing(scene, state, target, noun !== undefined, code, done, [start, Math.max(end, substance.at + 1)]);
  }
  if (isGet && !(noun?.nouns.some((one) => one.fresh) && (inOn || done === "needed"))) return undefined;
  if (onList(scene, end)) return undefined;
  // "spring's weak, ought to put another one in": a new one, and no counterpart
  if (noun?.nouns.every((one) => one.other && /^another\b/.test(scene.at(one.core)?.text ?? "")) && (inOn || back)) {
    const target = (state.subject?.nouns ?? carried(scene, state)).map(uncounted);
    if (!clauseIsOurs(scene, state.since, end) || target.some((one) => !one.part)) return undefined;
    return logPlacing(scene, state, target, false, "replaced", done, [at, end]);
  }
  if (noun) {
    const fresh = noun.nouns.some((one) => one.fresh);
    if (fresh) return logPlacing(scene, state, noun.nouns, true, "replaced", done, [at, end]);
    // "threw that old cage in the ditch": away, and not in again
    const away = /^(?:thr[eo]w|thrown)/.test(chunk.text) && !back && inOn === "in";
    if (away && [end, end + 1].some((one) => scene.at(one)?.unknown || scene.at(one)?.talk))
      return logPlacing(scene, state, noun.nouns, true, "discarded", done, [at, end]);
    if (old || (back && inOn === "in")) return logPlacing(scene, state, noun.nouns, true, "reused", done, [at, end]);
    if (back && inOn === "on") return logPlacing(scene, state, noun.nouns, true, "installed", done, [at, end]);
    if (back)
      return logPlacing(
        scene,
        state,
        noun.nouns,
        true,
        noun.nouns.every((one) => one.part === "valve") ? "installed" : "reused",
        done,
        [at, end],
      );
    // "put the stem in the vise": the bench, not the valve
    if (inOn && [end, end + 1].some((at) => TOOLS.has(scene.at(at)?.text ?? ""))) return undefined;
    // "dropped a bolt in the mud"
    if (
      inOn === "in" &&
      [end, end + 1].some((one) =>
        scene.at(one)?.senses.condition?.some(({ form, code }) => form === "has" && code === "fouled"),
      )
    )
      return undefined;
    if (inOn && noun.nouns.every((one) => one.part))
      return logPlacing(scene, state, noun.nouns, true, "installed", done, [at, end]);
    return undefined;
  }
  // "one's missing, I put new"
  const alone = it === undefined && !noun ? newAlone(scene, at) : undefined;
  if (alone !== undefined && clauseIsOurs(scene, state.since, at)) {
    const target = state.subject?.nouns ?? carried(scene, state);
    if (target.every((one) => one.part))
      return logPlacing(scene, state, target.map(uncounted), false, "replaced", done, [at, alone]);
  }
  if (
    it === undefined &&
    back &&
    state.subject &&
    /^(?:put|stuck|slid|dropped|popped|set|screwed|slapped)$/.test(chunk.text)
  )
    return logPlacing(scene, state, state.subject.nouns, false, inOn === "on" ? "installed" : "reused", done, [
      at,
      end,
    ]);
  // "put it on my tab"
  if (it !== undefined && scene.chunks.slice(it, end + 1).some((_, nth) => onTheirs(scene, (it as number) + nth)))
    return undefined;
  // "put him in the hospital"
  const whereTo = scene.at(has(scene.at(end), ROLE.det) ? end + 1 : end);
  if (it !== undefined && inOn && !back && (whereTo?.unknown || whereTo?.talk)) return undefined;
  if (it !== undefined && (back || inOn)) {
    if (!clauseIsOurs(scene, state.since, end)) return undefined;
    const target = pronoun(scene, state, scene.at(it)?.text ?? "it");
    // "breather was missing, put one in": a new one
    if (scene.at(it)?.number?.bareOne && !back && inOn === "in" && wasMissing(scene, target)) {
      const [one] = target;
      return logPlacing(scene, state, [{ part: one?.part, place: one?.place, count: 1 }], false, "replaced", done, [
        at,
        end,
      ]);
    }
    return logPlacing(scene, state, target, false, back && inOn !== "on" ? "reused" : "installed", done, [at, end]);
  }
  return undefined;
}

/** Works that are named by what is put on or given: "put grease on it", "gave it a wipe". */
const PUT_ON: ReadonlySet<Work> = new Set<Work>([
  "greased",
  "threadlocked",
  "cleaned",
  "lapped",
  "inspected",
  "adjusted",
  "dressed",
  "calibrated",
]);

/** "grease has been put on the stem": what is put on stands before the verb. */
function substanceBehind(scene: Scene, at: number): { code: Work; at: number } | undefined {
  const before = scene.at(at - 2);
  if (!before || before.used || before.senses.part || !isPutOn(scene, at - 2)) return undefined;
  const code = before.senses.work?.find((one) => PUT_ON.has(one.code))?.code;
  return code && { code, at: at - 2 };
}

/** "seat's worn, need new": a new one of what was just spoken of; the index to go on from. */
export function readNewOwed(scene: Scene, state: ClauseState, at: number): number | undefined {
  const fresh = scene.at(at);
  if (!has(fresh, ROLE.fresh) || !/^(?:new|a new|all new|new set|fresh set)$/.test(fresh?.text ?? "")) return undefined;
  // "cut it out and ran new": of what is run, and not put in
  const ran = /^(?:ran|run|bent up|made up)$/.test(scene.at(at - 1)?.text ?? "");
  if (!ran && (state.owed !== at - 1 || !/need|want|could use/.test(scene.at(at - 1)?.text ?? ""))) return undefined;
  const next = scene.at(at + 1);
  if (next && !has(next, ROLE.and) && !has(next, ROLE.but) && !has(next, ROLE.it)) return undefined;
  const target = (state.subject?.nouns ?? carried(scene, state)).map(uncounted);
  if (target.some((one) => !one.part) || !clauseIsOurs(scene, state.since, at)) return undefined;
  return logPlacing(scene, state, target, state.subject?.open === true, "replaced", ran ? "done" : "needed", [
    state.subject?.open ? (state.subject.nouns[0]?.from ?? at - 1) : at - 1,
    at + 1,
  ]);
}

const setsTo = (scene: Scene, at: number): boolean =>
  scene.chunks.slice(at + 1, at + 7).some((one, nth) => /^(?:to|at)$/.test(one.text) && scene.at(at + nth + 2)?.number);

const TURNED_TIGHT = /nut|bolting|packing|bonnet|fitting|stem_connector/;

/** "a quarter turn", "two flats", "another turn": the index behind it. */
function turnEnd(scene: Scene, at: number): number | undefined {
  let next = at;
  while (has(scene.at(next), ROLE.det) || scene.at(next)?.number || has(scene.at(next), ROLE.fresh)) next += 1;
  return next > at && /^(?:turns?|flats?)$/.test(scene.at(next)?.text ?? "") ? next + 1 : undefined;
}

/** "a good scrub": behind an article a verb is the name of what was done. */
function afterArticle(scene: Scene, at: number): boolean {
  let back = at - 1;
  while (scene.isPlain(back) || scene.at(back)?.senses.severity || scene.at(back)?.senses.condition) {
    if (has(scene.at(back), ROLE.det)) break;
    back -= 1;
  }
  return has(scene.at(back), ROLE.det);
}

/** "put new", "put in a spare", "put a new one on": one past what stands for the part itself; nothing where a part is named. */
function newAlone(scene: Scene, at: number): number | undefined {
  let next = at + 1;
  while (/^(?:in|on|a|an|back)$/.test(scene.at(next)?.text ?? "") && !has(scene.at(next), ROLE.fresh)) next += 1;
  const fresh = scene.at(next);
  if (
    !has(fresh, ROLE.fresh) ||
    !/(?:new|fresh|spare|replacement|different|another|new set|fresh set)$/.test(fresh?.text ?? "")
  )
    return undefined;
  let end = next + 1;
  // "put in a fresh set"
  if (/^(?:set|pair|one)$/.test(scene.at(end)?.text ?? "") && !scene.noun(end)?.part) end += 1;
  if (/^(?:in|on|in there|on there)$/.test(scene.at(end)?.text ?? "")) end += 1;
  const after = scene.at(end);
  return !after || has(after, ROLE.and) || has(after, ROLE.but) || has(after, ROLE.it) ? end : undefined;
}

const uncounted = ({ part, place }: Named): Named => ({ part, place });

/** "threw a new one in". */
function freshAhead(scene: Scene, at: number): boolean {
  for (let next = at + 1; next < at + 4; next += 1) if (has(scene.at(next), ROLE.fresh)) return true;
  return false;
}

/** "put it on the list": wanted, not placed. */
function onList(scene: Scene, end: number): boolean {
  for (let at = end; at < end + 2; at += 1) if (has(scene.at(at), ROLE.onList)) return true;
  return false;
}

/** "put it back" done, "gotta put it back" owed, "didn't put it back" declined. */
function statusFrom(scene: Scene, state: ClauseState, form: VerbForm): Status {
  if (state.not !== undefined && (has(scene.at(state.not), ROLE.declined) || has(scene.at(state.not), ROLE.not)))
    return "declined";
  if (state.owed !== undefined && (state.did === undefined || state.did < state.owed)) return "needed";
  return form === "past" || state.did !== undefined ? "done" : "needed";
}

/** Leaves the work on its parts; the index to go on from. */
const wasMissing = (scene: Scene, target: readonly Named[]): boolean =>
  [...scene.carry.last, ...scene.drafts.map((draft) => draft.entry)].some(
    (one) => one.type === "finding" && one.condition === "missing" && !one.absent && one.part === target[0]?.part,
  );

function logPlacing(
  scene: Scene,
  state: ClauseState,
  nouns: readonly Named[],
  named: boolean,
  code: Work,
  status: Status,
  span: [number, number],
): number {
  for (const one of nouns) emitWork(scene, state, code, status, one, span, `placed_${code}`);
  if (named) settleSubject(scene, state, nouns as Noun[], false);
  else if (state.subject) state.subject.open = false;
  state.not = undefined;
  state.hedge = undefined;
  state.since = span[1];
  return span[1];
}
