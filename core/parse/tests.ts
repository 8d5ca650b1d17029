/** Step 4b: "stroke test", "holds bubble tight": tests that are named, or said by their outcome alone. */

import type { Part, Test, TestResult } from "../shapes/codes.ts";
import { ROLE } from "../vocabulary/grammar.ts";
import { spellings } from "../vocabulary/notation.ts";
import { bubblesAt } from "./bubbles.ts";
import { type Chunk, has } from "./chunks.ts";
import type { Scene } from "./scene.ts";

/** Step 4b: tests and how they went. */
export interface TestSaid {
  at: number;
  test: Test;
  result: TestResult;
  chunks: number[];
}

/** Which test a part's name stands for, in "packing passed the test". */
export const TEST_OF: Partial<Record<Part, Test>> = {
  packing: "packing",
  stem: "packing",
  packing_nut: "packing",
  actuator: "actuator",
  diaphragm: "actuator",
  housing: "actuator",
  upper_diaphragm: "actuator",
  body: "shell",
  seat: "seat_leak",
  plug: "seat_leak",
  valve: "seat_leak",
};

/** Parts that hold or pass by themselves. */
const OTHER = spellings("regulator|controller|positioner|solenoid|gauge|pilot|tubing|fitting|strainer|breather");

/** Parts that leak to the outside. */
const JOINTS = /^(?:packing|packing_nut|bonnet|flange|.*gasket|.*o_ring)$/;

const PASSES = spellings("passes|passing");
const FULL_TRAVEL = spellings("full (stroke|travel)");
const TESTED = spellings("tested|pressurized|pressurised");
const NOT_STROKED = spellings("didnt (stroke|open|close)");

/** Tests that are named, or said by their outcome alone. */
export function findTests(scene: Scene): TestSaid[] {
  const { chunks } = scene;
  const tests: TestSaid[] = [];
  for (let at = 0; at < chunks.length; at += 1) {
    const chunk = chunks[at];
    if (!chunk || chunk.talk) continue;
    const { senses } = chunk;
    // "in three passes"
    if (chunks[at - 1]?.number && chunk.text.startsWith("pass")) continue;
    // "haven't stroked it yet", "didn't stroke it": nobody tried
    if (isUntried(scene, at)) continue;
    // "she passes the stroke test": a verdict, and nothing that passes the seat
    if (PASSES.has(chunk.text) && testAhead(scene, at + 1)) chunk.senses = { ...senses, outcome: undefined };
    // "regulator won't hold pressure": no leak through the seat
    const leaks =
      senses.outcome?.result === "fail" &&
      /(?:ing|s|ed)\b.*|leak/.test(chunk.text) &&
      !/hold|shut|seal|seat/.test(chunk.text);
    const subject = senses.outcome?.test === "seat_leak" ? (subjectJustBefore(scene, at) ?? "") : "";
    if (OTHER.has(subject) || (leaks && JOINTS.test(subject))) {
      // "pilot is blowing by", "packing's leaking past the nut": what leaks is the pilot, the packing
      if (leaks)
        chunk.senses = {
          ...senses,
          outcome: undefined,
          verdict: undefined,
          condition: [{ code: "leaking", form: "does" }],
        };
      continue;
    }
    // "he can't hold a wrench": what is held is a thing, and no pressure
    if (senses.outcome && /hold$/.test(chunk.text) && holdsThing(chunks, at + 1)) continue;
    // "soaped the housing, no bubbles": of the test named before, and not the seat's
    const soaped = tests.at(-1);
    if (
      senses.outcome?.result === "pass" &&
      /bubble/.test(chunk.text) &&
      !/tight/.test(chunk.text) &&
      soaped &&
      soaped.result === null &&
      soaped.test !== "seat_leak" &&
      soaped.test !== "stroke" &&
      at - soaped.at <= 4
    ) {
      soaped.result = "pass";
      soaped.chunks.push(at);
      continue;
    }
    // "three bubbles at fifty": a test, whatever they come to in a minute
    if (!soaped && bubblesAt(scene, at)) {
      tests.push({ at, test: "seat_leak", result: null, chunks: [at] });
      chunk.unknown = undefined;
      continue;
    }
    // "full travel is half an inch", "full stroke took eight seconds": how far, how long, and no verdict
    const measured = FULL_TRAVEL.has(chunk.text) ? unitAhead(scene, at + 1) : undefined;
    if (measured === "in" || measured === "mm") {
      chunk.senses = { ...senses, outcome: undefined, quantity: "travel" };
      continue;
    }
    if (measured === "s" && /^t(?:ook|akes)$/.test(chunks[at + 1]?.text ?? "")) {
      tests.push({ at, test: "stroke", result: null, chunks: [at] });
      continue;
    }
    if (chunk.number && strokeStops(scene, at)) tests.push({ at, test: "stroke", result: "fail", chunks: [at] });
    if (chunk.senses.outcome && senses.outcome)
      tests.push({ at, test: senses.outcome.test, result: senses.outcome.result, chunks: [at] });
    else if (senses.test && !senses.part) tests.push({ at, test: senses.test, result: null, chunks: [at] });
    else if (
      chunk.text === "stroke" &&
      chunks[at + 1]?.senses.verdict &&
      /^(?:pass|fail|ok|okay|good|fine)/.test(chunks[at + 1]?.text ?? "")
    )
      tests.push({ at, test: "stroke", result: null, chunks: [at] });
    else if (isTested(scene, at)) {
      const part = partBefore(scene, at);
      if (part) tests.push({ at, test: part.test, result: null, chunks: [part.at, at] });
    } else if (senses.testing) {
      const part = partBefore(scene, at);
      if (part) tests.push({ at, test: part.test, result: null, chunks: [part.at, at] });
    }
  }
  return tests;
}

