import { describe, expect, it } from "vitest";
import { bench, job, phrase } from "../app-under-test.ts";

const AT = "/api/sites/north/stock";

describe("/api/sites/{site}/stock", () => {
  it("keeps what was said last, whole, and each site its own", async () => {
    const { ask } = await bench();
    expect(await ask("GET", AT)).toEqual({ site: "north", stock: {} });
    const stock = { "seat/balanced_dump/2": 1, packing: 4 };
    expect(await ask("PUT", AT, { stock })).toEqual({ site: "north", stock });
    await ask("PUT", "/api/sites/south/stock", { stock: { packing: 9 } });
    expect(await ask("GET", AT)).toEqual({ site: "north", stock });
    await ask("PUT", AT, { stock: { stem: 0 } });
    expect(await ask("GET", AT)).toEqual({ site: "north", stock: { stem: 0 } });
    expect(await ask("PUT", AT, { stock: {} })).toEqual({ site: "north", stock: {} });
  });

  it("takes more lines than one statement holds", async () => {
    const { ask } = await bench();
    const stock = Object.fromEntries(Array.from({ length: 450 }, (_, n) => [`seat/balanced_dump/${n + 1}`, n]));
    await ask("PUT", AT, { stock });
    expect((await ask("GET", AT)).stock).toEqual(stock);
  });

  it("refuses what is no stock, and keeps what was there", async () => {
    const { ask, send } = await bench();
    await ask("PUT", AT, { stock: { packing: 4 } });
    for (const wrong of [
      {},
      { stock: [] },
      { stock: { yolk: 1 } },
      { stock: { packing: -1 } },
      { stock: { packing: 1.5 } },
      { stock: { packing: "4" } },
      { stock: { "seat/x/y": 1 } },
    ]) {
      const answer = await send("PUT", AT, wrong);
      expect(answer.status, JSON.stringify(wrong)).toBe(400);
      expect(answer.headers.get("content-type")).toContain("application/problem+json");
    }
    expect((await ask("GET", AT)).stock).toEqual({ packing: 4 });
  });
});

describe("GET /api/carry with a site's own stock", () => {
  it("sets it against the demand where none is given with the question", async () => {
    const { ask } = await bench();
    await ask("PUT", "/api/valves/A-1", { site: "north", family: "globe_control", size_in: 2 });
    const startedAt = new Date(Date.now() - 360 * 86_400_000).toISOString();
    const one = job({ site: "north", tag: "A-1", startedAt });
    await ask("POST", "/api/phrases", {
      jobs: [one],
      phrases: [{ ...phrase(one, "replaced the kit"), saidAt: startedAt }],
    });
    const packing = async (query: string) => {
      const list = await ask("GET", `/api/carry?days=30${query}`);
      return { line: list.lines.find((line: { part: string }) => line.part === "packing"), unclear: list.unclear };
    };
    expect((await packing("&site=north")).line.onHand).toBeUndefined();
    await ask("PUT", AT, { stock: { packing: 3, diaphragm: 7, cage: 1 } });
    const kept = await packing("&site=north");
    expect(kept.line).toMatchObject({ onHand: 3, short: 0 });
    expect(kept.unclear.join()).not.toContain("nothing of the kind");
    expect((await packing("&site=north&stock=packing:0")).line).toMatchObject({ onHand: 0, short: 1 });
    // over all sites no shelf is near
    expect((await packing("")).line.onHand).toBeUndefined();
  });
});
