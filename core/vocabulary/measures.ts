import type { Bound, Quantity, Unit } from "../shapes/codes.ts";
import type { Row } from "./row.ts";

/** Units as spoken. `pound`, `degree`, `inch` and `thou` are settled by what stands around them. */
export interface UnitRow {
  code: Unit | "pound" | "degree" | "thou";
  name: string;
  say: string[];
  /** the quantity it can only be */
  of?: "torque" | "pressure" | "leak_rate" | "length" | "temperature" | "duration" | "percent";
}

export const UNIT_ROWS: UnitRow[] = [
  { code: "ft_lbf", name: "ft-lbf", of: "torque", say: ["(foot|feet|ft) (pound|pounds|lb|lbs|lbf)", "foot pounds of torque", "(pound|pounds|lb|lbs) of torque", "(pound|pounds|lb|lbs) (foot|feet|ft)", "footpounds", "ftlb", "ftlbs", "ftlbf", "fp", "foot lb", "f t l b s"] },
  { code: "in_lbf", name: "in-lbf", of: "torque", say: ["(inch|in) (pound|pounds|lb|lbs|lbf)", "(pound|pounds|lb|lbs) (inch|in)", "inlb", "inlbs", "inch pounds of torque", "inlbf"] },
  { code: "N_m", name: "N·m", of: "torque", say: ["newton (meter|meters|metre|metres)", "nm", "n m", "newtonmeters", "newtonmetres", "newtons", "new ton meters", "newton m"] },
  { code: "psi", name: "psi", of: "pressure", say: ["psi", "p s i", "psig", "p s i g", "pee ess eye", "(pound|pounds|lb|lbs) per square inch", "pounds of (pressure|signal|supply|air|gas)", "psi g", "p s eye", "pee s i", "pounds pressure"] },
  { code: "kPa", name: "kPa", of: "pressure", say: ["kilopascal", "kilopascals", "kpa", "k p a", "kilo pascals", "kilo pascal", "kay pee ay"] },
  { code: "bar", name: "bar", of: "pressure", say: ["bar", "bars", "barg", "bar g"] },
  { code: "in_H2O", name: "in H2O", of: "pressure", say: ["(inch|inches|in) (of|a) water [column]", "(inch|inches|in) water [column]", "inches w c", "inches wc", "inches h 2 o", "in h 2 o", "inches of h 2 o", "in wc", "inches of h two o"] },
  { code: "bubble/min", name: "bubbles/min", of: "leak_rate", say: ["(bubble|bubbles|bub|bubs) [(a|per|each|every)] (minute|min|minutes)", "bubbles in a minute", "bpm", "bubbles every minute", "bubbles / min"] },
  { code: "drop/min", name: "drops/min", of: "leak_rate", say: ["(drop|drops|drip|drips) [(a|per|every|each)] (minute|min|minutes)", "drops in a minute", "drops / min"] },
  { code: "mL/min", name: "mL/min", of: "leak_rate", say: ["(cc|ccs|c c|c cs|milliliter|milliliters|millilitre|millilitres|ml|mil|mils|mls|m l|see sees|sea seas|see see|sea sea|c see|see c) [(a|per|each|every)] (minute|min)", "ml / min", "cc / min", "ccm", "cubic centimeters (a|per) minute", "cubic (centimetres|centimeters) (a|per) minute", "cubes a minute"] },
  { code: "in", name: "in", of: "length", say: ["inch", "inches", "in", "of an inch", "inchs", "an inch", "of a inch"] },
  { code: "mm", name: "mm", of: "length", say: ["millimeter", "millimeters", "millimetre", "millimetres", "mm", "m m", "mils", "milimeters"] },
  { code: "thou", name: "thousandths", of: "length", say: ["thousandths [of an inch]", "thou", "thousandth", "thousands of an inch", "mil thou", "thousandths inch"] },
  { code: "degF", name: "°F", of: "temperature", say: ["[degree|degrees] fahrenheit", "degrees f", "deg f", "degree f", "f degrees", "degf", "f"] },
  { code: "degC", name: "°C", of: "temperature", say: ["[degree|degrees] (celsius|centigrade)", "degrees c", "deg c", "degree c", "degc", "c", "degrees (celsius|centigrade)"] },
  { code: "degree", name: "degrees", of: "temperature", say: ["degree", "degrees", "deg"] },
  { code: "s", name: "s", of: "duration", say: ["s", "second", "seconds", "sec", "secs"] },
  { code: "min", name: "min", of: "duration", say: ["minute", "minutes", "mins", "min"] },
  { code: "%", name: "%", of: "percent", say: ["percent", "per cent", "pct", "percent open", "% open", "%", "percent of travel"] },
  { code: "pound", name: "pounds", say: ["pound", "pounds", "lb", "lbs", "#"] },
];

