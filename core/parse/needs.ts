/** "order two bonnet gaskets": the need that starts at `at`; the index to go on from. */

import { ROLE } from "../vocabulary/grammar.ts";
import { spellings } from "../vocabulary/notation.ts";
import { has, range } from "./chunks.ts";
import { type ClauseState, carried, settleSubject } from "./clause-state.ts";
import { talkBehind } from "./neighbours.ts";
import type { Named, Noun } from "./noun.ts";
import { pronoun } from "./pronouns.ts";
import type { Scene } from "./scene.ts";
import { smallWordAt } from "./works.ts";

/** Step 5c: a part to order or bring. */
export function readNeed(scene: Scene, state: ClauseState, at: number): number | undefined {
  const chunk = scene.at(at);
  if (!chunk || chunk.used) return undefined;
  const ordered = readOnOrder(scene, state, at);
  if (ordered || !has(chunk, ROLE.need)) return ordered;
  // "bring the nut up snug": tightened, and not brought along
  if (chunk.senses.work?.some((one) => one.with && smallWordAt(scene, at, one.with) !== undefined)) return undefined;
  // "put … on the list", "add … to the list", "get …" are needs only with the list; "need" alone is work owed
  const weak = /^(?:put|add|get|list|grab|need to get|need to have|send|send out)$/.test(chunk.text);
  if (has(chunk, ROLE.owed) && chunk.text.split(" ").length === 1) return undefined;
  let from = at + 1;
  // "a can of oil", "two boxes of studs": what it comes in
  const held = heldIn(scene, from);
  if (held) from = held;
  while (
    /^(?:me|us|up|out|some|more|along|another|a couple more|of|extra)$/.test(scene.at(from)?.text ?? "") &&
    !scene.noun(from)
  )
    from += 1;
  if (has(scene.at(from), ROLE.det) && has(scene.at(from + 1), ROLE.fresh) && !scene.noun(from)) from += 1;
  const objects = scene.nouns(from, "object") ?? (scene.isPlain(from) ? scene.nouns(from + 1, "object") : undefined);
  let end = objects?.end ?? from;
  // "bring me a gasket next trip out, and a breather"
  let more = end;
  while (
    more < end + 4 &&
    (scene.isPlain(more) || scene.at(more)?.text === "out" || has(scene.at(more), ROLE.onList)) &&
    !has(scene.at(more), ROLE.and)
  )
    more += 1;
  const further = objects && has(scene.at(more), ROLE.and) ? scene.nouns(more + 1, "object") : undefined;
  if (objects && further?.nouns.every((one) => one.part) && !scene.predicateFollows(further.end)) {
    objects.nouns.push(...further.nouns);
    end = further.end;
  }
  const listed = has(scene.at(end), ROLE.onList) || has(scene.at(end + 1), ROLE.onList);
  // "get one ordered"
  const gotOrdered = !objects && /^(?:ordered|on order)$/.test(scene.at(from + 1)?.text ?? "");
  if (weak && !listed && !gotOrdered) return undefined;
  if (listed) end += has(scene.at(end), ROLE.onList) ? 1 : 2;
  let wanted: Named[];
  if (objects) wanted = objects.nouns;
  else {
    // "a gauge and a regulator, put them on the list"
    if (listed && has(scene.at(from), ROLE.it) && /^(?:them|em|those|both|these)/.test(scene.at(from)?.text ?? "")) {
      const them = pronoun(scene, state, scene.at(from)?.text ?? "");
      if (them.length > 1) return logNeeds(scene, state, at, end, them);
    }
    const count = scene.countAt(from);
    const one =
      has(scene.at(from), ROLE.one) ||
      has(scene.at(from), ROLE.it) ||
      (has(scene.at(from), ROLE.fresh) && has(scene.at(from + 1), ROLE.one));
    // "order a spare"
    const spare =
      has(scene.at(from), ROLE.fresh) &&
      /(?:spare|replacement|another)$/.test(scene.at(from)?.text ?? "") &&
      (!scene.at(from + 1) || has(scene.at(from + 1), ROLE.and) || has(scene.at(from + 1), ROLE.but));
    if (count === undefined && !one && !spare) return undefined;
    // "bring two sandwiches": what is wanted is not a part
    const what = scene.at(from + 1);
    if (what && (what.unknown || what.talk) && !WHEN.test(what.text)) return undefined;
    const last = carried(scene, state)[0];
    if (!last?.part) return undefined;
    wanted = [{ part: last.part, count }];
    end = from + (has(scene.at(from), ROLE.fresh) && !spare ? 2 : 1);
  }
  // "pick up a seat for the camper"
  if (objects && /^for\b/.test(scene.at(end)?.text ?? "") && talkBehind(scene, end)) return undefined;
  if (wanted.some((one) => !one.part) || state.not !== undefined || state.elsewhere !== undefined) return undefined;
  return logNeeds(scene, state, at, end, wanted);
}

