/** Step 4c: which valve it is: "L C V two one three, two inch, fail closed". */

import type { ValveEntry } from "../shapes/entry.ts";
import { range } from "./chunks.ts";
import type { Measure } from "./measure.ts";
import type { Scene } from "./scene.ts";

/** Said of the valve where nothing else is spoken of; "sandy" may be a boot as well. */
const BARE = /^(?:sandy|sour)$/;
const standsAlone = (scene: Scene, at: number): boolean =>
  scene.chunks.length <= 5 &&
  scene.chunks.every((one, nth) => nth === at || one.senses.plain || (one.senses.roles !== 0 && !one.senses.part)) &&
  /^(?:its|its a|this|this is|shes|is|a|this ones)$/.test(scene.at(at - 1)?.text ?? "its");

/** Tag, size, action and service said together are one entry; another tag is another valve. */
export function readValve(scene: Scene, sizes: readonly Measure[]): void {
  let current: { entry: ValveEntry; chunks: number[] } | undefined;
  const found: { entry: ValveEntry; chunks: number[] }[] = [];
  const open = (): { entry: ValveEntry; chunks: number[] } => {
    if (!current) {
      current = { entry: { type: "valve" }, chunks: [] };
      found.push(current);
    }
    return current;
  };
  for (const [at, one] of scene.chunks.entries()) {
    if (one.talk) continue;
    const size = sizes.find((measure) => measure.from === at);
    if (one.tag) {
      if (current?.entry.tag) current = undefined;
      open().entry.tag = one.tag;
    } else if (size) open().entry.size_in = size.value;
    else if (one.senses.acts && !one.used && !one.senses.part) open().entry.acts = one.senses.acts;
    else if (one.senses.service && !one.used && (current || !BARE.test(one.text) || standsAlone(scene, at)))
      open().entry.service = one.senses.service;
    else continue;
    (current as unknown as { chunks: number[] }).chunks.push(...(size ? range(size.from, size.to) : [at]));
    one.used = true;
    if (size) scene.use(...range(size.from, size.to + (scene.at(size.to)?.senses.part === "valve" ? 1 : 0)));
  }
  for (const one of found) scene.drafts.push({ ...one, rule: "valve", named: true });
}
