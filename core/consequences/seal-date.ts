import { addMonths, spokenDate } from "../compute/calendar.ts";
import type { Part } from "../shapes/codes.ts";
import type { Due } from "../shapes/consequence.ts";
import { ofKind } from "./parts.ts";
import type { Bench } from "./rule.ts";
import { isDone, type Visit } from "./visit.ts";
import { spoken } from "./words.ts";

/**
 * When the seals are due: the family's interval from the oldest last replacement among its soft goods. Of a soft good
 * never replaced on record nobody knows the age, so the seals count as overdue.
 */
export function sealDate({ family, visits, on }: Bench): Due {
  const months = family.intervals.seal_replacement_months;
  const soft = family.bill.filter((line) => line.soft);
  const head = { task: "seal_replacement", months, basis: "interval" } as const;
  let oldest: { on: string; part: Part } | undefined;
  for (const { part } of soft) {
    const last = visits.findLast((visit) => renewed(visit, part));
    if (!last)
      return {
        ...head,
        on,
        why: `no record that the ${spoken(part)} was ever replaced, so the seals count as overdue`,
      };
    if (!oldest || last.on < oldest.on) oldest = { on: last.on, part };
  }
  if (!oldest) return { ...head, on, why: "no soft goods are listed for this family, so the seals count as overdue" };
  const due = addMonths(oldest.on, months);
  return {
    ...head,
    on: due,
    why: `oldest of the soft goods is the ${spoken(oldest.part)}, replaced ${spokenDate(oldest.on)}; every ${months} months (${family.intervals.source})${due < on ? ", overdue" : ""}`,
  };

  /** A general word renews a part only where it leaves no other to choose: the one of its kind, or all of them. */
  function renewed(visit: Visit, part: Part): boolean {
    return visit.entries.some((entry) => {
      if (!isDone(entry, ["replaced"], part, family)) return false;
      if (entry.part === part || entry.resolved === part || entry.part === undefined) return true;
      if (entry.part === "seals" || entry.part === "kit" || entry.part === "valve") return true;
      const kin = ofKind(entry.part, family);
      const all = family.bill.reduce((sum, one) => sum + (kin.includes(one.part) ? one.count : 0), 0);
      return kin.length <= 1 || (entry.count ?? 0) >= all;
    });
  }
}
