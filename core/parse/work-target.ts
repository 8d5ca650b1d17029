/** Step 5b: which parts a work was done on. */

import type { Condition } from "../shapes/codes.ts";
import { ROLE } from "../vocabulary/grammar.ts";
import type { WorkForm } from "../vocabulary/senses.ts";
import { TOOLS } from "../vocabulary/talk.ts";
import { has, range } from "./chunks.ts";
import { type ClauseState, carried } from "./clause-state.ts";
import { isParticle, objectAhead } from "./neighbours.ts";
import type { Named, Noun } from "./noun.ts";
import { pronoun } from "./pronouns.ts";
import type { Scene } from "./scene.ts";

/** The parts, and the chunks [from, to) they and the verb take. */
interface WorkTarget {
  nouns: Named[];
  named: boolean;
  from: number;
  to: number;
  /** chunks of an object that stands further on, behind the last of several verbs */
  also?: number[];
}

/** "lapped the seat", "seat was lapped", "lapped it": the parts behind the verb, before it, or carried on. */
export function workTarget(scene: Scene, state: ClauseState, at: number, form: WorkForm): WorkTarget | undefined {
  const subject = state.subject;
  let next = at + 1;
  while (
    scene.at(next) &&
    (isParticle(scene, next) ||
      (scene.isPlain(next) &&
        !has(scene.at(next), ROLE.det) &&
        !has(scene.at(next), ROLE.it) &&
        !has(scene.at(next), ROLE.prep) &&
        !has(scene.at(next), ROLE.and) &&
        /^(?:just|really|also|all|then|up|pretty|good|nice|fine|right|real|well|of|then)$/.test(
          scene.at(next)?.text ?? "",
        )) ||
      // "replaced only the packing"
      (/^(?:just|only)$/.test(scene.at(next)?.text ?? "") && scene.noun(next + 1)?.part !== undefined))
  )
    next += 1;
  if (scene.at(next)?.text === "to" && form === "noun") next += 1;
  // "pulled up on P V five fifteen": there, and nothing was pulled
  if (scene.at(next)?.tag && next > at + 1) return undefined;
  // "cleaned the crud out of the vent hole", "put grease on the stem"
  const through = throughDirt(scene, next);
  if (through) return { nouns: through.nouns, named: true, from: at, to: through.end };
  // "replaced the torn diaphragm": what was found stands inside the object's name
  // "checked the torque on the bonnet bolts"
  const measured = measuredPart(scene, next);
  if (measured) return measured.nouns ? { nouns: measured.nouns, named: true, from: at, to: measured.end } : undefined;
  const inner = innerCondition(scene, next);
  const objects = inner ? undefined : scene.nouns(next, "object");
  if (inner) {
    for (const noun of inner.nouns.nouns) {
      if (!noun.part) continue;
      scene.drafts.push({
        entry: {
          type: "finding",
          condition: inner.code,
          part: noun.part,
          ...(noun.place ? { place: noun.place } : {}),
        },
        chunks: range(inner.at, inner.nouns.end),
        rule: "finding_inside",
        named: true,
      });
    }
    return { nouns: inner.nouns.nouns, named: true, from: at, to: inner.nouns.end };
  }
  const shared = !objects && !subject?.open ? sharedObject(scene, next, form) : undefined;
  if (shared) {
    const also = shared.flatMap((one) => range(one.from, one.to));
    return { nouns: shared, named: true, from: at, to: at + 1, also };
  }
  const open = subject?.open === true;
  const first = objects?.nouns[0];
  if (objects && first) {
    const loose =
      (subject !== undefined || scene.drafts.length > 0) &&
      !first.det &&
      first.count === undefined &&
      !first.fresh &&
      !first.both &&
      scene.predicateFollows(objects.end);
    const passive =
      open &&
      (form === "past" || form === "noun" || (form === "ing" && state.not !== undefined)) &&
      !first.det &&
      !first.count;
    // "bonnet removed, four studs replaced": what stands behind has a verb of its own
    const own = open && form === "past" && isPassive(scene, objects.end) && subject?.nouns.at(-1)?.to === at;
    if (!loose && !passive && !own) return { nouns: objects.nouns, named: true, from: at, to: objects.end };
  }
  if (open && subject)
    return { nouns: subject.nouns, named: true, from: Math.min(subject.nouns[0]?.from ?? at, at), to: at + 1 };
  const it = scene.at(next);
  if (it?.text === "all" && scene.countAt(next + 1) !== undefined)
    return {
      nouns: [{ ...(carried(scene, state)[0] ?? { part: undefined }), count: scene.countAt(next + 1) }],
      named: false,
      from: at,
      to: next + 2,
    };
  // "replace that old truck": no pronoun
  if (/^(?:that|this|those|these)$/.test(it?.text ?? "")) {
    const old = has(scene.at(next + 1), ROLE.old) || has(scene.at(next + 1), ROLE.fresh) ? next + 2 : next + 1;
    if (scene.at(old)?.talk || scene.at(old)?.unknown) return undefined;
  }
  if (has(it, ROLE.it) && it) return { nouns: pronoun(scene, state, it.text), named: false, from: at, to: next + 1 };
  // "pulled a forty pound catfish out": so many, or so much, of what is no part
  const thing = scene.at(next + 1)?.senses.unit ? next + 2 : next + 1;
  if (it?.number && (scene.at(thing)?.unknown || scene.at(thing)?.talk)) return undefined;
  if (it?.number && scene.countAt(next) !== undefined) {
    const target = carried(scene, state)[0] ?? { part: undefined };
    return { nouns: [{ ...target, count: scene.countAt(next) }], named: false, from: at, to: next + 1 };
  }
  // a verb with an object that the log does not know is about something else
  if (it?.text === "me" || it?.text === "us") return undefined;
  if (it && (it.unknown || it.talk)) return undefined;
  // "replace a good dog": whatever it is, it is not a part
  if (has(it, ROLE.det) && [1, 2].some((ahead) => scene.at(next + ahead)?.talk || scene.at(next + ahead)?.unknown))
    return undefined;
  // "disassembled on the bench": where, and not what
  const where = has(scene.at(next - 1), ROLE.prep) && next > at + 1;
  if (has(it, ROLE.det) && TOOLS.has(scene.at(next + 1)?.text ?? "") && !where) return undefined;
  if (
    (has(it, ROLE.det) || (it && /^(?:my|his|her|your|the)$/.test(it.text))) &&
    (scene.at(next + 1)?.unknown || scene.at(next + 1)?.talk)
  )
    return undefined;
  // "both were replaced", "they've been cleaned"
  const they = form === "past" ? pointedBefore(scene, at) : undefined;
  if (they) return { nouns: pronoun(scene, state, they), named: false, from: at, to: at + 1 };
  if (subject) return { nouns: subject.nouns, named: false, from: at, to: at + 1 };
  return { nouns: carried(scene, state), named: false, from: at, to: at + 1 };
}

