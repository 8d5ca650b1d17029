/** Step 5a: which of the conditions a word can mean counts here. */

import type { Condition, Part } from "../shapes/codes.ts";
import { DEEDS, EVERYDAY } from "../vocabulary/conditions.ts";
import { ROLE } from "../vocabulary/grammar.ts";
import { HOLES, RUBBER } from "../vocabulary/parts.ts";
import type { ConditionForm } from "../vocabulary/senses.ts";
import { OF_THE_JOB } from "../vocabulary/talk.ts";
import { type Chunk, has } from "./chunks.ts";
import type { ClauseState } from "./clause-state.ts";
import { isRate } from "./measure.ts";
import type { Scene } from "./scene.ts";
import { verdictFirst } from "./verdict-first.ts";

/** Which of a chunk's conditions counts here, if any. */
export function choose(
  scene: Scene,
  state: ClauseState,
  at: number,
  inGroup: boolean,
): { code: Condition; form: ConditionForm } | undefined {
  const chunk = scene.at(at) as Chunk;
  const options = chunk.senses.condition ?? [];
  const first = options[0];
  if (!first) return undefined;
  const before = scene.at(at - 1);
  const next = scene.at(at + 1);
  const subject = (state.subject?.nouns[0] ?? scene.named[0])?.part;
  const said =
    has(before, ROLE.is) ||
    has(before, ROLE.has) ||
    has(before, ROLE.not) ||
    before?.senses.severity !== undefined ||
    (state.subject?.open === true && state.subject.nouns.at(-1)?.to === at) ||
    has(before, ROLE.it) ||
    // "might be shot", "could be bad"
    (has(before, ROLE.hedge) && /\bbe$/.test(before?.text ?? "")) ||
    // "was so rusty I had to cut it off"
    (before?.text === "so" && has(scene.at(at - 2), ROLE.is)) ||
    // "it's pretty dry"
    (/^(?:pretty|real|really|so|too|quite|awful|getting)$/.test(before?.text ?? "") &&
      has(scene.at(at - 2), ROLE.is)) ||
    // "packing's about shot"
    (/^(?:about|just about|bout|nearly|almost)$/.test(before?.text ?? "") && has(scene.at(at - 2), ROLE.is)) ||
    (/^(?:about|bout|nearly|almost)$/.test(before?.text ?? "") &&
      state.subject?.open === true &&
      state.subject.nouns.at(-1)?.to === at - 1) ||
    saidOver(scene, at) ||
    // "a little worn but still good"
    (chunk.text.startsWith("still ") && state.subject !== undefined) ||
    lookedAt(scene, at) ||
    // "threads", and then "good"
    (scene.carry.awaits === true && scene.chunks.every((one, index) => index === at || one.senses.plain));
  // "too much play in the guide"
  const foundOn =
    has(next, ROLE.prep) && options.some((one) => one.form === "has") && scene.noun(at + 2)?.part !== undefined;
  const startsObject =
    has(next, ROLE.det) ||
    has(next, ROLE.it) ||
    (scene.noun(at + 1)?.part !== undefined && !scene.predicateFollows(scene.noun(at + 1)?.to ?? 0));
  const joined = inGroup && (has(before, ROLE.and) || has(before, ROLE.or) || has(before, ROLE.but));
  const everyday =
    EVERYDAY.has(chunk.text) || EVERYDAY.has(chunk.text.replace(/^(?:pretty|real|very|still|all|in) /, ""));
  // "upstream's a solid eleven pounds", "pegged at thirty": how a number stands
  if (chunk.text === "solid" && next?.number) return undefined;
  if (/^pegged/.test(chunk.text) && next?.text === "at" && scene.at(at + 2)?.number) return undefined;
  // "rusted in the groove": where, and it may still turn
  if (chunk.text === "rusted in" && (next?.senses.place || (has(next, ROLE.det) && scene.at(at + 2)?.senses.place)))
    return { code: "corroded", form: "is" };
  // "burnt on this one": where, and not what it was burnt to
  if (
    /^(?:burnt|burned|cooked) on$/.test(chunk.text) &&
    (has(next, ROLE.it) || next?.senses.place || next?.senses.extent)
  )
    return { code: "burnt", form: "is" };
  // "full of water": nothing that fouls it
  if (
    /^full of$|^filled with$/.test(chunk.text) &&
    /^(?:water|liquid|fluid|condensate|oil|air|gas)$/.test(next?.text ?? "")
  )
    return undefined;
  // "washed in the parts bin", "washed them off": what was done to it
  if (chunk.text === "washed" && /^(?:in|in the|off|down|up|with|clean|it|them|em)$/.test(next?.text ?? ""))
    return undefined;
  if (chunk.text === "painted" && !(isHole(scene.noun(at + 1)?.part) || isHole(subject))) return undefined;
  // "shot, that actuator spring": the verdict first, then its part
  const turned = state.subject === undefined && scene.drafts.length === 0 && verdictFirst(scene, at + 1) !== undefined;
  if (everyday && !joined && !turned && !foundOn && (!said || subject === undefined)) return undefined;
  // "greased it good": how well it was done
  if (/^(?:good|real good|pretty good|nice)$/.test(chunk.text) && has(before, ROLE.it) && workedOn(scene, at - 1))
    return undefined;
  // "the bonnet she wore to easter": worn by somebody; a valve "wore out"
  if (chunk.text === "wore" && /^(?:she|he|i|we|they|you)$/.test(before?.text ?? "")) return undefined;
  // "froze, I greased it and she came loose": free again, and no fault
  if (/^(?:came|come) loose$/.test(chunk.text) && wasFast(scene, state)) return undefined;
  // "stiff, greased it and she turns fine now": what came of the work, and not how it was found
  if (/^(?:moves|turns|slides) (?:okay|ok|fine|good|alright)$/.test(chunk.text) && wasFast(scene, state))
    return undefined;
  // "that's where your leak was": the one told of
  if (
    /^leaks?$/.test(chunk.text) &&
    /^(?:your|the|that|my|our)$/.test(before?.text ?? "") &&
    has(next, ROLE.is) &&
    !has(scene.at(at + 2), ROLE.prep)
  )
    return undefined;
  // "test failed": of no part
  if (/^failed/.test(chunk.text) && before?.senses.testing) return undefined;
  // "left the drain cracked", "cracked the bypass open": opened a little
  if (chunk.text === "cracked" && opensALittle(scene, at)) return undefined;
  // "just flat gone"
  const placed = next?.senses.placing && [ROLE.fresh, ROLE.other, ROLE.det].some((role) => has(scene.at(at + 2), role));
  if (/^(?:flat|clean|plain)$/.test(chunk.text) && next?.senses.condition?.some((one) => one.form === "is") && !placed)
    return undefined;
  // "gone weak": the verb of becoming, not the loss
  if (/^(?:gone|went|came|lost)$/.test(chunk.text) && (next?.senses.condition || next?.senses.severity))
    return undefined;
  if (
    /^(?:ok|okay|alright|all right)$/.test(chunk.text) &&
    !inGroup &&
    !(has(before, ROLE.is) && before?.text !== "just") &&
    !(state.subject?.open && state.subject.nouns.at(-1)?.to === at) &&
    !before?.senses.severity &&
    !lookedAt(scene, at)
  )
    return undefined;
  // "clean the cage" is an order, "cage is clean" a verdict
  if (chunk.senses.work?.some((one) => one.form === "base" && !one.with) && startsObject && !said) return undefined;
  // "tightened it two flats": how far it was turned
  if (chunk.text === "flats" && before?.number) return undefined;
  // "gummed up with paraffin": the dirt, and not the drag it makes
  if (chunk.text === "gummed up" && /^with/.test(next?.text ?? "")) return { code: "fouled", form: "is" };
  // "stuck a new one in": put there
  if (chunk.text === "stuck" && (has(next, ROLE.fresh) || has(next, ROLE.other)) && !has(before, ROLE.is))
    return undefined;
  // "rock stuck under the seat": whatever it is, the seat is fouled with it
  if (
    chunk.text === "stuck" &&
    /^(?:under|in|in the|inside|between|behind)$/.test(next?.text ?? "") &&
    (before?.unknown || OF_THE_JOB.includes(before?.text ?? "")) &&
    !state.subject?.open
  )
    return { code: "fouled", form: "has" };
  if (chunk.text === "stuck" || chunk.text.startsWith("stuck ")) {
    if (subject && /gasket|ring|seals|packing/.test(subject) && (has(next, ROLE.prep) || scene.isPlain(at + 1)))
      return { code: "fouled", form: "is" };
  }
  // "blew a diaphragm": of what it is said decides what it is
  const object =
    DEEDS.has(first.code) && has(next, ROLE.det) && !state.subject?.open ? scene.noun(at + 1)?.part : undefined;
  // "he blew forty dollars": a seal blows, or somebody blows a seal
  if (/^blew/.test(chunk.text) && !object && !state.subject?.open) return undefined;
  const code = sharpen(first.code, chunk.text, object ?? subject);
  if (!code) return undefined;
  // "leaking three cc a minute": the measure says it better
  let number = at + 1;
  while (
    /^(?:was|is|measured|measures|was measured|at|of|about|around)$/.test(scene.at(number)?.text ?? "") ||
    scene.at(number)?.senses.bound
  )
    number += 1;
  const rated =
    (scene.at(number)?.number || /^an?$/.test(scene.at(number)?.text ?? "")) &&
    isRate(scene.at(number + 1)?.senses.unit);
  if (code === "leaking" && rated && scene.at(number)?.used) {
    chunk.used = true;
    return undefined;
  }
  const form =
    has(before, ROLE.det) || has(before, ROLE.found) || state.not !== undefined || before?.senses.severity
      ? (options.find((one) => one.form === "has") ?? first)
      : (options.find((one) => one.form !== "has") ?? first);
  return { code: form.code === first.code ? code : form.code, form: form.form };
}