/** "the body was tested to four hundred": a part, and the pressure it was put under. */
function isTested({ chunks }: Scene, at: number): boolean {
  if (!TESTED.has(chunks[at]?.text ?? "")) return false;
  let back = at - 1;
  while (/^(?:pressure|air|leak|soap)$/.test(chunks[back]?.text ?? "")) back -= 1;
  if (!has(chunks[back], ROLE.is) || has(chunks[back], ROLE.it) || chunks[back - 1]?.senses.part === undefined)
    return false;
  return /^(?:to|at|with)$/.test(chunks[at + 1]?.text ?? "") && chunks.slice(at + 2, at + 4).some((one) => one.number);
}

/** A deed of testing that is denied of whoever would have done it. */
function isUntried({ chunks }: Scene, at: number): boolean {
  const text = chunks[at]?.text ?? "";
  if (NOT_STROKED.has(text)) return has(chunks[at + 1], ROLE.it) || has(chunks[at + 1], ROLE.det);
  return chunks[at]?.senses.test !== undefined && /^\w+ed\b/.test(text) && has(chunks[at - 1], ROLE.not);
}

/** "the seat leak test", "her stroke test": right behind. */
const testAhead = ({ chunks }: Scene, at: number): boolean => {
  const article = has(chunks[at], ROLE.det) || /^(?:her|its|his|it)$/.test(chunks[at]?.text ?? "") ? 1 : 0;
  return chunks[at + article]?.senses.test !== undefined;
};

/** The unit of a number that is said of the word before: "is half an inch". */
function unitAhead({ chunks }: Scene, from: number): string | undefined {
  let at = from;
  while (
    has(chunks[at], ROLE.is) ||
    chunks[at]?.senses.bound ||
    /^(?:took|takes|in|at|of)$/.test(chunks[at]?.text ?? "")
  )
    at += 1;
  return chunks[at]?.number ? chunks[at + 1]?.senses.unit : undefined;
}

/** "can't get it past forty percent", "won't go past half": as far as it strokes. */
function strokeStops({ chunks }: Scene, at: number): boolean {
  const number = chunks[at]?.number;
  const behind = chunks[at + 1];
  const share =
    behind?.senses.unit === "%" ||
    (number?.fraction && !behind?.senses.unit && (!behind || OF_TRAVEL.test(behind.text)));
  if (!number || !share) return false;
  const before = chunks
    .slice(Math.max(0, at - 7), at)
    .map((one) => one.text)
    .join(" ");
  return STOPS_AT.test(before);
}

const OF_TRAVEL = /^(?:open|way|travel|stroke|closed|and|but|then|of)/;
const STOPS_AT =
  /\b(?:(?:cant|couldnt|cannot|wont|wouldnt|doesnt|didnt|will not|not) (?:get|go|goes|going|open|stroke|make|move|come|getting|opening)(?: it| her| him| up)* (?:past|beyond|over|above|more than)|(?:stops|stopped|stopping|stuck|hangs|hung|hanging|sticks|sticking|stalls|stalled|quits|tops out|maxes out)(?: up| out)? at|only (?:gets|goes|got|went|opens|opened|strokes|stroked|makes it|comes|moves|going|opening|getting)(?: up)?(?: to| about)?)(?: about| around| maybe| a)?$/;

/** An article behind "can't hold", and no test, pressure or bubble behind that. */
function holdsThing(chunks: readonly Chunk[], at: number): boolean {
  const what = chunks[at + 1];
  if (!/^(?:a|an|the|his|her|my|your|their|still|onto)$/.test(chunks[at]?.text ?? "") || !what) return false;
  return !(
    what.senses.testing ||
    what.senses.quantity ||
    what.senses.test ||
    what.number ||
    /^(?:bubble|seal)/.test(what.text)
  );
}

/** "regulator's", "the pilot is still": the part that the next word is said of. */
function subjectJustBefore(scene: Scene, at: number): Part | undefined {
  let back = at - 1;
  while (has(scene.chunks[back], ROLE.is) && !has(scene.chunks[back], ROLE.it)) back -= 1;
  return scene.chunks[back]?.senses.part;
}

/** "packing failed the test too", "actuator failed its air test". */
export function partBefore(scene: Scene, at: number): { test: Test; at: number } | undefined {
  for (let back = at - 1; back >= 0 && back >= at - 5; back -= 1) {
    const part = scene.chunks[back]?.senses.part;
    if (part) {
      const test = TEST_OF[part];
      return test ? { test, at: back } : undefined;
    }
  }
  return undefined;
}
