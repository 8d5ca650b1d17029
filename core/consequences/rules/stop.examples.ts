import { type Example, found, job, worked } from "../example.ts";

export const STOP_EXAMPLES: Example[] = [
  {
    rule: "hazard_stop",
    about: "two hazards, one stop",
    say: [
      { type: "hazard", hazard: "gas" },
      { type: "hazard", hazard: "not_isolated" },
    ],
    gives: [{ do: "stop", when: "now" }],
  },
  { rule: "hazard_stop", about: "a loaded word in a finding is no hazard", say: [found("spring", "weak")], gives: [] },
  {
    rule: "pressure_part_cracked",
    about: "a hairline crack is a crack",
    say: [found("bonnet", "cracked", { severity: "slight" })],
    gives: [
      { do: "stop", when: "now" },
      { do: "replace", part: "bonnet", when: "now" },
    ],
  },
  {
    rule: "pressure_part_cracked",
    about: "maybe cracked: look before pressure",
    say: [found("upper_housing", "cracked", { unsure: true })],
    gives: [{ do: "inspect", part: "upper_housing", when: "now" }],
  },
  {
    rule: "pressure_part_cracked",
    about: "looked for and not there",
    say: [found("body", "cracked", { absent: true })],
    gives: [],
  },
  { rule: "pressure_part_cracked", about: "corroded is not cracked", say: [found("body", "corroded")], gives: [] },
  {
    rule: "pressure_part_cracked",
    about: "a new bonnet is not the cracked one",
    say: [found("bonnet", "cracked"), worked("replaced", "bonnet")],
    gives: [],
  },
  {
    rule: "fault_carried",
    about: "a cracked body that nobody mended stops the next job too",
    before: [job("2025-09-02", found("body", "cracked"))],
    say: [],
    gives: [
      { do: "stop", when: "now" },
      { do: "replace", part: "body", when: "now" },
    ],
  },
];
