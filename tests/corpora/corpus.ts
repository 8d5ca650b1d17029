import { readFileSync } from "node:fs";
import type { Entry } from "../../core/index.ts";
import { hear } from "../../core/index.ts";

/** A session's phrases and the entries that must stand after the last. */
export interface Case {
  id: string;
  say: string[];
  entries: Entry[];
}

/**
 * Where the later ones are from, and what was read of them wholly right at first sight, before any change: the figure
 * that counts, since each corpus is looked at and learnt from afterwards.
 *
 * | corpus | written by | first reading | chatter that invents |
 * | --- | --- | --- | --- |
 * | fourth | a contributor, as invented speakers from ten regions, typed and dictated | 86 of 118 (72.9 %), F1 0.81 | 0 of 16 |
 * | transcripts3 | the same, as a recogniser may put them | 45 of 55 (81.8 %), F1 0.90 | 0 of 4 |
 * | fifth | the same, as ten more, after what the two before had taught | 41 of 79 (51.9 %), F1 0.62 | 1 of 12 |
 * | transcripts4 | the same, as a recogniser may put them | 19 of 27 (70.4 %), F1 0.78 | 0 of 4 |
 * | sixth | the same, after the rules that the fifth had asked for | 24 of 48 (50.0 %), F1 0.63 | 0 of 8 |
 * | transcripts5 | the same, as a recogniser may put them | 11 of 15 (73.3 %), F1 0.83 | 0 of 2 |
 * | seventh | the same, shop dictation and plain field speech | 49 of 72 (68.1 %), F1 0.80 | 1 of 6 |
 * | transcripts6 | the same, as a recogniser may put them | 18 of 26 (69.2 %), F1 0.87 | 1 of 2 |
 * | eighth | the same, after what the seventh had taught | 66 of 86 (76.7 %), F1 0.87 | 1 of 9 |
 * | transcripts7 | the same, as a recogniser may put them | 20 of 26 (76.9 %), F1 0.86 | 0 of 3 |
 * | ninth | the same, more of it slang | 60 of 84 (71.4 %), F1 0.85 | 0 of 7 |
 * | transcripts8 | the same, as a recogniser may put them | 14 of 21 (66.7 %), F1 0.79 | 1 of 3 |
 * | tenth | the same, slang and part names of other regions | 23 of 44 (52.3 %), F1 0.80 | 0 of 5 |
 * | transcripts9 | the same, as a recogniser may put them | 10 of 13 (76.9 %), F1 0.92 | 0 of 1 |
 * | eleventh | the same, plain shop dictation, after what the tenth had taught | 20 of 27 (74.1 %) | 0 of 3 |
 * | transcripts10 | the same, as a recogniser may put them | 7 of 7, F1 1.00 | 0 of 1 |
 * | twelfth | the same, ten more speakers: logs, dictation, rambling, English as a second language | 50 of 77 (64.9 %), F1 0.78; 52 by answers put right | 1 of 12 |
 * | transcripts11 | the same, as a recogniser may put them, with radio talk between | 43 of 49 (87.8 %), F1 0.93 | 0 of 8 |
 * | thirteenth | the same, six more: terse, careful, English as a second language, rambling, asking oneself, instruments | 79 of 110 (52 of 80 but for chatter), F1 0.83; 80 by answers put right | 3 of 30 |
 * | transcripts12 | the same, as a recogniser may put them | 25 of 39 (64.1 %), F1 0.80; 28 by answers put right | 0 of 0 |
 * | fourteenth | the same, after what the thirteenth had taught: notes, a shop lead, winter, the coast, controls, corrections, two talking | 64 of 94 (45 of 74 but for chatter), F1 0.76; 65 by answers put right | 1 of 20 |
 * | transcripts13 | the same, as a recogniser may put them | 16 of 30 (53.3 %), F1 0.70; 17 by answers put right | 0 of 0 |
 * | fifteenth | the same, after what the fourteenth had taught: night shift, a foreman, a form read out, French and shop English | 39 of 63 (26 of 48 but for chatter), F1 0.73; 40 by answers put right | 2 of 15 |
 * | transcripts14 | the same, as a recogniser may put them | 16 of 20 (80.0 %), F1 0.90; 18 by answers put right | 0 of 0 |
 * | sixteenth | the same, plain speech, after what the fifteenth and a sweep of all verbs, conditions and parts through twenty frames had taught | 35 of 50 (27 of 40 but for chatter), F1 0.79; 36 by answers put right | 2 of 10 |
 * | seventeenth | the same, four more speakers, of the working phrases' length and mix, after what the sixteenth had taught | 53 of 85 (29 of 60 but for chatter), F1 0.75; 56 by answers put right | 1 of 25 |
 * | transcripts15 | the same, as a recogniser may put them | 15 of 25 (60.0 %), F1 0.73 | 0 of 0 |
 * | eighteenth | the same, four other speakers, after what the seventeenth had taught | 59 of 80 (39 of 60 but for chatter), F1 0.79; 62 by answers put right | 0 of 20 |
 * | transcripts16 | the same, as a recogniser may put them | 11 of 25 (44.0 %), F1 0.62 | 0 of 0 |
 * | nineteenth | the same, four more, after what the eighteenth had taught | 53 of 75 (39 of 60 but for chatter), F1 0.81; 55 by answers put right | 1 of 15 |
 * | transcripts17 | the same, as a recogniser may put them | 16 of 20 (80.0 %), F1 0.92 | 0 of 0 |
 * | twentieth | the same, another ear: mill and gas-plant shops, more readings, tests by outcome, corrections and comparisons, after what the nineteenth had taught | 28 of 50 (25 of 47 but for chatter), F1 0.78 | 0 of 3 |
 * | twentyfirst | the same, plainer, after what the twentieth and a sweep of some four hundred frames over parts, conditions, verbs, measures and corrections had taught | 19 of 24 (18 of 23 but for chatter), F1 0.93 | 0 of 1 |
 * | twentysecond | the same, a roustabout of few words, after what the twentyfirst had taught | 46 of 58 (40 of 50 but for chatter), F1 0.90; 49 by answers put right | 2 of 8 |
 * | transcripts18 | the same, a recogniser's flat transcripts | 49 of 55 (41 of 47 but for chatter), F1 0.95 | 0 of 8 |
 * | twentythird | the same, a careful shop man in whole sentences and the passive voice | 44 of 57 (37 of 50 but for chatter), F1 0.85 | 0 of 7 |
 * | twentyfourth | another hand, after the working phrases' manner: plain field talk | 67 of 75 (60 of 68 but for chatter), F1 0.96 | 0 of 7 |
 * | twentyfifth | the same, plain shop talk | 73 of 75 (66 of 68 but for chatter), F1 0.99 | 0 of 7 |
 * | transcripts19 | the same, as a recogniser may put them | 46 of 65 (40 of 59 but for chatter), F1 0.86; 47 by answers put right | 0 of 6 |
 * | twentysixth | a third hand: plain field talk | 73 of 75 (65 of 67 but for chatter), F1 0.99 | 0 of 8 |
 * | twentyseventh | the same, plain shop talk | 73 of 75 (66 of 67 but for chatter), F1 0.99 | 1 of 8 |
 * | transcripts20 | the same, as a recogniser may put them | 46 of 65 (39 of 58 but for chatter), F1 0.83 | 0 of 7 |
 *
 * The sixth is learnt from in part; three of its answers were put right likewise. Of the tenth and the last transcripts, twelve and two answers were put right after that reading, and the figure is of the right ones; so of three of the eleventh. Of the twelfth four were put right: what is said of the gland is said of its nut, a bare 'repl' is an order, bleeding is work, and oil all over the pad is a spill, whoever's. Of the fifth, seven answers were themselves put right after that reading, since they had not kept to the contract. Of the thirteenth three were put right: a seal blown out is torn as well, what the manual says is owed, 'nope, it's straight' is a verdict too; of transcripts12 four: a bare order stays one, each hedge marks its own entry, 'must be' is no hedge, and one case that said nothing was dropped. Of the fourteenth three were put right, and one of transcripts13: a strainer that is full is plugged, 'nut' is a nut, and scrap is a verdict. Of the fifteenth one and of transcripts14 three: an output of zero is a reading, 'rotted' is a word, 'them' after both are two, and bolt holes are a place. Of the sixteenth four: 'the top' is no part, packing that is cracked is cracked, bubbles counted are a test, and a seat ring that is stuck is seized. Of the seventeenth three: 'get me one' counts one, 'the other' is no extent, nicks are counted for themselves; of the eighteenth three: the stem guide is not the guide, and a spot's width is said of its part; of the nineteenth two: 'need one' counts one, and what is scratched leaves no part to order two of; of the twentysecond three: a later word is no severity, bolting up is work, and a test named in one phrase stands beside its outcome in the next; of transcripts19 one: a strainer full of sand is plugged.
 */
