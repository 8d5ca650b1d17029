/** Step 5a: which part a condition is said of. */

import { DEEDS } from "../vocabulary/conditions.ts";
import { ROLE } from "../vocabulary/grammar.ts";
import { RUBBER } from "../vocabulary/parts.ts";
import { NAMELESS, OF_THE_JOB } from "../vocabulary/talk.ts";
import { has, range } from "./chunks.ts";
import { type ClauseState, carried } from "./clause-state.ts";
import type { Said } from "./conditions-said.ts";
import { listedBefore, standsBefore } from "./neighbours.ts";
import type { Named, Noun } from "./noun.ts";
import { trail } from "./said-around.ts";
import type { Scene } from "./scene.ts";
import { saysAgain, verdictFirst } from "./verdict-first.ts";

export interface Target {
  nouns: Named[];
  named: boolean;
  /** one past the last chunk taken */
  to: number;
  /** first chunk of the part */
  span: number;
}

/** "cage is worn", "scoring on the plug", "torn diaphragm": the part before, behind, or carried on. */
export function partOf(
  scene: Scene,
  state: ClauseState,
  said: readonly Said[],
  start: number,
  end: number,
): Target | undefined {
  const subject = state.subject;
  const last = said.at(-1) as Said;
  const here = scene.at(end);
  const subjectNouns = (): Target => ({
    nouns: subject?.nouns ?? [],
    named: true,
    to: end,
    span: subject?.nouns[0]?.from ?? start,
  });
  // "stuck down in the body": where a seal sticks is a place
  if (last.code === "fouled" && STUCK_ON.test(scene.at(last.at)?.text ?? "")) {
    const held = subject ? subjectNouns() : { nouns: carried(scene, state), named: false, to: end, span: start };
    let at = end;
    while (scene.isPlain(at) || has(scene.at(at), ROLE.prep) || has(scene.at(at), ROLE.det)) at += 1;
    const where = scene.at(at)?.senses;
    if (where?.place ?? (where?.part === "body" ? "body" : undefined)) {
      last.place = where?.place ?? "body";
      return { ...held, to: at + 1 };
    }
    if (where?.part) return { ...held, to: at + 1 };
  }
  // "handwheel's missing a bolt": what is missing stands behind
  const lacking =
    last.code === "missing" && /^missing$/.test(scene.at(last.at)?.text ?? "") ? scene.nouns(end, "object") : undefined;
  const lacks = lacking?.nouns[0];
  if (
    lacking &&
    lacks?.part &&
    (lacks.det || lacks.count !== undefined) &&
    !scene.predicateFollows(lacking.end) &&
    !lacks.other
  )
    return { nouns: lacking.nouns, named: true, to: lacking.end, span: subject?.nouns[0]?.from ?? start };
  // "bolts were rusted, snapped two": so many of what was named
  const some = DEEDS.has(last.code) && last.form === "is" && !subject?.open ? scene.countAt(end) : undefined;
  const [many] = carried(scene, state);
  if (
    some !== undefined &&
    many?.part &&
    COUNTED.test(many.part) &&
    !scene.at(end + 1)?.senses.part &&
    !scene.at(end + 1)?.senses.unit
  )
    return { nouns: [{ part: many.part, place: many.place, count: some }], named: true, to: end + 1, span: start };
  // "two bolts bent, three broken"
  const others =
    subject && !subject.open && many?.part && COUNTED.test(many.part) ? scene.countAt(start - 1) : undefined;
  if (others !== undefined && scene.drafts.length > 0) {
    scene.use(start - 1);
    return { nouns: [{ part: many?.part, place: many?.place, count: others }], named: true, to: end, span: start - 1 };
  }
  const prepAt = prepositionAt(scene, end);
  // "pitting up top on the stem": the place stands before its part; "air coming out the breather" needs no more
  const direct =
    scene.at(end)?.senses.place || (/(?:out|out of|from)$/.test(scene.at(last.at)?.text ?? "") && last.form === "has")
      ? scene.nouns(end, "object")
      : undefined;
  const objects = prepAt >= 0 ? andOn(scene, scene.nouns(prepAt + 1, "object")) : direct;
  const open = subject?.open === true && subject.nouns.every((noun) => noun.part) && state.found === undefined;
  // "signal line had a leak at the fitting": a leak is where it comes out
  // ("packing's leaking at the stem" is the packing's)
  const leaksAt =
    last.code === "leaking" &&
    !(open && last.form === "does" && subject?.nouns.every((noun) => noun.part && RUBBER.has(noun.part))) &&
    /^(?:air |gas )?(?:leak|drip|seep|weep)/.test(scene.at(last.at)?.text ?? "") &&
    // "case is leaking around the bolts": bolts hold, what they hold leaks
    !(open && objects?.nouns.every((one) => /bolting|^nut$/.test(one.part ?? ""))) &&
    /^(?:at|from|around|by)/.test(scene.at(prepAt)?.text ?? "");
  // "actuator leaks air at the diaphragm"
  if (
    last.code === "leaking" &&
    /^(?:air|gas|fluid|oil|a little|some)$/.test(scene.at(end)?.text ?? "") &&
    /^(?:at|from|around|by|through|past)/.test(scene.at(end + 1)?.text ?? "")
  ) {
    const out = scene.nouns(end + 2, "object");
    if (out?.nouns.every((one) => one.part && !/bolting|^nut$/.test(one.part)))
      return { nouns: out.nouns, named: true, to: out.end, span: out.nouns[0]?.from ?? end };
  }
  if (leaksAt && objects?.nouns.every((one) => one.part))
    return { nouns: objects.nouns, named: true, to: objects.end, span: objects.nouns[0]?.from ?? end };
  // "held in with a snap ring, snap ring's rusted"; but "solenoid coil's burnt" is the solenoid's
  if (open && isOfOther(scene, start, NAMELESS) && (subject.nouns.at(-1)?.to ?? start) < start - 1) return undefined;
  // "cage has scale on the inside" stays the cage's
  if (open) return subjectNouns();
  if (objects && (last.form !== "is" || here)) {
    const followed = scene.predicateFollows(objects.end) && !saysAgain(scene, objects.end);
    // "scale inside the cage", "paint outside of the body": the small word is the place
    const side = scene.at(prepAt)?.senses.place;
    if (side === "inside" || side === "outside") last.place ??= side;
    if (!followed || last.form === "has")
      return { nouns: objects.nouns, named: true, to: objects.end, span: objects.nouns[0]?.from ?? end };
  }
  // "torn diaphragm": a condition that stands before its part
  if (last.form === "is") {
    const behind = scene.nouns(end, "object");
    const first = behind?.nouns[0];
    // "somebody stripped the inlet threads": said as a deed
    if (
      behind &&
      first?.part &&
      first.det &&
      end === last.at + 1 &&
      DEEDS.has(last.code) &&
      !has(scene.at(start - 1), ROLE.is)
    )
      return { nouns: behind.nouns, named: true, to: behind.end, span: end };
    if (
      behind &&
      first?.part &&
      !first.det &&
      end === last.at + 1 &&
      (!scene.predicateFollows(behind.end) || listedBefore(scene, behind.end)) &&
      (has(scene.at(start - 1), ROLE.det) ||
        has(scene.at(start - 1), ROLE.found) ||
        !subject ||
        has(scene.at(start - 1), ROLE.fresh) ||
        state.found !== undefined ||
        (!subject.open && standsBefore(scene, last.at)))
    )
      return { ...counted(scene, start, behind.nouns), named: true, to: behind.end };
  }
  // "broke the egg": done to something that is none of the valve's
  const acted = has(here, ROLE.det) || here?.number !== undefined;
  if (last.form !== "has" && !open && acted && (scene.at(end + 1)?.unknown || scene.at(end + 1)?.talk))
    return undefined;
  // "a loose use of the word", "I'm wore out": of a thing that is no part, or of oneself
  if (last.form === "is" && !open && (standsBeforeOther(scene, start, end) || isOneself(scene, start)))
    return undefined;
  const behind = subject === undefined || state.said ? verdictFirst(scene, end) : undefined;
  if (behind) return { nouns: behind.nouns, named: true, to: behind.end, span: end };
  // "pilot's plugged", then "flapper's bent": of a thing that the log has no name for
  if (!subject?.open && isOfOther(scene, start)) return undefined;
  if (subject) return { ...subjectNouns(), named: subject.open };
  const shared = last.form === "has" ? sharedBehind(scene, end) : undefined;
  if (shared) return { nouns: shared.nouns, named: true, to: end, span: start };
  const carriedParts = carried(scene, state);
  if (carriedParts.every((one) => !one.part) && last.form === "has" && state.found === undefined && !last.absent)
    return undefined;
  return { nouns: carriedParts, named: false, to: end, span: start };
}

