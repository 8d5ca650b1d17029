/**
 * How a spelling sounds, roughly: one sign a phone, vowels kept apart from consonants. Good enough to tell that
 * "fowled" may be "fouled" and "phalange" a "flange"; not a pronunciation.
 */
export function phones(spelling: string): string {
  let text = spelling.toLowerCase().replace(/[^a-z]/g, "");
  const swaps: [RegExp, string][] = [
    [/^kn/, "n"],
    [/^wr/, "r"],
    [/^wh/, "w"],
    [/^ps/, "s"],
    [/^gn/, "n"],
    [/ght/g, "t"],
    [/igh/g, "I"],
    [/ph/g, "f"],
    [/gm\b/, "m"],
    [/phr/g, "fr"],
    [/tch/g, "C"],
    [/ch/g, "C"],
    [/sh/g, "S"],
    [/th/g, "T"],
    [/tion/g, "Sn"],
    [/sion/g, "Sn"],
    [/ck/g, "k"],
    [/dge/g, "J"],
    [/dg/g, "J"],
    [/gu(?=[iey])/g, "g"],
    [/gue$/, "g"],
    [/qu/g, "kw"],
    [/q/g, "k"],
    [/x/g, "ks"],
    [/c(?=[eiy])/g, "s"],
    [/c/g, "k"],
    [/g(?=e$)/g, "J"],
    [/mb$/, "m"],
    [/wh/g, "w"],
    [/gh/g, ""],
    [/lk/g, "k"],
    [/([a-zA-Z])\1/g, "$1"],
    [/ed$/, "d"],
    [/e$/, ""],
    [/er$|or$|ar$|ure$/, "R"],
    [/le$/, "l"],
    [/ing$|in$/, "N"],
    [/ee|ea|ie|ei|ey/g, "i"],
    [/oo|ou|ew|ue|ui/g, "u"],
    [/ai|ay/g, "A"],
    [/oa|ow/g, "o"],
    [/au|aw/g, "O"],
    [/oi|oy/g, "Y"],
    [/y/g, "i"],
  ];
  for (const [from, to] of swaps) text = text.replace(from, to);
  return text.replace(/([a-zA-Z])\1/g, "$1");
}

const VOWELS = "aeiouAIOYu";
const CLASSES = ["pbfvT", "tdT", "kgJC", "szSCJT", "mnN", "lrR", "wh", "R"];

function swapCost(a: string, b: string): number {
  if (a === b) return 0;
  const va = VOWELS.includes(a);
  const vb = VOWELS.includes(b);
  if (va && vb) return 0.3;
  if (va !== vb) return a === "R" || b === "R" ? 0.5 : 1.1;
  return CLASSES.some((one) => one.includes(a) && one.includes(b)) ? 0.45 : 1;
}
const dropCost = (a: string): number =>
  VOWELS.includes(a) ? 0.35 : "hwd".includes(a) ? 0.5 : "st".includes(a) ? 0.65 : 0.8;

/** The costs as tables by character code: asked for a million times a minute. */
const CODES = 128;
const SWAP = new Float32Array(CODES * CODES);
const DROP = new Float32Array(CODES);
for (let a = 0; a < CODES; a += 1) {
  DROP[a] = dropCost(String.fromCharCode(a));
  for (let b = 0; b < CODES; b += 1) SWAP[a * CODES + b] = swapCost(String.fromCharCode(a), String.fromCharCode(b));
}
const MOST = 40;
const above = new Float32Array(MOST + 1);

/**
 * Weighted edit distance of two sounds, as a share of the longer one. Anything beyond `most` is answered as
 * infinite, as soon as it is certain.
 */
export function soundDistance(a: string, b: string, most = Number.POSITIVE_INFINITY): number {
  const longer = Math.max(a.length, b.length, 1);
  if (longer > MOST) return Number.POSITIVE_INFINITY;
  const limit = most * longer;
  const columns = b.length;
  above[0] = 0;
  for (let column = 1; column <= columns; column += 1)
    above[column] = (above[column - 1] as number) + (DROP[b.charCodeAt(column - 1)] as number);
  for (let row = 0; row < a.length; row += 1) {
    const code = a.charCodeAt(row);
    const drop = DROP[code] as number;
    let corner = above[0] as number;
    let left = corner + drop;
    above[0] = left;
    let least = left;
    for (let column = 1; column <= columns; column += 1) {
      const other = b.charCodeAt(column - 1);
      const swap = corner + (SWAP[code * CODES + other] as number);
      corner = above[column] as number;
      const gone = corner + drop;
      const added = left + (DROP[other] as number);
      left = swap;
      if (gone < left) left = gone;
      if (added < left) left = added;
      above[column] = left;
      if (left < least) least = left;
    }
    if (least > limit) return Number.POSITIVE_INFINITY;
  }
  return (above[columns] as number) / longer;
}
