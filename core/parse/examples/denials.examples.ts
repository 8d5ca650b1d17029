import type { Example } from "./example.ts";

/** What a denial reaches, and what a "no" puts right. */
export const DENIAL_EXAMPLES: readonly Example[] = [
  {
    rule: "finding_is",
    say: "controller isn't putting out anything, supply port's plugged",
    gives: [{ type: "finding", condition: "plugged", part: "supply_port" }],
    why: "the next part has its own verb",
  },
  {
    rule: "finding_does",
    say: "it's not the packing, bonnet gasket's leaking",
    gives: [{ type: "finding", condition: "leaking", part: "bonnet_gasket" }],
  },
  {
    rule: "finding_is",
    say: "solenoid isn't clicking, coil's burnt",
    gives: [{ type: "finding", condition: "burnt", part: "solenoid" }],
    why: "a strange word stands between",
  },
  {
    rule: "finding_absent",
    say: "didn't see any bolts loose",
    gives: [{ type: "finding", condition: "loose", part: "bolting", absent: true }],
  },
  {
    rule: "finding_absent",
    say: "don't think the packing is leaking",
    gives: [{ type: "finding", condition: "leaking", part: "packing", absent: true, unsure: true }],
  },
  { not: "finding_absent", say: "positioner won't respond, the signal line's kinked" },
  { not: "finding_is", say: "none of the bolts are loose" },
  {
    rule: "finding_is",
    say: ["seat might be worn", "no, cracked"],
    gives: [{ type: "finding", condition: "cracked", part: "seat" }],
  },
  {
    rule: "finding_is",
    say: ["stem's bent", "no, badly galled"],
    gives: [{ type: "finding", condition: "galled", part: "stem", severity: "severe" }],
  },
  { not: "amended", say: ["stem's bent", "no cracks"] },
  { not: "amended", say: ["seat's worn", "no torn gaskets though"] },
  {
    rule: "finding_is",
    say: ["seat's worn", "scratch that, cracked"],
    gives: [{ type: "finding", condition: "cracked", part: "seat" }],
    why: "no other part to go back to",
  },

  {
    rule: "finding_absent",
    say: "guide ain't hurt any",
    gives: [{ type: "finding", condition: "damaged", part: "guide", absent: true }],
  },

  {
    rule: "finding_absent",
    say: "both diaphragms were replaced, although neither one was torn",
    gives: [{ type: "finding", condition: "torn", part: "diaphragm", absent: true }],
  },
];
