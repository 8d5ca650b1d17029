import { wordTable } from "./notation.ts";

/**
 * How a letter of a tag is said: by itself, by its sound, or by the international spelling alphabet.
 * Sounds that are English words of their own ("see", "are", "you") count only inside a tag.
 */
export const LETTER_SOUNDS: Record<string, string> = wordTable({
  ay: "a", eh: "a", bee: "b", be: "b", cee: "c", see: "c", sea: "c", dee: "d", ee: "e", eff: "f", ef: "f", gee: "g", jee: "g", aitch: "h", haitch: "h",
  eye: "i", jay: "j", kay: "k", okay: "k", ell: "l", el: "l", elle: "l", else: "l", elsie: "lc", hell: "l", em: "m", en: "n", pee: "p", pea: "p", cue: "q", queue: "q", are: "r", ar: "r", our: "r",
  ess: "s", es: "s", tee: "t", tea: "t", you: "u", yew: "u", vee: "v", vie: "v", we: "v", dubya: "w", ex: "x", why: "y", wye: "y", zee: "z", zed: "z", ph: "p", fee: "v", the: "v", v: "v",
});
export const SPELLING_ALPHABET: Record<string, string> = wordTable({
  alpha: "a", alfa: "a", bravo: "b", charlie: "c", delta: "d", echo: "e", foxtrot: "f", fox: "f", golf: "g", hotel: "h", india: "i", juliet: "j", juliett: "j", kilo: "k",
  lima: "l", mike: "m", november: "n", oscar: "o", papa: "p", quebec: "q", romeo: "r", sierra: "s", tango: "t", uniform: "u", victor: "v", whiskey: "w", whisky: "w",
  xray: "x", yankee: "y", zulu: "z",
});
/** Letter groups of field valves by ISA-5.1: a tag may be read from them without further support. */
export const TAG_GROUPS = new Set("lv lcv pv pcv fv fcv tv tcv hv hcv xv sdv bdv esv esdv mov psv dv ddv lsv lvc dpcv pdv pdcv xcv uv av sv ltv fsv plv zv rv prv tsv bv cv dcv kv ev mv wv gv ldv dmv ucv acv jv".split(" "));
