import { wordTable } from "./notation.ts";

/** Number words. */
export const ONES: Record<string, number> = wordTable({ zero: 0, oh: 0, o: 0, ought: 0, nought: 0, one: 1, two: 2, three: 3, four: 4, five: 5, six: 6, seven: 7, eight: 8, nine: 9 });
export const TEENS: Record<string, number> = wordTable({ ten: 10, eleven: 11, twelve: 12, thirteen: 13, fourteen: 14, fifteen: 15, sixteen: 16, seventeen: 17, eighteen: 18, nineteen: 19 });
export const TENS: Record<string, number> = wordTable({ twenty: 20, thirty: 30, forty: 40, fourty: 40, fifty: 50, sixty: 60, seventy: 70, eighty: 80, ninety: 90 });
export const SCALES: Record<string, number> = wordTable({ hundred: 100, thousand: 1000 });
/** Denominators, singular and plural. */
export const FRACTIONS: Record<string, number> = wordTable({
  half: 2, halves: 2, third: 3, thirds: 3, quarter: 4, quarters: 4, fourth: 4, fourths: 4, fifth: 5, fifths: 5, eighth: 8, eighths: 8, eights: 8, ates: 8, eighteenths: 18,
  tenth: 10, tenths: 10, sixteenth: 16, sixteenths: 16, thirtysecond: 32, thirtyseconds: 32, sixtyfourth: 64, sixtyfourths: 64,
});
/** Words that sound like a number, read as one only between other numbers or before a unit. */
export const SOUND_NUMBERS: Record<string, number> = wordTable({ won: 1, to: 2, too: 2, for: 4, fore: 4, ate: 8, tree: 3, sicks: 6, fife: 5, niner: 9, tin: 10, fort: 40, thirdy: 30, tue: 2, hate: 8, nein: 9, sex: 6, forth: 4, tens: 10 });
export const COUNT_WORDS: Record<string, number> = wordTable({ couple: 2, pair: 2, dozen: 12 });
