/** "lap": the last letter is doubled before an ending. */
const DOUBLED = /^(?:\w*[^aeiou])?[aeiou][bdgmnprt]$/;
const UNDOUBLED = new Set([
  "reuse",
  "open",
  "tighten",
  "straighten",
  "loosen",
  "discard",
  "remove",
  "repair",
  "retighten",
  "check",
  "drain",
  "clean",
  "look",
  "adjust",
  "lubricate",
  "fix",
  "regrease",
  "flow",
  "bow",
  "examine",
  "unscrew",
  "blow",
]);

/** The forms of a verb, each in every spelling met: "lap, laps", "lapped", "lapping, lappin". */
export interface VerbForms {
  base: string[];
  past: string[];
  ing: string[];
}

/** Forms of a regular English verb ("lap"), and of an irregular one given as "base:past,participle" ("bend:bent"). */
export function inflect(verb: string): VerbForms {
  const [phrase = "", irregular] = verb.split(":");
  const [head = "", ...rest] = phrase.split(" ");
  // "wire brush", "pressure wash", "thread lock": the last word is the verb
  const compound = rest.length > 0 && ["wire", "pressure", "power", "thread", "re", "sandblast", "heli"].includes(head);
  const stem = compound ? (rest[rest.length - 1] as string) : head;
  const wrap = (form: string) => (compound ? [head, ...rest.slice(0, -1), form].join(" ") : [form, ...rest].join(" "));
  const doubles = DOUBLED.test(stem) && !UNDOUBLED.has(stem) && stem.length <= 5;
  const root = doubles ? stem + stem.at(-1) : stem.endsWith("e") ? stem.slice(0, -1) : stem;
  const yStem = /[^aeiou]y$/.test(stem);
  const past = irregular
    ? irregular.split(",")
    : [stem.endsWith("e") ? `${stem}d` : yStem ? `${stem.slice(0, -1)}ied` : `${root}ed`];
  const thirds = /(?:s|x|ch|sh|z)$/.test(stem) ? `${stem}es` : yStem ? `${stem.slice(0, -1)}ies` : `${stem}s`;
  const ing = stem.endsWith("ee") ? `${stem}ing` : `${root}ing`;
  return { base: [stem, thirds].map(wrap), past: past.map(wrap), ing: [ing, ing.replace(/ing$/, "in")].map(wrap) };
}

/** Singular and plural of a part's name. */
export function plurals(name: string): string[] {
  const last = name.split(" ").at(-1) ?? "";
  if (/s$/.test(last) && !/(?:ss|us)$/.test(last)) return [name];
  if (/(?:s|x|ch|sh)$/.test(last)) return [name, `${name}es`];
  if (/[^aeiou]y$/.test(last)) return [name, `${name.slice(0, -1)}ies`];
  return [name, `${name}s`];
}
