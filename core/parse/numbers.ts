/**
 * Step 2a: number words to a value. "twenty eight" 28, "a hundred and five" 105, "two and a half" 2.5,
 * "three eighths" 0.375, "point four five" 0.45, "one twenty" 120, "nineteen fifty" 1950, "25 to 30" a range.
 */

import { COUNT_WORDS, FRACTIONS, ONES, SCALES, SOUND_NUMBERS, TEENS, TENS } from "../vocabulary/numerals.ts";

/** A number, and the index after its last word. */
export interface NumberRead {
  value: number;
  /** high end of a spoken range */
  upper?: number;
  end: number;
  /** the single word "one", which is as often no number at all */
  bareOne?: true;
  /** a fraction below one: a length, never a count */
  fraction?: true;
}

const round = (value: number) => Number(value.toPrecision(12));

/** Reads the number that starts at `start`, with a range's upper end. */
export function readNumber(words: readonly string[], start: number): NumberRead | undefined {
  // "half a dozen gaskets"
  if (words[start] === "half" && words[start + 1] === "a" && words[start + 2] === "dozen")
    return { value: 6, end: start + 3 };
  // "anywhere from nine to eleven"
  const loosely =
    /^(?:anywhere|somewhere)$/.test(words[start] ?? "") && /^(?:from|between)$/.test(words[start + 1] ?? "");
  if (loosely) {
    const span = readNumber(words, start + 1);
    return span?.upper === undefined ? undefined : span;
  }
  const between = words[start] === "between" || (words[start] === "from" && readOne(words, start + 1) !== undefined);
  const first = readOne(words, between ? start + 1 : start);
  if (!first) return undefined;
  const joint = words[first.end] ?? "";
  const upTo = joint === "up" && words[first.end + 1] === "to";
  if (upTo || /^(?:to|thru|through|or|dash)$/.test(joint) || (between && joint === "and")) {
    const second = readOne(words, first.end + (upTo ? 2 : 1));
    if (second && second.value > first.value) return { value: first.value, upper: second.value, end: second.end };
  }
  if (between) return undefined;
  return readGuess(words, first) ?? first;
}

/** "six seven pounds", "thirty thirty five foot pounds": two numbers a little apart, and the unit of both. */
function readGuess(words: readonly string[], low: NumberRead): NumberRead | undefined {
  if (!Number.isInteger(low.value) || SOUND_NUMBERS[words[low.end] ?? ""] !== undefined) return undefined;
  const high = readOne(words, low.end);
  if (!high || !Number.isInteger(high.value) || !MEASURED.test(words[high.end] ?? "")) return undefined;
  if (!isNextAbove(low.value, high.value) && !(low.value === 1 && high.value === 2)) return undefined;
  return { value: low.value, upper: high.value, end: high.end };
}

/** A number without a range: "two and a half", "point eight". */
function readOne(words: readonly string[], start: number): NumberRead | undefined {
  const whole = readWhole(words, start);
  const at = whole ? whole.end : start;
  // "point eight", "two point five", "zero point one two"
  // ".5 point five": one point is all a number has
  if ((words[at] === "point" || (whole && words[at] === "dot")) && Number.isInteger(whole?.value ?? 0)) {
    const decimals = readDigits(words, at + 1);
    if (decimals) return { value: round(Number(`${whole?.value ?? 0}.${decimals.digits}`)), end: decimals.end };
  }
  // "two and a half", "5 3/8", "two and three quarters", "one half", "three eighths"
  if (whole) {
    const joined = words[at] === "and" ? readFraction(words, at + 1) : readWrittenFraction(words, at);
    if (joined && joined.value < 1) return { value: round(whole.value + joined.value), end: joined.end };
    const spoken =
      words[at] !== "and" && whole.value >= 1 && whole.end - start <= 2 ? readFraction(words, at) : undefined;
    if (spoken && spoken.value < 1 && spoken.end - at > 1)
      return { value: round(whole.value + spoken.value), end: spoken.end };
  }
  const fraction = readFraction(words, start);
  if (fraction && (!whole || fraction.end > whole.end)) return { ...fraction, fraction: true };
  if (!whole) return undefined;
  return whole.end === start + 1 && words[start] === "one" ? { ...whole, bareOne: true } : whole;
}

