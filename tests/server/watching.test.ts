import { describe, expect, it } from "vitest";
import { makeLog } from "../../server/log.ts";
import { makeMetrics } from "../../server/metrics.ts";
import { bench, job, phrase } from "./app-under-test.ts";
import { readOpenMetrics } from "./open-metrics.ts";

describe("/metrics", () => {
  it("is in the open text format, and counts what was done", async () => {
    const { app, ask, send } = await bench();
    const before = readOpenMetrics(await (await app.request("/metrics")).text()).samples;
    expect(before.get('handsfull_phrases_total{became="stored"}')).toBe(0);
    const one = job({ tag: "LCV-213" });
    const said = phrase(one, "seat worn");
    await ask("POST", "/api/phrases", { jobs: [one], phrases: [said, phrase(one, "strokes full", 1)] });
    await ask("POST", "/api/phrases", { phrases: [said] });
    await send("GET", "/api/jobs/7");
    const answer = await app.request("/metrics");
    expect(answer.headers.get("content-type")).toBe("application/openmetrics-text; version=1.0.0; charset=utf-8");
    const { problems, samples } = readOpenMetrics(await answer.text());
    expect(problems).toEqual([]);
    const POST = 'method="POST",route="/api/phrases",status="200"';
    expect(samples.get(`handsfull_requests_total{${POST}}`)).toBe(2);
    expect(samples.get('handsfull_requests_total{method="GET",route="/api/jobs/:id",status="400"}')).toBe(1);
    expect(samples.get('handsfull_phrases_total{became="stored"}')).toBe(2);
    expect(samples.get('handsfull_phrases_total{became="known"}')).toBe(1);
    expect(samples.get('handsfull_request_seconds_count{route="/api/phrases"}')).toBe(2);
    expect(samples.get("handsfull_outbox_waiting")).toBe(0);
    expect(samples.get("handsfull_store_bytes")).toBeGreaterThan(10_000);
  });

  it("keeps the format whatever a label holds, and grows no label by what callers make up", async () => {
    const metrics = makeMetrics();
    metrics.count("handsfull_keepsakes", { kind: 'a"b\\c\nd', became: "" });
    expect(readOpenMetrics(metrics.text({})).problems).toEqual([]);
    const { app } = await bench();
    for (let n = 0; n < 30; n++) await app.request(`/made-up-${n}/x`, { method: n % 2 ? "GET" : "BREW" });
    const { samples } = readOpenMetrics(await (await app.request("/metrics")).text());
    expect([...samples.keys()].filter((key) => key.startsWith("handsfull_requests_total")).length).toBeLessThan(4);
  });

  it("its reader finds what is against the format", () => {
    for (const [text, why] of [
      ["# TYPE a counter\na_total 1\n", /EOF/],
      ["# TYPE a counter\na 1\n# EOF\n", /stands among/],
      ["# TYPE a gauge\na{b=c} 1\n# EOF\n", /no sample/],
      ["# TYPE a gauge\na 1\na 1\n# EOF\n", /twice/],
      ['# TYPE a histogram\na_bucket{r="x",le="+Inf"} 1\na_count{r="x"} 2\na_sum{r="x"} 1\n# EOF\n', /last bucket/],
    ] as const) {
      expect(readOpenMetrics(text).problems.join()).toMatch(why);
    }
  });
});

describe("the log", () => {
  it("is lines of JSON with the id that the answer carries, and no word that was said", async () => {
    const { app, logged, send } = await bench();
    const one = job({ tag: "TAG-OF-SOMEBODY" });
    const sent = await send("POST", "/api/phrases", { jobs: [one], phrases: [phrase(one, "unspeakable words")] });
    await app.request("/api/valves/TAG-OF-SOMEBODY");
    await app.request("/api/search?words=unspeakable");
    await app.request("/calendar/unspeakable.ics");
    const own = await app.request("/api/sites", { headers: { "x-request-id": "from-the-proxy-7" } });
    expect(own.headers.get("x-request-id")).toBe("from-the-proxy-7");
    const lines = logged.map((line) => {
      expect(line.endsWith("\n")).toBe(true);
      return JSON.parse(line) as Record<string, unknown>;
    });
    expect(lines.filter((line) => line.what === "request").length).toBe(5);
    const id = sent.headers.get("x-request-id");
    expect(lines.find((line) => line.request === id)).toMatchObject({ route: "/api/phrases", status: 200, by: "open" });
    expect(lines.some((line) => line.request === "from-the-proxy-7")).toBe(true);
    expect(logged.join("")).not.toMatch(/unspeakable|TAG-OF/);
  });

  it("takes no id that could end a line or fill the disk", async () => {
    const { app } = await bench();
    for (const bad of ['"} {"level":"error"', "x".repeat(200)]) {
      const answer = await app.request("/healthz", { headers: { "x-request-id": bad } });
      expect(answer.headers.get("x-request-id")).toMatch(/^[0-9a-f-]{36}$/);
    }
  });

  it("says as much as was asked for and no more", () => {
    const lines: string[] = [];
    const log = makeLog("warn", (line) => lines.push(line));
    log.debug("a");
    log.info("b");
    log.warn("c");
    log.error("d");
    expect(lines.map((line) => JSON.parse(line).what)).toEqual(["c", "d"]);
  });
});
