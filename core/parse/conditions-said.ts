/** Step 5a: conditions said together, each with its degree, extent and place. */

import type { Condition, Extent, Part, Place, Severity } from "../shapes/codes.ts";
import { DEEDS } from "../vocabulary/conditions.ts";
import { ROLE } from "../vocabulary/grammar.ts";
import { HOLES } from "../vocabulary/parts.ts";
import type { ConditionForm } from "../vocabulary/senses.ts";
import { type Chunk, has } from "./chunks.ts";
import type { ClauseState } from "./clause-state.ts";
import { objectAhead, standsBefore } from "./neighbours.ts";
import { leading, trail } from "./said-around.ts";
import type { Scene } from "./scene.ts";
import { choose } from "./which-condition.ts";

/** One condition as it was said; `at` is its chunk. */
export interface Said {
  code: Condition;
  form: ConditionForm;
  severity?: Severity;
  extent?: Extent;
  place?: Place;
  absent?: boolean;
  at: number;
}

/** "not leaking", "no leak": a verdict on a test, or, where no test is said, a leak looked for and not found. */
export const tightSaid = (chunk: Chunk): boolean =>
  chunk.senses.verdict === "pass" && /leak|weep|seep|drip/.test(chunk.text) && !chunk.used;

/** Conditions said together, up to `end`; `stuff`: the words for what a hole is plugged with, none of the trade's. */
interface Group {
  said: Said[];
  end: number;
  stuff: Chunk[];
}

/** One or more conditions said together: "bent and scored", "no cracks or pitting". */
export function readGroup(scene: Scene, state: ClauseState, start: number): Group | undefined {
  const said: Said[] = [];
  const stuff: Chunk[] = [];
  let at = start;
  let end = start;
  // "wouldn't you know it" denies nothing
  let not =
    state.not !== undefined &&
    (has(scene.at(state.not), ROLE.not) ||
      has(scene.at(state.not), ROLE.notAfter) ||
      /\bno way\b/.test(scene.at(state.not)?.text ?? "")) &&
    !scene.spokeElse(state.not, start);
  const led = leading(scene, state, start);
  let { severity, extent } = led;
  const { place } = led;
  for (;;) {
    const chunk = scene.at(at);
    if (!chunk || chunk.used || chunk.talk) break;
    if (chunk.senses.severity && (!chunk.senses.condition || scene.at(at + 1)?.senses.condition)) {
      // "no cracks, slight corrosion": what has a degree is there
      if (said.length > 0 && !has(scene.at(at - 1), ROLE.or)) not = false;
      severity = chunk.senses.severity;
      at += 1;
      continue;
    }
    if (chunk.senses.extent && !chunk.senses.condition && scene.at(at + 1)?.senses.condition) {
      extent = chunk.senses.extent;
      at += 1;
      continue;
    }
    if (said.length > 0 && chunk.senses.work && objectAhead(scene, at)) break;
    // "bolts were rusted, snapped two": done to some of them
    const some = chunk.senses.condition?.some((one) => one.form === "is" && DEEDS.has(one.code));
    if (said.length > 0 && state.subject && some && scene.countAt(at + 1) !== undefined) break;
    if (said.length > 0 && state.subject && !has(scene.at(at - 1), ROLE.and) && standsBefore(scene, at)) break;
    const condition = tightSaid(chunk)
      ? {
          code: "leaking" as const,
          form: /^n/.test(chunk.text) && !/^not/.test(chunk.text) ? ("has" as const) : ("does" as const),
          tight: true,
        }
      : chunk.senses.condition
        ? choose(scene, state, at, said.length > 0)
        : undefined;
    if (!condition) {
      if (said.length === 0) return undefined;
      // "worn and badly scored", "cracks or pitting", "scale and some rust"
      const joins =
        has(chunk, ROLE.and) ||
        has(chunk, ROLE.or) ||
        (scene.isPlain(at) && !has(chunk, ROLE.it) && /^(?:a|an|any|also|just|all|bit|little|of)$/.test(chunk.text)) ||
        (has(chunk, ROLE.det) && /^(?:a|an|any|the)$/.test(chunk.text));
      if (joins && joinsCondition(scene, at)) {
        if (has(chunk, ROLE.or)) not = not || said.at(-1)?.absent === true;
        at += 1;
        continue;
      }
      if (has(chunk, ROLE.not) && joinsCondition(scene, at) && !has(chunk, ROLE.declined)) {
        not = true;
        at += 1;
        continue;
      }
      break;
    }
    if (said.length > 0 && condition.code === "ok" && !/^(?:and|or|but|just|still)/.test(scene.at(at - 1)?.text ?? ""))
      break;
    if (
      said.length > 0 &&
      condition.form === "has" &&
      said.at(-1)?.form !== "has" &&
      !has(scene.at(at - 1), ROLE.and) &&
      !has(scene.at(at - 1), ROLE.or) &&
      !has(scene.at(at - 1), ROLE.det)
    ) {
      const prep = scene.at(trail(scene, at + 1).end);
      if (has(prep, ROLE.prep)) break;
    }
    // "not cracked, scratched": one is denied for the other, unless a list goes on with "or"
    if (not && said.length > 0 && condition.form === "is" && said.at(-1)?.at === at - 1 && !orAhead(scene, at + 1))
      not = false;
    const tail = trail(scene, at + 1);
    if (/^(?:pretty|real|really|so) bad$/.test(chunk.text)) severity = "severe";
    said.push({
      code: condition.code,
      form: condition.form,
      severity:
        severity ??
        tail.severity ??
        (/\b(?:plumb|slap)\b(?! full)/.test(chunk.text)
          ? "severe"
          : /^hairline/.test(chunk.text)
            ? "slight"
            : undefined),
      extent: extent ?? tail.extent,
      place: tail.place ?? place,
      absent: ((not || "tight" in condition) && condition.code !== "ok") || undefined,
      at,
    });
    if (not && condition.code === "ok")
      said[said.length - 1] = {
        ...(said[said.length - 1] as Said),
        code: notWell(chunk, partHere(scene, state)),
        absent: undefined,
      };
    severity = undefined;
    extent = undefined;
    at = withWhat(scene, condition.code, tail.end, stuff);
    const beyond = at > tail.end ? trail(scene, at) : undefined;
    const newest = said.at(-1);
    if (beyond && newest) {
      newest.place ??= beyond.place;
      newest.extent ??= beyond.extent;
      newest.severity ??= beyond.severity;
      at = beyond.end;
    }
    end = at;
    // "not worn, just dirty": "just" ends what the "not" reaches
    if (has(scene.at(at), ROLE.but) && !has(scene.at(at), ROLE.is)) break;
    if (scene.at(at)?.text === "just") {
      not = false;
      state.not = undefined;
      at += 1;
    }
    const next = scene.at(at);
    if (has(next, ROLE.and) && !has(next, ROLE.or) && not) {
      // "no cracks and no pitting" says "no" again; "no cracks and heavy scoring" does not
      const beyond = scene.at(at + 1);
      if (
        !has(beyond, ROLE.not) &&
        !(beyond?.senses.condition?.some((one) => one.form === "has") && said.at(-1)?.form === "has")
      )
        not = false;
    }
  }
  return said.length > 0 ? { said, end, stuff } : undefined;
}

