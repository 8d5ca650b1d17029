import type { Example } from "./example.ts";

export const WHOLE_EXAMPLES: readonly Example[] = [
  {
    rule: "valve",
    say: "L C V two one three, two inch, fail closed, sandy service",
    gives: [{ type: "valve", tag: "LCV-213", size_in: 2, acts: "pressure_opens", service: "severe" }],
  },
  { rule: "valve", say: "pee vee one oh four bravo", gives: [{ type: "valve", tag: "PV-104B" }] },
  { not: "valve", say: "see you two tomorrow" },
  { not: "valve", say: "travel is two inches" },

  { rule: "hazard", say: "I smell gas", gives: [{ type: "hazard", hazard: "gas" }] },
  {
    rule: "hazard",
    say: "block valve's leaking by",
    gives: [{ type: "hazard", hazard: "not_isolated" }],
    why: "hazard wording wins over a test the same words could make",
  },
  {
    rule: "hazard",
    say: ["stop listening", "still pressure on it"],
    gives: [{ type: "hazard", hazard: "trapped_pressure" }],
    why: "a hazard is heard with the ears shut",
  },
  { not: "hazard", say: "stopped at the gas station" },
  { not: "hazard", say: "no gas alarm" },

  { rule: "command", say: "read it back", gives: [{ type: "command", command: "read_back" }] },
  { rule: "command", say: "okay, done with this one", gives: [{ type: "command", command: "finish" }] },
  { not: "command", say: "what's left of that pizza" },

  {
    rule: "note",
    say: "note that the customer wants it Friday.",
    gives: [{ type: "note", text: "the customer wants it friday" }],
  },
  {
    rule: "amended",
    say: "seat's gonna need replaced, correction, the stem's bent",
    gives: [{ type: "finding", condition: "bent", part: "stem" }],
  },
  { not: "amended", say: "sorry, that was the boss on the phone", why: "an apology puts nothing right" },
  { not: "note", say: "left a note for bob", why: "the word as a thing is no lead-in" },

  {
    rule: "hazard",
    say: "watch that spring, it's still got tension",
    gives: [{ type: "hazard", hazard: "stored_spring" }],
  },
];
