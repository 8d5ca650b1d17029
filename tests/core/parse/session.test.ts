import { describe, expect, test } from "vitest";
import { reads } from "./in-short.ts";

/** What one phrase leaves for the next. Phrases of one job are parted by " / "; what stands after them follows, a line an entry. */
const TABLE: Record<string, [phrases: string, ...stands: string[]][]> = {
  undo: [
    ["seat's worn / scratch that"],
    ["seat's worn / plug's pitted / scratch that", "finding seat worn"],
    ["seat's worn / plug's pitted / scratch that / scratch that"],
    ["seat's worn / plug's pitted / scratch that / flipped it", "finding seat worn", "work seat flipped done"],
    ["seat's worn / scratch that plug's worn", "finding plug worn"],
    ["seat's worn scratch that plug's worn", "finding plug worn"],
    ["seat's worn / never mind that"],
    ["seat's worn / forget that last one"],
    ["seat's worn / strike that"],
    ["scratch that"],
    ["seat's worn / lunch at noon / scratch that"],
    ["smell gas / scratch that"],
  ],
  "stop listening, start listening": [
    ["stop listening / seat's worn", "command mute"],
    ["stop listening / smell gas", "command mute", "hazard gas"],
    [
      "stop listening / seat's worn / start listening / plug's pitted",
      "command mute",
      "command unmute",
      "finding plug pitted",
    ],
    ["stop listening / scratch that / start listening", "command mute", "command unmute"],
    [
      "stop listening / no lock on it / start listening / seat's worn",
      "command mute",
      "hazard not_isolated",
      "command unmute",
      "finding seat worn",
    ],
  ],
  notes: [
    ["note the yard is muddy", "note the yard is muddy"],
    ["remark, plug was hard to get out.", "note plug was hard to get out"],
    ["for the record, Bob did it", "note bob did it"],
    ["seat is worn and note that it was new last year", "finding seat worn", "note it was new last year"],
    ["note LCV-213 has no tag", "note lcv-213 has no tag"],
  ],
  'what "it" stands for': [
    ["seat's worn / flipped it", "finding seat worn", "work seat flipped done"],
    ["seat's worn / and pitted", "finding seat worn", "finding seat pitted"],
    ["seat's worn / that one needs replacing", "finding seat worn", "work seat replaced needed"],
    ["lower diaphragm is torn / same on the upper one", "finding lower_diaphragm torn", "finding upper_diaphragm torn"],
    ["lower diaphragm is torn / other one too", "finding lower_diaphragm torn", "finding upper_diaphragm torn"],
    ["inlet threads galled / same on the outlet", "finding inlet_threads galled", "finding outlet_threads galled"],
    ["plug is pitted / ditto for the seat", "finding plug pitted", "finding seat pitted"],
    [
      "seat worn, flipped it / same for the plug",
      "finding seat worn",
      "work seat flipped done",
      "finding plug worn",
      "work plug flipped done",
    ],
    ["both backup rings cut / replaced both", "finding backup_ring cut", "work backup_ring replaced done ×2"],
    ["okay, the bonnet bolts / torqued to thirty", "reading torque 30 ft_lbf"],
    ["okay the plug / it's scored", "finding plug scored"],
  ],
  "two valves in one session": [
    [
      "LCV-213 / seat is worn / LCV-214 / seat's good",
      "valve LCV-213",
      "finding seat worn",
      "valve LCV-214",
      "finding seat ok",
    ],
    [
      "LCV-213 seat is worn LCV-214 seat is good",
      "valve LCV-213",
      "finding seat worn",
      "valve LCV-214",
      "finding seat ok",
    ],
    [
      "LCV-213 / seat's worn / PV-104 / replaced it",
      "valve LCV-213",
      "finding seat worn",
      "valve PV-104",
      "work - replaced done",
    ],
    ["done with this one / LCV-214 / seat's good", "command finish", "valve LCV-214", "finding seat ok"],
  ],
  commands: [
    ["what's left", "command missing"],
    ["read it back", "command read_back"],
    ["take a picture", "command photo"],
    ["done with this one", "command finish"],
  ],
};

for (const [about, rows] of Object.entries(TABLE))
  describe(about, () => {
    for (const [phrases, ...stands] of rows) test(phrases, () => expect(reads(phrases)).toEqual(stands));
  });
