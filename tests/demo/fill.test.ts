import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { DueLine, JobSummary, Site, ValveView } from "../../core/index.ts";
import { fill } from "../../demo/fill.ts";
import { tellStory } from "../../demo/story.ts";
import { readSettings } from "../../server/env.ts";
import { type Served, serve } from "../../server/serve.ts";

const { jobs, busy } = tellStory(new Date().toISOString().slice(0, 10));

describe("the demo's story told to a server by its own door", () => {
  let folder: string;
  let served: Served;
  const get = async <T>(path: string) => (await (await fetch(new URL(path, served.address))).json()) as T;

  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), "handsfull-demo-"));
    const settings = readSettings({ PORT: "0", DATA_DIR: folder, LOG_LEVEL: "error" }, folder);
    if (!settings.ok) throw new Error(settings.problem);
    served = await serve(settings.value);
    await fill(served.address, jobs);
  });
  afterAll(async () => {
    await served?.stop();
    await rm(folder, { recursive: true, force: true });
  });

  it("shows its sites as invented", async () => {
    const { sites } = await get<{ sites: Site[] }>("api/sites");
    expect(sites.map((one) => one.name)).toEqual(expect.arrayContaining([expect.stringContaining("(invented)")]));
    expect(sites).toHaveLength(3);
  });

  it("has a day with a hazard and a failed test, each job on its site's own day", async () => {
    const { jobs: day } = await get<{ jobs: JobSummary[] }>(`api/jobs?site=${busy.site.site}&day=${busy.day}`);
    expect(day).toHaveLength(6);
    expect(day.flatMap((one) => one.hazards)).toEqual(["gas"]);
    expect(day.flatMap((one) => one.failedTests)).toEqual(["seat_leak"]);
  });

  it("has a seat in severe service whose wear shows a pattern, and open work", async () => {
    const view = await get<ValveView>("api/valves/LCV-213?site=juniper-draw");
    expect(view.history.length).toBeGreaterThan(12);
    expect(view.due.find((one) => one.task === "seat_inspection")?.basis).toBe("wear_pattern");
    expect(view.open.map((one) => one.do)).toContain("replace");
  });

  it("has valves overdue and valves that are not", async () => {
    const { due } = await get<{ due: DueLine[] }>("api/due?days=365");
    expect(due.filter((one) => one.overdue > 0).length).toBeGreaterThan(4);
    expect(due.filter((one) => one.overdue <= 0).length).toBeGreaterThan(10);
  });
});
