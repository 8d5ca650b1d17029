import type { Part } from "../shapes/codes.ts";
import type { Row } from "./row.ts";

/** What a valve is made of, and what hangs on it. Plurals and run-together spellings are made from these. */
export const PART_ROWS: Row<Part>[] = [
  { code: "seat", name: "seat", say: ["seat", "seat ring", "valve seat", "seat insert"], help: "the ring that the plug shuts against" },
  { code: "plug", name: "plug", say: ["plug", "valve plug", "disc", "disk", "ball", "inner valve", "plug head", "throttle plug", "poppet"], help: "the moving part that shuts the flow" },
  { code: "stem", name: "stem", say: ["stem", "valve stem", "plug stem", "shaft", "actuator stem", "spindle", "valve spindle"], help: "the rod that moves the plug" },
  { code: "cage", name: "cage", say: ["cage", "seat cage", "plug cage", "cage retainer"], help: "holds the seat and guides the plug" },
  { code: "guide", name: "guide", say: ["guide", "guide bushing", "plug guide", "bushing", "guide ring", "bush", "guide bush"], help: "keeps the moving parts in line" },
  { code: "diaphragm", name: "diaphragm", say: ["diaphragm", "rubber", "diaph", "diaphr", "dia phragm"], help: "the sheet that turns pressure into force" },
  { code: "spring", name: "spring", say: ["spring", "coil spring"], help: "pushes against the diaphragm" },
  { code: "gasket", name: "gasket", say: ["gasket", "gskt", "gask", "(body|flange|pipe|joint|cover) gasket"], help: "flat seal between two faces" },
  { code: "o_ring", name: "O-ring", say: ["o ring", "oh ring", "oring"], help: "round rubber seal" },
  { code: "backup_ring", name: "backup ring", say: ["backup ring", "back up ring", "back ring", "backup"], help: "keeps an O-ring from being pushed out" },
  { code: "packing", name: "packing", say: ["packing", "packing set", "packing box", "stem packing", "packing rings", "stuffing box", "vee packing", "v packing", "gland packing", "packing ring", "gland rings", "(ring|rings|row|rows) of packing"], help: "seals the stem" },
  { code: "seals", name: "seals", say: ["seals", "seal", "soft goods", "all [the] soft goods", "elastomers", "rubber goods"], help: "all soft goods together" },
  { code: "kit", name: "kit", say: ["kit", "repair kit", "seal kit", "rebuild kit", "soft goods kit", "gasket kit", "o ring kit", "packing kit", "diaphragm kit", "trim kit", "(seat|service|spares|valve|actuator|plug|gasket and o ring|soft parts|positioner|stem|o ring|rubber) kit", "kit of parts"], help: "a set of spare parts" },
  { code: "bonnet", name: "bonnet", say: ["bonnet", "valve bonnet"], help: "closes the top of the body" },
  { code: "body", name: "body", say: ["body", "valve body", "main body"], help: "the pressure shell of the valve" },
  { code: "housing", name: "housing", say: ["housing", "diaphragm housing", "actuator housing", "casing", "case", "diaphragm case", "diaphragm casing"], help: "the shell round the diaphragm" },
  { code: "bolting", name: "bolting", say: ["bolting", "bolt", "stud", "yoke bolt", "nuts and bolts", "cap screw", "capscrew", "stud bolt", "hex bolt", "machine screw", "bolts and nuts", "studs and nuts", "fasteners", "(actuator|casing|case|flange|housing|line|diaphragm casing|diaphragm case|spring can) (bolt|bolting|stud|nut|cap screw|capscrew|screw|stud bolt)", "hex head", "socket head [cap] (screw|bolt)", "hex (key|socket) (screw|bolt)", "nut and bolt"], help: "bolts, studs, nuts and cap screws" },
  { code: "threads", name: "threads", say: ["threads", "thread", "(stem|body|bonnet|bolt|stud|pipe|plug|seat|cage) (threads|thread)"], help: "screw threads, place not said" },
  { code: "nut", name: "nut", say: ["nut", "hex nut"], help: "a nut, which one not said" },
  { code: "valve", name: "valve", say: ["valve", "dump valve", "dump", "control valve", "unit", "whole thing", "whole valve"], help: "the whole valve" },
  { code: "actuator", name: "actuator", say: ["actuator", "operator assembly", "topworks", "top works", "actuator assembly", "diaphragm actuator"], help: "what moves the valve" },
  { code: "oil", name: "oil", say: ["oil", "oil level", "oiler"], help: "oil in a controller or gearbox" },
  { code: "tubing", name: "tubing", say: ["tubing", "tube", "supply tubing", "signal tubing", "signal line", "supply line", "air line", "instrument line", "instrument tubing", "supply gas line", "sense line", "control line", "stainless tubing", "impulse (line|tubing)", "(supply|instrument|air|signal) pipe", "pipework", "air hose line"], help: "small lines for supply and signal" },
  { code: "fitting", name: "fitting", say: ["fitting", "tubing fitting", "compression fitting", "elbow", "ferrule", "coupling", "pipe fitting", "nipple", "connector fitting", "union", "tee fitting", "(supply|signal|air|tubing|compression|tube|swage|pipe) fitting", "elbow fitting"], help: "joins tubing to something" },
  { code: "seat_gasket", name: "seat gasket", say: ["seat (gasket|gskt)", "seat ring gasket", "gasket under the seat"], help: "seals the seat in the body" },
  { code: "cage_gasket", name: "cage gasket", say: ["cage (gasket|gskt)"], help: "seals the cage" },
  { code: "cage_o_ring", name: "cage O-ring", say: ["cage o ring", "cage oh ring", "cage oring", "o ring on the cage"], help: "O-ring of the cage" },
  { code: "stem_guide", name: "stem guide", say: ["stem guide", "stem guide bushing", "stem bushing", "shaft guide"], help: "guides the stem" },
  { code: "stem_guide_o_ring", name: "stem guide O-ring", say: ["stem guide o ring", "stem guide oh ring", "stem guide oring", "stem o ring", "guide o ring", "guide oh ring", "stem oh ring"], help: "O-ring of the stem guide" },
  { code: "lock_nut", name: "lock nut", say: ["lock nut", "jam nut", "locking nut", "stem lock nut", "stem nut", "check nut"], help: "holds another nut or the stem in place" },
  { code: "upper_diaphragm", name: "upper diaphragm", say: ["(upper|top|actuator|power|upr|up) (diaphragm|diaph|rubber|diaphr)", "main diaphragm", "up diaphragm"], help: "the diaphragm that does the work" },
  { code: "lower_diaphragm", name: "lower diaphragm", say: ["(lower|bottom|balance|balancing|lwr|btm) (diaphragm|diaph|rubber|diaphr)"], help: "the diaphragm that balances line pressure" },
  { code: "diaphragm_plate", name: "diaphragm plate", say: ["diaphragm plate", "(upper|lower|top|bottom) (diaphragm|diaph) plate", "diaph plate", "plate", "diaphragm washer", "backing plate"], help: "spreads the diaphragm's force" },
  { code: "diaphragm_nut", name: "diaphragm nut", say: ["diaphragm nut", "(upper|lower|top|bottom) (diaphragm|diaph) nut", "diaph nut", "plate nut"], help: "clamps the diaphragm to the stem" },
  { code: "actuator_spring", name: "actuator spring", say: ["(actuator|main|power|return|top|range) spring"], help: "the main spring of the actuator" },
  { code: "upper_housing", name: "upper housing", say: ["(upper|top|upr) (housing|case|casing|diaphragm case|diaphragm casing|diaphragm housing)", "cover", "top cover"], help: "upper shell of the actuator" },
  { code: "lower_housing", name: "lower housing", say: ["(lower|bottom|lwr|btm) (housing|case|casing|diaphragm case|diaphragm casing|diaphragm housing)"], help: "lower shell of the actuator" },
  { code: "bonnet_gasket", name: "bonnet gasket", say: ["bonnet (gasket|gskt)", "bonnet seal", "gasket under the bonnet"], help: "seals bonnet to body" },
  { code: "bonnet_bolting", name: "bonnet bolting", say: ["bonnet (bolting|bolt|stud|nut|cap screw|capscrew|nuts and bolts|stud bolt|screw|studs and nuts|fastener)", "(bolts|studs|cap screws|nuts) (on|for|of) [the] bonnet"], help: "bolts, studs and nuts of the bonnet" },
  { code: "body_bolting", name: "body bolting", say: ["body (bolting|bolt|stud|nut|cap screw|capscrew|nuts and bolts|stud bolt|screw|studs and nuts|fastener)", "(bolts|studs|cap screws|nuts) (on|for|of) [the] body"], help: "bolts, studs and nuts of the body" },
  { code: "inlet_threads", name: "inlet threads", say: ["inlet thread", "inlet side thread", "upstream thread", "threads on the inlet [side]", "threads on the upstream side"], help: "pipe threads on the inlet" },
  { code: "outlet_threads", name: "outlet threads", say: ["outlet thread", "outlet side thread", "downstream thread", "threads on the outlet [side]", "threads on the downstream side"], help: "pipe threads on the outlet" },
  { code: "seat_area", name: "seat area", say: ["seat area", "seating area", "seating surface", "seat (seating|sealing) surface", "seat surface", "seat pocket", "seat bore", "seat land"], help: "where the seat sits in the body" },
  { code: "travel_indicator", name: "travel indicator", say: ["travel indicator", "indicator", "position indicator", "stem indicator", "indicator rod", "indicator plate", "travel scale", "travel pointer", "pointer"], help: "shows how far the valve is open" },
  { code: "indicator_gasket", name: "indicator gasket", say: ["indicator gasket"], help: "seals the travel indicator" },
  { code: "indicator_spring", name: "indicator spring", say: ["indicator spring", "travel indicator spring"], help: "spring of the travel indicator" },
  { code: "breather", name: "breather", say: ["breather", "vent plug", "breather plug", "breather vent", "bug screen", "vent cap", "breather cap", "breather screen", "vent screen", "bug cap"], help: "lets the housing breathe and keeps insects out" },
  { code: "supply_port", name: "supply port", say: ["supply port", "supply connection", "supply gas port", "supply hole", "supply air port"], help: "where supply gas comes in" },
  { code: "signal_port", name: "signal port", say: ["signal port", "signal connection", "signal hole", "control port"], help: "where the signal comes in" },
  { code: "vent_hole", name: "vent hole", say: ["vent hole", "vent port", "weep hole", "bleed hole", "vent"], help: "lets a chamber vent" },
  { code: "packing_nut", name: "packing nut", say: ["packing nut", "packing gland nut", "gland nut", "packing gland", "packing follower", "gland", "gland follower", "gland flange", "gland bolt"], help: "presses the packing" },
  { code: "stem_connector", name: "stem connector", say: ["stem connector", "stem coupling", "stem clamp", "stem connection", "split block", "stem block", "coupling block", "stem coupler"], help: "joins plug stem to actuator stem" },
  { code: "positioner", name: "positioner", say: ["positioner", "positioner (cover|lid)", "valve positioner", "positioner relay"], help: "makes the travel follow the signal" },
  { code: "controller", name: "controller", say: ["controller", "controller (cover|lid|door|case)", "level controller", "pressure controller", "liquid level controller"], help: "makes the signal" },
  { code: "regulator", name: "regulator", say: ["regulator", "supply regulator", "supply reg", "reg", "air regulator", "filter regulator", "pressure regulator", "airset", "air set", "regulator drip (leg|pot|bowl)", "drip pot"], help: "steadies the supply pressure" },
  { code: "gauge", name: "gauge", say: ["gauge", "gage", "pressure gauge", "supply gauge", "signal gauge", "gauge (glass|face|lens|needle)", "gauge dial", "needle[s]", "(upstream|downstream|inlet|outlet|output) [pressure] gauge"], help: "shows a pressure" },
  { code: "strainer", name: "strainer", say: ["strainer", "screen", "filter (element|cartridge)", "strainer (basket|element)", "inlet (strainer|screen)", "y strainer", "supply filter", "filter", "wye strainer"], help: "keeps dirt out" },
  { code: "solenoid", name: "solenoid", say: ["solenoid", "solenoid (cover|cap)", "solenoid valve", "solenoid coil"], help: "electric valve in the supply or signal" },
  { code: "trim", name: "trim", say: ["trim", "trim set", "valve trim", "internals", "guts", "innards"], help: "seat, plug and cage together" },
  { code: "yoke", name: "yoke", say: ["yoke", "yoke arm", "yoke leg", "yoke clamp"], help: "carries the actuator on the bonnet" },
  { code: "flange", name: "flange", say: ["flange", "(inlet|outlet) flange"], help: "bolted pipe connection" },
  { code: "handwheel", name: "handwheel", say: ["handwheel", "hand wheel", "manual override", "hand jack", "manual operator"], help: "moves the valve by hand" },
  { code: "adjusting_screw", name: "adjusting screw", say: ["adjusting screw", "set screw", "setscrew", "adjustment screw", "adjuster", "spring adjuster", "adjusting bolt", "range screw", "adjuster screw", "spring adjustment", "adj screw", "adj bolt", "adj nut"], help: "sets the spring" },
  { code: "float", name: "float", say: ["float", "displacer", "float ball"], help: "follows the liquid level" },
  { code: "linkage", name: "linkage", say: ["linkage", "feedback arm", "feedback linkage", "lever", "link arm", "lever arm", "float (linkage|arm|rod|lever)", "link rod", "link", "connecting (arm|link)", "drive arm", "positioner (arm|lever|linkage)", "feedback (lever|rod)", "linkage pin", "clevis [pin]", "feedback pin", "lever pin", "turnbuckle"], help: "rods and levers between float, positioner and valve" },
  { code: "pilot", name: "pilot", say: ["pilot", "pilot valve", "relay"], help: "small valve that steers the signal" },
];

