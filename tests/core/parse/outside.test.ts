import recognizeNumbers from "@microsoft/recognizers-text-number";
import recognizeUnits from "@microsoft/recognizers-text-number-with-unit";
import { describe, expect, test } from "vitest";
import { listen, startListening } from "../../../core/index.ts";
import { inPairs, inWords } from "./spoken-numbers.ts";

/**
 * Numbers with units against a general-purpose recogniser of numbers and units. Each expression has a value it was made
 * from, so that a difference has a judge: where the two part, the table below says whose reading is the trade's and why.
 */
interface Expression {
  form: string;
  /** how the number is said, and its unit */
  text: string;
  value: number;
  unit: Unit;
}
type Unit = "in" | "mm" | "degF" | "degC" | "%" | "pound" | "psi" | "kPa" | "bar" | "in_lbf" | "N_m";

/** Each unit as said; a sentence in which our reader can know what is measured; and what the library calls the unit. */
const UNITS: Record<Unit, { said: string; sentence: (text: string) => string; theirs?: string }> = {
  in: { said: "inches", sentence: (text) => `travel is ${text}`, theirs: "Inch" },
  mm: { said: "millimeters", sentence: (text) => `travel is ${text}`, theirs: "Millimeter" },
  degF: { said: "degrees fahrenheit", sentence: (text) => `line temp is ${text}`, theirs: "F" },
  degC: { said: "degrees celsius", sentence: (text) => `line temp is ${text}`, theirs: "C" },
  "%": { said: "percent", sentence: (text) => `valve is ${text} open`, theirs: "%" },
  pound: { said: "pounds", sentence: (text) => `upstream pressure is ${text}`, theirs: "Pound" },
  psi: { said: "psi", sentence: (text) => `upstream pressure is ${text}` },
  kPa: { said: "kilopascals", sentence: (text) => `upstream pressure is ${text}` },
  bar: { said: "bar", sentence: (text) => `upstream pressure is ${text}` },
  in_lbf: { said: "inch pounds", sentence: (text) => `packing nut torqued to ${text}` },
  N_m: { said: "newton meters", sentence: (text) => `packing nut torqued to ${text}` },
};
const KNOWN_TO_BOTH = ["in", "mm", "degF", "degC", "%", "pound"] as const;
const OURS_ALONE = ["psi", "kPa", "bar", "in_lbf", "N_m"] as const;

const WHOLE = [2, 7, 12, 19, 20, 28, 45, 60, 99, 100, 105, 120, 250, 318, 1000, 1250];
const DECIMALS = [0.45, 2.5, 12.25, 28.5, 0.125];
const EIGHTHS = [
  "one eighth",
  "three eighths",
  "five eighths",
  "seven eighths",
  "three quarters",
  "seven sixteenths",
  "a half",
];
const EIGHTH_VALUES = [0.125, 0.375, 0.625, 0.875, 0.75, 0.4375, 0.5];
const DIGITS = ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"];
const pointed = (value: number, whole: (value: number) => string): string => {
  const [head = "0", tail = ""] = String(value).split(".");
  return `${whole(Number(head))} point ${[...tail].map((one) => DIGITS[Number(one)]).join(" ")}`.trim();
};

function expressions(units: readonly Unit[]): Expression[] {
  const made: Expression[] = [];
  const add = (form: string, unit: Unit, said: string, value: number, behind = "") =>
    made.push({ form, unit, value, text: `${said} ${behind}${UNITS[unit].said}` });
  for (const unit of units) {
    for (const value of WHOLE) {
      add("digits", unit, String(value), value);
      add("words", unit, inWords(value), value);
      if (value > 100 && value % 100 !== 0) add("words with and", unit, inWords(value, "and"), value);
      const pairs = inPairs(value);
      if (pairs && value % 100 !== 0) add("pairs", unit, pairs, value);
    }
    for (const value of DECIMALS) {
      add("decimals", unit, String(value), value);
      add("spoken point", unit, pointed(value, inWords), value);
      if (value < 1)
        add(
          "point alone",
          unit,
          pointed(value, () => ""),
          value,
        );
    }
    add("thousands comma", unit, "1,250", 1250);
    for (const [nth, said] of EIGHTHS.entries()) {
      add("mixed number", unit, `two and ${said}`, 2 + (EIGHTH_VALUES[nth] as number));
    }
    for (const [text, value] of [
      ["3/8", 0.375],
      ["1/2", 0.5],
      ["5 3/8", 5.375],
      ["2 1/4", 2.25],
    ] as const)
      add("written fraction", unit, text, value);
  }
  for (const [nth, said] of EIGHTHS.entries()) {
    if (!units.includes("in")) continue;
    made.push({
      form: "fraction of an inch",
      unit: "in",
      text: `${said} of an inch`,
      value: EIGHTH_VALUES[nth] as number,
    });
    if (said !== "a half")
      made.push({ form: "fraction", unit: "in", text: `${said} inch`, value: EIGHTH_VALUES[nth] as number });
  }
  return made;
}

