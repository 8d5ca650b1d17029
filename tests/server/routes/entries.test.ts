import { parse } from "csv-parse/sync";
import { describe, expect, it } from "vitest";
import { bench, job, phrase } from "../app-under-test.ts";

async function site() {
  const set = await bench();
  await set.ask("PUT", "/api/sites/north", { name: "North Pad", zone: "America/Denver" });
  const one = job({ site: "north", tag: "LCV-213" });
  // half past eleven in the evening in Denver, the next day in UTC
  const late = job({ site: "north", tag: "LCV-214", startedAt: "2026-03-06T06:30:00Z" });
  await set.ask("POST", "/api/phrases", {
    jobs: [one, late],
    phrases: [phrase(one, "seat worn one side"), { ...phrase(late, "plug cut"), saidAt: "2026-03-06T06:31:00Z" }],
  });
  return { ...set, one };
}

describe("the entries of a site", () => {
  it("come as JSON Lines with the phrase each was read from, by the site's own days", async () => {
    const { app, one } = await site();
    const lines = async (query: string) => {
      const answer = await app.request(`/api/entries?site=north&form=jsonl&${query}`);
      expect(answer.headers.get("content-type")).toContain("application/x-ndjson");
      return (await answer.text())
        .split("\n")
        .filter(Boolean)
        .map((line) => JSON.parse(line));
    };
    expect(await lines("from=2026-03-04&to=2026-03-04")).toMatchObject([
      {
        site: "north",
        day: "2026-03-04",
        tag: "LCV-213",
        job: one.id,
        said: "seat worn one side",
        entry: { type: "finding", part: "seat" },
      },
    ]);
    expect((await lines("from=2026-03-05&to=2026-03-05")).map((line) => line.tag)).toEqual(["LCV-214"]);
    expect(await lines("from=2026-03-06&to=2026-03-06")).toEqual([]);
  });

  it("come as CSV, and what cannot be asked is answered with what to write", async () => {
    const { app } = await site();
    const answer = await app.request("/api/entries?site=north&from=2026-03-01&to=2026-03-31");
    expect(answer.headers.get("content-disposition")).toBe(
      'attachment; filename="entries-2026-03-01-to-2026-03-31.csv"',
    );
    const rows = parse(Buffer.from(await answer.arrayBuffer()), { bom: true, columns: true }) as { valve: string }[];
    expect(rows.map((row) => row.valve)).toEqual(["LCV-213", "LCV-214"]);
    for (const [query, words] of [
      ["", /site/],
      ["site=north&from=yesterday", /from/],
      ["site=north&from=2026-03-02&to=2026-03-01", /turn them round/],
      ["site=north&from=2020-01-01&to=2026-03-01", /at most 400 days/],
    ] as const) {
      const refused = await app.request(`/api/entries?${query}`);
      expect(refused.status).toBe(400);
      expect(((await refused.json()) as { detail: string }).detail).toMatch(words);
    }
  });
});

describe("GET /report", () => {
  it("is to be had as PDF and as the mail it goes in", async () => {
    const { app } = await site();
    const get = async (form: string) => {
      const answer = await app.request(`/report?site=north&day=2026-03-04&form=${form}`);
      return [
        answer.headers.get("content-type"),
        Buffer.from(await answer.arrayBuffer())
          .subarray(0, 5)
          .toString(),
      ];
    };
    expect(await get("pdf")).toEqual(["application/pdf", "%PDF-"]);
    expect(await get("mail")).toEqual(["message/rfc822", "Auto-"]);
  });
});
