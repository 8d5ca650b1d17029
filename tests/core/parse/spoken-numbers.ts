/** A small generator of spoken numbers, apart from the reader's own tables so that the two can disagree. */
const BELOW_TWENTY =
  "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split(
    " ",
  );
const TENS = "zero ten twenty thirty forty fifty sixty seventy eighty ninety".split(" ");

function belowHundred(value: number): string {
  if (value < 20) return BELOW_TWENTY[value] as string;
  const ones = value % 10;
  return ones === 0 ? (TENS[value / 10] as string) : `${TENS[Math.floor(value / 10)]} ${BELOW_TWENTY[ones]}`;
}

/** "two thousand three hundred [and] forty five", for 0 to 9999. */
export function inWords(value: number, joint: "" | "and" = ""): string {
  if (value < 100) return belowHundred(value);
  const thousands = Math.floor(value / 1000);
  const hundreds = Math.floor((value % 1000) / 100);
  const rest = value % 100;
  const head = [
    thousands ? `${belowHundred(thousands)} thousand` : "",
    hundreds ? `${belowHundred(hundreds)} hundred` : "",
  ];
  const tail = rest ? [...(joint ? [joint] : []), belowHundred(rest)] : [];
  return [...head, ...tail].filter(Boolean).join(" ");
}

/** "one twenty" 120, "two oh five" 205, "nineteen fifty" 1950, "twelve hundred" 1200: from 101 on, where it is said so. */
export function inPairs(value: number): string | undefined {
  if (value < 101) return undefined;
  const head = Math.floor(value / 100);
  const rest = value % 100;
  // "two thousand", never "twenty hundred"
  if (rest === 0) return head % 10 === 0 ? undefined : `${belowHundred(head)} hundred`;
  // "twenty five" is 25 and never 2005; "twenty one oh five" is nobody's way of saying 2105
  if (rest < 10) return `${belowHundred(head)} oh ${belowHundred(rest)}`;
  return `${belowHundred(head)} ${belowHundred(rest)}`;
}

export const inDigits = (value: number): string => String(value);
