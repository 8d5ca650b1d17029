/**
 * How a spelling sounds, roughly: one sign a phone, vowels kept apart from consonants. Good enough to tell that
 * "fowled" may be "fouled" and "phalange" a "flange"; not a pronunciation.
 */
export function phones(spelling: string): string {
  let text = spelling.toLowerCase().replace(/[^a-z]/g, "");
  const swaps: [RegExp, string][] = [
    [/^kn/, "n"], [/^wr/, "r"], [/^wh/, "w"], [/^ps/, "s"], [/^gn/, "n"], [/ght/g, "t"], [/igh/g, "I"], [/ph/g, "f"], [/gm\b/, "m"], [/phr/g, "fr"],
    [/tch/g, "C"], [/ch/g, "C"], [/sh/g, "S"], [/th/g, "T"], [/tion/g, "Sn"], [/sion/g, "Sn"], [/ck/g, "k"], [/dge/g, "J"], [/dg/g, "J"], [/gu(?=[iey])/g, "g"], [/gue$/, "g"],
    [/qu/g, "kw"], [/q/g, "k"], [/x/g, "ks"], [/c(?=[eiy])/g, "s"], [/c/g, "k"], [/g(?=e$)/g, "J"], [/mb$/, "m"], [/wh/g, "w"], [/gh/g, ""], [/lk/g, "k"], [/([a-zA-Z])\1/g, "$1"],
    [/ed$/, "d"], [/e$/, ""], [/er$|or$|ar$|ure$/, "R"], [/le$/, "l"], [/ing$|in$/, "N"],
    [/ee|ea|ie|ei|ey/g, "i"], [/oo|ou|ew|ue|ui/g, "u"], [/ai|ay/g, "A"], [/oa|ow/g, "o"], [/au|aw/g, "O"], [/oi|oy/g, "Y"], [/y/g, "i"],
  ];
  for (const [from, to] of swaps) text = text.replace(from, to);
  return text.replace(/([a-zA-Z])\1/g, "$1");
}

const VOWELS = new Set("aeiouAIOYu".split(""));
const CLASSES = ["pbfvT", "tdT", "kgJC", "szSCJT", "mnN", "lrR", "wh", "R"];

function swapCost(a: string, b: string): number {
  if (a === b) return 0;
  const va = VOWELS.has(a);
  const vb = VOWELS.has(b);
  if (va && vb) return 0.3;
  if (va !== vb) return (a === "R" || b === "R") ? 0.5 : 1.1;
  return CLASSES.some((one) => one.includes(a) && one.includes(b)) ? 0.45 : 1;
}
const dropCost = (a: string): number => (VOWELS.has(a) ? 0.35 : "hwd".includes(a) ? 0.5 : "st".includes(a) ? 0.65 : 0.8);

/** Weighted edit distance of two sounds, as a share of the longer one. */
export function soundDistance(a: string, b: string): number {
  const rows = a.length + 1;
  const columns = b.length + 1;
  let before = new Array<number>(columns).fill(0);
  for (let column = 1; column < columns; column += 1) before[column] = (before[column - 1] as number) + dropCost(b[column - 1] as string);
  for (let row = 1; row < rows; row += 1) {
    const now = new Array<number>(columns).fill(0);
    now[0] = (before[0] as number) + dropCost(a[row - 1] as string);
    for (let column = 1; column < columns; column += 1) {
      now[column] = Math.min(
        (before[column - 1] as number) + swapCost(a[row - 1] as string, b[column - 1] as string),
        (before[column] as number) + dropCost(a[row - 1] as string),
        (now[column - 1] as number) + dropCost(b[column - 1] as string),
      );
    }
    before = now;
  }
  return (before[columns - 1] as number) / Math.max(a.length, b.length, 1);
}
