import { describe, expect, test } from "vitest";
import { fitWeibull } from "../../../core/compute/weibull.ts";
import { consequences } from "../../../core/consequences/index.ts";
import { manyValves } from "./many-valves.ts";

/**
 * The promise is 10 000 valves of 20 inspections in 10 s on one core, so 1 ms a valve, and a fit well under 1 ms.
 * Here three times that is allowed, since the machine that tests is shared.
 */
describe("speed", () => {
  test("a valve with 20 inspections takes about a millisecond, and twice the valves twice the time", () => {
    const valves = manyValves(600);
    const reckon = (some: typeof valves): number => {
      const start = performance.now();
      for (const { valve, history, on } of some) consequences(valve, history, [], on);
      return performance.now() - start;
    };
    reckon(valves.slice(0, 200));
    const part = reckon(valves.slice(0, 300));
    const all = reckon(valves);
    expect(all / valves.length).toBeLessThan(3);
    expect(all / part).toBeLessThan(5);
  });
  test("a fit takes well under a millisecond", () => {
    const lives = [
      { lower: 3, upper: 4 },
      { lower: 4, upper: 6 },
      { lower: 2, upper: 5 },
      { lower: 6 },
      { lower: 5, upper: 8 },
    ];
    for (let i = 0; i < 200; i++) fitWeibull(lives);
    const start = performance.now();
    for (let i = 0; i < 500; i++) fitWeibull(lives);
    expect((performance.now() - start) / 500).toBeLessThan(1);
  });
});