export const CORPORA = [
  "working",
  "field",
  "shop",
  "transcripts",
  "mixed",
  "transcripts2",
  "third",
  "fourth",
  "transcripts3",
  "fifth",
  "transcripts4",
  "sixth",
  "transcripts5",
  "seventh",
  "transcripts6",
  "eighth",
  "transcripts7",
  "ninth",
  "transcripts8",
  "tenth",
  "transcripts9",
  "eleventh",
  "transcripts10",
  "twelfth",
  "transcripts11",
  "thirteenth",
  "transcripts12",
  "fourteenth",
  "transcripts13",
  "fifteenth",
  "transcripts14",
  "sixteenth",
  "seventeenth",
  "transcripts15",
  "eighteenth",
  "transcripts16",
  "nineteenth",
  "transcripts17",
  "twentieth",
  "twentyfirst",
  "twentysecond",
  "transcripts18",
  "twentythird",
  "twentyfourth",
  "twentyfifth",
  "transcripts19",
  "twentysixth",
  "twentyseventh",
  "transcripts20",
  "chatter",
  "held",
  "held-transcripts",
] as const;

/** Looked at, and not learnt from to the end yet: what they still miss is the next thing to do. */
export const FRESH: ReadonlySet<string> = new Set([
  "sixth",
  "transcripts5",
  "seventh",
  "transcripts6",
  "eighth",
  "transcripts7",
  "tenth",
  "transcripts9",
  "eleventh",
  "twelfth",
  "transcripts11",
  "thirteenth",
  "transcripts12",
  "fourteenth",
  "transcripts13",
  "fifteenth",
  "transcripts14",
  "sixteenth",
  "seventeenth",
  "transcripts15",
  "eighteenth",
  "transcripts16",
  "nineteenth",
  "transcripts17",
  "twentieth",
  "twentyfirst",
  "twentysecond",
  "transcripts18",
  "twentythird",
  "twentyfourth",
  "twentyfifth",
  "transcripts19",
  "twentysixth",
  "twentyseventh",
  "transcripts20",
]);

