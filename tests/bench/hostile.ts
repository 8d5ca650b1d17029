import { readPhrase } from "../../core/index.ts";
import { figure, took } from "./timing.ts";

const SIZE = 100_000;
const of = (piece: string) => piece.repeat(Math.ceil(SIZE / piece.length)).slice(0, SIZE);

/** 100 kB in one phrase, made to be hard: the longest that the server takes. */
const HARD: [what: string, text: string][] = [
  ["seat worn seat worn ...", of("seat worn ")],
  ["one word of 100,000 letters", of("a")],
  ["digits", of("1234567890")],
  ["numbers in words", of("twenty eight hundred and ")],
  ["no wait no wait ...", of("seat no wait plug correction ")],
  ["scratch that ...", of("scratch that seat worn ")],
  ["nearly words", of("diafragm seet wron tork ")],
  ["commas", of(",.;-'")],
  ["same on the other one ...", of("same on the lower one ditto ")],
  ["letters spelled", of("l c v two one three ")],
];

export function hostile(): string[] {
  readPhrase("seat worn");
  const times = HARD.map(([what, text]) => ({ what, ms: took(() => void readPhrase(text)) }));
  const worst = times.reduce((most, one) => (one.ms > most.ms ? one : most));
  return [
    `${HARD.length} phrases of 100 kB, each read once; a phrase is read as far as its 2,000th word, and kept whole`,
    `slowest ${figure(worst.ms)} ms (${worst.what})`,
    times.map(({ what, ms }) => `${what} ${figure(ms)} ms`).join("; "),
  ];
}