const ON_ORDER = spellings("on order|ordered|(need|needs) to be ordered|on the [(parts|order) ]list");

/** "stem bent, on order": what was just found bad is what is on order. */
function readOnOrder(scene: Scene, state: ClauseState, at: number): number | undefined {
  if (!ON_ORDER.has(scene.at(at)?.text ?? "")) return undefined;
  // "seat and plug on the list", "gasket's on the list": what is listed
  const subject = state.subject?.open ? state.subject : undefined;
  const listed = subject?.nouns.at(-1)?.to;
  const isListed = listed === at || (listed === at - 1 && has(scene.at(at - 1), ROLE.is));
  // "the kit has to be ordered"
  const owed = / be ordered$/.test(`${scene.at(at - 1)?.text} ${scene.at(at)?.text}`);
  const isOwed = (owed || subject?.nouns.every((one) => one.fresh)) && (listed === at || listed === at - 1);
  if (subject && (isOwed || (isListed && /list$/.test(scene.at(at)?.text ?? ""))) && state.not === undefined)
    return logNeeds(scene, state, subject.nouns[0]?.from ?? at, at + 1, subject.nouns);
  const last = scene.drafts.at(-1);
  const bad =
    (last?.entry.type === "finding" && !last.entry.absent && last.entry.condition !== "ok") ||
    (last?.entry.type === "work" && last.entry.work === "replaced" && last.entry.status === "needed");
  if (!last || !bad || !("part" in last.entry) || !last.entry.part) return undefined;
  if (state.not !== undefined || state.subject?.open || Math.max(...last.chunks) !== at - 1) return undefined;
  return logNeeds(scene, state, at, at + 1, [{ part: last.entry.part }]);
}

/** Leaves what is wanted; the index to go on from. */
export function logNeeds(scene: Scene, state: ClauseState, at: number, end: number, wanted: readonly Named[]): number {
  for (const one of wanted) {
    if (!one.part) continue;
    const count = one.count ?? (one.both ? 2 : undefined);
    scene.drafts.push({
      entry: count === undefined ? { type: "need", part: one.part } : { type: "need", part: one.part, count },
      chunks: range(at, end),
      rule: "need",
      named: true,
    });
  }
  scene.use(...range(at, end));
  settleSubject(scene, state, wanted as Noun[], false);
  state.owed = undefined;
  state.since = end;
  return end;
}

/** "bring me one tomorrow": when, and not what. */
const WHEN = /^(?:tomorrow|monday|tuesday|wednesday|thursday|friday|saturday|sunday|asap|soon|please|whenever)$/;

const HOLDER =
  /^(?:can|bottle|jug|bucket|pail|quart|gallon|box|bag|roll|stick|coil|length|piece|sheet|pack|packet|case)s?$/;

/** Behind "a can of", "two quarts of": where what is wanted stands; nothing where it comes in nothing. */
function heldIn(scene: Scene, from: number): number | undefined {
  let at = from;
  while (has(scene.at(at), ROLE.det) || scene.at(at)?.number || /^(?:me|us)$/.test(scene.at(at)?.text ?? "")) at += 1;
  const last = scene.at(at);
  if (!last || !HOLDER.test(last.text.split(" ").at(-1) ?? "") || !/^of/.test(scene.at(at + 1)?.text ?? ""))
    return undefined;
  return at + 2;
}
