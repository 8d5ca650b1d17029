import type { Example } from "./example.ts";

/** What is said beside the findings, on other things, or of somebody else. */
export const ASIDE_EXAMPLES: readonly Example[] = [
  {
    rule: "finding_is",
    say: "bonnet gasket was pinched, that's where your leak was",
    gives: [{ type: "finding", condition: "pinched", part: "bonnet_gasket" }],
  },
  { not: "finding_has", say: "that's where your leak was" },
  { not: "finding_does", say: "packing adjusted, weeping stopped" },
  {
    rule: "finding_does",
    say: "packing won't quit leaking",
    gives: [{ type: "finding", condition: "leaking", part: "packing" }],
  },
  { not: "finding_is", say: "the bolts on my deck are rusted" },
  { not: "finding_is", say: "the stem on my watch broke" },
  { not: "finding_has", say: "you see that crack in the windshield" },
  { not: "finding_does", say: "it's leaking in my tent" },
  { not: "finding_does", say: "my nose is running like a leaking packing gland" },
  { not: "finding_is", say: "flapper's bent", why: "a thing the log has no name for" },
  { not: "finding_does", say: "needle valve's leaking", why: "of another line, and not the valve on the bench" },
  {
    rule: "finding_is",
    say: "needle's stuck",
    gives: [{ type: "finding", condition: "seized", part: "gauge" }],
    why: "a gauge's",
  },
  {
    rule: "finding_is",
    say: "packing's got a steady drip",
    gives: [{ type: "finding", condition: "leaking", part: "packing" }],
    why: "of a part it is a leak, of a test its outcome",
  },
  {
    rule: "finding_is",
    say: "solenoid's burned up, probably the coil",
    gives: [{ type: "finding", condition: "burnt", part: "solenoid" }],
    why: "the doubt is the coil's",
  },
  { not: "finding_has", say: "that's from the sand" },
  { not: "hazard", say: "my cousin got hurt on a rig last year" },
  { not: "hazard", say: "there was a fire over in the next county" },
  { rule: "hazard", say: "I got gas on my monitor", gives: [{ type: "hazard", hazard: "gas" }] },
  { rule: "hazard", say: "lockout tag's missing", gives: [{ type: "hazard", hazard: "not_isolated" }] },
  { not: "need", say: "did you bring the gaskets" },
  { not: "work_needed", say: "you need to replace that old truck of yours" },
  {
    rule: "work_done",
    say: "pulled the cage and clean it",
    gives: [
      { type: "work", work: "removed", status: "done", part: "cage" },
      { type: "work", work: "cleaned", status: "done", part: "cage" },
    ],
  },
  {
    rule: "work_needed",
    say: "packing nut was loose, tighten it up",
    gives: [{ type: "work", work: "tightened", status: "needed", part: "packing_nut" }],
  },
  {
    rule: "work_done",
    say: "had to heat the lock nut to get it off",
    gives: [{ type: "work", work: "removed", status: "done", part: "lock_nut" }],
  },
  {
    rule: "work_declined",
    say: "flipped the seat instead of replacing it",
    gives: [{ type: "work", work: "replaced", status: "declined", part: "seat" }],
  },
  { not: "work_done", say: "not bad enough to change" },
  { not: "work_done", say: "bring a positioner when you come back out" },
  {
    rule: "placed_greased",
    say: "squirted some oil on the stem",
    gives: [{ type: "work", work: "greased", status: "done", part: "stem" }],
  },
  {
    rule: "work_done",
    say: "swapped sides on the seat",
    gives: [{ type: "work", work: "flipped", status: "done", part: "seat" }],
  },
  {
    rule: "work_done",
    say: "vent cleared of debris",
    gives: [{ type: "work", work: "cleaned", status: "done", part: "vent_hole" }],
  },
  {
    rule: "new_part",
    say: "greased the guide, new o-rings",
    gives: [{ type: "work", work: "replaced", status: "done", part: "o_ring" }],
  },
  {
    rule: "finding_is",
    say: ["cage has a groove wore in it", "spring's got no life left in it"],
    gives: [{ type: "finding", condition: "weak", part: "spring" }],
  },
  {
    rule: "finding_has",
    say: "there's a crack running down the cage",
    gives: [{ type: "finding", condition: "cracked", part: "cage" }],
  },
  {
    rule: "finding_is",
    say: "seat gasket was baked onto the body",
    gives: [{ type: "finding", condition: "fouled", part: "seat_gasket", place: "body" }],
  },

  { not: "finding_is", say: "tag's about wore off", why: "the plate with the valve's name, and no part" },
  { not: "finding_is", say: "nameplate's corroded" },
  { not: "work_done", say: "replaced the seat on the boat", why: "a boat, and no float" },
  { not: "finding_is", say: "that new hand ain't worth a nickel" },
  { not: "test", say: "haven't stroked it yet", why: "nobody tried" },
  { not: "test", say: "didn't stroke it" },
  { rule: "test", say: "didn't stroke", gives: [{ type: "test", test: "stroke", result: "fail" }] },
];