function opensALittle(scene: Scene, at: number): boolean {
  const part = (from: number, to: number) => scene.chunks.slice(Math.max(0, from), to).some((one) => one.senses.part);
  const behind = scene.chunks.slice(at + 1, at + 5).findIndex((one) => /^open\b/.test(one.text));
  if (behind >= 0 && !part(at + 1, at + 1 + behind)) return true;
  const left = scene.chunks
    .slice(Math.max(0, at - 4), at)
    .findIndex((one) => /^(?:left|leave|leaving|keep|kept)\b/.test(one.text));
  return left >= 0 && !part(Math.max(0, at - 4) + left, at);
}

const wasFast = (scene: Scene, state: ClauseState): boolean => {
  const part = (state.subject?.nouns[0] ?? scene.named[0])?.part;
  return [...scene.drafts.map((one) => one.entry), ...scene.carry.last].some(
    (one) => one.type === "finding" && /^(?:seized|sticking|frozen)$/.test(one.condition) && one.part === part,
  );
};

/** "is definitely rusty", "is probably shot", "is partly dry": how surely and how far stand between. */
function saidOver(scene: Scene, at: number): boolean {
  let back = at - 1;
  while (SURELY.test(scene.at(back)?.text ?? "") || has(scene.at(back), ROLE.hedge) || scene.at(back)?.senses.extent)
    back -= 1;
  return back < at - 1 && (has(scene.at(back), ROLE.is) || has(scene.at(back), ROLE.has));
}

