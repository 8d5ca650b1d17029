import { describe, expect, it } from "vitest";
import { bench, id } from "../app-under-test.ts";

const PATHS: [method: string, path: string][] = [
  ["POST", "/api/phrases"],
  ["POST", "/api/corrections"],
  ["PUT", "/api/sites/north"],
  ["PUT", "/api/sites/north/stock"],
  ["PUT", "/api/sites/north/words"],
  ["PUT", "/api/words"],
  ["PUT", "/api/valves/LCV-213"],
];
const JSON_TYPE = { "content-type": "application/json" };

/** A problem as RFC 9457 has it, whose detail says something to a person. */
async function problemOf(answer: Response, status: number | RegExp): Promise<{ detail: string }> {
  expect(String(answer.status)).toMatch(typeof status === "number" ? String(status) : status);
  expect(answer.headers.get("content-type")).toBe("application/problem+json");
  const problem = await answer.json();
  expect(problem).toMatchObject({ type: "about:blank", status: answer.status });
  expect(problem.detail.length).toBeGreaterThan(15);
  expect(problem.title.length).toBeGreaterThan(5);
  return problem;
}

describe("garbage at every endpoint", () => {
  it.each(PATHS)("%s %s: a body that is no JSON, no UTF-8, no object, or too large", async (method, path) => {
    const { app } = await bench();
    const at = (body: BodyInit, headers: Record<string, string> = JSON_TYPE) =>
      app.request(path, { method, body, headers });
    await problemOf(await at("{"), 400);
    await problemOf(await at("not json at all"), 400);
    await problemOf(await at(new Uint8Array([0x22, 0xff, 0xfe, 0x22])), 400);
    for (const body of ["null", "7", '"text"', "[]", "true", '{"zz": 1}', "{}"]) await problemOf(await at(body), 400);
    await problemOf(await at(`{"__proto__": {"phrases": []}}`), 400);
    await problemOf(await at(`${"[".repeat(100_000)}${"]".repeat(100_000)}`), 400);
    await problemOf(await at("{}", { "content-type": "text/plain" }), 415);
    await problemOf(await at("{}", {}), 415);
    await problemOf(await at("a=b", { "content-type": "application/x-www-form-urlencoded" }), 415);
    await problemOf(await at(`{"x": "${"x".repeat(5_000_000)}"}`), 413);
    await problemOf(await app.request(path, { method, headers: JSON_TYPE }), 400);
  });

  it("wrong types in the places of lists", async () => {
    const { send } = await bench();
    for (const wrong of [{ jobs: 1, phrases: [] }, { jobs: [], phrases: {} }, { phrases: "x" }, { jobs: null }]) {
      await problemOf(await send("POST", "/api/phrases", wrong), 400);
    }
  });

  it("never puts into an answer or the log what was said", async () => {
    const { app, logged } = await bench();
    const answer = await app.request("/api/phrases", {
      method: "POST",
      body: "{secret words of a person",
      headers: JSON_TYPE,
    });
    expect((await problemOf(answer, 400)).detail).not.toContain("secret");
    expect(logged.join("\n")).not.toContain("secret");
  });

  it("unknown ids and names", async () => {
    const { send } = await bench();
    await problemOf(await send("GET", `/api/jobs/${id()}`), 404);
    await problemOf(await send("GET", "/api/jobs/7"), 400);
    await problemOf(await send("GET", "/api/jobs/'%20OR%201=1"), 400);
    await problemOf(await send("GET", "/api/valves/NONE-1"), 404);
    await problemOf(await send("GET", "/report?site=nowhere"), 404);
    const correction = { id: id(), phrase: id(), madeAt: "2026-03-04T10:00:00Z" };
    await problemOf(await send("POST", "/api/corrections", correction), 404);
  });

  it("wrong queries", async () => {
    const { send } = await bench();
    for (const path of [
      "/api/jobs?day=today",
      "/api/jobs?day=2026-02-30",
      "/api/due?days=soon",
      "/api/due?days=-1",
      "/api/due?days=99999",
      `/api/jobs?site=${"x".repeat(500)}`,
      `/api/valves/${"x".repeat(500)}`,
      "/report",
      "/report?site=",
      "/report?site=a&day=2026-13-01",
      "/report?site=a&form=song",
    ]) {
      await problemOf(await send("GET", path), 400);
    }
  });

  it("a path that is served, asked the wrong way, says the right one", async () => {
    const { send } = await bench();
    for (const [method, path, allow] of [
      ["GET", "/api/phrases", "POST"],
      ["DELETE", `/api/jobs/${id()}`, "GET, HEAD"],
      ["POST", "/api/sites/north", "PUT"],
      ["PATCH", "/api/valves/LCV-213", "GET, HEAD, PUT"],
      ["POST", "/healthz", "GET, HEAD"],
      ["PUT", "/report", "GET, HEAD"],
    ] as const) {
      const answer = await send(method, path);
      expect(answer.headers.get("allow")).toBe(allow);
      await problemOf(answer, 405);
    }
  });

  it("nothing there", async () => {
    const { send } = await bench();
    for (const path of [
      "/api",
      "/api/nothing",
      "/api/jobs/",
      "/.env",
      "/../package.json",
      "/assets/../../package.json",
      "/%2e%2e/package.json",
      "/no\u0000pe",
    ]) {
      await problemOf(await send("GET", path), 404);
    }
    await problemOf(await send("POST", "/nowhere"), 404);
  });

  it("wrong set-ups", async () => {
    const { send } = await bench();
    await problemOf(await send("PUT", "/api/sites/north", { name: "North", zone: "Nowhere/Else" }), 400);
    await problemOf(await send("PUT", "/api/sites/north", { name: "", zone: "Etc/UTC" }), 400);
    await problemOf(await send("PUT", "/api/sites/%20", { name: "x", zone: "Etc/UTC" }), 400);
    await problemOf(await send("PUT", "/api/sites/a%00b", { name: "x", zone: "Etc/UTC" }), 400);
    await problemOf(await send("PUT", "/api/valves/LCV-213", { site: "north", size_in: -2 }), 400);
    await problemOf(await send("PUT", "/api/valves/LCV-213", { site: "north", tag: "OTHER-1" }), 400);
    await problemOf(await send("PUT", "/api/valves/LCV-213", { size_in: 2 }), 400);
  });

  it("every answer carries the headers that keep a page in its place", async () => {
    const { send } = await bench();
    for (const path of ["/healthz", "/api/sites", "/nowhere", "/api/jobs/7"]) {
      const { headers } = await send("GET", path);
      const policy = headers.get("content-security-policy") ?? "";
      expect(policy).toContain("frame-ancestors 'none'");
      expect(policy).not.toContain("unsafe-inline");
      expect(headers.get("x-content-type-options")).toBe("nosniff");
      expect(headers.get("referrer-policy")).toBe("no-referrer");
    }
  });
});