/** Words that say what a number is of. */
export const QUANTITY_ROWS: Row<Quantity>[] = [
  { code: "torque", name: "torque", say: ["torque [value]", "torqued", "torquing", "torques", "retorqued", "re torqued", "torque down", "torqued down", "torqued up", "torqued out", "pulled [down] to", "pulled up to", "(ran|run|brought|pulled) (them|em|it|those|these) [all] (down to|up to|to)", "ran them down to", "tightened down to"], help: "turning force on a bolt" },
  { code: "upstream_pressure", name: "upstream pressure", say: ["upstream [pressure]", "up stream", "inlet pressure", "upstream side", "line pressure upstream", "p1", "p one", "inlet press", "pressure upstream", "inlet (psi|pounds)"], help: "pressure before the seat" },
  { code: "downstream_pressure", name: "downstream pressure", say: ["downstream [pressure]", "down stream", "outlet pressure", "downstream side", "p2", "p two", "pressure downstream", "back pressure", "backpressure"], help: "pressure after the seat" },
  { code: "signal_pressure", name: "signal pressure", say: ["signal [pressure]", "control signal", "control pressure", "signal to it", "signal on it", "loading pressure", "output pressure", "diaphragm pressure", "actuator pressure", "air to the actuator", "pilot pressure", "air signal", "of signal", "signal air", "output [pressure]", "(controller|positioner) output [pressure]", "output from the (controller|positioner|pilot)"], help: "pressure on the diaphragm" },
  { code: "supply_pressure", name: "supply pressure", say: ["supply [pressure]", "supply (gas|air) [pressure]", "instrument (air|gas) [pressure]", "of supply", "air supply", "gas supply", "reg set at", "regulator set at", "instrument supply"], help: "pressure of the supply gas" },
  { code: "pressure", name: "pressure", say: ["pressure", "line pressure", "case pressure", "pressured up", "pressured up to", "pressure up", "press", "flowing pressure", "shut in pressure", "well pressure", "header pressure", "separator pressure", "system pressure", "working pressure"], help: "a pressure, where not said" },
  { code: "leak_rate", name: "leak rate", say: ["leak rate", "leakage rate", "leakage of", "leak of", "measured leak", "seat leakage"], help: "leak through the seat" },
  { code: "travel", name: "travel", say: ["travel", "stroke length", "of travel", "of stroke", "total travel", "valve travel", "stem travel", "stroke travel", "lift", "stroke of"], help: "how far the stem moves" },
  { code: "temperature", name: "temperature", say: ["temp", "temperature", "fluid temp", "process temp", "running temp", "fluid temperature", "line temp", "flowing temp", "operating temp", "inlet temp", "(water|gas|skin|surface|ambient) (temp|temperature)"], help: "temperature" },
  { code: "duration", name: "time taken", say: ["timed [it]", "took", "takes", "take", "let it sit", "held [it] [for]", "watched it [for]", "sat", "let it soak", "hold time", "held", "stroke time", "stroking time", "for a full", "stood for", "full stroke in", "waited", "stroke speed"], help: "how long" },
  { code: "length", name: "length", say: ["free length", "length", "long", "overall length", "free height", "measures", "measured", "(mikes|miked|mics) [(out|in)] at", "diameter", "gap", "clearance", "thick", "thickness", "height", "runout", "run out", "deep", "depth", "od of", "id of", "wall", "in diameter", "across", "wide"], help: "a length" },
  { code: "percent_open", name: "percent open", say: ["percent open", "% open"], help: "how far it is open" },
];

export const BOUND_ROWS: Row<Bound>[] = [
  { code: "about", name: "about", say: ["about", "around", "roughly", "approximately", "approx", "right at about", "somewhere around", "close to", "near", "nearly", "almost", "maybe about", "ish", "right around", "give or take", "just about", "call it", "somewhere near", "in the neighborhood of", "or so", "or thereabouts", "right about", "~", "pretty close to"], help: "not exact" },
  { code: "min", name: "at least", say: ["at least", "no less than", "not less than", "more than", "better than", "over", "a minimum of", "minimum", "upwards of", "above", "greater than", "better n", "not under", "no lower than", "in excess of", "or (better|more|above|higher)", "north of", ">"], help: "no less than" },
  { code: "max", name: "at most", say: ["no more than", "not more than", "at most", "less than", "under", "a maximum of", "maximum", "below", "up to a max of", "not over", "max", "no higher than", "not to exceed", "no over", "or (less|under)", "tops", "<", "just under"], help: "no more than" },
];