const SURELY = /^(?:definitely|clearly|obviously|plainly|certainly|more|already|now|getting|gotten|a bit more)$/;

/** "checked the solenoid, okay", "solenoid checked good": what was looked at, and how it looked. */
function lookedAt(scene: Scene, at: number): boolean {
  const last = scene.drafts.at(-1);
  return last?.entry.type === "work" && last.entry.work === "inspected" && Math.max(...last.chunks) === at - 1;
}

/** The last thing done was done to what stands at `at`, and nobody looked how it was. */
function workedOn(scene: Scene, at: number): boolean {
  const last = scene.drafts.at(-1);
  return last?.entry.type === "work" && last.entry.work !== "inspected" && last.chunks.includes(at);
}

/** What a word means of this part: a split is cracked in metal and torn in rubber. */
export function sharpen(code: Condition, text: string, subject: Part | undefined): Condition | undefined {
  const rubber = subject !== undefined && RUBBER.has(subject);
  if (subject === "oil") {
    if (code === "fouled" && text === "dirty") return "dirty";
    if (code === "low" || code === "dirty") return code;
  } else if (code === "low" || code === "dirty") return undefined;
  if (rubber && /^split/.test(text)) return "torn";
  // "body sandblasted": cleaned by whoever painted it
  if (code === "eroded" && /^sand ?blasted$/.test(text) && subject && OUTER.test(subject)) return undefined;
  if (text === "tight" && !(subject && MOVES.test(subject))) return undefined;
  if (rubber && text === "dry") return "hardened";
  // "let go", "blew" of a seal; of a spring the first is a hazard
  if (!rubber && /^(?:let go|peeled|delaminated)$/.test(text)) return undefined;
  // "the supply line froze up" is ice, "the stem froze up" is fast
  if (code === "seized" && /^fro(?:ze|zen)/.test(text) && subject && HOLDS_WATER.test(subject)) return "frozen";
  if (code === "frozen" && /^froze/.test(text) && !(subject && HOLDS_WATER.test(subject))) return "seized";
  // a seal sticks to what it lies on, anything else sticks fast
  if (code === "fouled" && text === "stuck to" && !rubber) return "seized";
  if (code === "plugged" && /nest|web/.test(text) && subject && !isHole(subject)) return "fouled";
  if (rubber && code === "sticking" && text === "stiff") return "hardened";
  // "plug's tore up": metal is beaten up, and not torn
  if (!rubber && code === "torn" && /^(?:tore|torn) up$/.test(text)) return "damaged";
  // a nut backs off; a body that somebody is backing off from does not
  if (code === "loose" && /^back/.test(text) && subject && !THREADED.test(subject)) return undefined;
  if (!rubber && code === "torn" && /^blew$/.test(text)) return undefined;
  if (!rubber && code === "torn" && /^(?:blown|blew)/.test(text)) return subject ? "damaged" : undefined;
  if (rubber && code === "weak" && text === "soft") return "swollen";
  // "no life left in it": of what has no push to lose
  if (code === "weak" && /life/.test(text) && subject && !/spring/.test(subject)) return "worn";
  if (code === "plugged" && /^(?:mudded|caked)/.test(text) && subject && !isHole(subject)) return "fouled";
  if (code === "fouled" && isHole(subject) && /^(?:packed|full|filled|loaded)/.test(text)) return "plugged";
  if (code === "frozen" && isHole(subject) && /shut/.test(text)) return "plugged";
  if (code === "plugged" && /^paint/.test(text) && subject && !isHole(subject)) return "fouled";
  return code;
}

const OUTER = /^(?:valve|bonnet|housing|upper_housing|lower_housing|yoke|flange|actuator|handwheel)$/;

/** What turns on a thread. */
const THREADED =
  /nut|bolting|screw|fitting|connector|plug|seat|stem|guide|indicator|breather|linkage|float|packing|handwheel|bonnet|actuator|regulator|gauge|tubing|threads/;

/** What a hand moves, and so may be too tight. */
const MOVES = /^(?:stem|plug|guide|stem_guide|handwheel|linkage|adjusting_screw|float|pilot|stem_connector)$/;
/** What holds air or water and can ice up. */
const HOLDS_WATER =
  /^(?:tubing|fitting|regulator|controller|strainer|breather|supply_port|signal_port|vent_hole|gauge|body|bonnet|housing|lower_housing|upper_housing)$/;

const isHole = (part: Part | undefined): boolean => part !== undefined && HOLES.has(part);
