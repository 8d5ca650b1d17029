/** Steps 3 to 5: one run of words, free of turns, to drafts of entries. */

import type { Entry } from "../shapes/entry.ts";
import { ROLE } from "../vocabulary/grammar.ts";
import type { Lexicon } from "../vocabulary/lexicon.ts";
import { STROKING } from "../vocabulary/tests.ts";
import { answered, settleAsked } from "./asked.ts";
import { chunk, has, range } from "./chunks.ts";
import { readClauses } from "./clauses.ts";
import { isRate, type Measure } from "./measure.ts";
import { findMeasures } from "./measures.ts";
import type { Proposal } from "./mishearing.ts";
import type { Named } from "./noun.ts";
import { oneEach, order } from "./order.ts";
import { keptToValve } from "./other-talk.ts";
import { settleMeasures } from "./quantities.ts";
import { type Carry, type Draft, Scene } from "./scene.ts";
import { findTests } from "./tests.ts";
import { settleTests } from "./tests-settled.ts";
import { readValve } from "./valves.ts";

/** What a run of words, free of undo and amendment, says. */
export interface Fragment {
  scene: Scene;
  drafts: Draft[];
  /** parts that "it" and "them" stand for after it */
  named: Named[];
  recent: Named[];
  /** it was read with mishearings undone */
  respelled?: readonly Proposal[];
}

/** Reads words (already lower case) into entries, in the order the log keeps them. */
export function readFragment(words: readonly string[], carry: Carry, lexicon: Lexicon): Fragment {
  const scene = new Scene(
    chunk(
      words.map((word) => withG(word, lexicon)),
      lexicon,
    ),
    carry,
  );
  const tests = findTests(scene);
  const found = findMeasures(scene);
  const rated = found.some((one) => isRate(one.unit));
  // what a phrase that names no test speaks of is the same for all its numbers
  let untested: "stroke" | "seat_leak" | "none" | undefined;
  const testAt = (at: number) => {
    // "passed at eighty pounds": a small word ties a number to the test before it
    const tied = has(scene.at(at - 1), ROLE.prep) || has(scene.at(at - 2), ROLE.prep);
    let back = at - (has(scene.at(at - 1), ROLE.prep) ? 2 : 3);
    // "tight now at sixty"
    while (
      /^(?:now|good|again|here|fine|still|up|solid)$/.test(scene.at(back)?.text ?? "") &&
      !scene.at(back)?.senses.test
    )
      back -= 1;
    const before = scene.at(back);
    if (
      tied &&
      before?.senses.verdict &&
      !before.senses.test &&
      /leak|hold|held|tight|drop/.test(before.text) &&
      !tests.some((one) => one.chunks.includes(back) || one.at === at - 3)
    )
      return "seat_leak";
    if (tied && rated) return tests.find((one) => one.at < at)?.test ?? "seat_leak";
    const far = (one: { at: number }) => (one.at < at ? (at - one.at) / (tied ? 3 : 1) : one.at - at);
    let nearest = tests[0];
    for (const one of tests) if (nearest && far(one) < far(nearest)) nearest = one;
    if (nearest) return nearest.test;
    untested ??= scene.chunks.some((one) => STROKING.test(one.text))
      ? "stroke"
      : leakSaid(scene)
        ? "seat_leak"
        : "none";
    if (untested === "stroke") return "stroke";
    return rated || untested === "seat_leak" ? "seat_leak" : undefined;
  };
  const measures = settleMeasures(scene, found, testAt);
  const settled = settleTests(scene, tests, measures.readings, carry.lastTest);
  // "tested at fifty, tight": the verdict that makes a seat test of it tells the side as well
  if (settled.some((one) => one.test === "seat_leak" && one.result !== null) && settled.length === 1)
    for (const one of measures.readings)
      if (one.quantity === "pressure" && one.word === undefined) one.quantity = "upstream_pressure";
  readValve(scene, measures.sizes);
  readClauses(scene);
  settleAsked(scene);
  for (const [at, one] of scene.chunks.entries()) {
    if (one.hazard)
      scene.drafts.push({ entry: { type: "hazard", hazard: one.hazard }, chunks: [at], rule: "hazard", named: true });
    if (one.command)
      scene.drafts.push({
        entry: { type: "command", command: one.command },
        chunks: [at],
        rule: "command",
        named: true,
      });
    if (one.hazard || one.command) one.used = true;
  }
  for (const { noun } of measures.readings) if (noun) scene.use(...range(noun.from, noun.to));
  const told = toldBySomebody(scene);
  const readings = answered(
    scene,
    measures.readings.map((measure) => readingDraft(measure)).filter((draft) => !told(draft)),
  );
  for (const draft of readings) scene.use(...draft.chunks);
  const tested = answered(
    scene,
    settled
      .map(
        (test): Draft => ({
          entry: { type: "test", test: test.test, result: test.result },
          chunks: test.chunks.length > 0 ? test.chunks : [test.at],
          rule: "test",
          named: true,
        }),
      )
      .filter((draft) => !told(draft)),
  );
  return {
    scene,
    drafts: keptToValve(scene, order(scene, oneEach(scene.drafts), readings, tested)),
    named: scene.named,
    recent: scene.recent,
  };
}

/** "blowin", "packin": the last letter is swallowed. */
const withG = (word: string, lexicon: Lexicon): string =>
  word.length > 4 && word.endsWith("in") && !lexicon.longest([word], 0) && lexicon.longest([`${word}g`], 0)
    ? `${word}g`
    : word;

/** "operator says it's leaking by": what others tell is not what was found here, and stays unread. */
function toldBySomebody(scene: Scene): (draft: Draft) => boolean {
  return (draft) => {
    const start = Math.min(...draft.chunks);
    const told = scene.told.some((one) => start >= one.from && start < one.to);
    if (told)
      for (const at of [...draft.chunks, ...(draft.also ?? [])]) Object.assign(scene.chunks[at] ?? {}, { used: false });
    return told;
  };
}

/** "no leak at sixty", "leaking at fifty pounds": a leak and a pressure are a seat test even before it is settled. */
function leakSaid(scene: Scene): boolean {
  for (let at = 0; at < scene.chunks.length; at += 1) {
    const text = scene.at(at)?.text ?? "";
    const part = scene.at(at)?.senses.part;
    if (part && part !== "valve" && part !== "seat") return false;
    if (
      /^(?:no leaks?|leaking|leaks|no leakage|zero leakage|not leaking|holding?|held|holds|isnt leaking|leaked|didnt leak|no drop)\b/.test(
        text,
      )
    )
      return true;
  }
  return false;
}

/** The reading that a measure makes. */
function readingDraft(measure: Measure): Draft {
  const entry: Entry = {
    type: "reading",
    quantity: measure.quantity ?? "pressure",
    value: measure.value,
    unit: (measure.unit ?? "psi") as "psi",
  };
  if (measure.upper !== undefined) entry.upper = measure.upper;
  if (measure.bound) entry.bound = measure.bound;
  if (measure.noun?.part) entry.part = measure.noun.part;
  return {
    entry,
    chunks: range(measure.from, measure.to),
    also: [
      ...(measure.noun ? range(measure.noun.from, measure.noun.to) : []),
      ...(measure.word === undefined ? [] : [measure.word]),
      ...(measure.lead === undefined ? [] : [measure.lead]),
    ],
    rule: "reading",
    named: true,
  };
}
