/** Step 4b: how each test went: the verdict said of it, null while none is said. */

import type { Part, Test, TestResult } from "../shapes/codes.ts";
import { ROLE } from "../vocabulary/grammar.ts";
import { STROKES_TO, STROKING } from "../vocabulary/tests.ts";
import { type Chunk, has } from "./chunks.ts";
import { isPressure, isRate, type Measure } from "./measure.ts";
import { airOn } from "./pressed-where.ts";
import { strokesIn } from "./quantities.ts";
import type { Scene } from "./scene.ts";
import { partBefore, TEST_OF, type TestSaid } from "./tests.ts";

/** Gives each test the verdict said of it; verdicts with a pressure and no test are of the seat. */
export function settleTests(
  scene: Scene,
  tests: TestSaid[],
  measures: readonly Measure[],
  lastTest: Test | undefined,
): TestSaid[] {
  const { chunks } = scene;
  const ours = !chunks.some((one) => one.unknown || one.talk);
  const pressuredBefore =
    ours &&
    scene.carry.last.some(
      (entry) => entry.type === "reading" && entry.quantity.endsWith("pressure") && isPressure(entry.unit),
    ) &&
    !scene.carry.last.some((entry) => entry.type === "test" && entry.result !== null);
  for (let at = 0; at < chunks.length; at += 1) {
    const chunk = chunks[at];
    const verdict = chunk?.senses.verdict;
    if (!chunk || !verdict || chunk.used || chunk.talk || chunk.senses.outcome) continue;
    // "bled down but still holding pressure" is the hazard, not a test that holds
    if (chunks[at - 1]?.hazard === "trapped_pressure" && /hold|held/.test(chunk.text)) {
      chunk.used = true;
      continue;
    }
    // "the seat passed four bubbles a minute": fluid, and no test
    if (chunk.text === "passed" && measures.some((one) => isRate(one.unit) && (one.boundAt ?? one.from) === at + 1)) {
      chunk.used = true;
      continue;
    }
    const negated = has(chunks[at - 1], ROLE.not) && !chunk.text.startsWith("no") && !chunk.text.startsWith("not");
    const result: TestResult = negated ? (verdict === "pass" ? "fail" : "pass") : verdict;
    const before = testBefore(scene, tests, at);
    const after = before ? undefined : testAfter(scene, tests, at);
    const test = before ?? after;
    if (test) {
      // "holds at fifty but leaks at a hundred": the later tells how it stands
      const turned =
        test.result !== result && chunks.slice(test.at, at).some((one) => one.text === "but") && measures.length > 1;
      if (test.result === null || turned) test.result = result;
      test.chunks.push(at);
      if (negated) test.chunks.push(at - 1);
      continue;
    }
    const strong =
      /^(?:pass|fail|hold|held|no (?!problem|trouble)|zero|not leaking|isnt leaking|tight|leak|didnt|doesnt leak|did not|dropping|losing|lost|bled|bleed|without|nothing leak|not a drop|rock solid)/.test(
        chunk.text,
      );
    if (!strong) continue;
    // "if he fails algebra again": who passes or fails is no valve
    const told =
      /^(?:pass|fail)/.test(chunk.text) &&
      (/^(?:he|she|they|i|we|you|hes)$/.test(chunks[at - 1]?.text ?? "") ||
        chunks[at + 1]?.unknown ||
        chunks[at + 1]?.talk);
    if (told) continue;
    const noun = subjectBefore(scene, at);
    const onPart = chunks[at + 1] && has(chunks[at + 1], ROLE.prep) && scene.noun(at + 2)?.part;
    const onWhole = noun === undefined || noun === "valve";
    const pressured =
      measures.some((one) => isPressure(one.unit) || one.unit === "pound") ||
      (pressuredBefore && noun === undefined && !onPart);
    if (/^(?:passe[ds]|failed|fails|fail|pass)$/.test(chunk.text)) {
      const byPart = noun ? TEST_OF[noun] : undefined;
      const code = byPart ?? (noun ? undefined : (lastTest ?? (pressured ? "seat_leak" : undefined)));
      if (code) tests.push({ at, test: code, result, chunks: [at] });
    } else if (
      measures.some(
        (one) =>
          one.quantity === "signal_pressure" &&
          one.lead !== undefined &&
          TEST_OF[chunks[one.lead]?.senses.part ?? "kit"] === "actuator",
      ) &&
      HELD.test(chunk.text)
    )
      // "put twenty on the actuator and it holds"
      tests.push({ at, test: "actuator", result, chunks: [at] });
    else if (HELD.test(chunk.text) && pressedAt(scene, measures).length > 0)
      // "thirty pounds on the diaphragm for five minutes, no drop"
      tests.push({ at, test: "actuator", result, chunks: [...pressedAt(scene, measures), at] });
    else if (
      lastTest === "packing" &&
      onWhole &&
      chunks.slice(0, at).some((one) => TEST_OF[one.senses.part ?? "kit"] === "packing")
    )
      // "snugged the packing nut, holding now": what failed before holds
      tests.push({ at, test: "packing", result, chunks: [at] });
    else if (pressured && (onWhole || noun === "seat") && !(onPart && scene.noun(at + 2)?.part !== "seat"))
      tests.push({ at, test: "seat_leak", result, chunks: [at] });
    else if (
      pressured &&
      noun &&
      /^(?:actuator|shell)$/.test(TEST_OF[noun] ?? "") &&
      /^(?:holdin|holds|held)/.test(chunk.text)
    )
      tests.push({ at, test: TEST_OF[noun] as Test, result, chunks: [partBefore(scene, at)?.at ?? at, at] });
    else if (/^(?:holdin|holds|held)/.test(chunk.text) && (onWhole || has(chunks[at - 1], ROLE.it)))
      tests.push({ at, test: "seat_leak", result, chunks: [at] });
  }
  const settled = merge(
    tests,
    chunks.flatMap((chunk, at) => (chunk.tag ? [at] : [])),
  );
  // "tested to four hundred and held for ten minutes": that it held is the outcome
  const held = measures.find(
    (one) => one.quantity === "duration" && /^held\b/.test(chunks[one.word ?? -1]?.text ?? ""),
  );
  const open = settled.filter((one) => one.result === null && one.test !== "stroke" && one.at < (held?.from ?? 0));
  if (open.length === 1 && open[0]) open[0].result = "pass";
  const rate = measures.find((one) => isRate(one.unit));
  if (rate) {
    const code: Test = rate.noun?.part === "packing" ? "packing" : "seat_leak";
    const existing = settled.find((one) => one.test === code);
    if (!existing) settled.push({ at: rateEnd(measures), test: code, result: null, chunks: [] });
    else if (
      existing.result === "fail" &&
      existing.chunks.every(
        (at) =>
          chunks[at]?.senses.test ||
          /^(?:wont (?:quit|stop) )?(?:leak|leaking|leaks|leaked|passes|passing)\b/.test(chunks[at]?.text ?? ""),
      )
    )
      existing.result = null;
  }
  if (measures.some((one) => one.quantity === "duration") && !settled.some((one) => one.test === "stroke")) {
    const stroking = chunks.findIndex(
      (chunk, at) =>
        (!chunk.used || /^strok/.test(chunk.text)) &&
        (isStroking(chunk, chunks[at - 1]) ||
          measures.some((one) => one.from > at && one.from <= at + 3 && strokesIn(scene, one))),
    );
    if (stroking >= 0) settled.push({ at: stroking, test: "stroke", result: null, chunks: [stroking] });
  }
  for (const test of settled) scene.use(...test.chunks);
  return settled;
}