const standsBeforeOther = (scene: Scene, start: number, end: number): boolean =>
  /^(?:a|an)$/.test(scene.at(start - 1)?.text ?? "") &&
  scene.at(end) !== undefined &&
  !has(scene.at(end), ROLE.one) &&
  !has(scene.at(end), ROLE.and) &&
  scene.noun(end)?.part === undefined &&
  !scene.drafts.some((draft) => draft.named);

function isOneself(scene: Scene, start: number): boolean {
  let back = start - 1;
  while (scene.at(back)?.senses.severity || /^(?:all|just|about|so|plain|still)$/.test(scene.at(back)?.text ?? ""))
    back -= 1;
  return /^(?:im|i am|youre)$/.test(scene.at(back)?.text ?? "");
}

function isOfOther(scene: Scene, start: number, names: readonly string[] = [...NAMELESS, ...OF_THE_JOB]): boolean {
  let back = start - 1;
  while ((has(scene.at(back), ROLE.is) && !has(scene.at(back), ROLE.it)) || ALMOST.test(scene.at(back)?.text ?? ""))
    back -= 1;
  const thing = scene.at(back)?.text ?? "";
  // an apostrophe is not heard: "nameplate's corroded"
  return [thing, thing.replace(/s$/, "")].some((one) => names.includes(one) || one === "tag");
}

