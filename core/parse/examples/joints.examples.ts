import type { Example } from "./example.ts";

/** Numbers of one joint after the other, pressures on it, and how far it was turned or goes. */
export const JOINT_EXAMPLES: readonly Example[] = [
  {
    rule: "reading",
    say: "body bolts torqued to fifty five, packing nut to eighteen",
    gives: [
      { type: "reading", quantity: "torque", value: 55, unit: "ft_lbf", part: "body_bolting" },
      { type: "reading", quantity: "torque", value: 18, unit: "ft_lbf", part: "packing_nut" },
    ],
    why: "fifty five nuts there are none",
  },
  {
    rule: "reading",
    say: "torqued the bonnet to forty and the body to sixty",
    gives: [
      { type: "reading", quantity: "torque", value: 40, unit: "ft_lbf", part: "bonnet" },
      { type: "reading", quantity: "torque", value: 60, unit: "ft_lbf", part: "body" },
    ],
  },
  {
    rule: "reading",
    say: "torqued to thirty, bonnet's good",
    gives: [{ type: "reading", quantity: "torque", value: 30, unit: "ft_lbf" }],
  },
  {
    rule: "reading",
    say: ["bonnet bolts at forty", "body's at thirty"],
    gives: [
      { type: "reading", quantity: "torque", value: 40, unit: "ft_lbf", part: "bonnet_bolting" },
      { type: "reading", quantity: "torque", value: 30, unit: "ft_lbf", part: "body" },
    ],
  },
  { not: "reading", say: "bonnet's at thirty" },
  {
    rule: "reading",
    say: "got twelve on the signal and thirty on the supply",
    gives: [
      { type: "reading", quantity: "signal_pressure", value: 12, unit: "psi" },
      { type: "reading", quantity: "supply_pressure", value: 30, unit: "psi" },
    ],
  },
  { not: "reading", say: "eight on the crew today" },
  {
    rule: "reading",
    say: "fifty on it, blowing by",
    gives: [{ type: "reading", quantity: "upstream_pressure", value: 50, unit: "psi" }],
  },
  { not: "reading", say: "sixty on his boat, no bubbles" },
  {
    rule: "reading",
    say: "regulator's creeping up, set it back to thirty pounds",
    gives: [{ type: "reading", quantity: "supply_pressure", value: 30, unit: "psi" }],
  },
  {
    rule: "test",
    say: "can't get it past forty percent open",
    gives: [{ type: "test", test: "stroke", result: "fail" }],
  },
  { rule: "test", say: "won't go past half", gives: [{ type: "test", test: "stroke", result: "fail" }] },
  { rule: "test", say: "only gets to seventy percent", gives: [{ type: "test", test: "stroke", result: "fail" }] },
  { not: "test", say: "travel stops at seven eighths of an inch" },
  { not: "test", say: "stops at the store" },
  {
    rule: "test",
    say: "leaking past the plug at a hundred pounds",
    gives: [{ type: "test", test: "seat_leak", result: "fail" }],
  },
  { not: "test", say: "packing's leaking past the nut" },
  {
    rule: "turned",
    say: "quarter turn on the packing nut",
    gives: [{ type: "work", work: "tightened", status: "done", part: "packing_nut" }],
  },
  {
    rule: "turned",
    say: "half a turn on the adjusting screw",
    gives: [{ type: "work", work: "adjusted", status: "done", part: "adjusting_screw" }],
  },
  {
    rule: "turned",
    say: "1/4 turn on gland nut",
    gives: [{ type: "work", work: "tightened", status: "done", part: "packing_nut" }],
  },
  { not: "turned", say: "it's a quarter turn ball valve" },
  { not: "turned", say: "took a turn on the highway" },
  { rule: "valve", say: "P C V eleven seventy, sandy", gives: [{ type: "valve", tag: "PCV-1170", service: "severe" }] },
  { not: "valve", say: "my boots are sandy" },
  {
    rule: "placed_replaced",
    say: "seat's worn, need new",
    gives: [{ type: "work", work: "replaced", status: "needed", part: "seat" }],
  },
  { not: "placed_replaced", say: "need new boots" },
  {
    rule: "work_done",
    say: "changed the packing yesterday",
    gives: [{ type: "work", work: "replaced", status: "done", part: "packing" }],
  },
  { not: "finding_does", say: "it was leaking yesterday" },
  {
    rule: "finding_is",
    say: "bonnet o-ring's swelled up",
    gives: [{ type: "finding", condition: "swollen", part: "o_ring" }],
  },
  { not: "finding_is", say: "bonnet threads, no idea" },
  {
    rule: "reading",
    say: "closes in three seconds, opens in five",
    gives: [
      { type: "reading", quantity: "duration", value: 3, unit: "s" },
      { type: "reading", quantity: "duration", value: 5, unit: "s" },
    ],
  },
  {
    rule: "reading",
    say: "took ten seconds to open and eight to close",
    gives: [
      { type: "reading", quantity: "duration", value: 10, unit: "s" },
      { type: "reading", quantity: "duration", value: 8, unit: "s" },
    ],
  },
  { not: "reading", say: "came in five minutes late" },
  {
    rule: "reading",
    say: "opened at five pounds and was full open at fourteen",
    gives: [
      { type: "reading", quantity: "signal_pressure", value: 5, unit: "psi" },
      { type: "reading", quantity: "signal_pressure", value: 14, unit: "psi" },
    ],
  },
  {
    rule: "reading",
    say: "nine psi to start moving",
    gives: [{ type: "reading", quantity: "signal_pressure", value: 9, unit: "psi" }],
  },
  {
    rule: "reading",
    say: ["supply's at thirty", "dropped it to twenty five"],
    gives: [
      { type: "reading", quantity: "supply_pressure", value: 30, unit: "psi" },
      { type: "reading", quantity: "supply_pressure", value: 25, unit: "psi" },
    ],
  },
  {
    rule: "reading",
    say: "checked the torque on the body bolts, sixty",
    gives: [{ type: "reading", quantity: "torque", value: 60, unit: "ft_lbf", part: "body_bolting" }],
  },
  {
    rule: "reading",
    say: "pulled forty on em",
    gives: [{ type: "reading", quantity: "torque", value: 40, unit: "ft_lbf" }],
  },
  { not: "reading", say: "pulled forty feet of hose" },
  {
    rule: "reading",
    say: "packing's weeping about a drop a minute",
    gives: [{ type: "reading", quantity: "leak_rate", value: 1, unit: "drop/min", bound: "about", part: "packing" }],
  },
  {
    rule: "reading",
    say: 'spring free length 6-1/4"',
    gives: [{ type: "reading", quantity: "length", value: 6.25, unit: "in", part: "spring" }],
  },
  {
    rule: "reading",
    say: "torqued to thirty for foot pounds",
    gives: [{ type: "reading", quantity: "torque", value: 34, unit: "ft_lbf" }],
  },
  { not: "reading", say: "torqued my back for thirty minutes" },
  {
    rule: "test",
    say: "put twenty on the actuator and it holds",
    gives: [{ type: "test", test: "actuator", result: "pass" }],
  },
  {
    rule: "test",
    say: "hydro'd the body at two twenty five, no leaks",
    gives: [{ type: "test", test: "shell", result: "pass" }],
  },
  { rule: "test", say: "tested the packing, good", gives: [{ type: "test", test: "packing", result: "pass" }] },
];
