import { spokenDate } from "../compute/calendar.ts";
import type { Work } from "../shapes/codes.ts";
import type { FollowUp } from "../shapes/consequence.ts";
import { reaches } from "./parts.ts";
import { type Bench, type Owed, PRACTICE, RULE_ORDER, type Rule, type RuleCode } from "./rule.ts";
import { RULES } from "./rules/index.ts";
import { didIn, isFault, isSound, type Visit } from "./visit.ts";
import { spoken } from "./words.ts";

/** Whatever was wrong with a part, these mend it, once the job is over. */
const MENDED: readonly Work[] = ["replaced", "repaired"];

/** What every rule leaves owed, less what was done, one line for each thing to do. */
export function followUps(bench: Bench): FollowUp[] {
  const found: FollowUp[] = [];
  for (const rule of RULES) {
    const visits = rule.reads === "faults" ? bench.visits : [bench.today];
    for (const visit of visits)
      for (const owed of rule.owes(visit, bench)) {
        const doubted = inDoubt(owed);
        if (settledThen(doubted, visit, bench)) continue;
        if (visit === bench.today) found.push(line(doubted, rule));
        else if (!settledSince(doubted, visit, bench)) found.push(carried(doubted, visit));
      }
  }
  return merge(found);
}

/** An unsure finding is looked at again before anything is replaced, flipped or cleaned for it. */
function inDoubt(owed: Owed): Owed {
  const hard = owed.do === "replace" || owed.do === "flip" || owed.do === "clean";
  if (!owed.finding?.unsure || owed.doubtful || !hard) return owed;
  const { condition } = owed.finding;
  return {
    ...owed,
    do: "inspect",
    when: "now",
    rule: "unsure_finding",
    count: undefined,
    why: `${spoken(owed.part)} may be ${condition.replaceAll("_", " ")}: look again before going on`,
  };
}

/** Done in the same job. */
function settledThen(owed: Owed, visit: Visit, bench: Bench): boolean {
  if (owed.settled?.(visit, false)) return true;
  if (owed.part !== undefined && didIn(visit, owed.by ?? ["replaced"], owed.part, bench.family)) return true;
  if (owed.do !== "inspect" || !owed.finding?.unsure) return false;
  // The doubt was looked into: said again for certain, or the part was inspected.
  const doubt = owed.finding;
  const after = visit.entries.slice(visit.entries.indexOf(doubt) + 1);
  return after.some(
    (entry) =>
      (entry.type === "finding" &&
        !entry.unsure &&
        entry.part === owed.part &&
        (entry.condition === doubt.condition || isSound(entry))) ||
      (entry.type === "work" && entry.work === "inspected" && entry.status === "done" && entry.part === owed.part),
  );
}

/** Mended, found gone or, for a look, looked at in any job since. */
function settledSince(owed: Owed, visit: Visit, bench: Bench): boolean {
  const works = owed.stays ? (owed.by ?? ["replaced"]) : [...(owed.by ?? ["replaced"]), ...MENDED];
  for (let at = visit.at; at < bench.visits.length; at++) {
    const later = bench.visits[at] as Visit;
    const same = later === visit;
    if (owed.part !== undefined && didIn(later, works, owed.part, bench.family, same)) return true;
    if (same) continue;
    if (owed.settled?.(later, true)) return true;
    if (owed.stays || owed.part === undefined) continue;
    for (const entry of later.entries) {
      if (entry.type === "work" && owed.do === "inspect" && didIn(later, ["inspected"], owed.part, bench.family, false))
        return true;
      if (entry.type !== "finding" || entry.unsure || !reaches(entry.part, owed.part, bench.family, false)) continue;
      if (owed.do === "inspect" && isFault(entry)) return true;
      if (
        isSound(entry) &&
        (!entry.absent || !owed.finding || entry.condition === owed.finding.condition || entry.condition === "damaged")
      )
        return true;
    }
  }
  return false;
}

function line(owed: Owed, rule: Rule): FollowUp {
  const code = owed.rule ?? rule.rule;
  return {
    do: owed.do,
    ...(owed.part === undefined ? {} : { part: owed.part }),
    when: owed.when,
    why: owed.why,
    rule: code,
    source: rule.source,
    ...(owed.test === undefined ? {} : { test: owed.test }),
    ...(owed.count === undefined ? {} : { count: owed.count }),
  };
}

function carried(owed: Owed, visit: Visit): FollowUp {
  return {
    ...line(owed, CARRIED),
    when: "now",
    rule: CARRIED.rule,
    why: `${owed.why} (${spokenDate(visit.on)}, ${owed.stays ? "not replaced since" : "neither mended nor found ok since"})`,
  };
}

const CARRIED: Rule = { rule: "fault_carried", source: PRACTICE, reads: "record", owes: () => [] };
const rank = new Map<string, number>(RULE_ORDER.map((rule, index) => [rule, index]));
const place = (rule: string): number => rank.get(rule as RuleCode) ?? RULE_ORDER.length;
const WHEN: Record<string, number> = { now: 0, next_inspection: 2 };
const soon = (when: string): number => WHEN[when] ?? 1;

/** What tells the follow-ups of a valve apart: one that stays open keeps its key from job to job. */
export const followUpKey = (one: Pick<FollowUp, "do" | "part" | "test">): string =>
  `${one.do}|${one.part ?? ""}|${one.test ?? ""}`;

/** One line per `do`, `part` and `test`: the earliest, and of equals the rule first in the table. Stops lead. */
function merge(found: readonly FollowUp[]): FollowUp[] {
  const best = new Map<string, FollowUp>();
  for (const one of found) {
    const key = followUpKey(one);
    const held = best.get(key);
    if (!held || sooner(one, held)) best.set(key, held ? { ...one, ...most(one, held) } : one);
    else best.set(key, { ...held, ...most(one, held) });
  }
  return [...best.values()].sort(
    (a, b) =>
      (a.do === "stop" ? 0 : 1) - (b.do === "stop" ? 0 : 1) ||
      soon(a.when) - soon(b.when) ||
      place(a.rule) - place(b.rule),
  );
}

function sooner(one: FollowUp, held: FollowUp): boolean {
  return soon(one.when) < soon(held.when) || (soon(one.when) === soon(held.when) && place(one.rule) < place(held.rule));
}

/** The same thing wanted twice is wanted once, in the greater number. */
function most(one: FollowUp, held: FollowUp): { count?: number } {
  const count = Math.max(one.count ?? 0, held.count ?? 0);
  return count > 0 ? { count } : {};
}
