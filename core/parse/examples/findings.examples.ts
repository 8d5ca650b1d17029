import type { Example } from "./example.ts";

export const FINDING_EXAMPLES: readonly Example[] = [
  {
    rule: "finding_is",
    say: "seat's worn one side",
    gives: [{ type: "finding", condition: "worn", part: "seat", extent: "one_side" }],
  },
  {
    rule: "finding_is",
    say: "plug and seat both worn",
    gives: [
      { type: "finding", condition: "worn", part: "plug" },
      { type: "finding", condition: "worn", part: "seat" },
    ],
  },
  {
    rule: "finding_is",
    say: "worn seat",
    gives: [{ type: "finding", condition: "worn", part: "seat" }],
    why: "the word may stand before its part",
  },
  {
    rule: "finding_is",
    say: ["seat's worn", "and pitted bad"],
    gives: [
      { type: "finding", condition: "worn", part: "seat" },
      { type: "finding", condition: "pitted", part: "seat", severity: "severe" },
    ],
    why: "the part is carried",
  },
  {
    rule: "finding_is",
    say: "Dave says the seat's shot, I found the plug scored",
    gives: [{ type: "finding", condition: "scored", part: "plug" }],
    why: "what Dave says was not found here, and stays unread",
  },
  {
    rule: "finding_is",
    say: "like I said the seat is worn",
    gives: [{ type: "finding", condition: "worn", part: "seat" }],
  },
  {
    rule: "finding_is",
    say: "the stem threads are stripped",
    gives: [{ type: "finding", condition: "stripped", part: "threads" }],
    why: "two names side by side are one thing, named by its last word",
  },
  {
    rule: "finding_is",
    say: "tubing to the actuator is kinked",
    gives: [{ type: "finding", condition: "kinked", part: "tubing" }],
    why: "the second part only tells where the first is",
  },
  {
    rule: "finding_is",
    say: "the O-ring on the cage is cut",
    gives: [{ type: "finding", condition: "cut", part: "cage_o_ring" }],
  },
  { not: "finding_is", say: "the seat was worn two days ago", why: "of another day" },
  { not: "finding_is", say: "last week the seat was worn" },
  { not: "finding_is", say: "supply was at eighteen, bumped it up to twenty" },
  { not: "finding_is", say: "the operator told me the seat was worn" },
  { not: "finding_is", say: "my boots are worn out", why: "nothing of a valve is worn" },
  { not: "finding_is", say: "seat was worn last time", why: "another visit's finding" },

  {
    rule: "finding_has",
    say: "found a crack in the cage",
    gives: [{ type: "finding", condition: "cracked", part: "cage" }],
  },
  {
    rule: "finding_has",
    say: "there's some scale on the stem",
    gives: [{ type: "finding", condition: "fouled", part: "stem", severity: "slight" }],
  },
  { not: "finding_has", say: "crack of dawn start tomorrow" },
  { not: "finding_has", say: "cleaned the scale off the stem", why: "what the cleaning took away is the work's" },

  {
    rule: "finding_does",
    say: "packing leaks a little",
    gives: [{ type: "finding", condition: "leaking", part: "packing", severity: "slight" }],
  },
  { not: "finding_does", say: "Dave says it was leaking" },
  { not: "finding_does", say: "it leaks by at sixty psi", why: "through the seat, under pressure: that is the test" },
  { not: "finding_does", say: "my truck leaks oil" },

  {
    rule: "finding_absent",
    say: "no cracks or pitting on the plug",
    gives: [
      { type: "finding", condition: "cracked", part: "plug", absent: true },
      { type: "finding", condition: "pitted", part: "plug", absent: true },
    ],
    why: "the no reaches over the or",
  },
  {
    rule: "finding_absent",
    say: "stem isn't bent",
    gives: [{ type: "finding", condition: "bent", part: "stem", absent: true }],
  },
  { not: "finding_absent", say: "no leak at sixty psi", why: "a verdict on the seat" },
  { not: "finding_absent", say: "nothing wrong with the plug", why: "that is `ok`, not a damage looked for" },

  {
    rule: "finding_inside",
    say: "replaced the torn diaphragm",
    gives: [{ type: "finding", condition: "torn", part: "diaphragm" }],
    why: "what was found stands inside the name of what was replaced",
  },
  {
    rule: "finding_immovable",
    say: "couldn't get the seat out",
    gives: [{ type: "finding", condition: "seized", part: "seat" }],
  },
  { not: "finding_immovable", say: "couldn't get the seat today", why: "nothing says that it would not come" },
  { not: "finding_inside", say: "replaced the old diaphragm" },

  {
    rule: "finding_denied",
    say: "upper diaphragm is torn, lower one isn't",
    gives: [{ type: "finding", condition: "torn", part: "lower_diaphragm", absent: true }],
  },
  { not: "finding_denied", say: "upper diaphragm is torn, lower one is too" },

  {
    rule: "finding_is",
    say: "never saw a stem bent that bad",
    gives: [{ type: "finding", condition: "bent", part: "stem", severity: "severe" }],
    why: "what was never seen before is seen now",
  },
  {
    rule: "finding_is",
    say: "never seen a gasket flattened like that",
    gives: [{ type: "finding", condition: "flattened", part: "gasket" }],
  },
  { not: "finding_is", say: "never saw a crack in it" },
  {
    rule: "finding_is",
    say: "guide's gummed up with paraffin",
    gives: [{ type: "finding", condition: "fouled", part: "guide" }],
    why: "the dirt, and not the drag it makes",
  },
  {
    rule: "finding_is",
    say: "pilot is gummed up with old grease",
    gives: [{ type: "finding", condition: "fouled", part: "pilot" }],
  },
  {
    rule: "finding_is",
    say: "stem's gummed up",
    gives: [{ type: "finding", condition: "sticking", part: "stem" }],
  },
  {
    rule: "finding_is",
    say: "stem's scored where the packing rides",
    gives: [{ type: "finding", condition: "scored", part: "stem" }],
  },
  {
    rule: "work_done",
    say: "seat's worn where the plug sits, lapped it",
    gives: [{ type: "work", work: "lapped", status: "done", part: "seat" }],
    why: "where it is worn is no new subject",
  },
  {
    rule: "work_done",
    say: "took me an hour to get the bonnet off",
    gives: [{ type: "work", work: "removed", status: "done", part: "bonnet" }],
  },
  {
    rule: "work_done",
    say: "managed to pull the seat",
    gives: [{ type: "work", work: "removed", status: "done", part: "seat" }],
  },
  { not: "work_done", say: "going to take an hour to get the bonnet off" },
  {
    rule: "placed_replaced",
    say: ["one stud's missing", "put new"],
    gives: [{ type: "work", work: "replaced", status: "done", part: "bolting" }],
  },
  {
    rule: "placed_replaced",
    say: "o ring is cut so i put new",
    gives: [{ type: "work", work: "replaced", status: "done", part: "o_ring" }],
  },
  { not: "placed_replaced", say: ["seat's worn", "put new tires on the truck"] },
  {
    rule: "placed_replaced",
    say: "they would have reused the seat, I put a new one in",
    gives: [{ type: "work", work: "replaced", status: "done", part: "seat" }],
    why: "what would have been done was not",
  },
  { not: "left_old_in", say: "we'd have run that gasket again but I replaced it" },

  {
    rule: "finding_is",
    say: "plug, stem both worn",
    gives: [
      { type: "finding", condition: "worn", part: "plug" },
      { type: "finding", condition: "worn", part: "stem" },
    ],
    why: "two of them, though a plug stem is a stem",
  },
  {
    rule: "finding_is",
    say: "cage gasket both hard and cracked",
    gives: [
      { type: "finding", condition: "hardened", part: "cage_gasket" },
      { type: "finding", condition: "cracked", part: "cage_gasket" },
    ],
  },
  {
    rule: "finding_is",
    say: "four bolts bad, the rest are fine",
    gives: [
      { type: "finding", condition: "damaged", part: "bolting", count: 4 },
      { type: "finding", condition: "ok", part: "bolting" },
    ],
  },
  {
    rule: "finding_is",
    say: "three, four bolts loose",
    gives: [{ type: "finding", condition: "loose", part: "bolting" }],
    why: "nobody counted",
  },
  { rule: "finding_is", say: ["threads", "good"], gives: [{ type: "finding", condition: "ok", part: "threads" }] },
  { not: "finding_is", say: "greased it good", why: "how well, and not how it was" },

  {
    rule: "finding_has",
    say: "a crack was found in the yoke",
    gives: [{ type: "finding", condition: "cracked", part: "yoke" }],
  },
  {
    rule: "finding_has",
    say: "some scoring was visible on the plug",
    gives: [{ type: "finding", condition: "scored", part: "plug", severity: "slight" }],
  },
  {
    rule: "finding_has",
    say: "scale had built up inside the cage",
    gives: [{ type: "finding", condition: "fouled", part: "cage", place: "inside" }],
    why: "nobody built it up",
  },
  {
    rule: "finding_does",
    say: ["packing's leaking", "bonnet is washed where it was leaking"],
    gives: [{ type: "finding", condition: "leaking", part: "packing" }],
    why: "where it is washed, and no second finding",
  },
  {
    rule: "copied",
    say: ["pilot ain't leaking", "supply fitting still is"],
    gives: [{ type: "finding", condition: "leaking", part: "fitting" }],
  },
  {
    rule: "copied",
    say: ["plug is worn", "the same goes for the seat"],
    gives: [{ type: "finding", condition: "worn", part: "seat" }],
  },
];
