/** Step 5: the parts that "it", "them" and "both" stand for. */

import type { ClauseState } from "./clause-state.ts";
import type { Named } from "./noun.ts";
import type { Scene } from "./scene.ts";

/** "replaced both" after "gasket's torn, o ring's cut": the gasket and the O-ring. */
export function pronoun(scene: Scene, state: ClauseState, text: string): Named[] {
  const current: Named[] = state.subject ? state.subject.nouns : scene.named;
  const both = /both|two|pair/.test(text);
  const many = both || /^(?:them|em|those|these|they|all|the lot)/.test(text);
  // "cross threaded, so I chased the threads and put it back on": one thing, and no threads
  const singular =
    current.at(-1)?.part === "threads" ? scene.recent.findLast((one) => one.part && one.part !== "threads") : undefined;
  if (!many && singular) return [bare(singular)];
  if (!many) return current.length > 0 ? current.slice(-1).map(bare) : [bare({ part: undefined })];
  const here = scene.namedHere.filter((one) => one.part !== undefined);
  const lastHere = here.at(-1);
  // "gasket's torn, o ring's cut, replaced both": the two just named, unless the last is many by nature
  if (
    current.length < 2 &&
    here.length >= 2 &&
    lastHere &&
    !lastHere.both &&
    (both || !/bolting|threads|seals/.test(lastHere.part ?? ""))
  )
    return here.slice(-2).map(bare);
  if (current.length >= 2) return current.map(bare);
  const last = current[0];
  if (!last?.part) return [{ part: undefined }];
  // "gasket's torn, o ring's cut" and then "replaced both"
  const before = [...new Set(scene.carry.last.flatMap((entry) => ("part" in entry && entry.part ? [entry.part] : [])))];
  if (here.length === 0 && before.length === 2 && !last.both && last.part === before[1])
    return before.map((part) => ({ part }));
  // there is one seat, one plug: "both" after those means the two parts named last
  const alone = !/ring|bolting|nut|threads|gasket|diaphragm|spring|fitting|port|seals|tubing|housing/.test(last.part);
  const pair = scene.recent.filter((one) => one.part !== undefined).slice(-2);
  if (alone && pair.length === 2) return pair.map(bare);
  if (last.both) return [{ part: last.part, count: 2 }];
  if (last.plural || last.count) return [{ part: last.part, place: last.place, count: both ? 2 : undefined }];
  const recent = scene.recent.filter((one) => one.part !== undefined).slice(-2);
  if (recent.length === 2) return recent.map(bare);
  return [{ part: last.part, place: last.place, count: both ? 2 : undefined }];
}

const bare = ({ part, place }: Named): Named => ({ part, place });
