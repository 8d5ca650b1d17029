import { type WordLine, wordsOf } from "./glossary.ts";
import type { WordKind } from "./tables.ts";

/** One thing that can be said: whole phrases as examples, and the words that may stand in them. */
export interface HelpPart {
  head: string;
  /** phrases to say as they stand; the tests hold each of them to being read whole */
  say: string[];
  words: WordLine[];
}

/** What can be said, in the order of a job. */
export function helpPage(): HelpPart[] {
  return PARTS.map(({ head, say, kinds }) => ({ head, say, words: kinds.flatMap(wordsOf) }));
}

const PARTS: { head: string; say: string[]; kinds: WordKind[] }[] = [
  {
    head: "Name the valve",
    say: ["L C V two one three", "two inch, pressure to open, severe service"],
    kinds: ["acts", "service"],
  },
  {
    head: "What you found",
    say: ["seat worn one side", "no cracks in the cage", "upper diaphragm's torn bad"],
    kinds: ["condition", "severity", "extent", "place"],
  },
  {
    head: "What you did, or must be done",
    say: ["flipped it", "put a new seat in", "needs a new stem guide", "didn't replace the packing"],
    kinds: ["work"],
  },
  { head: "Parts", say: ["order two backup rings", "both backup rings cut"], kinds: ["part"] },
  {
    head: "Figures",
    say: ["bonnet bolts torqued to twenty eight", "three bubbles a minute at fifty pounds"],
    kinds: ["quantity", "unit", "bound"],
  },
  { head: "Tests", say: ["no leak at sixty psi", "strokes full", "blowing by"], kinds: ["test"] },
  { head: "Put it right", say: ["scratch that", "correction, upper", "no wait, thirty"], kinds: [] },
  { head: "Note", say: ["note handwheel is painted over"], kinds: [] },
  { head: "Ask it and end it", say: ["what's left", "read it back", "close it out"], kinds: ["command"] },
  { head: "Stop and look", say: ["I smell gas", "still pressure on it"], kinds: ["hazard"] },
];