/** Where an actuator stands that a pressure is said to be on. */
const pressedAt = (scene: Scene, measures: readonly Measure[]): number[] =>
  measures.flatMap((one) => (isPressure(one.unit) || one.unit === "pound" ? (airOn(scene, one) ?? []) : []));

/** What air does in an actuator that holds. */
const HELD = /^(?:holdin|holds|held|no (?:leak|drop|pressure drop|bubble)|not leaking|steady|rock solid)/;

/** "took eight seconds to stroke", "fourteen seconds to close". */
const isStroking = (chunk: Chunk, before: Chunk | undefined): boolean =>
  STROKING.test(chunk.text) || (/^(?:to|for)$/.test(before?.text ?? "") && STROKES_TO.test(chunk.text));

/** The last chunk of the rate, or of the pressure said with it. */
function rateEnd(measures: readonly Measure[]): number {
  const at = measures.findIndex((one) => isRate(one.unit));
  const next = measures[at + 1];
  return ((next && isPressure(next.unit) ? next : measures[at])?.to ?? 1) - 1;
}

const isClear = (scene: Scene, at: number): boolean => {
  const chunk = scene.chunks[at];
  if (!chunk) return false;
  if (chunk.senses.part && !chunk.used) return false;
  return !chunk.unknown && !chunk.senses.work && !(chunk.senses.condition && !chunk.senses.verdict && !chunk.used);
};

