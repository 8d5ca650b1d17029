import { describe, expect, test } from "vitest";
import { boltingPlans } from "../../../core/consequences/bolting.ts";
import { consequences } from "../../../core/consequences/index.ts";
import type { Entry } from "../../../core/shapes/entry.ts";
import type { Valve } from "../../../core/shapes/valve.ts";

const dump: Valve = { family: "balanced_dump", size_in: 2 };
const torque = (value: number): Entry => ({
  type: "reading",
  quantity: "torque",
  value,
  unit: "ft_lbf",
  part: "bonnet_bolting",
});
const plans = (valve: Valve, entries: Entry[] = []) =>
  boltingPlans(valve, entries, consequences(valve, [], entries, "2026-03-04").followUps);

describe("how a joint is tightened", () => {
  test("each bolted joint of the family and size, with rounds, torque and where they come from", () => {
    const made = plans(dump);
    expect(made.length).toBeGreaterThan(0);
    for (const plan of made) {
      expect(plan.rounds.at(-1)?.order).toHaveLength(plan.count);
      expect(plan.source).toContain("ASME PCC-1");
      expect(plan).toMatchObject({ wanted: false, retorque: false });
    }
    const bonnet = made.find((one) => one.part === "bonnet_bolting");
    expect(bonnet?.limit).toEqual({ min: 25, max: 30, unit: "ft_lbf" });
    expect(bonnet?.rounds.find((one) => one.name === "Round 1")?.torque).toBe("5 to 9");
    expect(bonnet?.rounds.at(-1)?.torque).toBe("25 to 30");
  });
  test("a torque said opens it, one outside its limit asks for it again", () => {
    const of = (value: number) => plans(dump, [torque(value)]).find((one) => one.part === "bonnet_bolting");
    expect(of(28)).toMatchObject({ wanted: true, retorque: false });
    expect(of(40)).toMatchObject({ wanted: true, retorque: true });
  });
  test("the size said today counts; no size, no plan; a family without figures, none", () => {
    expect(plans({ family: "balanced_dump" })).toEqual([]);
    expect(plans({ family: "balanced_dump" }, [{ type: "valve", size_in: 2 }]).length).toBeGreaterThan(0);
    expect(plans({ family: "unheard_of", size_in: 2 })).toEqual([]);
  });
});