/** Parts that come as an upper and a lower, or an inlet and an outlet: "the other one" is the counterpart. */
export const COUNTERPARTS: Partial<Record<Part, Part>> = {
  upper_diaphragm: "lower_diaphragm",
  lower_diaphragm: "upper_diaphragm",
  upper_housing: "lower_housing",
  lower_housing: "upper_housing",
  inlet_threads: "outlet_threads",
  outlet_threads: "inlet_threads",
  supply_port: "signal_port",
  signal_port: "supply_port",
};

/** What a part on another is called: "the gasket under the bonnet" is the bonnet gasket. */
export const OWNED: Partial<Record<Part, Partial<Record<Part, Part>>>> = {
  gasket: { bonnet: "bonnet_gasket", seat: "seat_gasket", cage: "cage_gasket", travel_indicator: "indicator_gasket" },
  o_ring: { cage: "cage_o_ring", stem_guide: "stem_guide_o_ring", guide: "stem_guide_o_ring" },
  diaphragm: { actuator: "upper_diaphragm" },
  spring: { actuator: "actuator_spring", travel_indicator: "indicator_spring" },
  bolting: { bonnet: "bonnet_bolting", body: "body_bolting" },
  nut: { packing: "packing_nut", diaphragm: "diaphragm_nut" },
};

