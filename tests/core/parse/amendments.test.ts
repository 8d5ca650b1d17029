import { describe, expect, test } from "vitest";
import { reads } from "./in-short.ts";

/** Corrections: the new words replace what they match. Phrases of one job are parted by " / "; what stands after them follows, a line an entry. */
const TABLE: Record<string, [phrases: string, ...stands: string[]][]> = {
  "the phrase before put right": [
    ["bonnet bolts torqued to twenty eight / make that thirty", "reading torque 30 ft_lbf bonnet_bolting"],
    ["seat is worn / correction, pitted", "finding seat pitted"],
    ["seat worn bad / correction, a little worn", "finding seat worn slight"],
    ["seat is worn one side / I mean both sides", "finding seat worn both_sides"],
    ["nick on the inlet side of the plug / correction, outlet side", "finding plug nicked @outlet"],
    ["replaced four bolts / make that five", "work bolting replaced done ×5"],
    ["seat worn, replace it / correction, I already replaced it", "finding seat worn", "work seat replaced done"],
    ["LCV-213 / correction, 214", "valve LCV-214"],
    ["LCV-213 / seat is worn / correction, LCV-215", "valve LCV-215", "finding seat worn"],
    ["order two gaskets / make that three", "need gasket ×3"],
    ["seat leak test passed / correction, failed", "test seat_leak fail"],
    ["seat worn, flipped it / I mean the plug", "finding plug worn", "work plug flipped done"],
    ["stem is bent / sorry, scored", "finding stem scored"],
    ["upper diaphragm is torn / I mean the lower", "finding lower_diaphragm torn"],
    ["holding at sixty psi / correction, eighty psi", "reading upstream_pressure 80 psi", "test seat_leak pass"],
    [
      "twenty five to thirty foot pounds on the body bolts / make that thirty to thirty five",
      "reading torque 30..35 ft_lbf body_bolting",
    ],
  ],
  "a phrase that is nothing but what it should have been": [
    ["bonnet bolts torqued to thirty foot pounds / no, forty", "reading torque 40 ft_lbf bonnet_bolting"],
    ["upstream's ninety psi / wait, eighty five", "reading upstream_pressure 85 psi"],
    ["order two diaphragms / should be three", "need diaphragm ×3"],
    ["LCV-411 / actually four twelve", "valve LCV-412"],
    ["seat's worn / no, the plug", "finding plug worn"],
    ["seat's worn / wait, that was the plug", "finding plug worn"],
    ["stem's scored / no bolts", "finding stem scored"],
    ["stem's scored / wait fifteen minutes", "finding stem scored"],
    ["cage is cracked / seat's worn / oops, scratch that", "finding cage cracked"],
    ["cage is cracked / seat's worn / belay that", "finding cage cracked"],
    ["cage is dirty / wipe that cage down", "finding cage fouled", "work cage cleaned needed"],
  ],
  "put right in the same breath": [
    ["bonnet bolts torqued to 28, no wait, 30 foot pounds", "reading torque 30 ft_lbf bonnet_bolting"],
    ["seat worn, I mean the plug", "finding plug worn"],
    ["the plug uh the seat is pitted", "finding seat pitted"],
    ["plug worn, no, the seat", "finding seat worn"],
    ["torqued to 28 make that 30 foot pounds", "reading torque 30 ft_lbf"],
    ["order three make that four body bolts", "need body_bolting ×4"],
  ],
  "words of amending that amend nothing": [
    ["correction"],
    ["sorry I'm late"],
    ["no wait for me"],
    ["I mean he never calls back"],
  ],
};

for (const [about, rows] of Object.entries(TABLE))
  describe(about, () => {
    for (const [phrases, ...stands] of rows) test(phrases, () => expect(reads(phrases)).toEqual(stands));
  });
