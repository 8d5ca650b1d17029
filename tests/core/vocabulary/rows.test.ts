import { describe, expect, test } from "vitest";
import * as codes from "../../../core/shapes/codes.ts";
import { COMMAND_ROWS, HAZARD_ROWS, NO_HAZARD } from "../../../core/vocabulary/alarms.ts";
import { CONDITION_ROWS } from "../../../core/vocabulary/conditions.ts";
import { CONFUSIONS } from "../../../core/vocabulary/confusions.ts";
import { ACTS_ROWS, EXTENT_ROWS, PLACE_ROWS, SERVICE_ROWS, SEVERITY_ROWS } from "../../../core/vocabulary/details.ts";
import { lexicon } from "../../../core/vocabulary/lexicon.ts";
import { BOUND_ROWS, QUANTITY_ROWS, UNIT_ROWS } from "../../../core/vocabulary/measures.ts";
import { Pattern, spell } from "../../../core/vocabulary/notation.ts";
import { PART_ROWS } from "../../../core/vocabulary/parts.ts";
import { matchAt } from "../../../core/vocabulary/patterns.ts";
import { noSenses, type Senses } from "../../../core/vocabulary/senses.ts";
import { TEST_ROWS } from "../../../core/vocabulary/tests.ts";
import { WORK_ROWS } from "../../../core/vocabulary/work.ts";

/** Every way of saying something, asked of the lexicon: a line that a later row has taken over shows here. */
function senses(text: string): Senses | undefined {
  const words = text.split(" ");
  const found = lexicon().longest(words, 0);
  return found?.end === words.length ? found.senses : undefined;
}

type Kind = [
  name: string,
  rows: readonly { code: string; say: string[] }[],
  of: (senses: Senses) => string | undefined,
];
const KINDS: Kind[] = [
  ["parts", PART_ROWS, (one) => one.part],
  ["places", PLACE_ROWS, (one) => one.place],
  ["severities", SEVERITY_ROWS, (one) => one.severity],
  ["extents", EXTENT_ROWS, (one) => one.extent],
  ["acts", ACTS_ROWS, (one) => one.acts],
  ["services", SERVICE_ROWS, (one) => one.service],
  ["units", UNIT_ROWS, (one) => one.unit],
  ["quantities", QUANTITY_ROWS, (one) => one.quantity],
  ["bounds", BOUND_ROWS, (one) => one.bound],
];

describe("every way of saying it means its own code", () => {
  for (const [name, rows, of] of KINDS)
    test(name, () => {
      const wrong = rows.flatMap(({ code, say }) =>
        say
          .flatMap(spell)
          .filter((text) => of(senses(text) ?? noSenses()) !== code)
          .map((text) => `${code}: ${text}`),
      );
      expect(wrong).toEqual([]);
    });

  test("conditions, in the form they are said in", () => {
    const wrong = CONDITION_ROWS.flatMap((row) =>
      (["is", "has", "does"] as const).flatMap((form) =>
        (row[form] ?? [])
          .flatMap(spell)
          .filter((text) => !senses(text)?.condition?.some((one) => one.code === row.code && one.form === form))
          .map((text) => `${row.code} ${form}: ${text}`),
      ),
    );
    expect(wrong).toEqual([]);
  });

  test("outcomes of tests", () => {
    const wrong = TEST_ROWS.flatMap((row) =>
      (["pass", "fail"] as const).flatMap((result) =>
        row[result]
          .flatMap(spell)
          .filter((text) => senses(text)?.outcome?.test !== row.code || senses(text)?.outcome?.result !== result)
          .map((text) => `${row.code} ${result}: ${text}`),
      ),
    );
    expect(wrong).toEqual([]);
  });
});

describe("no code of the contract goes unsaid", () => {
  const SAID: [name: string, all: readonly string[], rows: readonly { code: string }[]][] = [
    ["parts", codes.PARTS, PART_ROWS],
    ["conditions", codes.CONDITIONS, CONDITION_ROWS],
    ["works", codes.WORKS, WORK_ROWS],
    ["tests", codes.TESTS, TEST_ROWS],
    ["hazards", codes.HAZARDS, HAZARD_ROWS],
    ["commands", codes.COMMANDS, COMMAND_ROWS],
    ["places", codes.PLACES.filter((place) => place !== "body"), PLACE_ROWS],
    ["extents", codes.EXTENTS, EXTENT_ROWS],
    ["severities", codes.SEVERITIES, SEVERITY_ROWS],
    ["quantities", codes.QUANTITIES, QUANTITY_ROWS],
    ["units", codes.UNITS, UNIT_ROWS],
    ["bounds", codes.BOUNDS, BOUND_ROWS],
    ["acts", codes.ACTS, ACTS_ROWS],
    ["services", codes.SERVICES, SERVICE_ROWS],
  ];
  for (const [name, all, rows] of SAID)
    test(name, () => expect(all.filter((code) => !rows.some((row) => row.code === code))).toEqual([]));
});

test("every row explains itself in a line", () => {
  const rows = [
    ...PART_ROWS,
    ...CONDITION_ROWS,
    ...WORK_ROWS,
    ...TEST_ROWS,
    ...HAZARD_ROWS,
    ...COMMAND_ROWS,
    ...QUANTITY_ROWS,
  ];
  expect(rows.filter((row) => row.help.trim().length < 3).map((row) => row.code)).toEqual([]);
});

describe("hazards and commands", () => {
  const { hazards, commands, noHazard } = lexicon();
  const spelled = (line: string): string[] =>
    spell(line.replace(/([a-z]+)\[([a-z]+)\]/g, "($1|$1$2)")).map((text) => text.replace(/ ?\.\. ?/g, " ").trim());

  for (const row of HAZARD_ROWS)
    test(`${row.code} is heard, however it is said`, () => {
      const deaf = row.say.flatMap(spelled).filter((text) => {
        const words = text.split(" ");
        return !words.some((_, at) => matchAt(hazards, words, at));
      });
      expect(deaf).toEqual([]);
    });
  for (const row of COMMAND_ROWS)
    test(`${row.code} is heard, however it is said`, () => {
      const deaf = row.say.flatMap(spelled).filter((text) => matchAt(commands, text.split(" "), 0) === undefined);
      expect(deaf).toEqual([]);
    });
  test("talk that holds a hazard's words is known as talk", () => {
    expect(NO_HAZARD.flatMap(spelled).filter((text) => matchAt(noHazard, text.split(" "), 0) === undefined)).toEqual(
      [],
    );
  });
});

test("a confusion's example holds what some row says is heard", () => {
  const singular = (word: string): string => (word.length > 3 && word.endsWith("s") ? word.slice(0, -1) : word);
  const patterns = CONFUSIONS.map(({ hear }) => new Pattern(hear));
  const without = CONFUSIONS.filter(({ example }) => {
    const words = example
      .toLowerCase()
      .replace(/['’]/g, "")
      .split(/[^a-z0-9]+/);
    const lists = [words, words.map(singular)];
    return !patterns.some((pattern) => lists.some((list) => list.some((_, at) => pattern.match(list, at) > at)));
  });
  expect(without.map(({ example }) => example)).toEqual([]);
});
