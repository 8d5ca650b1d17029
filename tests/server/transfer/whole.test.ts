import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { is } from "drizzle-orm";
import { getTableConfig, SQLiteTable } from "drizzle-orm/sqlite-core";
import { describe, expect, it } from "vitest";
import { verifyTrail } from "../../../server/audit/read.ts";
import { AT_COMMAND } from "../../../server/commands/at-command.ts";
import * as people from "../../../server/db/people-tables.ts";
import * as review from "../../../server/db/review-tables.ts";
import * as tables from "../../../server/db/tables.ts";
import { exportAll } from "../../../server/transfer/export.ts";
import { importAll } from "../../../server/transfer/import.ts";
import { tablesThatGo } from "../../../server/transfer/what-goes.ts";
import { bench, folder, id, job, phrase } from "../app-under-test.ts";
import { client, enrolled } from "../enrolled.ts";
import { run } from "../running.ts";

const PLATE = new URL("../keepsakes/pictures/plate.jpg", import.meta.url);
type Bench = Awaited<ReturnType<typeof bench>>;

/** A log with something of everything in it. */
async function lived() {
  const at = await bench();
  const lead = await enrolled(at.store, "A. Lead", ["lead"]);
  const { call } = client(at.app, { token: lead.token });
  const ok = async (method: string, path: string, body?: unknown) => {
    const answer = await call(method, path, body);
    expect(answer.status, `${method} ${path}`).toBe(200);
    return answer.json();
  };
  await ok("PUT", "/api/sites/north", { name: "North 📍 \u202eabc", zone: "America/Denver" });
  await ok("PUT", "/api/valves/LCV-213", { site: "north", family: "balanced_dump", size_in: 2, service: "severe" });
  await ok("PUT", "/api/sites/north/stock", { stock: { seat: 2 } });
  await ok("PUT", "/api/sites/north/report", {
    recipients: ["boss@example.com"],
    hour: "18:00",
    weekends: true,
    quiet: false,
  });
  await ok("PUT", "/api/sites/north/words", {
    words: [{ id: id(), say: "donut", as: { part: "cage_o_ring" }, at: "2026-03-01T10:00:00Z" }],
  });
  const jobs = [
    job({ tag: "LCV-213", site: "north" }),
    job({ tag: "PV-104", site: "north", startedAt: "2026-03-05T10:00:00-07:00" }),
  ] as const;
  const phrases = [
    phrase(jobs[0], "seat worn one side, flipped it"),
    phrase(jobs[0], 'the donut is cut; it\'s "bad"\r\n=1+1', 1),
    phrase(jobs[0], "bonnet bolts torqued to thirty five foot pounds", 2),
    phrase(jobs[1], "leaking by at sixty psi"),
    phrase(jobs[1], "the thingamajig rattles", 1),
  ];
  await ok("POST", "/api/phrases", { jobs, phrases });
  const { items } = (await ok("GET", "/api/review")) as { items: { phrase: string; said: string }[] };
  for (const one of items.filter((item) => !/thingamajig/.test(item.said)))
    await ok("POST", `/api/review/${one.phrase}`, { id: id(), what: "accepted", seen: 0 });
  await ok("POST", `/api/jobs/${jobs[0].id}/signature`, { id: id(), phrases: 3 });
  const photo = id();
  const bytes = await readFile(PLATE);
  const sent = await at.app.request(`/api/photos/${photo}?job=${jobs[0].id}&at=2026-03-04T17:01:00Z`, {
    method: "PUT",
    body: bytes,
    headers: { authorization: `Bearer ${lead.token}`, "content-type": "image/jpeg", origin: "http://localhost" },
  });
  expect(sent.status).toBe(200);
  return { ...at, lead, jobs, photo };
}

/** Everything a person can ask, as text. */
async function answers(at: Bench, token: string, jobs: readonly { id: string }[], photo: string): Promise<string[]> {
  const { call } = client(at.app, { token });
  const paths = [
    "/api/sites",
    "/api/valves",
    "/api/valves/LCV-213?site=north",
    "/api/jobs",
    ...jobs.map((one) => `/api/jobs/${one.id}`),
    "/api/due?days=3650",
    "/api/carry?site=north",
    "/api/reliability",
    "/api/review",
    "/api/review?state=settled",
    "/api/signing",
    "/api/signing?state=signed",
    "/api/questions",
    "/api/sites/north/words",
    "/api/sites/north/stock",
    "/api/sites/north/report",
    "/api/people",
    "/report?site=north&day=2026-03-04&form=text",
    "/api/entries?site=north&from=2026-03-01&to=2026-03-31&form=jsonl",
    `/api/photos/${photo}`,
  ];
  const told: string[] = [];
  for (const path of paths) {
    const answer = await call("GET", path);
    expect(answer.status, path).toBe(200);
    told.push(`${path}\n${Buffer.from(await answer.arrayBuffer()).toString("latin1")}`);
  }
  return told;
}

