/** Step 5d: the same again, on another part. */

import type { Part } from "../shapes/codes.ts";
import type { Entry } from "../shapes/entry.ts";
import { ROLE } from "../vocabulary/grammar.ts";
import { OWNED } from "../vocabulary/parts.ts";
import { has, range } from "./chunks.ts";
import { type ClauseState, settleSubject } from "./clause-state.ts";
import type { Noun } from "./noun.ts";
import { oppositePlace, placed } from "./places.ts";
import type { Scene } from "./scene.ts";

/** "same on the lower one", "other one too", "ditto for the cage": the last findings and work, on another part. */
export function copyOnto(scene: Scene, state: ClauseState, at: number): number | undefined {
  let from = at;
  while (
    has(scene.at(from), ROLE.again) ||
    (from > at &&
      (has(scene.at(from), ROLE.prep) || scene.isPlain(from)) &&
      !scene.noun(from) &&
      !scene.at(from)?.senses.place)
  )
    from += 1;
  const objects = scene.nouns(from, "object") ?? scene.nouns(from, "subject") ?? byPlace(scene, from);
  if (!objects || objects.nouns.some((one) => !one.part)) return undefined;
  const source = lastSaid(scene);
  if (source.length === 0) return undefined;
  let end = objects.end;
  if (has(scene.at(end), ROLE.is) && has(scene.at(end + 1), ROLE.too)) end += 1;
  while (has(scene.at(end), ROLE.too) || (has(scene.at(end), ROLE.again) && !scene.noun(end + 1))) end += 1;
  const on = /\b(?:on|in|under)(?: the)?$/.test(scene.at(from - 1)?.text ?? "");
  for (const noun of objects.nouns)
    for (const entry of source) {
      const copy: Entry = { ...entry, part: (on ? ownOf(entry.part, noun.part) : undefined) ?? noun.part };
      if (copy.type === "finding") {
        if (noun.place) copy.place = noun.place;
        else if (noun.other && copy.place && noun.part === entry.part) copy.place = oppositePlace(copy.place);
        if (noun.count !== undefined) copy.count = noun.count;
        else if (copy.count === 1) delete copy.count;
      }
      scene.drafts.push({ entry: copy, chunks: range(at, end), rule: "copied", named: true });
    }
  scene.use(...range(at, end).filter((index) => !scene.at(index)?.unknown));
  settleSubject(scene, state, objects.nouns as Noun[], false);
  state.since = end;
  return end;
}

/** "new O-ring on the cage, same on the stem guide": of what the last was, the new owner's. */
function ownOf(said: Part | undefined, owner: Part | undefined): Part | undefined {
  if (!said || !owner) return undefined;
  const kin = Object.values(OWNED).find((owners) => Object.values(owners).includes(said));
  return kin?.[owner];
}

/** "same on the outlet": the place alone tells which. */
function byPlace(scene: Scene, from: number): { nouns: Noun[]; end: number } | undefined {
  const at = has(scene.at(from), ROLE.det) ? from + 1 : from;
  const place = scene.at(at)?.senses.place;
  const last = scene.named.at(-1);
  if (!place || !last?.part) return undefined;
  const here = placed({ part: last.part, place });
  return { nouns: [{ part: here.part, place: here.place, from, to: at + 1, core: at }], end: at + 1 };
}

type Copied = Extract<Entry, { type: "finding" | "work" }>;

/** What was last said: in this phrase of its last part, else in the last phrase that left entries. */
function lastSaid(scene: Scene): Copied[] {
  const here = scene.drafts.map((draft) => draft.entry).filter(isCopied);
  const all = here.length > 0 ? here : scene.carry.last.filter(isCopied);
  const part = all.at(-1)?.part;
  return all.filter((entry) => entry.part === part).map(plain);
}

const isCopied = (entry: Entry): entry is Copied => entry.type === "finding" || entry.type === "work";

function plain(entry: Copied): Copied {
  const { words: _words, at: _at, phrase: _phrase, rule: _rule, confidence: _confidence, ...rest } = entry;
  return rest as Copied;
}
