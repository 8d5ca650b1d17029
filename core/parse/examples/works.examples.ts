import type { Example } from "./example.ts";

export const WORK_EXAMPLES: readonly Example[] = [
  {
    rule: "reused",
    say: "no way that seat is going back in",
    gives: [{ type: "work", work: "reused", status: "declined", part: "seat" }],
    why: "what is denied so is denied across its part",
  },
  {
    rule: "left",
    say: "skipped the packing this time",
    gives: [{ type: "work", work: "replaced", status: "declined", part: "packing" }],
  },
  {
    rule: "left",
    say: "gonna leave the cage, it's fine",
    gives: [{ type: "work", work: "replaced", status: "declined", part: "cage" }],
  },
  {
    rule: "work_done",
    say: "repacked the valve",
    gives: [{ type: "work", work: "replaced", status: "done", part: "packing" }],
    why: "what was renewed is the packing",
  },
  {
    rule: "work_done",
    say: "took the rust off the body",
    gives: [{ type: "work", work: "cleaned", status: "done", part: "body" }],
    why: "what came off is dirt",
  },
  { not: "work_needed", say: "gauge reads zero" },
  { not: "work_needed", say: "the stud sheared off flush" },
  {
    rule: "work_done",
    say: "replaced four bonnet bolts",
    gives: [{ type: "work", work: "replaced", status: "done", part: "bonnet_bolting", count: 4 }],
  },
  {
    rule: "work_done",
    say: "seat worn, flipped it",
    gives: [{ type: "work", work: "flipped", status: "done", part: "seat" }],
  },
  {
    rule: "work_done",
    say: "had to replace the packing",
    gives: [{ type: "work", work: "replaced", status: "done", part: "packing" }],
    why: "it was done because it had to be",
  },
  {
    rule: "work_done",
    say: ["bonnet bolts were loose", "replaced two studs"],
    gives: [{ type: "work", work: "replaced", status: "done", part: "bonnet_bolting", count: 2 }],
    why: "so many studs, behind a joint's bolting, are of that joint",
  },
  {
    rule: "work_done",
    say: "replaced two studs",
    gives: [{ type: "work", work: "replaced", status: "done", part: "bolting", count: 2 }],
  },
  { not: "work_done", say: "night crew said they replaced the seat", why: "what others tell was not done here" },
  { not: "work_done", say: "we were told the packing was replaced" },
  {
    rule: "work_done",
    say: "removed, cleaned and reinstalled the cage",
    gives: [
      { type: "work", work: "removed", status: "done", part: "cage" },
      { type: "work", work: "cleaned", status: "done", part: "cage" },
      { type: "work", work: "installed", status: "done", part: "cage" },
    ],
    why: "verbs one after the other act on what stands behind the last",
  },
  { not: "work_done", say: "torqued the body bolts in three passes to sixty" },
  { not: "work_done", say: "replace the seat" },
  { not: "work_done", say: "changed the radio station" },
  { not: "work_done", say: "bonnet bolts torqued to thirty", why: "that is the reading alone" },

  {
    rule: "work_needed",
    say: "seat worn, replace it",
    gives: [{ type: "work", work: "replaced", status: "needed", part: "seat" }],
  },
  {
    rule: "work_needed",
    say: "clean the cage",
    gives: [{ type: "work", work: "cleaned", status: "needed", part: "cage" }],
  },
  {
    rule: "work_needed",
    say: "maybe the seat needs replacing",
    gives: [{ type: "work", work: "replaced", status: "needed", part: "seat", unsure: true }],
  },
  { not: "work_needed", say: "went ahead and replaced the seat" },
  { not: "work_needed", say: "clean the truck before you go" },

  {
    rule: "work_declined",
    say: "didn't replace the seat",
    gives: [{ type: "work", work: "replaced", status: "declined", part: "seat" }],
  },
  {
    rule: "is_off",
    say: "bonnet's off",
    gives: [{ type: "work", work: "removed", status: "done", part: "bonnet" }],
  },
  {
    rule: "left_off",
    say: "somebody left the lock nut off",
    gives: [{ type: "finding", condition: "missing", part: "lock_nut" }],
  },
  { not: "left_off", say: "left the lock nut alone", why: "it is there, and stays" },
  { not: "is_off", say: "gauge is off", why: "it shows wrong, and is still there" },
  { not: "work_declined", say: "didn't sleep well" },
  { not: "work_declined", say: "seat isn't worn", why: "a condition denied is no work declined" },

  {
    rule: "new_part",
    say: "new bonnet gasket in",
    gives: [{ type: "work", work: "replaced", status: "done", part: "bonnet_gasket" }],
  },
  {
    rule: "new_part",
    say: "seat's worn, needs a new one",
    gives: [{ type: "work", work: "replaced", status: "needed", part: "seat" }],
  },
  { not: "new_part", say: "order a new seat", why: "a part to bring is a need" },
  { not: "new_part", say: "got a new truck" },

  {
    rule: "needs_part",
    say: "need a seat",
    gives: [{ type: "work", work: "replaced", status: "needed", part: "seat" }],
  },
  { not: "needs_part", say: "packing needs a look", why: "it is to be looked at, not replaced" },

  {
    rule: "placed_replaced",
    say: "gasket's torn, put a new one in",
    gives: [{ type: "work", work: "replaced", status: "done", part: "gasket" }],
  },
  { not: "placed_replaced", say: "put the old gasket back in" },
  {
    rule: "placed_reused",
    say: "put the old spring back in",
    gives: [{ type: "work", work: "reused", status: "done", part: "spring" }],
  },
  { not: "placed_reused", say: "put the bonnet back on", why: "on is put together; in is used again" },
  {
    rule: "placed_installed",
    say: "put the bonnet back on",
    gives: [{ type: "work", work: "installed", status: "done", part: "bonnet" }],
  },
  { not: "placed_installed", say: "put lunch in the truck" },
  {
    rule: "placed_greased",
    say: "put grease on the stem",
    gives: [{ type: "work", work: "greased", status: "done", part: "stem" }],
  },
  { not: "placed_greased", say: "put gas in the truck" },
  {
    rule: "placed_threadlocked",
    say: "put threadlocker on the lock nut",
    gives: [{ type: "work", work: "threadlocked", status: "done", part: "lock_nut" }],
  },
  { not: "placed_threadlocked", say: "put a wrench on the lock nut" },
  {
    rule: "placed_cleaned",
    say: "gave the seat a good cleaning",
    gives: [{ type: "work", work: "cleaned", status: "done", part: "seat" }],
  },
  { not: "placed_cleaned", say: "gave the seat a good look" },

  {
    rule: "placed_tightened",
    say: "packing nut was loose, gave it a half turn",
    gives: [{ type: "work", work: "tightened", status: "done", part: "packing_nut" }],
    why: "a turn given a nut tightens it",
  },
  { not: "placed_tightened", say: "gave the adjusting screw a half turn", why: "a screw that sets something is set" },
  { not: "placed_tightened", say: "gave it another shot" },

  {
    rule: "placed_adjusted",
    say: "gave the adjusting screw two turns",
    gives: [{ type: "work", work: "adjusted", status: "done", part: "adjusting_screw" }],
  },
  { not: "placed_adjusted", say: "gave him a turn at the wheel" },

  {
    rule: "by_tool",
    say: ["cage is gunked up", "went to town on it with a wire brush"],
    gives: [{ type: "work", work: "cleaned", status: "done", part: "cage" }],
    why: "how hard one went at it leaves what was done to the tool",
  },
  {
    rule: "by_tool",
    say: "ran a stone over the seat",
    gives: [{ type: "work", work: "dressed", status: "done", part: "seat" }],
  },
  { not: "by_tool", say: "went to town on friday" },
  { not: "by_tool", say: "went to town on the plug with a hammer", why: "a hammer says nothing of what was done" },
  { not: "by_tool", say: "hand me a wire brush" },
  { not: "by_tool", say: "hit the truck with a rag" },

  {
    rule: "to_go",
    say: "packing's got to go",
    gives: [{ type: "work", work: "replaced", status: "needed", part: "packing" }],
    why: "what has to go is to be replaced",
  },
  {
    rule: "to_go",
    say: "that diaphragm has to go",
    gives: [{ type: "work", work: "replaced", status: "needed", part: "diaphragm" }],
  },
  {
    rule: "to_go",
    say: ["seat gasket's flat", "it's gotta go"],
    gives: [{ type: "work", work: "replaced", status: "needed", part: "seat_gasket" }],
  },
  { not: "to_go", say: "bonnet has to go back on" },
  { not: "to_go", say: ["seat's worn", "i gotta go"], why: "somebody's leaving" },
  { not: "to_go", say: "the cage has to go in first" },

  {
    rule: "work_done",
    say: "old seat's in the scrap bin",
    gives: [{ type: "work", work: "discarded", status: "done", part: "seat" }],
    why: "where it is says what was done with it",
  },
  {
    rule: "work_done",
    say: "that gasket went in the dumpster",
    gives: [{ type: "work", work: "discarded", status: "done", part: "gasket" }],
  },
  {
    rule: "work_done",
    say: "chucked the packing in the trash",
    gives: [{ type: "work", work: "discarded", status: "done", part: "packing" }],
  },
  { not: "work_done", say: "there's trash in the seat", why: "dirt, and no bin" },

  {
    rule: "left",
    say: "seat's worn, leaving it for now",
    gives: [{ type: "work", work: "replaced", status: "declined", part: "seat" }],
  },
  { not: "left", say: "left the truck running" },
  { not: "left", say: "what's left" },
  {
    rule: "left_old_in",
    say: "left the old gasket in",
    gives: [{ type: "work", work: "reused", status: "done", part: "gasket" }],
  },
  { not: "left_old_in", say: "left the gasket alone" },
  {
    rule: "reused",
    say: "gasket going back in",
    gives: [{ type: "work", work: "reused", status: "done", part: "gasket" }],
  },
  { not: "reused", say: "going back in the truck for a minute" },

  {
    rule: "copied",
    say: ["lower diaphragm is torn, replaced it", "same on the upper one"],
    gives: [
      { type: "finding", condition: "torn", part: "upper_diaphragm" },
      { type: "work", work: "replaced", status: "done", part: "upper_diaphragm" },
    ],
  },
  { not: "copied", say: ["seat's worn", "same time tomorrow"] },

  { rule: "need", say: "order two seat gaskets", gives: [{ type: "need", part: "seat_gasket", count: 2 }] },
  { rule: "need", say: "put a diaphragm on the list", gives: [{ type: "need", part: "diaphragm" }] },
  { not: "need", say: "needs a new seat", why: "work owed, not a part to bring" },
  { not: "need", say: "bring me a coffee" },
];
