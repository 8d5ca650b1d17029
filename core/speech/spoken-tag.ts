import { ONES, TEENS, TENS } from "../vocabulary/numerals.ts";

const wordFor = (table: Record<string, number>, value: number) =>
  Object.keys(table).find((word) => table[word] === value) as string;

/** A digit as it is said in a row of digits: 0 is "oh" or "zero". */
const digitWords = (digit: number): string[] => (digit === 0 ? ["oh", "zero"] : [wordFor(ONES, digit)]);

function pairWords(pair: number): string[] {
  if (pair < 10) return digitWords(pair);
  if (pair < 20) return [wordFor(TEENS, pair)];
  const ten = wordFor(TENS, pair - (pair % 10));
  return [pair % 10 === 0 ? ten : `${ten} ${wordFor(ONES, pair % 10)}`];
}

/**
 * The ways in which a valve's tag is said, as words of the language model: "FV-101" is "L_f L_v one oh one", "L_f L_v one
 * zero one". Digits one by one; three of them also as one and a pair ("two twelve"), four as two pairs.
 */
export function spokenTag(tag: string): string[] {
  const runs = tag.toLowerCase().match(/[a-z]+|[0-9]+/g) ?? [];
  let ways = [""];
  for (const run of runs) {
    const said = /[a-z]/.test(run) ? [[...run].map((letter) => `L_${letter}`).join(" ")] : digitRuns(run);
    ways = ways.flatMap((way) => said.map((one) => `${way} ${one}`.trim()));
  }
  return ways.slice(0, 8);
}

function digitRuns(run: string): string[] {
  const digits = [...run].map(Number);
  const each = digits.reduce<string[]>(
    (ways, digit) => ways.flatMap((way) => digitWords(digit).map((word) => `${way} ${word}`.trim())),
    [""],
  );
  const pair = (at: number) => pairWords(Number(run.slice(at, at + 2)));
  if (run.length === 2 && digits[0] !== 0) return [...pair(0), ...each];
  if (run.length === 3 && digits[1] !== 0 && digits[0] !== 0)
    return [...each, ...digitWords(digits[0] as number).flatMap((one) => pair(1).map((two) => `${one} ${two}`))];
  if (run.length === 4 && digits[0] !== 0 && digits[2] !== 0)
    return [...each, ...pair(0).flatMap((one) => pair(1).map((two) => `${one} ${two}`))];
  return each;
}
