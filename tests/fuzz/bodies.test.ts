import { expect, it } from "vitest";
import { fuzzBodies } from "./bodies.ts";
import { fuzzFiles } from "./files.ts";

it("every call, asked with what its schema takes and a little else, answers within a second and keeps no halves", async () => {
  expect(await fuzzBodies({ runs: 120, seed: 20_260_304 })).toEqual([]);
});

it("spoilt sound, lists and families are read or refused in words", () => {
  expect(fuzzFiles({ runs: 300, seed: 20_260_304 })).toEqual([]);
});
