import { describe, expect, it } from "vitest";
import { z } from "zod";
import { uuid7 } from "../../../web/storage/uuid7.ts";

describe("uuid7", () => {
  it("ascends within a millisecond, over a counter that runs full, and when the clock steps back", () => {
    const at = 1_800_000_000_000;
    const ids = [...Array.from({ length: 5000 }, () => uuid7(at)), uuid7(at - 60_000), uuid7(at + 60_000)];
    expect(new Set(ids).size).toBe(ids.length);
    expect([...ids].sort()).toEqual(ids);
    for (const id of ids.slice(-3)) expect(z.uuidv7().safeParse(id).success).toBe(true);
  });
  it("begins with the time", () => {
    const at = 1_900_000_000_000;
    expect(Number.parseInt(uuid7(at).replace("-", "").slice(0, 12), 16)).toBe(at);
  });
});