function testBefore(scene: Scene, tests: readonly TestSaid[], at: number): TestSaid | undefined {
  const before = tests.filter((one) => one.at < at && scene.chunks[one.at]?.senses.outcome === undefined).at(-1);
  if (!before) return undefined;
  const own = new Set(before.chunks);
  for (let between = before.at + 1; between < at; between += 1) {
    if (scene.chunks[between]?.tag) return undefined;
    const behindPrep = has(scene.chunks[between - 1], ROLE.prep) || has(scene.chunks[between - 2], ROLE.prep);
    // "hydro'd the body at two twenty five, no leaks"
    const tested = TEST_OF[scene.chunks[between]?.senses.part ?? "kit"] === before.test;
    if (!own.has(between) && !tested && !isClear(scene, between) && !behindPrep) return undefined;
  }
  return before;
}

function testAfter(scene: Scene, tests: readonly TestSaid[], at: number): TestSaid | undefined {
  const after = tests.find((one) => one.at > at);
  if (!after || after.result !== null) return undefined;
  const own = new Set(after.chunks);
  for (let between = at + 1; between < after.at; between += 1) {
    const chunk = scene.chunks[between];
    if (own.has(between) || has(chunk, ROLE.det) || chunk?.senses.plain || has(chunk, ROLE.it) || has(chunk, ROLE.prep))
      continue;
    return undefined;
  }
  return /^(?:pass|fail|good|no leak|no leaks|bad|holding|held|bombed|flunked)|\bpass(?:ed)?$/.test(
    scene.chunks[at]?.text ?? "",
  )
    ? after
    : undefined;
}

function subjectBefore(scene: Scene, at: number): Part | undefined {
  for (let back = at - 1; back >= 0 && back >= at - 4; back -= 1) {
    const chunk = scene.chunks[back];
    if (chunk?.senses.part && !chunk.used) return chunk.senses.part;
    if (chunk?.senses.condition || chunk?.senses.work || (has(chunk, ROLE.prep) && !has(chunk, ROLE.is)))
      return undefined;
  }
  return undefined;
}

/** One entry a test: a test named and its outcome said apart are one. */
function merge(tests: readonly TestSaid[], tags: readonly number[]): TestSaid[] {
  const merged: TestSaid[] = [];
  for (const one of [...tests].sort((a, b) => a.at - b.at)) {
    const same = merged.find(
      (other) =>
        other.test === one.test && !tags.some((tag) => tag > Math.min(other.at, ...other.chunks) && tag < one.at),
    );
    if (!same) merged.push({ ...one });
    else {
      same.result = one.result ?? same.result;
      same.chunks.push(...one.chunks);
      same.at = Math.max(same.at, one.at);
    }
  }
  return merged;
}
