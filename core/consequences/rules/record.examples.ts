import { type Example, found, job, worked } from "../example.ts";

export const RECORD_EXAMPLES: Example[] = [
  {
    rule: "work_owed",
    about: "wanted, not done",
    say: [worked("greased", "stem", "needed")],
    gives: [{ do: "grease", part: "stem", when: "now" }],
  },
  {
    rule: "work_owed",
    about: "wanted at an earlier job",
    before: [job("2025-09-02", worked("tightened", "packing_nut", "needed"))],
    say: [found("stem", "ok")],
    gives: [{ do: "tighten", part: "packing_nut", when: "now" }],
  },
  {
    rule: "work_owed",
    about: "wanted, then done",
    say: [worked("replaced", "strainer", "needed"), worked("replaced", "strainer")],
    gives: [],
  },
  {
    rule: "work_owed",
    about: "a new part wants none of the old one's work",
    before: [job("2025-09-02", worked("cleaned", "cage", "needed"))],
    say: [worked("replaced", "cage")],
    gives: [],
  },
  {
    rule: "work_owed",
    about: "left in with a fault",
    say: [found("stem", "bent"), worked("replaced", "stem", "declined")],
    gives: [{ do: "replace", part: "stem", when: "now" }],
  },
  {
    rule: "work_owed",
    about: "left in, and nothing wrong with it",
    say: [worked("replaced", "spring", "declined")],
    gives: [],
  },
  {
    rule: "work_owed",
    about: "a look wanted, and found good: it was looked at",
    before: [job("2025-09-02", worked("inspected", "cage", "needed"))],
    say: [found("cage", "ok")],
    gives: [],
  },
  {
    rule: "part_owed",
    about: "asked for, with its number",
    say: [{ type: "need", part: "bonnet_gasket", count: 2 }],
    gives: [{ do: "order", part: "bonnet_gasket", when: "now", count: 2 }],
  },
  {
    rule: "part_owed",
    about: "asked for then, fitted since",
    before: [job("2025-09-02", { type: "need", part: "stem" })],
    say: [worked("replaced", "stem")],
    gives: [],
  },
  {
    rule: "part_owed",
    about: "fitted, and one more asked for",
    say: [worked("replaced", "stem"), { type: "need", part: "stem" }],
    gives: [{ do: "order", part: "stem" }],
  },
];