const ALMOST = /^(?:about|bout|just about|almost|nearly|pretty|so|all|real|kinda)$/;

const STUCK_ON = /^(?:stuck|(?:baked|glued|welded|bonded|cemented|burned|burnt|cooked) (?:on|to))/;

const COUNTED = /bolting|ring|nut|gasket|threads|fitting|diaphragm|spring/;

/** "scale on the plug and on the seat". */
function andOn(scene: Scene, list: { nouns: Noun[]; end: number } | undefined): typeof list {
  if (!list || !has(scene.at(list.end), ROLE.and) || !has(scene.at(list.end + 1), ROLE.prep)) return list;
  if (!/^(?:in|on|around|inside)\b/.test(scene.at(list.end + 1)?.text ?? "")) return list;
  const more = scene.nouns(list.end + 2, "object");
  if (!more?.nouns.every((one) => one.part) || scene.predicateFollows(more.end)) return list;
  return { nouns: [...list.nouns, ...more.nouns], end: more.end };
}

/** "two badly rusted bolts": the number stands before what was found. */
function counted(scene: Scene, start: number, nouns: Noun[]): { nouns: Noun[]; span: number } {
  const [only, more] = nouns;
  let at = start - 1;
  while (scene.at(at)?.senses.severity) at -= 1;
  if (/^of(?: the| them)?$/.test(scene.at(at)?.text ?? "")) at -= 1;
  // "three of the eight stripped studs": of all of them the first counts
  if (/^of\b/.test(scene.at(at - 1)?.text ?? "") && scene.at(at - 2)?.number) at -= 2;
  const number = at < 0 ? undefined : scene.at(at);
  if (
    !(only?.plural || /bolting/.test(only?.part ?? "")) ||
    more ||
    !only ||
    only.count !== undefined ||
    !number?.number ||
    number.used
  )
    return { nouns, span: start };
  const { value, upper } = number.number;
  if (upper !== undefined || !Number.isInteger(value) || value < 1 || value > 200) return { nouns, span: start };
  scene.use(...range(at, start));
  return { nouns: [{ ...only, count: value }], span: at };
}

