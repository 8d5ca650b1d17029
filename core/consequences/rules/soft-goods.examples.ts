import { type Example, found, GLOBE, job, tested, worked } from "../example.ts";

export const SOFT_GOODS_EXAMPLES: Example[] = [
  {
    rule: "soft_goods_reused",
    about: "a gasket put back in",
    say: [worked("reused", "bonnet_gasket")],
    gives: [{ do: "replace", part: "bonnet_gasket", when: "next_inspection" }],
  },
  { rule: "soft_goods_reused", about: "a stem is no soft good", say: [worked("reused", "stem")], gives: [] },
  {
    rule: "soft_goods_reused",
    about: "put back and then replaced after all",
    say: [worked("reused", "gasket"), worked("replaced", "gasket")],
    gives: [],
  },
  {
    rule: "fault_carried",
    about: "reused then, found ok now: owed until replaced",
    before: [job("2025-09-02", worked("reused", "lower_diaphragm"))],
    say: [found("lower_diaphragm", "ok")],
    gives: [{ do: "replace", part: "lower_diaphragm", when: "now" }],
  },
  {
    rule: "fault_carried",
    about: "reused then, the kit replaced since",
    before: [job("2025-06-02", worked("reused", "lower_diaphragm")), job("2025-09-02", worked("replaced", "kit"))],
    say: [],
    gives: [],
  },
  {
    rule: "soft_goods_bad",
    about: "torn",
    say: [found("diaphragm", "torn")],
    gives: [{ do: "replace", part: "diaphragm", when: "now" }],
  },
  {
    rule: "soft_goods_bad",
    about: "fouled is cleaned",
    say: [found("cage_gasket", "fouled")],
    gives: [{ do: "clean", part: "cage_gasket", when: "now" }],
  },
  {
    rule: "soft_goods_bad",
    about: "the word named more closely when replaced",
    say: [found("diaphragm", "torn"), worked("replaced", "upper_diaphragm")],
    gives: [],
  },
  {
    rule: "soft_goods_bad",
    about: "all the seals replaced",
    say: [found("cage_o_ring", "cut"), worked("replaced", "seals")],
    gives: [],
  },
  {
    rule: "soft_goods_bad",
    about: "another gasket was replaced",
    say: [found("seat_gasket", "cut"), worked("replaced", "bonnet_gasket")],
    gives: [{ do: "replace", part: "seat_gasket" }],
  },
  {
    rule: "soft_goods_bad",
    about: "packing leaking is taken up and tested",
    valve: GLOBE,
    say: [found("packing", "leaking")],
    gives: [
      { do: "adjust", part: "packing", when: "now" },
      { do: "retest", test: "packing", when: "now" },
    ],
  },
  {
    rule: "soft_goods_bad",
    about: "taken up, not tested yet",
    valve: GLOBE,
    say: [found("packing", "leaking"), worked("adjusted", "packing")],
    gives: [{ do: "retest", test: "packing" }],
  },
  {
    rule: "soft_goods_bad",
    about: "taken up and tested",
    valve: GLOBE,
    say: [found("packing", "leaking"), worked("tightened", "packing"), tested("packing", "pass")],
    gives: [],
  },
  {
    rule: "soft_goods_bad",
    about: "thrown away and none fitted",
    say: [worked("discarded", "seat_gasket")],
    gives: [{ do: "replace", part: "seat_gasket", when: "now" }],
  },
  {
    rule: "soft_goods_bad",
    about: "thrown away and a new one in",
    say: [worked("discarded", "seat_gasket"), worked("installed", "seat_gasket")],
    gives: [],
  },
  {
    rule: "unsure_finding",
    about: "may be torn",
    say: [found("diaphragm", "torn", { unsure: true })],
    gives: [{ do: "inspect", part: "diaphragm", when: "now" }],
  },
  {
    rule: "unsure_finding",
    about: "doubted, then looked at and good",
    say: [found("diaphragm", "torn", { unsure: true }), found("diaphragm", "ok")],
    gives: [],
  },
];