/** "5/8". */
function readWrittenFraction(words: readonly string[], at: number): NumberRead | undefined {
  const match = /^(\d+)\/(\d+)$/.exec(words[at] ?? "");
  if (!match || Number(match[2]) === 0) return undefined;
  return { value: Number(match[1]) / Number(match[2]), end: at + 1 };
}

/** "three eighths", "half", "a quarter", "three thirty seconds". */
function readFraction(words: readonly string[], start: number): NumberRead | undefined {
  const written = readWrittenFraction(words, start);
  if (written) return written;
  const article = words[start] === "a" || words[start] === "an";
  const at = article ? start + 1 : start;
  const first = words[at] ?? "";
  const below = FRACTIONS[words[at + 1] ?? ""];
  const above = article ? undefined : (ONES[first] ?? TEENS[first] ?? small(first));
  if (above && below && above < below) return { value: above / below, end: at + 2 };
  if (above && words[at + 1] === "thirty" && /^seconds?$/.test(words[at + 2] ?? "") && above < 32)
    return { value: above / 32, end: at + 3 };
  if (above && words[at + 1] === "sixty" && /^fourths?$/.test(words[at + 2] ?? "") && above < 64)
    return { value: above / 64, end: at + 3 };
  const alone = FRACTIONS[first];
  if (alone && (first === "half" || first === "quarter" || article)) return { value: 1 / alone, end: at + 1 };
  return undefined;
}

const small = (word: string) => (/^\d{1,2}$/.test(word) ? Number(word) : undefined);

/** The digits behind a point: "four five", "twenty five". */
function readDigits(words: readonly string[], start: number): { digits: string; end: number } | undefined {
  let digits = "";
  let at = start;
  for (; at < words.length; at += 1) {
    const word = words[at] as string;
    if (/^\d+$/.test(word)) digits += word;
    else if (ONES[word] !== undefined) digits += ONES[word];
    else if (TENS[word] !== undefined && digits === "") {
      const next = ONES[words[at + 1] ?? ""];
      digits += String((TENS[word] as number) + (next || 0));
      if (next) at += 1;
    } else if (TEENS[word] !== undefined && digits === "") digits += TEENS[word];
    else break;
  }
  return digits ? { digits, end: at } : undefined;
}

/** A number below a hundred: its value and how many words it took. */
function readTens(words: readonly string[], at: number): { value: number; end: number; tens: boolean } | undefined {
  const word = words[at] ?? "";
  if (TENS[word] !== undefined) {
    const one = ONES[words[at + 1] ?? ""];
    const sound = SOUND_NUMBERS[words[at + 1] ?? ""];
    if (one && words[at + 1] !== "o") return { value: (TENS[word] as number) + one, end: at + 2, tens: true };
    // "twenty ate", "thirty to": a sound is a digit only where a digit can stand
    const small = /^(?:to|for|too)$/.test(words[at + 1] ?? "");
    if (sound && sound < 10 && (!small || UNIT_BEHIND.test(words[at + 2] ?? "")))
      return { value: (TENS[word] as number) + sound, end: at + 2, tens: true };
    return { value: TENS[word] as number, end: at + 1, tens: true };
  }
  if (TEENS[word] !== undefined) return { value: TEENS[word] as number, end: at + 1, tens: true };
  if (ONES[word] !== undefined && word !== "o" && word !== "oh" && word !== "ought")
    return { value: ONES[word] as number, end: at + 1, tens: false };
  return undefined;
}

/** "thirty for foot pounds": a unit right behind makes a four of it. */
const UNIT_BEHIND = /^(?:foot|psi|pounds|bar|percent|degrees|newton|inch)$/;

/** What a number that is measured is followed by. */
export const MEASURED =
  /^(?:psi|psig|pounds|lbs|foot|ft|inch|inches|bar|kpa|newton|percent|degrees|seconds|minutes|bubbles|drops|drips|cc|ccs|thou|thousandths|millimeters|mm)$/;

/** "ten, twelve", "thirty thirty five": so little apart are the two ends of a guess. */
export const isNextAbove = (low: number, high: number): boolean => low > 0 && high > low && high <= low * 1.6;

/** What a number is followed by when its sound was taken for a word: "ate drops a minute", "for inch". */
const COUNTED = new Set([
  "drops",
  "drop",
  "bubbles",
  "pounds",
  "foot",
  "inch",
  "psi",
  "bar",
  "percent",
  "seconds",
  "minutes",
  "newton",
  "cc",
  "eighths",
  "sixteenths",
  "quarters",
  "thousandths",
  "oh",
  "bolts",
  "studs",
]);

