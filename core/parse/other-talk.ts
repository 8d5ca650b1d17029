/** Step 5f: what was made of words that speak of something else is let go. */

import { ROLE } from "../vocabulary/grammar.ts";
import { questionsIn } from "./asked.ts";
import { has, isTrade } from "./chunks.ts";
import type { Draft, Scene } from "./scene.ts";

/**
 * "my pickup needs a gasket kit" leaves nothing, "truck's stuck, seat's worn" the seat. Hazards are never let go:
 * better to stop once for nothing.
 */
export function keptToValve(scene: Scene, drafts: readonly Draft[]): Draft[] {
  if (!scene.chunks.some((one) => one.talk)) return [...drafts];
  // what is asked in passing ("what's this one called, cage gasket") leads to nothing that is said after it
  const asked = questionsIn(scene);
  const talk = scene.chunks.flatMap((one, at) =>
    one.talk && !asked.some(({ from, to }) => at >= from && at < to) ? [at] : [],
  );
  if (talk.length === 0) return [...drafts];
  const said = new Map<number, Draft[]>();
  for (const draft of drafts) for (const at of draft.chunks) said.set(at, [...(said.get(at) ?? []), draft]);
  const trade = scene.chunks.filter((one) => one.used && isTrade(one)).length;
  return drafts.filter((draft) => {
    if (draft.entry.type === "hazard") return true;
    const kept = !(talk.length >= 2 && talk.length >= trade) && !ledByTalk(scene, draft, said, talk);
    if (!kept)
      for (const at of [...draft.chunks, ...(draft.also ?? [])]) Object.assign(scene.chunks[at] ?? {}, { used: false });
    return kept;
  });
}

/** How close before it a word of other talk makes a thing that word's own: "my pickup needs a gasket kit". */
const NEAR = 4;

/** `said`: the drafts of each chunk. */
function ledByTalk(
  scene: Scene,
  draft: Draft,
  said: ReadonlyMap<number, readonly Draft[]>,
  talk: readonly number[],
): boolean {
  const start = Math.min(...draft.chunks);
  for (let at = start - 1; at >= 0; at -= 1) {
    const chunk = scene.at(at);
    if (said.get(at)?.some((other) => other !== draft)) return false;
    // "did you get the donuts … okay, the spring is broke": back to work
    if (draft.named && chunk && /^(?:ok|okay|alright|alrighty|anyway|anyhow|anyways)$/.test(chunk.text)) return false;
    if (!chunk || has(chunk, ROLE.but) || (has(chunk, ROLE.and) && draft.named)) return false;
    if (!talk.includes(at)) continue;
    // a part that is itself what is spoken of ("truck's stuck, seat's worn") stands on its own feet
    const opens = scene.at(start);
    const subject =
      draft.rule.startsWith("finding") &&
      !opens?.senses.condition &&
      (opens?.senses.part !== undefined || scene.at(start + 1)?.senses.part !== undefined);
    const own = (subject && draft.named) || draft.entry.type === "command";
    const close = start - at <= (own ? 1 : NEAR);
    return close || !draft.named;
  }
  return false;
}
