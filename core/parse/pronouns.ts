import type { ClauseState } from "./clause-state.ts";
import type { Named } from "./noun.ts";
import type { Scene } from "./scene.ts";

/** The parts that "it", "them" and "both" stand for. */
export function pronoun(scene: Scene, state: ClauseState, text: string): Named[] {
  const current: Named[] = state.subject ? state.subject.nouns : scene.named;
  const both = /both|two|pair/.test(text);
  const many = both || /^(?:them|em|those|these|they|all)/.test(text);
  const strip = (list: readonly Named[]): Named[] =>
    list.map(({ part, place, plural, both: two, count }) => ({ part, place, plural, both: two, count }));
  if (!many)
    return strip(current.length > 0 ? current.slice(-1) : [{ part: undefined }]).map((one) => ({
      part: one.part,
      place: one.place,
    }));
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
    return here.slice(-2).map((one) => ({ part: one.part, place: one.place }));
  if (current.length >= 2) return strip(current).map((one) => ({ part: one.part, place: one.place }));
  const last = current[0];
  if (!last?.part) return [{ part: undefined }];
  // "gasket's torn, o ring's cut" and then "replaced both"
  const before = [...new Set(scene.carry.last.flatMap((entry) => ("part" in entry && entry.part ? [entry.part] : [])))];
  if (here.length === 0 && before.length === 2 && !last.both && last.part === before[1])
    return before.map((part) => ({ part }));
  // there is one seat, one plug: "both" after those means the two parts named last
  const alone = !/ring|bolting|nut|threads|gasket|diaphragm|spring|fitting|port|seals|tubing|housing/.test(last.part);
  const pair = scene.recent.filter((one) => one.part !== undefined).slice(-2);
  if (alone && pair.length === 2) return pair.map((one) => ({ part: one.part, place: one.place }));
  if (last.both) return [{ part: last.part, count: 2 }];
  if (last.plural || last.count) return [{ part: last.part, place: last.place, count: both ? 2 : undefined }];
  const recent = scene.recent.filter((one) => one.part !== undefined).slice(-2);
  if (recent.length === 2) return recent.map((one) => ({ part: one.part, place: one.place }));
  return [{ part: last.part, place: last.place, count: both ? 2 : undefined }];
}
