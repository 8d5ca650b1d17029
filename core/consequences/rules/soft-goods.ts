import type { Work } from "../../shapes/codes.ts";
import { isSoft } from "../parts.ts";
import { type Owed, PRACTICE, type Rule } from "../rule.ts";
import { isFault, isSound } from "../visit.ts";
import { spoken } from "../words.ts";

/** Seals, diaphragms, gaskets, rings and packing: cheap, and spoilt by being taken apart. */

const FITTED: readonly Work[] = ["replaced", "installed"];

export const SOFT_GOODS_RULES: Rule[] = [
  {
    rule: "soft_goods_reused",
    source: PRACTICE,
    reads: "faults",
    owes: (visit, bench) =>
      visit.entries.flatMap((entry): Owed[] =>
        entry.type === "work" &&
        entry.work === "reused" &&
        entry.status === "done" &&
        !entry.unsure &&
        entry.part &&
        isSoft(entry.part, bench.family)
          ? [
              {
                do: "replace",
                part: entry.part,
                when: "next_inspection",
                why: `flagged: ${spoken(entry.part)} reused; a soft good that was taken out is replaced next time`,
                count: entry.count,
                stays: true,
              },
            ]
          : [],
      ),
  },
  {
    rule: "soft_goods_bad",
    source: PRACTICE,
    reads: "faults",
    owes: (visit, bench) =>
      visit.entries.flatMap((entry): Owed[] => {
        const part = entry.type === "finding" || entry.type === "work" ? entry.part : undefined;
        if (!part || !isSoft(part, bench.family)) return [];
        if (entry.type === "work" && entry.work === "discarded" && entry.status === "done" && !entry.unsure)
          return [
            {
              do: "replace",
              part,
              when: "now",
              why: `${spoken(part)} discarded and none fitted`,
              by: FITTED,
              count: entry.count,
            },
          ];
        if (!isFault(entry)) return [];
        const on = { part, when: "now", finding: entry } as const;
        if (entry.condition === "fouled" || entry.condition === "dirty")
          return [{ ...on, do: "clean", why: `${spoken(part)} fouled`, by: ["cleaned", "replaced"] }];
        if (part === "packing" && entry.condition === "leaking")
          return [
            {
              ...on,
              do: "adjust",
              why: "packing leaking: take up the packing nut evenly",
              by: ["adjusted", "tightened", "replaced"],
              settled: (later) =>
                later.at > visit.at &&
                later.entries.some((one) => one.type === "test" && one.test === "packing" && one.result === "pass"),
            },
            {
              do: "retest",
              when: "now",
              test: "packing",
              why: "packing was leaking: test it again once adjusted",
              finding: entry,
              by: [],
              settled: (other, later) =>
                other.entries.some(
                  (one) =>
                    (one.type === "test" && one.test === "packing" && one.result !== null) ||
                    (one.type === "work" &&
                      one.part === "packing" &&
                      one.work === "replaced" &&
                      one.status === "done") ||
                    (later && one.type === "finding" && one.part === "packing" && isSound(one)),
                ),
            },
          ];
        const by: readonly Work[] = entry.condition === "missing" ? FITTED : ["replaced"];
        return [
          {
            ...on,
            do: "replace",
            why: `${spoken(part)} ${entry.condition.replaceAll("_", " ")}`,
            by,
            count: entry.count,
          },
        ];
      }),
  },
];
