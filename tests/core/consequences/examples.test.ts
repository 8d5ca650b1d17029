import { describe, expect, test } from "vitest";
import { EXAMPLE_DAY, EXAMPLE_VALVE } from "../../../core/consequences/example.ts";
import { consequences } from "../../../core/consequences/index.ts";
import { RULE_ORDER } from "../../../core/consequences/rule.ts";
import { EXAMPLES } from "../../../core/consequences/rules/examples.ts";
import { consequencesSchema } from "../../../core/shapes/consequence.ts";

/** Runs every example that stands beside its rule. */
for (const rule of RULE_ORDER)
  describe(rule, () => {
    const own = EXAMPLES.filter((example) => example.rule === rule);
    test("has examples, and a near miss", () => {
      expect(own.some((example) => example.gives.length > 0)).toBe(true);
      expect(own.some((example) => example.gives.length === 0)).toBe(true);
    });
    for (const { about, say, before = [], valve = EXAMPLE_VALVE, gives } of own)
      test(about, () => {
        const after = consequences(valve, before, say, EXAMPLE_DAY);
        expect(consequencesSchema.safeParse(after).error).toBeUndefined();
        const made = after.followUps.filter((one) => one.rule === rule);
        expect(made).toHaveLength(gives.length);
        for (const want of gives) expect(made).toContainEqual(expect.objectContaining(want));
        for (const one of made) expect(one.why.length > 8 && one.source.length > 3).toBe(true);
      });
  });
