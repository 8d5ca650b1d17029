import type { Style } from "./field.ts";
import { inWords, tagSaid } from "./spoken.ts";

/** A phrase and what it is meant to say, each entry in the short form of `meaning.ts`. */
export interface Saying {
  say: string;
  means: string[];
  /** leaves no entry of its own: this stands afterwards in the place of what the phrase before it left */
  amends?: string;
  /** some of its words are not the trade's: the log is expected to say that it did not read them */
  strange?: true;
}

type Lines = Record<Style, Saying[]>;
const said = (say: string, ...means: string[]): Saying => ({ say, means });
const strange = (say: string, ...means: string[]): Saying => ({ say, means, strange: true });

/** What stands in nearly every job, by subject; each person says it in a few ways of their own. */
export const DUMP_TALK = {
  outside: {
    drawl: [
      said("indicator's fine and the breather's good", "ok travel_indicator", "ok breather"),
      said("breather's plugged up with mud, rodded it out", "plugged breather", "cleaned breather done"),
    ],
    plain: [
      said("The travel indicator and the breather are both fine.", "ok travel_indicator", "ok breather"),
      said("Breather is good.", "ok breather"),
    ],
    short: [
      said("breather ok, travel indicator ok", "ok breather", "ok travel_indicator"),
      said("breather plugged, cleaned", "plugged breather", "cleaned breather done"),
    ],
  },
  actuator: {
    drawl: [
      said("top diaphragm's good, bottom one too", "ok upper_diaphragm", "ok lower_diaphragm"),
      said("both diaphragms look alright and the spring's fine", "ok diaphragm", "ok spring"),
    ],
    plain: [
      said(
        "The upper diaphragm is in good condition and so is the lower one.",
        "ok upper_diaphragm",
        "ok lower_diaphragm",
      ),
      said("Actuator spring is fine, upper housing is fine.", "ok actuator_spring", "ok upper_housing"),
    ],
    short: [
      said("upper diaph ok, lower diaph ok", "ok upper_diaphragm", "ok lower_diaphragm"),
      said("actuator spring ok", "ok actuator_spring"),
    ],
  },
  trim: {
    drawl: [
      said("plug's good, cage is good", "ok plug", "ok cage"),
      said("plug looks good, no cracks in the cage", "ok plug", "cracked cage absent"),
      said("stem ain't bent and the guide's good", "bent stem absent", "ok guide"),
    ],
    plain: [
      said("Plug and cage both look fine.", "ok plug", "ok cage"),
      said("The stem is not bent and the stem guide is fine.", "bent stem absent", "ok stem_guide"),
    ],
    short: [said("plug ok, cage ok", "ok plug", "ok cage"), said("stem ok, stem guide ok", "ok stem", "ok stem_guide")],
  },
  seals: {
    drawl: [
      said("put a whole new soft goods kit in her", "replaced kit done"),
      said("all new seals", "replaced seals done"),
    ],
    plain: [
      said("I replaced the soft goods kit.", "replaced kit done"),
      said("All the seals were replaced.", "replaced seals done"),
    ],
    short: [said("soft goods kit repl'd", "replaced kit done"), said("new seals", "replaced seals done")],
  },
} satisfies Record<string, Lines>;

export const GLOBE_TALK = {
  outside: {
    drawl: [
      said("positioner's good, tubing's good", "ok positioner", "ok tubing"),
      said("no leak at the packing", "leaking packing absent"),
    ],
    plain: [
      said("The positioner and the regulator are both fine.", "ok positioner", "ok regulator"),
      said("Packing is not leaking.", "leaking packing absent"),
    ],
    short: [said("positioner ok, regulator ok", "ok positioner", "ok regulator"), said("packing ok", "ok packing")],
  },
  actuator: {
    drawl: [
      said("diaphragm's good, spring's good", "ok diaphragm", "ok spring"),
      said("yoke's fine, stem connector's fine", "ok yoke", "ok stem_connector"),
    ],
    plain: [
      said("The diaphragm is in good condition.", "ok diaphragm"),
      said("Diaphragm and actuator spring are good.", "ok diaphragm", "ok actuator_spring"),
    ],
    short: [said("diaph ok, yoke ok", "ok diaphragm", "ok yoke"), said("diaph ok", "ok diaphragm")],
  },
  trim: {
    drawl: [
      said("plug's good, cage is good", "ok plug", "ok cage"),
      said("stem's good, guide's good", "ok stem", "ok guide"),
    ],
    plain: [
      said("Plug and cage both look fine.", "ok plug", "ok cage"),
      said("No scoring on the stem, and the guide is fine.", "scored stem absent", "ok guide"),
    ],
    short: [said("plug ok, cage ok", "ok plug", "ok cage"), said("stem ok, guide ok", "ok stem", "ok guide")],
  },
  seals: {
    drawl: [
      said("new packing in and a new kit", "replaced packing done", "replaced kit done"),
      said("all new seals", "replaced seals done"),
    ],
    plain: [
      said("I replaced the soft goods kit.", "replaced kit done"),
      said("New packing and a new bonnet gasket.", "replaced packing done", "replaced bonnet_gasket done"),
    ],
    short: [said("soft goods kit repl'd", "replaced kit done"), said("new seals", "replaced seals done")],
  },
} satisfies Record<string, Lines>;

