/** Words that stand for one another in what people say: whatever was heard after "twenty three" is likely after "forty six". */
export const WORD_CLASSES: Readonly<Record<string, readonly string[]>> = {
  N_ones: "one two three four five six seven eight nine".split(" "),
  N_teens: "ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split(" "),
  N_tens: "twenty thirty forty fifty sixty seventy eighty ninety".split(" "),
  N_parts: "eighth eighths sixteenth sixteenths quarter quarters thirds tenths".split(" "),
  N_months: "january february march april may june july august september october november december".split(" "),
  N_days: "monday tuesday wednesday thursday friday saturday sunday".split(" "),
  L_any: "abcdefghijklmnopqrstuvwxyz".split("").map((letter) => `L_${letter}`),
  A_any:
    "alpha bravo charlie delta echo foxtrot golf hotel india juliet kilo lima mike november oscar papa quebec romeo sierra tango uniform victor whiskey xray yankee zulu".split(
      " ",
    ),
};
