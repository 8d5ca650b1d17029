import type { Example } from "./example.ts";

/** Work told by the way: asked for, counted behind, done while something else broke, ordered, thrown away. */
export const DEED_EXAMPLES: readonly Example[] = [
  { not: "work_done", say: "did I grease the stem", why: "asked, and not told" },
  { not: "work_done", say: "do I replace this gasket? I guess I do" },
  { not: "work_needed", say: "seat's worn, should I flip it or replace it" },
  { not: "reused", say: "can I reuse this diaphragm" },
  {
    rule: "work_done",
    say: "did I grease the stem? yes",
    gives: [{ type: "work", work: "greased", status: "done", part: "stem" }],
  },
  {
    rule: "work_done",
    say: "not only did I lap the seat",
    gives: [{ type: "work", work: "lapped", status: "done", part: "seat" }],
    why: "turned round, and not asked",
  },

  {
    rule: "work_done",
    say: "replaced the bonnet bolts, four of them",
    gives: [{ type: "work", work: "replaced", status: "done", part: "bonnet_bolting", count: 4 }],
    why: "how many may be said behind",
  },
  {
    rule: "new_part",
    say: "new packing, five rings",
    gives: [{ type: "work", work: "replaced", status: "done", part: "packing", count: 5 }],
  },
  {
    rule: "work_done",
    say: "changed the O-rings, both of them",
    gives: [{ type: "work", work: "replaced", status: "done", part: "o_ring", count: 2 }],
  },
  {
    rule: "work_done",
    say: "busted a stud getting the bonnet off",
    gives: [{ type: "work", work: "removed", status: "done", part: "bonnet" }],
    why: "what one was at when it happened",
  },
  {
    rule: "work_done",
    say: "stripped the threads tightening the gland nut",
    gives: [{ type: "work", work: "tightened", status: "done", part: "packing_nut" }],
  },
  { not: "work_done", say: "found a torn diaphragm, replacing it", why: "that is yet to be done" },
  {
    rule: "work_done",
    say: "bonnet removed, four studs replaced",
    gives: [
      { type: "work", work: "removed", status: "done", part: "bonnet" },
      { type: "work", work: "replaced", status: "done", part: "bolting", count: 4 },
    ],
    why: "what stands behind has a verb of its own",
  },
  {
    rule: "work_done",
    say: "drained the water out of the air set",
    gives: [{ type: "work", work: "drained", status: "done", part: "regulator" }],
  },
  { not: "work_done", say: "he got run off that lease", why: "nobody got a part off" },
  {
    rule: "placed_replaced",
    say: "gauge is bad, put a spare on",
    gives: [{ type: "work", work: "replaced", status: "done", part: "gauge" }],
  },
  {
    rule: "placed_replaced",
    say: "spring's weak, we ought to put another one in",
    gives: [{ type: "work", work: "replaced", status: "needed", part: "spring" }],
  },
  {
    rule: "new_part",
    say: "tubing is kinked, ran a new piece",
    gives: [{ type: "work", work: "replaced", status: "done", part: "tubing" }],
  },

  { rule: "need", say: "stem's bent, on order", gives: [{ type: "need", part: "stem" }] },
  { rule: "need", say: "diaphragm is torn, order a spare", gives: [{ type: "need", part: "diaphragm" }] },
  { rule: "need", say: "kindly bring two pcs cage gasket", gives: [{ type: "need", part: "cage_gasket", count: 2 }] },
  { not: "need", say: "lunch is on order" },
  {
    rule: "needs_part",
    say: "bonnet studs are stripped, gonna need eight",
    gives: [{ type: "work", work: "replaced", status: "needed", part: "bonnet_bolting", count: 8 }],
  },
  {
    rule: "placed_discarded",
    say: "threw that old cage in the bayou",
    gives: [{ type: "work", work: "discarded", status: "done", part: "cage" }],
    why: "away, and not in again",
  },
  { not: "placed_discarded", say: "threw the old spring back in" },
  {
    rule: "work_done",
    say: "plug and seat lapping done",
    gives: [
      { type: "work", work: "lapped", status: "done", part: "plug" },
      { type: "work", work: "lapped", status: "done", part: "seat" },
    ],
    why: "named, and then done",
  },
  {
    rule: "work_done",
    say: "gland tightening completed",
    gives: [{ type: "work", work: "tightened", status: "done", part: "packing_nut" }],
  },

  {
    rule: "work_done",
    say: ["seat's washed out, plug's scored", "both were replaced"],
    gives: [
      { type: "work", work: "replaced", status: "done", part: "seat" },
      { type: "work", work: "replaced", status: "done", part: "plug" },
    ],
  },
  {
    rule: "work_done",
    say: "run the gland down till she quit weeping",
    gives: [{ type: "work", work: "tightened", status: "done", part: "packing_nut" }],
    why: "it was done until then",
  },
  {
    rule: "by_tool",
    say: ["stem's scored where it rides in the bushing", "hit it with some emery"],
    gives: [{ type: "work", work: "dressed", status: "done", part: "stem" }],
    why: "where the stem rides is no new subject",
  },

  {
    rule: "work_done",
    say: "cut the bonnet bolts off",
    gives: [{ type: "work", work: "removed", status: "done", part: "bonnet_bolting" }],
    why: "past and order are the same word, and what is told is done",
  },
  { not: "work_done", say: "need to cut the bonnet bolts off" },
  {
    rule: "is_off",
    say: "need to get the bonnet off",
    gives: [{ type: "work", work: "removed", status: "needed", part: "bonnet" }],
  },
  {
    rule: "work_needed",
    say: "bring that nut up snug",
    gives: [{ type: "work", work: "tightened", status: "needed", part: "nut" }],
    why: "tightened, and not brought along",
  },

  { not: "new_part", say: "seat's worn, didn't have a new one so I flipped it", why: "none to put in" },
  { not: "new_part", say: "somebody buy a new one", why: "bought, and not put in yet" },
  {
    rule: "new_part",
    say: "waiting on a new seat",
    gives: [{ type: "work", work: "replaced", status: "needed", part: "seat" }],
  },
  { not: "work_declined", say: "the new seat doesn't fit" },
  { not: "work_declined", say: "regulator won't adjust", why: "what it does not do, and nobody's choice" },
  { not: "work_needed", say: "packing nut is snug" },
  { not: "work_done", say: "can't tell till I get the seat out", why: "not yet" },
  { not: "work_done", say: "won't know until I pull the bonnet" },
  { not: "work_done", say: "it'll hold if I flip it" },
  {
    rule: "work_needed",
    say: "have the instrument guys look at the positioner",
    gives: [{ type: "work", work: "inspected", status: "needed", part: "positioner" }],
    why: "asked of others",
  },
  {
    rule: "work_done",
    say: "checked the torque on the bonnet bolts",
    gives: [{ type: "work", work: "inspected", status: "done", part: "bonnet_bolting" }],
  },
  {
    rule: "work_done",
    say: "had a hard time getting the seat out",
    gives: [{ type: "work", work: "removed", status: "done", part: "seat" }],
  },

  {
    rule: "work_needed",
    say: "body's eroded right below the seat, it'll need a weld repair",
    gives: [{ type: "work", work: "repaired", status: "needed", part: "body" }],
    why: "the body's, wherever on it",
  },
  { not: "work_done", say: "pulled up on P V five fifteen", why: "there, and nothing was pulled" },
  { not: "placed_installed", say: "he dropped a bolt in the mud" },

  {
    rule: "need",
    say: ["order me a stem", "and a gland nut"],
    gives: [
      { type: "need", part: "stem" },
      { type: "need", part: "packing_nut" },
    ],
  },
  {
    rule: "copied",
    say: ["replaced the seat", "plus the plug"],
    gives: [{ type: "work", work: "replaced", status: "done", part: "plug" }],
  },
  {
    not: "copied",
    say: ["seat's worn", "and the bonnet bolts", "torqued to thirty"],
    why: "it begins what is said next",
  },
  {
    rule: "by_tool",
    say: "studs are rusty, ran a die over the rest",
    gives: [{ type: "work", work: "dressed", status: "done", part: "bolting" }],
  },

  {
    rule: "work_done",
    say: "stem was checked for straightness",
    gives: [{ type: "work", work: "inspected", status: "done", part: "stem" }],
  },
  { not: "work_done", say: "stem was checked for cracks", why: "what was looked for is said" },
  {
    rule: "work_done",
    say: "debris in the strainer was removed",
    gives: [{ type: "work", work: "cleaned", status: "done", part: "strainer" }],
    why: "the debris, and not the strainer",
  },
  {
    rule: "new_part",
    say: "seat's new, plug's worn",
    gives: [{ type: "work", work: "replaced", status: "done", part: "seat" }],
  },
  {
    rule: "needs_part",
    say: "two gaskets will be required",
    gives: [{ type: "work", work: "replaced", status: "needed", part: "gasket", count: 2 }],
  },
  { rule: "need", say: "the kit has to be ordered", gives: [{ type: "need", part: "kit" }] },
  { rule: "need", say: "new packing is on order", gives: [{ type: "need", part: "packing" }] },
];
