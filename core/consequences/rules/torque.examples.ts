import type { Part, Unit } from "../../shapes/codes.ts";
import type { Entry } from "../../shapes/entry.ts";
import { type Example, GLOBE } from "../example.ts";

const torque = (value: number, unit: Unit, part?: Part, upper?: number): Entry => ({
  type: "reading",
  quantity: "torque",
  value,
  unit,
  ...(part ? { part } : {}),
  ...(upper ? { upper } : {}),
});

export const TORQUE_EXAMPLES: Example[] = [
  {
    rule: "torque_off",
    about: "under its limit",
    say: [torque(24, "ft_lbf", "bonnet_bolting")],
    gives: [{ do: "retorque", part: "bonnet_bolting", when: "now" }],
  },
  {
    rule: "torque_off",
    about: "the limits themselves are within",
    say: [torque(25, "ft_lbf", "body_bolting"), torque(360, "in_lbf", "bonnet_bolting")],
    gives: [],
  },
  {
    rule: "torque_off",
    about: "of a range, both ends",
    say: [torque(26, "ft_lbf", "body_bolting", 32)],
    gives: [{ do: "retorque", part: "body_bolting" }],
  },
  {
    rule: "torque_off",
    about: "low, then right: the last counts",
    say: [torque(20, "ft_lbf", "body_bolting"), torque(28, "ft_lbf", "body_bolting")],
    gives: [],
  },
  {
    rule: "torque_off",
    about: "no part said: which bolting?",
    say: [torque(28, "ft_lbf")],
    gives: [{ do: "ask", when: "now" }],
  },
  { rule: "torque_off", about: "a part without a limit", say: [torque(90, "ft_lbf", "packing_nut")], gives: [] },
  {
    rule: "torque_off",
    about: "a size without a limit",
    valve: { ...GLOBE, size_in: 12 },
    say: [torque(90, "ft_lbf", "bonnet_bolting")],
    gives: [],
  },
];
