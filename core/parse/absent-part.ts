/** Step 5a: "there's no O-ring on the cage", "wasn't a gasket in it": what is not where it belongs is missing. */

import { ROLE } from "../vocabulary/grammar.ts";
import { spellings } from "../vocabulary/notation.ts";
import { OWNED } from "../vocabulary/parts.ts";
import { has, range } from "./chunks.ts";
import { type ClauseState, settleSubject } from "./clause-state.ts";
import type { Noun } from "./noun.ts";
import type { Scene } from "./scene.ts";

const NO = spellings("(no|without|not)[ (a|an|any)]");
/** Denials that need an article behind: "isn't a gasket in it", but "isn't the gasket in it?" */
const IS_NO = spellings(
  "(isnt|wasnt|arent|werent|aint|(is|was) not|(doesnt|didnt|dont) have|never (had|was))[ (a|an|any)]",
);
/** "in", "on top of": where a part would be. */
const WHERE = /^(?:in|on|under|at|behind|around|inside|over|underneath|below|between|up in|down in|on top of)\b/;
/** What is more than one part, or belongs to the valve whatever is said. */
const NO_PART = /^(?:valve|kit|trim|seals|oil|threads|seat_area|tubing)$/;

/** The part that is not there; the index to go on from. */
export function readAbsentPart(scene: Scene, state: ClauseState, at: number): number | undefined {
  const text = scene.at(at)?.text ?? "";
  const isNo = IS_NO.has(text);
  if (!(NO.has(text) || isNo) || state.elsewhere !== undefined) return undefined;
  const noun = scene.noun(at + 1);
  if (!noun?.part || NO_PART.test(noun.part) || noun.fresh || noun.old || noun.other || noun.one) return undefined;
  if (isNo && !/ (?:an?|any)$/.test(text) && !/^(?:an?|any|no)$/.test(scene.at(at + 1)?.text ?? "")) return undefined;
  // "cage doesn't have an O-ring": the cage's own
  const before = scene.at(at - 1);
  const had = / have|had/.test(` ${text}`) || /^(?:has|had|have|got)$/.test(before?.text ?? "");
  const owner = state.subject?.open && had ? state.subject.nouns[0] : undefined;
  const own = owner?.part && OWNED[noun.part]?.[owner.part];
  if (own) noun.part = own;
  const led = /^(?:theres|there|there is|there was|there were|has|had|have|with|got|came with)$/.test(
    before?.text ?? "",
  );
  const to = whereabouts(scene, noun);
  // "didn't have a seat with me": not on the truck, which says nothing of the valve
  if (to === undefined && !owner && !(led && !had) && before?.text !== "with") return undefined;
  const end = to ?? noun.to;
  const next = scene.at(end);
  if (next?.senses.condition || (to === undefined && next?.senses.work) || next?.talk || scene.predicateFollows(end))
    return undefined;
  const from = owner?.from ?? (led ? at - 1 : at);
  scene.drafts.push({
    entry: { type: "finding", condition: "missing", part: noun.part, ...(noun.place ? { place: noun.place } : {}) },
    chunks: range(from, end),
    rule: "part_missing",
    named: true,
  });
  scene.use(...range(from, end));
  settleSubject(scene, state, [noun], false);
  state.since = end;
  return end;
}

/** One past "on the cage", "in there": where the part would be; nothing where no place is said. */
function whereabouts(scene: Scene, noun: Noun): number | undefined {
  const owned = scene.at(noun.to - 1)?.text ?? "";
  if (noun.core > noun.from + 2 || / (?:on|under|in) /.test(owned)) return noun.to;
  const next = scene.at(noun.to);
  if (/^(?:there|here|in there|on there|anywhere)$/.test(next?.text ?? "")) return noun.to + 1;
  if (!WHERE.test(next?.text ?? "") || !has(next, ROLE.prep)) return undefined;
  const place = scene.noun(noun.to + 1);
  if (place?.part) return place.to;
  const it = scene.at(noun.to + 1);
  return has(it, ROLE.it) || /^(?:there|here|top)$/.test(it?.text ?? "") ? noun.to + 2 : undefined;
}
