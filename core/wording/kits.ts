import { explode, isSet, type PartCount } from "../consequences/fleet/explode.ts";
import { familyOf } from "../families/index.ts";
import type { Family, Valve } from "../shapes/valve.ts";
import { countedPart } from "./follows.ts";

/** What the kits, seals and trim among these lines hold on this valve, a sentence each; nothing where there are none. */
export function openedKits(lines: readonly PartCount[], valve: Valve, families: readonly Family[] = []): string[] {
  const family = familyOf(valve.family, families);
  const told = lines.flatMap((line) => {
    if (!isSet(line.part)) return [];
    const parts = explode([line], family).filter((one) => one.part !== line.part);
    return parts.length > 0 ? [`${countedPart(line)} is ${parts.map(countedPart).join(", ")}.`] : [];
  });
  return [...new Set(told)];
}
