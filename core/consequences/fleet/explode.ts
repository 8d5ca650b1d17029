import type { Part } from "../../shapes/codes.ts";
import type { Family } from "../../shapes/valve.ts";
import { isSoft, isTrim } from "../parts.ts";

export interface PartCount {
  part: Part;
  count: number;
}

/** Parts that are a word for several: what they hold, by the family's kits, else by its bill. */
const SETS: Partial<Record<Part, { kit: string; holds: (part: Part, family: Family) => boolean }>> = {
  kit: { kit: "soft_goods", holds: isSoft },
  seals: { kit: "soft_goods", holds: isSoft },
  trim: { kit: "trim", holds: isTrim },
};

export const isSet = (part: Part): boolean => part in SETS;

/**
 * Lines with kits, seals and trim opened into their parts, each part once. `seals` are the soft goods of the whole
 * bill: a kit holds what its maker puts in, and a bill may list one more.
 */
export function explode(lines: readonly PartCount[], family: Family): PartCount[] {
  const counts = new Map<Part, number>();
  const add = (part: Part, count: number) => counts.set(part, (counts.get(part) ?? 0) + count);
  for (const { part, count } of lines) {
    const set = SETS[part];
    const kit = set && part !== "seals" ? family.kits.find((one) => one.kit === set.kit) : undefined;
    const inside = kit?.parts ?? (set ? family.bill.filter((line) => set.holds(line.part, family)) : undefined);
    if (!inside || inside.length === 0) add(part, count);
    else for (const one of inside) add(one.part, one.count * count);
  }
  return [...counts].map(([part, count]) => ({ part, count }));
}

/** Every soft good of the bill, as a replacement of the seals takes them. */
export function softGoods(family: Family): PartCount[] {
  return family.bill.filter((line) => line.soft).map(({ part, count }) => ({ part, count }));
}

/** The kit that holds the most of these parts and nothing else needed is asked of it; none where none holds any. */
export function bestKit(
  lines: readonly PartCount[],
  family: Family,
): { kit: string; name: string; lacks: PartCount[] } | undefined {
  const lacking = (kit: Family["kits"][number]): PartCount[] =>
    lines.flatMap(({ part, count }) => {
      const inside = kit.parts.find((one) => one.part === part)?.count ?? 0;
      return inside < count ? [{ part, count: count - inside }] : [];
    });
  const ranked = family.kits
    .map((kit) => ({ kit: kit.kit, name: kit.name, lacks: lacking(kit) }))
    .sort((a, b) => a.lacks.length - b.lacks.length);
  const [best] = ranked;
  return best && best.lacks.length < lines.length ? best : undefined;
}
