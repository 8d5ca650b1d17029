import { describe, expect, test } from "vitest";
import { listen } from "../../../core/index.ts";
import { CHATTER } from "../../fuzz/phrases.ts";
import { inShort, say } from "./in-short.ts";

/** Logs under way, one of each kind of entry that talk could take for its own: chatter leaves them as they stand. */
const UNDER_WAY = [
  "seat's worn one side",
  "worn on one side",
  "upper diaphragm is torn",
  "both backup rings cut",
  "plug's good",
  "seat worn, flipped it",
  "replaced four bonnet bolts",
  "need a new seat",
  "order two gaskets",
  "bonnet bolts torqued to 30",
  "bonnet bolts thirty",
  "put 60 psi on it",
  "holding at sixty psi",
  "travel is half an inch",
  "took eight seconds to stroke",
  "seat leak test",
  "LCV-213",
  "LCV-213 two inch fail closed",
  "the bonnet bolts",
  "smell gas",
  "what's left",
  "note it rained",
];

describe("chatter leaves a log as it stands", () => {
  for (const phrase of UNDER_WAY)
    test(`after "${phrase}"`, () => {
      const session = say(phrase);
      const before = session.entries.map(inShort);
      const changed = CHATTER.flatMap((chatter) => {
        const after = listen(session, chatter).entries.map(inShort);
        return after.join() === before.join() ? [] : [`${chatter} -> ${after.join("; ")}`];
      });
      expect(changed).toEqual([]);
    });
});