/** What is not good is damaged; what does not move freely sticks, what is not clean is fouled, a hole not clear is blocked. */
function notWell({ text }: Chunk, part: Part | undefined): Condition {
  if (/^(?:mov|slid|turn)/.test(text)) return "sticking";
  if (text === "clear" && part && HOLES.has(part)) return "plugged";
  return /^(?:clean|clear|spotless)$/.test(text) ? "fouled" : "damaged";
}

const partHere = (scene: Scene, state: ClauseState): Part | undefined =>
  (state.subject?.nouns[0] ?? scene.named[0])?.part;

/** "plugged with mud", "full of sand": what it is blocked with is no second finding. */
function withWhat(scene: Scene, code: Condition, from: number, stuff: Chunk[]): number {
  if (code !== "plugged" && code !== "fouled" && code !== "frozen") return from;
  let at = from;
  while (
    at < from + 3 &&
    (/^(?:with|by|of|full of|in|from|a|some|the|solid|full|up|old|dried|hard|thick|wet|black)$/.test(
      scene.at(at)?.text ?? "",
    ) ||
      scene.at(at)?.senses.severity)
  )
    at += 1;
  if (at === from && !/(?:with|of|by|in)$/.test(scene.at(from - 1)?.text ?? "")) return from;
  // "plugged with bugs": whatever it is, it is what blocks the hole
  const named =
    /^(?:with|by|full of|of)$/.test(scene.at(from)?.text ?? "") ||
    /(?:with|by|full of)$/.test(scene.at(from - 1)?.text ?? "");
  let end = from;
  for (; at < from + 8; at += 1) {
    const what = scene.at(at);
    const dirt = what?.senses.condition?.some((one) => one.form === "has" && DIRT.has(one.code));
    const strange = named && what && (what.unknown || what.talk || what.senses.part === "oil" || isGrease(what));
    if (what && (dirt || strange)) {
      if (!dirt) stuff.push(what);
      end = at + 1;
    } else if (!(end === at && (has(what, ROLE.and) || has(what, ROLE.or)) && isDirt(scene.at(at + 1)))) break;
  }
  return end;
}

/** "caked with old grease": not what it needs. */
const isGrease = (chunk: Chunk): boolean =>
  chunk.senses.work?.some((one) => one.code === "greased" && one.form === "noun") ?? false;

const DIRT: ReadonlySet<Condition> = new Set<Condition>(["fouled", "frozen", "plugged", "corroded"]);
const isDirt = (chunk: Chunk | undefined): boolean =>
  chunk?.senses.condition?.some((one) => one.form === "has" && one.code === "fouled") ?? false;

/** "not bent, scored or pitted". */
const orAhead = (scene: Scene, from: number): boolean =>
  scene.chunks.slice(from, from + 4).some((one) => has(one, ROLE.or) || has(one, ROLE.and));

/** Whether another condition of the same group follows: "worn and badly scored". */
function joinsCondition(scene: Scene, at: number): boolean {
  for (let next = at + 1; next <= at + 4; next += 1) {
    const chunk = scene.at(next);
    if (!chunk || chunk.used) return false;
    if (has(chunk, ROLE.found) && !has(chunk, ROLE.has)) return false;
    if (chunk.senses.condition && !scene.noun(next)?.part) {
      // a part behind a preposition after it takes the condition away: "worn and pitting on the plug"
      const after = trail(scene, next + 1).end;
      const startsOwn =
        chunk.senses.condition.some((one) => one.form === "has") &&
        has(scene.at(after), ROLE.prep) &&
        scene.noun(after + 1)?.part !== undefined;
      return !startsOwn || chunk.senses.condition.every((one) => one.form === "has");
    }
    if (
      !(
        chunk.senses.severity ||
        chunk.senses.extent ||
        has(chunk, ROLE.not) ||
        has(chunk, ROLE.det) ||
        has(chunk, ROLE.or) ||
        chunk.senses.plain ||
        has(chunk, ROLE.and)
      )
    )
      return false;
    if (chunk.senses.work) return false;
  }
  return false;
}
