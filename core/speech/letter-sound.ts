/**
 * How a word may sound that neither a dictionary nor words in it tell: letter by letter, by the rules that English spelling
 * mostly keeps. For names and words of one site only; a wrong guess is heard less well, no guess is never heard.
 * Rules of this kind: Elovitz, Johnson, McHugh & Shore, "Letter-to-Sound Rules for Automatic Translation of English Text to
 * Phonetics", IEEE Trans. ASSP 24 (1976); these are fewer, and from memory. Phones are those of the dictionary.
 */

/** Letters, their sound, and what must stand behind (`next`) or before (`prev`) them; the first that fits counts. */
interface Rule {
  letters: string;
  sound: string;
  next?: RegExp;
  prev?: RegExp;
}

const LONG = { a: "EY", e: "IY", i: "AY", o: "OW", u: "UW" } as const;
const END = /^$/;
const START = /^$/;
/** one consonant and a silent e: the vowel before is long */
const SILENT_E = /^[bcdfgklmnpstvz](e|ed|es|er|ers)$/;

const rule = (letters: string, sound: string, about: Omit<Rule, "letters" | "sound"> = {}): Rule => ({
  letters,
  sound,
  ...about,
});

const RULES: readonly Rule[] = [
  rule("tion", "SH AH N"),
  rule("ssion", "SH AH N"),
  rule("sion", "ZH AH N"),
  rule("ture", "CH ER"),
  rule("ment", "M AH N T"),
  rule("ous", "AH S", { next: END }),
  rule("us", "AH S", { next: END }),
  rule("al", "AH L", { prev: /./, next: /^(s|ly|ed)?$/ }),
  rule("el", "AH L", { prev: /./, next: /^s?$/ }),
  rule("an", "AH N", { prev: /..[^aeiou]$/, next: /^s?$/ }),
  rule("en", "AH N", { prev: /./, next: /^(s|ed)?$/ }),
  rule("on", "AH N", { prev: /..[^aeiou]$/, next: /^s?$/ }),
  rule("con", "K AH N", { prev: START, next: /^.../ }),
  rule("com", "K AH M", { prev: START, next: /^.../ }),
  rule("ia", "IY AH"),
  rule("io", "IY OW"),
  rule("eo", "IY AH"),
  rule("ough", "AO"),
  rule("augh", "AO"),
  rule("eigh", "EY"),
  rule("igh", "AY"),
  rule("tch", "CH"),
  rule("dge", "JH"),
  rule("sch", "SH"),
  rule("kn", "N", { prev: START }),
  rule("gn", "N", { prev: START }),
  rule("wr", "R", { prev: START }),
  rule("mb", "M", { next: END }),
  rule("ck", "K"),
  rule("ch", "CH"),
  rule("sh", "SH"),
  rule("th", "TH"),
  rule("ph", "F"),
  rule("wh", "W"),
  rule("qu", "K W"),
  rule("ng", "NG", { next: /^s?$/ }),
  rule("n", "NG", { next: /^(k|q|x|g[^eiy])/ }),
  rule("eer", "IH R"),
  rule("ear", "IH R"),
  rule("air", "EH R"),
  rule("are", "EH R", { next: END }),
  rule("ire", "AY ER", { next: END }),
  rule("ore", "AO R", { next: END }),
  rule("ure", "Y UH R", { next: END }),
  rule("oor", "AO R"),
  rule("our", "AO R"),
  rule("arr", "EH R"),
  rule("err", "EH R"),
  rule("ar", "AA R"),
  rule("er", "ER"),
  rule("ir", "ER"),
  rule("ur", "ER"),
  rule("or", "AO R"),
  rule("ee", "IY"),
  rule("ea", "IY"),
  rule("ai", "EY"),
  rule("ay", "EY"),
  rule("au", "AO"),
  rule("aw", "AO"),
  rule("oa", "OW"),
  rule("oo", "UW"),
  rule("oi", "OY"),
  rule("oy", "OY"),
  rule("ou", "AW"),
  rule("ow", "OW", { next: END }),
  rule("ow", "AW"),
  rule("ew", "UW"),
  rule("ue", "UW", { next: END }),
  rule("ie", "IY"),
  rule("ei", "AY"),
  rule("ey", "IY"),
  rule("le", "AH L", { prev: /[bcdfgkpstz]$/, next: /^s?$/ }),
  rule("es", "IH Z", { prev: /(s|x|z|ch|sh|c|g)$/, next: END }),
  rule("es", "Z", { prev: /./, next: END }),
  rule("ed", "IH D", { prev: /[td]$/, next: END }),
  rule("ed", "T", { prev: /([pkfsxc]|sh|ch)$/, next: END }),
  rule("ed", "D", { prev: /[^aeiou]$/, next: END }),
  ...Object.entries(LONG).map(([letter, sound]) => rule(letter, sound, { next: SILENT_E })),
  rule("e", "", { prev: /[aeiouy].*[^aeiou]$/, next: END }),
  rule("s", "S", { prev: /[ptkf]$/, next: END }),
  rule("s", "Z", { prev: /([^s]|^)$/, next: END }),
  rule("a", "AH", { next: END }),
  rule("a", "AH", { prev: START, next: /^[bcdfglmnprstv]{1,2}[aeiouy]/ }),
  rule("i", "IY", { next: END }),
  rule("o", "OW", { next: /^s?$/ }),
  rule("u", "UW", { next: END }),
  rule("y", "Y", { prev: START }),
  rule("y", "IY", { prev: /[aeiouy]/, next: END }),
  rule("y", "AY", { next: END }),
  rule("c", "S", { next: /^[eiy]/ }),
  rule("g", "JH", { next: /^[eiy]/ }),
  rule("x", "Z", { prev: START }),
  ...Object.entries({
    a: "AE",
    b: "B",
    c: "K",
    d: "D",
    e: "EH",
    f: "F",
    g: "G",
    h: "HH",
    i: "IH",
    j: "JH",
    k: "K",
    l: "L",
    m: "M",
    n: "N",
    o: "AA",
    p: "P",
    q: "K",
    r: "R",
    s: "S",
    t: "T",
    u: "AH",
    v: "V",
    w: "W",
    x: "K S",
    y: "IH",
    z: "Z",
  }).map(([letter, sound]) => rule(letter, sound)),
];

/** The sound of a word of plain letters; "" where it has other signs. */
export function letterSound(word: string): string {
  const plain = word.toLowerCase().replaceAll("'", "");
  if (!/^[a-z]+$/.test(plain)) return "";
  const sounds: string[] = [];
  for (let at = 0; at < plain.length; ) {
    // of a double consonant the second sounds
    if (plain[at] === plain[at + 1] && !/[aeiou]/.test(plain[at] as string)) {
      at++;
      continue;
    }
    const fits = RULES.find(
      (one) =>
        plain.startsWith(one.letters, at) &&
        (one.next?.test(plain.slice(at + one.letters.length)) ?? true) &&
        (one.prev?.test(plain.slice(0, at)) ?? true),
    ) as Rule;
    if (fits.sound) sounds.push(fits.sound);
    at += fits.letters.length;
  }
  return sounds.join(" ");
}
