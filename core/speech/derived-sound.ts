/**
 * How a word sounds that the dictionary lacks, put together from words that it has: "torqued" from "torque", "runout"
 * from "run" and "out", "re-lapped" from "lap". Phones are those of the dictionary (ARPAbet without stress).
 */

/** Sounds of the words that are listed. */
export interface Dictionary {
  get(word: string): readonly string[] | undefined;
}

const UNVOICED = new Set(["P", "T", "K", "F", "TH"]);
const HISSING = new Set(["S", "Z", "SH", "ZH", "CH", "JH"]);
const PREFIXES: readonly (readonly [string, string])[] = [
  ["re", "R IY"],
  ["un", "AH N"],
  ["non", "N AA N"],
  ["mis", "M IH S"],
  ["over", "OW V ER"],
  ["under", "AH N D ER"],
  ["out", "AW T"],
  ["de", "D IY"],
  ["pre", "P R IY"],
];

/** Every way in which the word may sound, or none. */
export function derivedSounds(word: string, dictionary: Dictionary): string[] {
  return known(word, dictionary) ?? compound(word, dictionary) ?? [];
}

function known(word: string, dictionary: Dictionary, depth = 0): string[] | undefined {
  const listed = dictionary.get(word);
  if (listed) return [...listed];
  if (depth > 2) return undefined;
  return ended(word, dictionary, depth) ?? prefixed(word, dictionary, depth);
}

function ended(word: string, dictionary: Dictionary, depth: number): string[] | undefined {
  const stem = (end: string, ...swaps: string[]): string[] | undefined => {
    if (!word.endsWith(end) || word.length - end.length < 2) return undefined;
    const bare = word.slice(0, -end.length);
    const single = /([bdfgklmnprstvz])\1$/.test(bare) ? [bare.slice(0, -1)] : [];
    for (const one of [bare, ...swaps.map((swap) => bare + swap), ...single]) {
      const sounds = known(one, dictionary, depth + 1);
      if (sounds) return sounds;
    }
    return undefined;
  };
  const with_ = (sounds: string[] | undefined, add: (sound: string) => string) =>
    sounds?.map((one) => `${one} ${add(one)}`);
  const plural = (one: string) => (HISSING.has(last(one)) ? "IH Z" : UNVOICED.has(last(one)) ? "S" : "Z");
  const past = (one: string) =>
    /^[TD]$/.test(last(one)) ? "IH D" : UNVOICED.has(last(one)) || /^(S|SH|CH)$/.test(last(one)) ? "T" : "D";
  return (
    with_(
      stem("'s") ?? (word.endsWith("ies") ? stem("ies", "y") : undefined) ?? stem("es", "e") ?? stem("s"),
      plural,
    ) ??
    with_((word.endsWith("ied") ? stem("ied", "y") : undefined) ?? stem("ed", "e") ?? stem("'d"), past) ??
    with_(stem("ing", "e"), () => "IH NG") ??
    with_(stem("in'", "e", "ing"), () => "IH N") ??
    with_(stem("n't"), () => "AH N T") ??
    with_(stem("'ll"), () => "AH L") ??
    with_(stem("er", "e"), () => "ER") ??
    with_(stem("ly"), () => "L IY") ??
    with_(stem("less"), () => "L AH S") ??
    with_(stem("ness"), () => "N AH S") ??
    with_(stem("y", "e"), () => "IY")
  );
}

function prefixed(word: string, dictionary: Dictionary, depth: number): string[] | undefined {
  for (const [prefix, sound] of PREFIXES) {
    if (!word.startsWith(prefix) || word.length < prefix.length + 3) continue;
    const rest = known(word.slice(prefix.length), dictionary, depth + 1);
    if (rest) return rest.map((one) => `${sound} ${one}`);
  }
  return undefined;
}

/** Two words run together, the longer the first the better. */
function compound(word: string, dictionary: Dictionary): string[] | undefined {
  for (let cut = word.length - 3; cut >= 3; cut--) {
    const first = known(word.slice(0, cut), dictionary, 1);
    const second = first && known(word.slice(cut), dictionary, 1);
    if (first && second) return [`${first[0]} ${second[0]}`];
  }
  return undefined;
}

const last = (sound: string) => sound.slice(sound.lastIndexOf(" ") + 1);
