import type { Example } from "./example.ts";

/** Findings told by the way: what is not there, where a thing was found, what was asked, how many, what made it so. */
export const WHEREABOUTS_EXAMPLES: readonly Example[] = [
  {
    rule: "part_missing",
    say: "there's no lock nut on the stem",
    gives: [{ type: "finding", condition: "missing", part: "lock_nut" }],
    why: "and no lock on a block valve either",
  },
  {
    rule: "part_missing",
    say: "cage didn't have an O-ring",
    gives: [{ type: "finding", condition: "missing", part: "cage_o_ring" }],
  },
  {
    rule: "part_missing",
    say: "wasn't a gasket under the bonnet",
    gives: [{ type: "finding", condition: "missing", part: "bonnet_gasket" }],
  },
  {
    rule: "part_missing",
    say: "no breather on it, put one in",
    gives: [{ type: "finding", condition: "missing", part: "breather" }],
  },
  { not: "part_missing", say: "no leak at the gasket" },
  { not: "part_missing", say: "seat's worn, no, the plug", why: "the slip of a tongue" },
  { not: "part_missing", say: "didn't have a seat on the truck", why: "where it was wanted from" },

  {
    rule: "finding_does",
    say: "leak at the fitting on the positioner, remade it",
    gives: [{ type: "finding", condition: "leaking", part: "fitting" }],
    why: "the second part tells where the first is",
  },
  {
    rule: "finding_has",
    say: "crack in the yoke by the bonnet, not too bad",
    gives: [{ type: "finding", condition: "cracked", part: "yoke", severity: "slight" }],
  },
  {
    rule: "finding_has",
    say: "rust on the bolts and in the housing",
    gives: [
      { type: "finding", condition: "corroded", part: "bolting" },
      { type: "finding", condition: "corroded", part: "housing" },
    ],
  },
  {
    rule: "finding_is",
    say: "bonnet bolts aren't tight",
    gives: [{ type: "finding", condition: "loose", part: "bonnet_bolting" }],
    why: "what is said with 'not' is said with any denial",
  },
  { rule: "finding_is", say: "stem isn't straight", gives: [{ type: "finding", condition: "bent", part: "stem" }] },
  {
    rule: "finding_is",
    say: "vent's not clear",
    gives: [{ type: "finding", condition: "plugged", part: "vent_hole" }],
  },
  { rule: "finding_is", say: "cage wasn't clean", gives: [{ type: "finding", condition: "fouled", part: "cage" }] },
  {
    rule: "finding_is",
    say: "why is the packing loose",
    gives: [{ type: "finding", condition: "loose", part: "packing" }],
    why: "it is, whatever the reason",
  },
  { not: "finding_is", say: "which side is worn, inlet?", why: "asked, and not yet seen" },
  { not: "finding_is", say: "how do I know if the seat is worn" },
  { not: "finding_is", say: "is the seat worn or not" },
  {
    rule: "finding_is",
    say: "is the stem bent? let me roll it, nope, it's straight",
    gives: [
      { type: "finding", condition: "bent", part: "stem", absent: true },
      { type: "finding", condition: "ok", part: "stem" },
    ],
    why: "the answer is the question's, and what follows it is not denied",
  },

  {
    rule: "finding_is",
    say: "hole of the vent was closed with mud",
    gives: [{ type: "finding", condition: "plugged", part: "vent_hole" }],
    why: "a name turned round is the name",
  },
  {
    rule: "finding_is",
    say: "port of supply is dirty",
    gives: [{ type: "finding", condition: "fouled", part: "supply_port" }],
  },
  {
    rule: "finding_does",
    say: "packing of the valve leaks",
    gives: [{ type: "finding", condition: "leaking", part: "packing" }],
  },
  {
    rule: "finding_does",
    say: "pilot is blowing by",
    gives: [{ type: "finding", condition: "leaking", part: "pilot" }],
    why: "what passes is the pilot, and not the seat",
  },
  {
    rule: "finding_does",
    say: "diaphragm case is leaking air around the bolts",
    gives: [{ type: "finding", condition: "leaking", part: "housing" }],
    why: "bolts hold, what they hold leaks",
  },
  { not: "finding_is", say: "that bonnet she wore to church" },

  {
    rule: "finding_is",
    say: "bolts were rusted, snapped two",
    gives: [
      { type: "finding", condition: "corroded", part: "bolting" },
      { type: "finding", condition: "broken", part: "bolting", count: 2 },
    ],
    why: "so many of what was named",
  },
  {
    rule: "finding_is",
    say: "two bolts bent, three broken",
    gives: [
      { type: "finding", condition: "bent", part: "bolting", count: 2 },
      { type: "finding", condition: "broken", part: "bolting", count: 3 },
    ],
  },
  {
    rule: "finding_is",
    say: "tubing split from the frost",
    gives: [{ type: "finding", condition: "cracked", part: "tubing" }],
    why: "what made it so is no second finding",
  },
  {
    rule: "finding_is",
    say: "handwheel's froze, greased it and she came loose",
    gives: [{ type: "finding", condition: "seized", part: "handwheel" }],
    why: "free again is no fault",
  },
  {
    rule: "finding_is",
    say: "the positioner's feedback arm came unhooked",
    gives: [{ type: "finding", condition: "loose", part: "linkage" }],
  },
  {
    rule: "finding_is",
    say: "gasket's baked onto the bonnet",
    gives: [{ type: "finding", condition: "fouled", part: "gasket" }],
  },
  {
    rule: "finding_is",
    say: "salt done ate the bonnet studs",
    gives: [{ type: "finding", condition: "corroded", part: "bonnet_bolting" }],
  },
  {
    rule: "finding_has",
    say: "mud daubers built in the breather",
    gives: [{ type: "finding", condition: "plugged", part: "breather" }],
  },
  { not: "finding_is", say: "there's a nut loose behind the wheel of that truck" },
  { not: "finding_is", say: "uh no uh the cage, put it back", why: "the no denies nothing" },

  {
    rule: "finding_is",
    say: "item two, bonnet, acceptable",
    gives: [{ type: "finding", condition: "ok", part: "bonnet" }],
    why: "which item, and not how many bonnets",
  },
  {
    rule: "finding_is",
    say: "number three stud is broken",
    gives: [{ type: "finding", condition: "broken", part: "bolting" }],
  },
  { not: "finding_is", say: "the copier in the office is jammed", why: "no cover, whatever it sounds like" },
  { not: "finding_is", say: "he's got two bad discs in his back" },
  {
    rule: "finding_is",
    say: "packing's about shot",
    gives: [{ type: "finding", condition: "damaged", part: "packing" }],
  },

  {
    rule: "finding_has",
    say: "sand on the stem",
    gives: [{ type: "finding", condition: "fouled", part: "stem" }],
    why: "the dirt and where it is, and no order to sand it",
  },
  {
    rule: "finding_has",
    say: "trash in the cage",
    gives: [{ type: "finding", condition: "fouled", part: "cage" }],
  },
  {
    rule: "finding_has",
    say: "plug has build up on it",
    gives: [{ type: "finding", condition: "fouled", part: "plug" }],
  },
  {
    rule: "finding_is",
    say: "diaphragm might be shot",
    gives: [{ type: "finding", condition: "damaged", part: "diaphragm", unsure: true }],
  },
  {
    rule: "finding_is",
    say: "the spring could be tired",
    gives: [{ type: "finding", condition: "weak", part: "spring", unsure: true }],
  },
  { rule: "finding_is", say: "the stem was good", gives: [{ type: "finding", condition: "ok", part: "stem" }] },
  {
    rule: "finding_is",
    say: "stem looks not straight",
    gives: [{ type: "finding", condition: "bent", part: "stem" }],
    why: "no lock nut, whatever it sounds like",
  },
  {
    rule: "finding_has",
    say: "rust on the ball",
    gives: [{ type: "finding", condition: "corroded", part: "plug" }],
  },

  {
    rule: "finding_is",
    say: "handwheel's missing a bolt",
    gives: [{ type: "finding", condition: "missing", part: "bolting" }],
    why: "what is missing stands behind",
  },
  {
    rule: "finding_is",
    say: "every one of the bolts is rusted",
    gives: [{ type: "finding", condition: "corroded", part: "bolting" }],
  },
  {
    rule: "finding_has",
    say: "inside of the body has rust",
    gives: [{ type: "finding", condition: "corroded", part: "body", place: "inside" }],
  },

  {
    rule: "finding_is",
    say: "lock nut keeps backing off",
    gives: [{ type: "finding", condition: "loose", part: "lock_nut" }],
    why: "no packing, whatever it sounds like",
  },
  {
    rule: "finding_does",
    say: "outlet threads are starting to gall",
    gives: [{ type: "finding", condition: "galled", part: "outlet_threads", severity: "slight" }],
  },
  { not: "finding_is", say: "regulator was full of water", why: "nothing that fouls it" },
  { not: "finding_has", say: "he dropped a bolt in the mud", why: "where it lies" },

  {
    rule: "finding_is",
    say: "one bolt gone out the bonnet, other three rusty",
    gives: [
      { type: "finding", condition: "missing", part: "bonnet_bolting", count: 1 },
      { type: "finding", condition: "corroded", part: "bonnet_bolting", count: 3 },
    ],
    why: "whose they are stands behind what was found, and the others are of the same",
  },
  {
    rule: "finding_has",
    say: "little rust down inside the body",
    gives: [{ type: "finding", condition: "corroded", part: "body", severity: "slight", place: "inside" }],
  },
  {
    rule: "finding_is",
    say: "breather hole full of mud",
    gives: [{ type: "finding", condition: "plugged", part: "breather" }],
    why: "its own hole, and none that should not be there",
  },
  {
    rule: "finding_is",
    say: "breather has a hole in it",
    gives: [{ type: "finding", condition: "holed", part: "breather" }],
  },
];