interface Read {
  value: number;
  unit: string;
}

function ours({ text, unit }: Expression): Read | undefined {
  const readings = listen(startListening(), UNITS[unit].sentence(text)).entries.filter((one) => one.type === "reading");
  const [reading] = readings;
  if (!reading || readings.length > 1 || reading.upper !== undefined) return undefined;
  return { value: reading.value, unit: unit === "pound" && reading.unit === "psi" ? "pound" : reading.unit };
}

/** The library's reading of the whole expression: what it takes out of the middle of it is another reading. */
function theirs({ text, unit }: Expression): Read | undefined {
  const found = [
    ...recognizeUnits.recognizeDimension(text, "en-us"),
    ...recognizeUnits.recognizeTemperature(text, "en-us"),
    ...recognizeNumbers.recognizePercentage(text, "en-us"),
  ];
  const one = found.find(({ start, end }) => start === 0 && end === text.length - 1);
  const value = one?.resolution.value;
  if (typeof value !== "string") return undefined;
  const name = one?.resolution.unit ?? "%";
  return { value: Number(value.replace("%", "")), unit: name === UNITS[unit].theirs ? unit : String(name) };
}

/** Where the two part, whose reading is right for the trade, and why. Every other form must be read alike by both. */
const DIFFER: Record<string, { right: "ours"; why: string }> = {
  pairs: {
    right: "ours",
    why: "'one twenty pounds' is 120 at a gauge and a torque wrench; the library takes 'twenty pounds' out of it and leaves the one, where a reading of 20 would be wrong by 100",
  },
  "point alone": {
    right: "ours",
    why: "'point four five inches' is how a micrometer is read out; the library needs the zero before the point, and reads 'five inches'",
  },
  "fraction of an inch": {
    right: "ours",
    why: "'three eighths of an inch' is one length; the library finds a bare inch and a number beside it",
  },
};

describe("numbers with units that both know", () => {
  const all = expressions(KNOWN_TO_BOTH);
  test("a few hundred of them", () => expect(all.length).toBeGreaterThan(300));

  for (const form of new Set(all.map((one) => one.form))) {
    const own = all.filter((one) => one.form === form);
    test(`${form}: ours is what was meant`, () => {
      expect(own.map((one) => ({ text: one.text, ...ours(one) }))).toEqual(
        own.map(({ text, value, unit }) => ({ text, value, unit })),
      );
    });
    const differ = DIFFER[form];
    if (differ)
      test(`${form}: theirs differs, since ${differ.why}`, () =>
        expect(own.filter((one) => theirs(one)?.value === one.value).length).toBeLessThan(own.length));
    else
      test(`${form}: theirs is the same`, () => {
        expect(own.map((one) => ({ text: one.text, ...theirs(one) }))).toEqual(
          own.map((one) => ({ text: one.text, ...ours(one) })),
        );
      });
  }
});

describe("units of the trade that a general reader does not know", () => {
  for (const unit of OURS_ALONE)
    test(`${UNITS[unit].said}: the number as both read it, the unit as the trade means it`, () => {
      for (const one of expressions([unit])) {
        expect({ text: one.text, ...ours(one) }).toEqual({ text: one.text, value: one.value, unit });
        expect(theirs(one)?.unit, one.text).not.toBe(unit);
      }
    });
});
