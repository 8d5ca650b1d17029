import { describe, expect, it } from "vitest";
import { bench, job, phrase } from "../app-under-test.ts";
import { ask as atDatabase } from "../at-database.ts";

describe("sites and valves", () => {
  it("sets up a site, changes it, lists it with its own today", async () => {
    const { ask } = await bench();
    await ask("PUT", "/api/sites/north%20pad", { name: "North", zone: "America/Denver" });
    await ask("PUT", "/api/sites/north%20pad", { name: "North Pad", zone: "Pacific/Auckland" });
    const { sites } = await ask("GET", "/api/sites");
    expect(sites).toHaveLength(1);
    expect(sites[0]).toMatchObject({ site: "north pad", name: "North Pad", zone: "Pacific/Auckland" });
    const parts = new Intl.DateTimeFormat("en-CA", { timeZone: "Pacific/Auckland" }).format(new Date());
    expect(sites[0].today).toBe(parts);
  });

  it("keeps the newest record of a valve standing and the earlier ones as they were", async () => {
    const { ask, store } = await bench();
    await ask("PUT", "/api/valves/lcv-213", { site: "north", size_in: 2, cv: 33.5, xT: 0.7, leak_class: "VI" });
    await ask("PUT", "/api/valves/LCV-213", { site: "north", size_in: 3, service: "severe", interval_months: 4 });
    const valve = await ask("GET", "/api/valves/lcv-213");
    expect(valve).toMatchObject({ tag: "LCV-213", site: "north", setUp: true, history: [] });
    expect(valve.valve).toEqual({ tag: "LCV-213", size_in: 3, service: "severe", interval_months: 4 });
    const { valveRecords } = await import("../../../server/db/tables.ts");
    expect(await store.db.select().from(valveRecords)).toHaveLength(2);
  });

  it("keeps two sites' valves of one tag apart, and asks which is meant", async () => {
    const { ask, send } = await bench();
    await ask("PUT", "/api/valves/A-1", { site: "north", size_in: 2 });
    await ask("PUT", "/api/valves/A-1", { site: "south", size_in: 4 });
    const unclear = await send("GET", "/api/valves/A-1");
    expect(unclear.status).toBe(409);
    expect((await unclear.json()).detail).toContain("?site=");
    expect((await ask("GET", "/api/valves/A-1?site=south")).valve.size_in).toBe(4);
    expect((await send("GET", "/api/valves/A-1?site=west")).status).toBe(404);
    const { valves } = await ask("GET", "/api/valves?site=north");
    expect(valves.map((one: { tag: string; site: string }) => [one.tag, one.site])).toEqual([["A-1", "north"]]);
  });

  it("knows a valve that was only heard of", async () => {
    const { ask } = await bench();
    const one = job({ tag: "B-2" });
    await ask("POST", "/api/phrases", {
      jobs: [one],
      phrases: [phrase(one, "three inch, severe service"), phrase(one, "seat's good", 1)],
    });
    const valve = await ask("GET", "/api/valves/B-2");
    expect(valve).toMatchObject({ setUp: false, valve: { tag: "B-2", size_in: 3, service: "severe" } });
    expect(valve.history).toHaveLength(1);
    expect(valve.seat.map((one: { entry: { condition: string } }) => one.entry.condition)).toEqual(["ok"]);
  });
});

describe("GET /api/due", () => {
  it("lists what is overdue or due, severe service first, and follows each new phrase", async () => {
    const { ask } = await bench();
    await ask("PUT", "/api/sites/north", { name: "North", zone: "Etc/UTC" });
    await ask("PUT", "/api/valves/A-1", { site: "north" });
    await ask("PUT", "/api/valves/Z-9", { site: "north", service: "severe" });
    const seen = await ask("GET", "/api/due?site=north&days=0");
    expect(seen.due.length).toBeGreaterThanOrEqual(2);
    expect(seen.due[0].tag).toBe("Z-9");
    for (const line of seen.due) {
      expect(line).toMatchObject({ site: "north", overdue: 0, on: seen.today });
      expect(line.why.length).toBeGreaterThan(5);
    }
    const today = new Date().toISOString();
    const one = job({ site: "north", tag: "A-1", startedAt: today });
    await ask("POST", "/api/phrases", { jobs: [one], phrases: [{ ...phrase(one, "seat's good"), saidAt: today }] });
    const inspection = (board: { due: { tag: string; task: string; on: string }[] }) =>
      board.due.find((line) => line.tag === "A-1" && line.task === "seat_inspection");
    expect(inspection(await ask("GET", "/api/due?site=north&days=90"))).toBeUndefined();
    expect(inspection(await ask("GET", "/api/due?site=north&days=200"))).toBeDefined();
    expect((await ask("GET", "/api/due?site=south")).due).toEqual([]);
  });
});

describe("health, figures and the document", () => {
  it("is alive and ready, and counts", async () => {
    const { app, ask } = await bench();
    expect((await app.request("/healthz")).status).toBe(200);
    expect((await app.request("/readyz")).status).toBe(200);
    const one = job();
    await ask("POST", "/api/phrases", { jobs: [one], phrases: [phrase(one, "seat worn"), { id: "x" }] });
    const answer = await app.request("/metrics");
    expect(answer.headers.get("content-type")).toContain("application/openmetrics-text");
    const text = await answer.text();
    expect(text).toContain('handsfull_phrases_total{became="stored"} 1');
    expect(text).toContain('handsfull_phrases_total{became="refused"} 1');
    expect(text.endsWith("# EOF\n")).toBe(true);
  });

  it("is not ready where the store does not answer", async () => {
    const { app, url } = await bench();
    await atDatabase(url, "ALTER TABLE jobs RENAME TO gone");
    expect((await app.request("/readyz")).status).toBe(503);
    expect((await app.request("/healthz")).status).toBe(200);
  });

  it("describes every route in OpenAPI 3.1", async () => {
    const { ask } = await bench();
    const document = await ask("GET", "/api/openapi.json");
    expect(document.openapi).toBe("3.1.0");
    expect(Object.keys(document.paths).sort()).toEqual([
      "/api/audit",
      "/api/carry",
      "/api/clips/{id}",
      "/api/corrections",
      "/api/devices/{id}",
      "/api/due",
      "/api/enrolments",
      "/api/entries",
      "/api/export",
      "/api/first-password",
      "/api/follow-ups",
      "/api/follow-ups/owner",
      "/api/follow-ups/people",
      "/api/jobs",
      "/api/jobs/{id}",
      "/api/jobs/{id}/acceptance",
      "/api/jobs/{id}/reopening",
      "/api/jobs/{id}/signature",
      "/api/me",
      "/api/password",
      "/api/people",
      "/api/people/{id}",
      "/api/people/{id}/codes",
      "/api/photos/{id}",
      "/api/phrases",
      "/api/questions",
      "/api/questions/{id}",
      "/api/readings",
      "/api/reliability",
      "/api/review",
      "/api/review/{id}",
      "/api/search",
      "/api/sign-in",
      "/api/sign-out",
      "/api/signing",
      "/api/sites",
      "/api/sites/{site}",
      "/api/sites/{site}/calendar",
      "/api/sites/{site}/families",
      "/api/sites/{site}/keeping",
      "/api/sites/{site}/report",
      "/api/sites/{site}/reports/{day}",
      "/api/sites/{site}/stock",
      "/api/sites/{site}/valve-list",
      "/api/sites/{site}/words",
      "/api/valves",
      "/api/valves/{tag}",
      "/api/words",
      "/api/words/trial",
    ]);
    expect(document.components.schemas.Phrase.required).toContain("saidAt");
  });
});
