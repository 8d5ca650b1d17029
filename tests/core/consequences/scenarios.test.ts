import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { z } from "zod";
import { consequences } from "../../../core/consequences/index.ts";
import { consequencesSchema } from "../../../core/shapes/consequence.ts";
import { entrySchema } from "../../../core/shapes/entry.ts";
import { dateSchema, lifeSchema, pastJobSchema, valveSchema } from "../../../core/shapes/valve.ts";

/**
 * Whole jobs with what must follow, written from the contract alone by another hand than the rules'.
 * Lists are whole: nothing missing, nothing more; of each line only the keys that the contract settles are given.
 */
const line = z.record(z.string(), z.union([z.string(), z.number()]));
const scenarioSchema = z.object({
  id: z.string(),
  about: z.string(),
  in: z.object({
    valve: valveSchema,
    history: z.array(pastJobSchema),
    fleet: z.array(lifeSchema).optional(),
    on: dateSchema,
    entries: z.array(entrySchema),
  }),
  expect: z.object({
    checks: z.array(line).optional(),
    followUps: z.array(line).optional(),
    due: z.array(line).optional(),
    missing: z.array(z.string()).optional(),
    parts: z.object({ used: z.array(line), needed: z.array(line) }).optional(),
  }),
});
type Line = z.infer<typeof line>;

const scenarios = readFileSync(new URL("../../corpora/scenarios.jsonl", import.meta.url), "utf8")
  .trim()
  .split("\n")
  .map((text) => scenarioSchema.parse(JSON.parse(text)));

/** A computed limit is written down to a few digits. */
function same(want: unknown, got: unknown): boolean {
  return typeof want === "number" && typeof got === "number"
    ? Math.abs(want - got) <= 1e-6 * Math.max(1, Math.abs(want))
    : want === got;
}

function pair(want: readonly Line[], got: readonly object[]): { lacking: Line[]; beyond: object[] } {
  const beyond = [...got];
  const lacking = want.filter((line) => {
    const at = beyond.findIndex((one) =>
      Object.entries(line).every(([key, value]) => same(value, one[key as keyof typeof one])),
    );
    if (at >= 0) beyond.splice(at, 1);
    return at < 0;
  });
  return { lacking, beyond };
}

describe("scenarios", () => {
  for (const { id, about, in: given, expect: want } of scenarios)
    test(`${id}: ${about}`, () => {
      const after = consequences(given.valve, given.history, given.entries, given.on, given.fleet);
      expect(consequencesSchema.safeParse(after).error).toBeUndefined();
      const none = { lacking: [], beyond: [] };
      for (const list of ["checks", "followUps", "due"] as const)
        if (want[list]) expect(pair(want[list], after[list]), list).toEqual(none);
      if (want.missing) expect([...after.missing].sort()).toEqual([...want.missing].sort());
      for (const list of ["used", "needed"] as const)
        if (want.parts) expect(pair(want.parts[list], after.parts[list]), list).toEqual(none);
      expect(consequences(given.valve, given.history.toReversed(), given.entries, given.on, given.fleet)).toEqual(
        after,
      );
    });
});