/** How the seat was found and what was done about it. */
export const SEAT_TALK = {
  sound: {
    drawl: [said("seat's still good", "ok seat"), said("seat looks real good", "ok seat")],
    plain: [
      said("The seat is sound, no wear on it.", "ok seat", "worn seat absent"),
      said("Seat is in good condition.", "ok seat"),
    ],
    short: [said("seat ok", "ok seat"), said("seat good", "ok seat")],
  },
  firstSide: {
    drawl: [
      said("seat's wore on one side, flipped it over", "worn seat one_side", "flipped seat done"),
      said("sand cut the seat on one side so I flipped it", "eroded seat one_side", "flipped seat done"),
    ],
    plain: [
      said("The seat is worn on one side. I flipped it.", "worn seat one_side", "flipped seat done"),
      said("Seat is eroded on one side, so I turned it over.", "eroded seat one_side", "flipped seat done"),
    ],
    short: [
      said("seat worn 1 side, flipped", "worn seat one_side", "flipped seat done"),
      said("seat worn one side, flipped it", "worn seat one_side", "flipped seat done"),
    ],
  },
  secondSide: {
    drawl: [
      said("seat's wore out both sides, put a new one in", "worn seat both_sides", "replaced seat done"),
      said("seat's wore plumb out on both sides, new seat in", "worn seat both_sides severe", "replaced seat done"),
    ],
    plain: [said("The seat is worn on both sides. I replaced it.", "worn seat both_sides", "replaced seat done")],
    short: [said("seat worn both sides, repl'd", "worn seat both_sides", "replaced seat done")],
  },
  worn: {
    drawl: [said("seat's wore pretty bad, put a new one in", "worn seat severe", "replaced seat done")],
    plain: [said("The seat ring is badly worn and I replaced it.", "worn seat severe", "replaced seat done")],
    short: [said("seat worn, repl'd", "worn seat", "replaced seat done")],
  },
  fresh: {
    drawl: [said("put a brand new seat in", "replaced seat done")],
    plain: [said("I put a new seat in.", "replaced seat done")],
    short: [said("new seat", "replaced seat done")],
  },
} satisfies Record<string, Lines>;

export const CLOSE_TALK: Lines = {
  drawl: [said("that's it for this one", "command finish"), said("done with this one", "command finish")],
  plain: [said("All done with this one.", "command finish"), said("That's it.", "command finish")],
  short: [said("all done", "command finish"), said("close it out", "command finish")],
};

/** Talk that is not the trade's, or only half: heard now and then, and kept as not read. */
export const STRANGE_TALK: Lines = {
  drawl: [strange("whatchamacallit on the side is all catawampus"), strange("that doohickey's plumb wallered out")],
  plain: [strange("The thingamajig under the bracket rattles.")],
  short: [strange("gizmo on brkt wobbly"), strange("xducer rdg hinky")],
};

export function opening(tag: string, style: Style): Saying {
  const name = tagSaid(tag, style);
  const words = { drawl: `okay we're on ${name}`, plain: `This is ${name}.`, short: name };
  return said(words[style], `valve ${tag}`);
}

export function torqued(part: "bonnet" | "body", pounds: number, style: Style): Saying {
  const words = {
    drawl: `${part} bolts torqued to ${inWords(pounds)} foot pounds`,
    plain: `The ${part} bolts are torqued to ${inWords(pounds)} foot-pounds.`,
    short: `${part} bolts ${pounds} ft-lb`,
  };
  return said(words[style], `torque ${part}_bolting ${pounds} ft_lbf`);
}

/** Said wrongly first, and put right in the next breath. */
export function torqueSlip(pounds: number, style: Style): [Saying, Saying] {
  const slip = torqued("bonnet", pounds + 10, style);
  const right = style === "short" ? `correction, ${pounds}` : `correction, ${inWords(pounds)}`;
  return [slip, { say: right, means: [], amends: `torque bonnet_bolting ${pounds} ft_lbf` }];
}

export function seatHolds(psi: number, style: Style): Saying {
  const words = {
    drawl: `holding at ${inWords(psi)} pounds, no leak`,
    plain: `Seat leak test at ${inWords(psi)} psi, no leak.`,
    short: `seat leak test ${psi} psi ok`,
  };
  return said(words[style], `upstream_pressure ${psi} psi`, "seat_leak pass");
}

export function seatLeaks(psi: number, style: Style): Saying {
  const words = {
    drawl: `she's leaking by at ${inWords(psi)} psi`,
    plain: `Seat leak test at ${inWords(psi)} psi failed.`,
    short: `seat leak test ${psi} psi fail`,
  };
  return said(words[style], `upstream_pressure ${psi} psi`, "seat_leak fail");
}

export function bubbles(count: number, psi: number, style: Style): Saying {
  const words = {
    drawl: `got ${inWords(count)} bubbles a minute at ${inWords(psi)} psi`,
    plain: `${inWords(count)} bubbles a minute at ${inWords(psi)} psi.`,
    short: `${count} bubbles/min @ ${psi} psi`,
  };
  return said(words[style], `leak_rate ${count} bubble/min`, `upstream_pressure ${psi} psi`, "seat_leak unsaid");
}

export const STROKES: Lines = {
  drawl: [said("strokes full", "stroke pass"), said("she opens and closes fine", "stroke pass")],
  plain: [said("It strokes fully.", "stroke pass"), said("Full travel on the stroke test.", "stroke pass")],
  short: [said("strokes full", "stroke pass"), said("stroke test ok", "stroke pass")],
};

export const REWORK: Lines = {
  drawl: [said("lapped the seat in", "lapped seat done")],
  plain: [said("I lapped the seat.", "lapped seat done")],
  short: [said("lapped seat", "lapped seat done")],
};