/** A whole number: "twenty eight", "a hundred and five", "1,950". */
function readWhole(words: readonly string[], start: number): NumberRead | undefined {
  const first = words[start] ?? "";
  const sound = SOUND_NUMBERS[first];
  // "order too seat gaskets"
  if (
    sound !== undefined &&
    /^(?:too|to|for)$/.test(first) &&
    /^(?:order|bring|replaced|swapped|ordered)$/.test(words[start - 1] ?? "") &&
    !/^(?:the|it|me|a|an|them|us|this|that)$/.test(words[start + 1] ?? "")
  )
    return { value: sound, end: start + 1 };
  if (
    sound !== undefined &&
    first !== "to" &&
    (COUNTED.has(words[start + 1] ?? "") ||
      (words[start + 1] === "and" && words[start + 2] === "a" && FRACTIONS[words[start + 3] ?? ""])) &&
    words[start + 1] !== "oh"
  )
    return { value: sound, end: start + 1 };
  if (/^\d/.test(first) || /^\.\d/.test(first)) {
    if (first.includes("/")) return undefined;
    const scale = SCALES[words[start + 1] ?? ""];
    return scale ? { value: Number(first) * scale, end: start + 2 } : { value: Number(first), end: start + 1 };
  }
  if (COUNT_WORDS[first] !== undefined) return { value: COUNT_WORDS[first] as number, end: start + 1 };
  if ((first === "a" || first === "an") && COUNT_WORDS[words[start + 1] ?? ""] !== undefined)
    return { value: COUNT_WORDS[words[start + 1] as string] as number, end: start + 2 };
  // "a buck twenty": as money is said, a hundred and twenty
  const buck = first === "buck" ? start : words[start + 1] === "buck" && first === "a" ? start + 1 : undefined;
  if (buck !== undefined && TENS[words[buck + 1] ?? ""] !== undefined) {
    const tail = readTens(words, buck + 1);
    return tail && { value: 100 + tail.value, end: tail.end };
  }
  let at = start;
  let value: number;
  if ((first === "a" || first === "one") && SCALES[words[start + 1] ?? ""] !== undefined) {
    value = 1;
    at = start + 1;
  } else if (SCALES[first] !== undefined) value = 1;
  else {
    const head = readTens(words, start);
    if (!head) return undefined;
    value = head.value;
    at = head.end;
    if (SCALES[words[at] ?? ""] === undefined) return readPair(words, value, at);
  }
  // hundreds and thousands
  let total = 0;
  for (let scale = SCALES[words[at] ?? ""]; scale; scale = SCALES[words[at] ?? ""]) {
    value *= scale;
    at += 1;
    if (scale === 1000) {
      total += value;
      value = 0;
    }
    const next = words[at] === "and" ? at + 1 : at;
    // "a hundred and too psi"
    const sound = SOUND_NUMBERS[words[next] ?? ""];
    if (next > at && sound && sound < 10 && UNIT_BEHIND.test(words[next + 1] ?? ""))
      return { value: total + value + sound, end: next + 1 };
    const tail = readTens(words, next);
    if (!tail) break;
    // "a hundred and a half" and "hundred and two bolts" are told apart by what follows, later
    if (SCALES[words[tail.end] ?? ""] === 100 && scale === 1000) {
      value += tail.value;
      at = tail.end;
      continue;
    }
    value += tail.value;
    at = tail.end;
    break;
  }
  return { value: total + value, end: at };
}

/** "one twenty" 120, "nineteen fifty" 1950, "two oh five" 205, "one oh five". */
function readPair(words: readonly string[], head: number, at: number): NumberRead {
  const second = words[at] ?? "";
  if ((second === "oh" || second === "o" || second === "ought") && ONES[words[at + 1] ?? ""] && head < 100)
    return { value: head * 100 + (ONES[words[at + 1] as string] as number), end: at + 2 };
  const tail = readTens(words, at);
  // "thirty thirty five foot pounds": the two ends of a guess, since nobody says so many thousands like that
  const guessed = tail && head >= 20 && isNextAbove(head, tail.value) && MEASURED.test(words[tail.end] ?? "");
  if (tail?.tens && tail.value >= 10 && head >= 1 && !guessed) return { value: head * 100 + tail.value, end: tail.end };
  return { value: head, end: at };
}