export function loadCases(name: (typeof CORPORA)[number]): Case[] {
  return readFileSync(new URL(`./${name}.jsonl`, import.meta.url), "utf8")
    .split("\n")
    .filter((line) => line.trim())
    .map((line) => JSON.parse(line) as Case);
}

/**
 * What is looked at while the reader is made better: the odd half of the working phrases and the whole of the
 * corpora by other hands, but for `held` and `held-transcripts`. The even half of the working phrases and those are only scored. Their figure
 * is an upper bound: the even half was read before the reader was written, and the score of `held` steered choices. Of `held-transcripts`, a recogniser's phrases by a third hand, 84 of 130 were read
 * wholly right at first sight; nobody has looked at them.
 */
export const isLookedAt = (one: Case): boolean =>
  !one.id.startsWith("h-") && (!one.id.startsWith("d-") || Number(one.id.split("-")[1]) % 2 === 1);

/** The contract's keys alone, in a fixed order. */
export function bare(entry: Entry): string {
  const {
    words: _w,
    rule: _r,
    confidence: _c,
    phrase: _p,
    at: _a,
    resolved: _s,
    assumed: _m,
    ...rest
  } = entry as Entry & Record<string, unknown>;
  return JSON.stringify(Object.fromEntries(Object.entries(rest).sort(([a], [b]) => (a < b ? -1 : 1))));
}

export interface Scored {
  one: Case;
  right: boolean;
  got: string[];
  want: string[];
  unread: string[];
}

export function score(one: Case): Scored {
  const heard = hear({ id: one.id, say: one.say });
  const got = heard.entries.map(bare);
  const want = one.entries.map(bare);
  return {
    one,
    right: got.length === want.length && got.every((text, at) => text === want[at]),
    got,
    want,
    unread: heard.unread.map((word) => word.text),
  };
}

/** Share of cases wholly right, of chatter cases that invent something, and F1 over entries. */
export function summary(scored: readonly Scored[]): {
  cases: number;
  right: number;
  chatter: number;
  invented: number;
  f1: number;
} {
  const chatter = scored.filter(({ want }) => want.length === 0);
  let hit = 0;
  let got = 0;
  let want = 0;
  for (const one of scored) {
    const left = [...one.want];
    got += one.got.length;
    want += one.want.length;
    for (const text of one.got) {
      const at = left.indexOf(text);
      if (at >= 0) {
        hit += 1;
        left.splice(at, 1);
      }
    }
  }
  return {
    cases: scored.length,
    right: scored.filter(({ right }) => right).length,
    chatter: chatter.length,
    invented: chatter.filter(({ got: made }) => made.length > 0).length,
    f1: (2 * hit) / (got + want || 1),
  };
}
