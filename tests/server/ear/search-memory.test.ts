import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { earWords } from "../../../core/speech/ear-words.ts";
import { Engine } from "../../../core/speech/engine.ts";
import { decodeWave } from "../../../core/speech/wave.ts";
import { earParts } from "../../../server/ear/open-ear.ts";
import { CAN_SPEAK, saidAloud } from "./said-aloud.ts";

test.skipIf(!CAN_SPEAK)(
  "the engine's own best row of words is among those read out of its memory, frame for frame (flite, sox)",
  async () => {
    const { module, model, soundsOf } = await earParts(() => {});
    const words = earWords(soundsOf);
    const engine = new Engine(module, model, words.dictionary, words.network, {
      lw: 6.5,
      silprob: 0.5,
      bestpath: false,
    });
    for (const phrase of ["seat worn on one side", "torqued the bonnet bolts to forty five foot pounds"]) {
      const read = decodeWave(new Uint8Array(readFileSync(saidAloud(phrase))));
      if (!read.ok) throw new Error(read.problem);
      engine.begin();
      engine.feed(read.value.samples);
      engine.end();
      const { words: best = [], frames } = engine.best();
      const graph = engine.graph();
      const places = new Set(graph.words.map(({ word, from, to }) => `${word} ${from} ${to}`));
      const row = best
        .filter(({ word }) => word !== "(NULL)")
        .map(({ word, at, lasts }) => {
          const from = Math.round(at * 100);
          return `${word.replace(/\(\d+\)$/, "")} ${from} ${from + Math.round(lasts * 100)}`;
        });
      expect(row.length).toBeGreaterThan(4);
      expect(row.filter((place) => !places.has(place))).toEqual([]);
      expect(Math.abs(graph.frames - frames)).toBeLessThanOrEqual(1);
      // and many more besides
      expect(graph.words.length).toBeGreaterThan(10 * row.length);
    }
    engine.free();
  },
  120_000,
);
