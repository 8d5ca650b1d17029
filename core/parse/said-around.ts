/** Step 5a: degree, extent and place said before or behind a condition. */

import type { Extent, Place, Severity } from "../shapes/codes.ts";
import { ROLE } from "../vocabulary/grammar.ts";
import { has } from "./chunks.ts";
import type { ClauseState } from "./clause-state.ts";
import type { Scene } from "./scene.ts";

/** Severity, extent and place said just before: "badly eroded", "all sides worn". */
export function leading(
  scene: Scene,
  state: ClauseState,
  start: number,
): { severity?: Severity; extent?: Extent; place?: Place } {
  const found: { severity?: Severity; extent?: Extent; place?: Place } = {};
  for (let back = start - 1; back >= 0 && back >= start - 4; back -= 1) {
    const chunk = scene.at(back);
    if (!chunk || chunk.used || chunk.senses.part || (chunk.senses.condition && !chunk.senses.severity)) break;
    if (chunk.senses.severity) found.severity ??= chunk.senses.severity;
    else if (chunk.senses.extent) found.extent ??= chunk.senses.extent;
    else if (chunk.senses.place === "hole" || (chunk.senses.place && state.subject?.open && back >= state.since)) {
      found.place ??= chunk.senses.place;
      if (chunk.senses.place === "hole") scene.use(back);
    } else if (
      !(
        has(chunk, ROLE.is) ||
        has(chunk, ROLE.has) ||
        has(chunk, ROLE.found) ||
        /^(?:just|real|pretty|also|still|all|both|kind|quite|really|too)$/.test(chunk.text) ||
        has(chunk, ROLE.it) ||
        has(chunk, ROLE.not) ||
        has(chunk, ROLE.hedge) ||
        has(chunk, ROLE.prep) ||
        has(chunk, ROLE.det)
      )
    )
      break;
  }
  return found;
}

/** Severity, extent and place said just behind: "eroded real bad on the outlet side". */
export function trail(
  scene: Scene,
  from: number,
): { severity?: Severity; extent?: Extent; place?: Place; end: number } {
  const found: { severity?: Severity; extent?: Extent; place?: Place } = {};
  let end = from;
  let at = from;
  for (let steps = 0; steps < 8; steps += 1) {
    const chunk = scene.at(at);
    if (!chunk || chunk.talk) break;
    // "a crack about two inches long on the right side"
    if (chunk.used && (chunk.number || chunk.senses.unit || chunk.senses.bound || chunk.senses.quantity === "length")) {
      at += 1;
      continue;
    }
    if (chunk.used) break;
    const next = scene.at(at + 1);
    // "inlet threads are chewed up, outlet's okay": a side of which something is said is another's
    if (
      /^(?:inlet|outlet|top|bottom|upper|lower)s?$/.test(chunk.text) &&
      chunk.senses.place &&
      !has(scene.at(at - 1), ROLE.prep) &&
      !has(scene.at(at - 1), ROLE.det) &&
      (has(next, ROLE.is) || next?.senses.condition?.some((one) => one.code === "ok"))
    )
      break;
    const spread = chunk.text === "all over" && (scene.noun(at + 1)?.part !== undefined || has(next, ROLE.it));
    if (spread) break;
    // "chewed up on the inlet edge": the edge, on that side
    if (chunk.senses.place && !chunk.senses.part && /^(?:edge|face|groove)$/.test(next?.senses.place ?? "")) {
      at += 1;
      continue;
    }
    // "cross threaded, some worm did that": some of them, and not how bad
    if (chunk.text === "some" && next?.unknown) break;
    // "oil's low, top it off": what to do, and not where
    if (chunk.text === "top" && has(next, ROLE.it) && /^(?:off|up)$/.test(scene.at(at + 2)?.text ?? "")) break;
    // "backed off half a turn": how far, and not how much of it
    if (chunk.text === "half" && /^an?$/.test(next?.text ?? "")) break;
    if (
      chunk.senses.extent &&
      found.extent === undefined &&
      !(next?.senses.condition && chunk.senses.extent === "partial")
    ) {
      found.extent = chunk.senses.extent;
      at += 1;
      end = at;
    } else if (
      chunk.senses.severity &&
      found.severity === undefined &&
      !next?.senses.condition &&
      !(next?.senses.severity && scene.at(at + 2)?.senses.condition) &&
      !scene.noun(at)?.part &&
      !(chunk.text === "all the way" && (has(next, ROLE.is) || next?.senses.outcome))
    ) {
      found.severity = chunk.senses.severity;
      at += 1;
      end = at;
    } else if (
      chunk.senses.place &&
      found.place === undefined &&
      !scene.noun(at)?.part &&
      !(has(next, ROLE.prep) && scene.noun(at + 2)?.part !== undefined && /^of/.test(next?.text ?? "")) &&
      !(next?.text === "of" && has(scene.at(at + 2), ROLE.it)) &&
      !has(next, ROLE.one)
    ) {
      if (has(next, ROLE.prep) && next && scene.noun(at + 2)?.part) {
        // "up top on the stem": the place is the part's
        found.place = chunk.senses.place;
        return { ...found, end: at + 1 };
      }
      found.place = chunk.senses.place;
      at += 1;
      end = at;
    } else if (
      /^(?:just|only|but)$/.test(chunk.text) &&
      (next?.senses.severity || (has(next, ROLE.det) && scene.at(at + 2)?.senses.severity)) &&
      !scene.at(at + 3)?.senses.condition &&
      !scene.at(at + 2)?.senses.condition
    )
      at += next?.senses.severity ? 1 : 2;
    else if ((has(chunk, ROLE.prep) || has(chunk, ROLE.det)) && placeAhead(scene, at + 1)) at += 1;
    else if (has(chunk, ROLE.prep) && has(next, ROLE.it) && !scene.noun(at + 1)?.part) {
      at += 2;
      end = at;
    } else if (has(chunk, ROLE.prep) && (next?.text === "there" || next?.text === "here" || next?.text === "me")) {
      at += 2;
      end = at;
    } else if (STARTING.test(chunk.text) || (chunk.text === "just" && STARTING.test(next?.text ?? ""))) {
      // "a crack starting at the top", "pitting just starting"
      found.severity ??= "slight";
      at += chunk.text === "just" ? 2 : 1;
      end = at;
    } else if (next?.text === "through" && /^(?:clean|right|straight|clear)$/.test(chunk.text)) {
      // "cracked clean through on the left side"
      at += 2;
      end = at;
    } else if (
      (scene.isPlain(at) || chunk.text === "again") &&
      /^(?:in particular|particularly|especially|mainly|right|out|up|down|over|clear|way|too|also|real|pretty|on|off|there|here|again|though|all|like|uh|um)$/.test(
        chunk.text,
      ) &&
      !has(chunk, ROLE.it)
    ) {
      at += 1;
    } else break;
  }
  return { ...found, end };
}

const STARTING = /^(?:starting|beginning)$/;

/** "on the outlet side": a place behind its small words, and not a part's. */
function placeAhead(scene: Scene, from: number): boolean {
  for (let at = from; at < from + 3; at += 1) {
    const chunk = scene.at(at);
    if (!chunk) return false;
    if (chunk.senses.place || chunk.senses.extent)
      return !scene.noun(at)?.part && !(/^of/.test(scene.at(at + 1)?.text ?? "") && scene.noun(at + 2)?.part);
    if (!(has(chunk, ROLE.det) || has(chunk, ROLE.prep) || scene.isPlain(at))) return false;
  }
  return false;
}