async function exported(at: Bench): Promise<string> {
  const path = join(await folder(), "log.jsonl");
  const lines: string[] = [];
  await exportAll(at.store, at.kept, async (line) => void lines.push(line));
  await writeFile(path, `${lines.join("\n")}\n`);
  return path;
}

describe("an export read into an empty database", () => {
  it("gives the same answers to the same people and devices, down to the bytes", { timeout: 120_000 }, async () => {
    const before = await lived();
    const path = await exported(before);
    const after = await bench();
    await importAll(after.store, after.kept, path, AT_COMMAND);
    expect(await answers(after, before.lead.token, before.jobs, before.photo)).toEqual(
      await answers(before, before.lead.token, before.jobs, before.photo),
    );
    expect(await verifyTrail(after.store)).toMatchObject({ ok: true });
    // and goes on from there
    const { call } = client(after.app, { token: before.lead.token });
    const late = await call("POST", "/api/phrases", { phrases: [phrase(before.jobs[1], "strokes full", 9)] });
    expect(((await late.json()) as { results: { status: string }[] }).results[0]?.status).toBe("stored");
  });

  it("leaves no secret of a sign-in behind, and forgets no table", async () => {
    const names = Object.values({ ...tables, ...people, ...review })
      .filter((one) => is(one, SQLiteTable))
      .map((one) => getTableConfig(one).name);
    const going = tablesThatGo().map((one) => one.name);
    expect(names.filter((name) => !going.includes(name)).sort()).toEqual([
      "days_to_list",
      "due",
      "one_time_codes",
      "owed",
      "review_items",
      "sessions",
      "sign_in_tries",
      "valve_states",
      "word_days",
      "words_said",
    ]);
    const before = await lived();
    expect(await readFile(await exported(before), "utf8")).not.toContain(before.lead.token);
  });
});

describe("a file that is no whole export", () => {
  it.each<[string, (lines: string[]) => string[], RegExp]>([
    ["was cut off", (lines) => lines.slice(0, -3), /cut off/],
    ["lost a row", (lines) => lines.filter((_, n) => n !== 3), /holds/],
    [
      "has a line of something else",
      (lines) => [...lines.slice(0, 4), '{"a":1}', ...lines.slice(4)],
      /line 5: .*no line/,
    ],
    [
      "has half a line",
      (lines) => [...lines.slice(0, 4), lines[4]?.slice(0, 20) ?? "", ...lines.slice(5)],
      /line 5: .*not JSON/,
    ],
    ["has no head", (lines) => lines.slice(1), /line 1/],
    [
      "has another table",
      (lines) => lines.map((line) => line.replace('"table":"sites"', '"table":"sitez"')),
      /no table sitez/,
    ],
    ["has another column", (lines) => lines.map((line) => line.replace('"zone":', '"zonk":')), /no column zonk/],
    [
      "is of a newer version",
      (lines) => [(lines[0] ?? "").replace(/"schema":"[^"]+"/, '"schema":"9999_new"'), ...lines.slice(1)],
      /newer version/,
    ],
    [
      "has other bytes",
      (lines) => lines.map((line) => line.replace(/"base64":"..../, '"base64":"AAAA')),
      /bytes are not those/,
    ],
    ["is empty", () => [], /empty/],
  ])("%s: nothing of it is kept", async (_, spoil, why) => {
    const path = await exported(await lived());
    const lines = (await readFile(path, "utf8")).trimEnd().split("\n");
    const spoilt = spoil(lines);
    await writeFile(path, spoilt.length > 0 ? `${spoilt.join("\n")}\n` : "");
    const after = await bench();
    await expect(importAll(after.store, after.kept, path, AT_COMMAND)).rejects.toThrow(why);
    for (const { table } of tablesThatGo()) expect(await after.store.db.select().from(table)).toEqual([]);
  });

  it("nor is a database taken that has something in it", async () => {
    const before = await lived();
    const path = await exported(before);
    await expect(importAll(before.store, before.kept, path, AT_COMMAND)).rejects.toThrow(/not empty/);
  });
});

describe("the commands", () => {
  it("write a file that only its owner reads, and read it back", { timeout: 60_000 }, async () => {
    const before = await lived();
    const out = join(await folder(), "all.jsonl");
    const env = { DATABASE_URL: before.url, DATA_DIR: before.dir };
    const wrote = await run("server/commands/export.ts", [out], env);
    expect(wrote.code).toBe(0);
    expect(wrote.err).toMatch(/^\d+ rows and 1 files written/);
    expect((await run("server/commands/export.ts", [out], env)).err).toMatch(/does not exist yet/);
    const dir = await folder();
    const read = await run("server/commands/import.ts", [out], { DATA_DIR: dir, DATABASE_URL: "" });
    expect(read.out).toMatch(/^\d+ rows and 1 files read/);
    expect((await run("server/commands/import.ts", [out], { DATA_DIR: dir, DATABASE_URL: "" })).err).toMatch(
      /not empty/,
    );
  });
});