/** What a place word makes of a general part: "the bottom one" after the upper diaphragm is the lower diaphragm. */
export const PLACED: { part: Part; place: string[]; is: Part }[] = [
  { part: "diaphragm", place: ["upper", "top"], is: "upper_diaphragm" },
  { part: "diaphragm", place: ["lower", "bottom"], is: "lower_diaphragm" },
  { part: "housing", place: ["upper", "top"], is: "upper_housing" },
  { part: "housing", place: ["lower", "bottom"], is: "lower_housing" },
  { part: "threads", place: ["inlet"], is: "inlet_threads" },
  { part: "threads", place: ["outlet"], is: "outlet_threads" },
];

/** Parts of rubber or the like: split they are torn, stiff they are hardened, soft they are swollen. */
export const RUBBER: ReadonlySet<Part> = new Set<Part>([
  "diaphragm", "upper_diaphragm", "lower_diaphragm", "o_ring", "backup_ring", "packing", "seals", "gasket",
  "seat_gasket", "cage_gasket", "bonnet_gasket", "indicator_gasket", "cage_o_ring", "stem_guide_o_ring",
]);

/** Holes: plug and ice block them; the same word of another part is what it says. */
export const HOLES: ReadonlySet<Part> = new Set<Part>(["vent_hole", "breather", "supply_port", "signal_port", "strainer", "tubing"]);
