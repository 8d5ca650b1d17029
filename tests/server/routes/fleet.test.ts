import { describe, expect, it } from "vitest";
import { carryListSchema, exportLineSchema, reliabilitySchema } from "../../../core/shapes/fleet.ts";
import { bench, job, phrase } from "../app-under-test.ts";

const DAY = 86_400_000;
/** A site with one valve, its jobs so many days ago, each with what was said. */
async function site(jobs: [daysAgo: number, ...said: string[]][], tag = "A-1") {
  const made = await bench();
  await made.ask("PUT", "/api/sites/north", { name: "North", zone: "Etc/UTC" });
  await made.ask("PUT", `/api/valves/${tag}`, { site: "north", family: "globe_control", size_in: 2 });
  const now = Date.now();
  const sent = jobs.map(([ago, ...said]) => {
    const startedAt = new Date(now - ago * DAY).toISOString();
    const one = job({ site: "north", tag, startedAt });
    const phrases = said.map((text, n) => ({
      ...phrase(one, text),
      saidAt: new Date(now - ago * DAY + n * 1000).toISOString(),
    }));
    return { one, phrases };
  });
  await made.ask("POST", "/api/phrases", {
    jobs: sent.map(({ one }) => one),
    phrases: sent.flatMap((one) => one.phrases),
  });
  return made;
}

describe("GET /api/carry", () => {
  it("lists certain and likely demand of the work due, with stock set against it", async () => {
    const { ask } = await site([
      [360, "replaced the kit"],
      [2, "seat's good"],
    ]);
    const list = await ask("GET", "/api/carry?site=north&days=30&stock=packing:0,seat_gasket/globe_control/2:5");
    expect(carryListSchema.safeParse(list).error).toBeUndefined();
    expect(list).toMatchObject({ site: "north", days: 30, visits: 1, confidence: 0.95 });
    const line = (part: string) => list.lines.find((one: { part: string }) => one.part === part);
    expect(line("packing")).toMatchObject({ certain: 1, carry: 1, onHand: 0, short: 1, tags: ["A-1"], size_in: 2 });
    expect(line("seat_gasket")).toMatchObject({ onHand: 5, short: 0 });
    expect(list.kits).toMatchObject([{ kit: "soft goods kit", count: 1 }]);
    expect((await ask("GET", "/api/carry?site=north&days=0")).visits).toBe(0);
    expect((await ask("GET", "/api/carry?site=south")).lines).toEqual([]);
  });

  it("refuses stock or days that it cannot read, and says how to write them", async () => {
    const { send } = await bench();
    for (const wrong of [
      "stock=packing",
      "stock=yolk:4",
      "stock=seat/x/y:1",
      "stock=seat:-1",
      "days=soon",
      "days=-1",
    ]) {
      const answer = await send("GET", `/api/carry?${wrong}`);
      expect(answer.status, wrong).toBe(400);
      expect(answer.headers.get("content-type")).toContain("application/problem+json");
      if (wrong.startsWith("stock")) expect(await answer.text()).toContain("part:count");
    }
    expect((await send("GET", "/api/carry?site=&days=&stock=")).status).toBe(200);
  });
});

describe("GET /api/reliability", () => {
  it("counts failures and valve-years, worst valve first, with the evidence", async () => {
    const { ask } = await site([
      [731, "seat's good"],
      [400, "seat leak test failed", "lapped the seat", "seat leak test passed"],
      [100, "packing's leaking", "replaced the packing"],
    ]);
    await ask("PUT", "/api/valves/B-2", { site: "north" });
    const made = await ask("GET", "/api/reliability?site=north");
    expect(reliabilitySchema.safeParse(made).error).toBeUndefined();
    expect(made.fleet).toMatchObject({ valves: 1, failures: 2 });
    expect(made.fleet.years).toBeCloseTo(2, 1);
    expect(made.fleet.lower).toBeLessThan(made.fleet.rate);
    expect(made.fleet.upper).toBeGreaterThan(made.fleet.rate);
    expect(made.valves).toMatchObject([{ tag: "A-1", failures: 2, trend: "too_few" }]);
    expect(made.valves[0].evidence.length).toBeGreaterThan(1);
  });

  it("answers for a site with nothing on record", async () => {
    const { ask } = await bench();
    expect(await ask("GET", "/api/reliability?site=nowhere")).toMatchObject({ fleet: { valves: 0 }, valves: [] });
  });
});

describe("GET /api/export", () => {
  it("gives a JSON line for each failure and each work, with codes", async () => {
    const { send } = await site([[30, "packing's leaking", "replaced the packing"]]);
    const answer = await send("GET", "/api/export?site=north");
    expect(answer.status).toBe(200);
    expect(answer.headers.get("content-type")).toContain("application/x-ndjson");
    const lines = (await answer.text())
      .trim()
      .split("\n")
      .map((line) => exportLineSchema.parse(JSON.parse(line)));
    expect(lines).toMatchObject([
      {
        record: "failure",
        tag: "A-1",
        site: "north",
        part: "packing",
        failure_mechanism: { code: "1.1" },
        failure_mode: { code: "ELP" },
      },
      { record: "maintenance", activity: { code: "1" } },
    ]);
  });

  it("is empty, and still an answer, where nothing is on record", async () => {
    const { send } = await bench();
    const answer = await send("GET", "/api/export?site=nowhere");
    expect([answer.status, await answer.text()]).toEqual([200, ""]);
  });
});