/** The part whose torque, travel or level is what the verb acts on; without nouns where no part is said. */
function measuredPart(scene: Scene, from: number): { nouns?: Noun[]; end: number } | undefined {
  const at = has(scene.at(from), ROLE.det) ? from + 1 : from;
  const word = scene.at(at);
  if (!word?.senses.quantity || word.senses.part || word.number || scene.noun(from)?.part) return undefined;
  if (word.senses.work && word.text !== "torque") return undefined;
  if (at === from && word.text !== "torque") return undefined;
  const list = has(scene.at(at + 1), ROLE.prep) ? scene.nouns(at + 2, "object") : undefined;
  return list?.nouns.every((one) => one.part) ? list : { end: at + 1 };
}

function pointedBefore(scene: Scene, at: number): string | undefined {
  // "they were both replaced"
  if (scene.at(at - 1)?.text === "both" && has(scene.at(at - 2), ROLE.is)) return "both";
  let back = at - 1;
  while (back > 0 && (has(scene.at(back), ROLE.is) || has(scene.at(back), ROLE.did)) && !has(scene.at(back), ROLE.it))
    back -= 1;
  const text = scene.at(back)?.text ?? "";
  return back < at - 1 && /^(?:both|they|theyve|those|these|both of (?:them|em))$/.test(text) ? text : undefined;
}

/** "four studs replaced", and nothing for it to act on behind. */
const isPassive = (scene: Scene, at: number): boolean =>
  (scene.at(at)?.senses.work?.some((one) => one.form === "past" && !one.with) ?? false) && !objectAhead(scene, at);

/** "removed, cleaned and reinstalled the cage": verbs one after the other act on what stands behind the last. */
function sharedObject(scene: Scene, from: number, form: WorkForm): Noun[] | undefined {
  let verbs = 0;
  for (let at = from; at < from + 6; at += 1) {
    const chunk = scene.at(at);
    if (chunk?.senses.work?.some((one) => one.form === form && !one.with) && !scene.noun(at)) verbs += 1;
    else if (!has(chunk, ROLE.and))
      return verbs > 0 ? scene.nouns(at, "object")?.nouns.filter((one) => one.part) : undefined;
  }
  return undefined;
}

/** "cleaned the sand off the cage": the dirt is what the cleaning takes away, the part stands behind it. */
function throughDirt(scene: Scene, from: number): { nouns: Noun[]; end: number } | undefined {
  let at = from;
  while (has(scene.at(at), ROLE.det) || scene.at(at)?.senses.severity) at += 1;
  const dirt = scene.at(at);
  // "drained the water out of the air set"
  const wet = /^(?:water|liquids?|fluid|condensate|moisture)$/.test(dirt?.text ?? "");
  if (
    !wet &&
    !dirt?.senses.condition?.some(
      (one) =>
        one.form === "has" &&
        (one.code === "fouled" || one.code === "corroded" || one.code === "frozen" || one.code === "plugged"),
    )
  )
    return undefined;
  let next = at + 1;
  while (has(scene.at(next), ROLE.prep) || isParticle(scene, next)) next += 1;
  if (next === at + 1) return undefined;
  return scene.nouns(next, "object");
}

/** "replaced the torn diaphragm": the condition inside the object's name. */
function innerCondition(
  scene: Scene,
  from: number,
): { code: Condition; at: number; nouns: { nouns: Noun[]; end: number } } | undefined {
  let at = from;
  while (has(scene.at(at), ROLE.det) && !scene.at(at)?.senses.condition) at += 1;
  const chunk = scene.at(at);
  const condition = chunk?.senses.condition?.find((one) => one.form === "is" && one.code !== "ok");
  if (!chunk || !condition || chunk.senses.part || at === from) return undefined;
  const nouns = scene.nouns(at + 1, "object");
  if (!nouns || scene.predicateFollows(nouns.end)) return undefined;
  return { code: condition.code, at, nouns };
}