/** "no tears, no holes in either diaphragm": things found one after the other share the part behind the last. */
function sharedBehind(scene: Scene, from: number): { nouns: Named[] } | undefined {
  let more = false;
  for (let at = from; at < from + 8; at += 1) {
    const chunk = scene.at(at);
    if (!chunk || chunk.used) return undefined;
    if (chunk.senses.condition?.some((one) => one.form === "has") && !scene.noun(at)?.part) more = true;
    else if (more && has(chunk, ROLE.prep)) return scene.nouns(at + 1, "object");
    else if (
      !(
        has(chunk, ROLE.not) ||
        has(chunk, ROLE.or) ||
        has(chunk, ROLE.and) ||
        has(chunk, ROLE.det) ||
        chunk.senses.severity
      )
    )
      return undefined;
  }
  return undefined;
}

/** How a thing found came to be where it is, or who saw it there. */
const LIES =
  /^(?:running|going|starting|coming|extending|packed|caked|baked|lodged|embedded|built up|wedged|jammed|stuck|settled|collected|wrapped|accumulated|gathered|formed|seen|found|noticed|noted|observed|visible|evident|present)$/;

/** The preposition that leads to the part: "pitting right there on the stem". */
function prepositionAt(scene: Scene, from: number): number {
  let at = from;
  // "no wear to speak of on the seat"
  if (/^to$/.test(scene.at(at)?.text ?? "") && /^speak/.test(scene.at(at + 1)?.text ?? ""))
    at += /^of/.test(scene.at(at + 2)?.text ?? "") ? 3 : 2;
  // "no scratches that I can see on the stem"
  const seen = scene.at(at)?.text === "that" ? at + 1 : at;
  if (
    has(scene.at(seen), ROLE.found) &&
    /^i can see$/.test(scene.at(seen)?.text ?? "") &&
    has(scene.at(seen + 1), ROLE.prep)
  )
    return seen + 1;
  // "a crack running down the cage"
  if (/^(?:running|runs|ran|going|goes) (?:down|through|across|along|around|up)$/.test(scene.at(at)?.text ?? ""))
    return at;
  // "a crack running through the yoke", "a crack goes all the way around the bonnet"
  if (/^(?:goes|going|runs|running)$/.test(scene.at(at)?.text ?? "") && scene.at(at + 1)?.senses.extent) {
    const to = trail(scene, at + 1).end;
    if (has(scene.at(to), ROLE.prep)) return to;
    if (scene.noun(to)?.part) return to - 1;
  }
  // "scale had built up in the cage", "a crack was seen on the yoke"
  let lies = at;
  while ((has(scene.at(lies), ROLE.is) || has(scene.at(lies), ROLE.did)) && !has(scene.at(lies), ROLE.it)) lies += 1;
  if (LIES.test(scene.at(lies)?.text ?? "") && has(scene.at(lies + 1), ROLE.prep)) return lies + 1;
  if (
    lies > at &&
    /^(?:visible|present|showing|anywhere) |^(?:in|on|at|around)(?: the)?$/.test(scene.at(lies)?.text ?? "")
  )
    return lies;
  while (
    scene.isPlain(at) &&
    !has(scene.at(at), ROLE.prep) &&
    at < from + 3 &&
    !has(scene.at(at), ROLE.is) &&
    !has(scene.at(at), ROLE.it)
  )
    at += 1;
  while (has(scene.at(at), ROLE.prep) && has(scene.at(at + 1), ROLE.prep)) at += 1;
  // "scored where the packing rides": where, and not on what
  return has(scene.at(at), ROLE.prep) && scene.at(at)?.text !== "where" ? at : -1;
}
