import { describe, expect, it } from "vitest";
import { bench, id, job, phrase } from "../app-under-test.ts";

describe("GET /api/jobs", () => {
  it("goes by the site's day, not the server's and not the device's", async () => {
    const { ask } = await bench();
    await ask("PUT", "/api/sites/north", { name: "North Pad", zone: "America/Denver" });
    await ask("PUT", "/api/sites/far", { name: "Far Pad", zone: "Pacific/Auckland" });
    // half past ten in the evening in Denver is the next day in UTC and in Auckland
    const startedAt = "2026-03-05T05:30:00Z";
    const [north, far] = [job({ site: "north", startedAt }), job({ site: "far", startedAt })];
    await ask("POST", "/api/phrases", { jobs: [north, far] });
    const on = async (site: string, day: string) =>
      (await ask("GET", `/api/jobs?site=${site}&day=${day}`)).jobs.map((one: { id: string }) => one.id);
    expect(await on("north", "2026-03-04")).toEqual([north.id]);
    expect(await on("north", "2026-03-05")).toEqual([]);
    expect(await on("far", "2026-03-05")).toEqual([far.id]);
    expect(await on("", "2026-03-05")).toEqual([far.id]);
  });

  it("without a site's zone goes by the offset said", async () => {
    const { ask } = await bench();
    const one = job({ site: "unset", startedAt: "2026-03-04T23:30:00-07:00" });
    await ask("POST", "/api/phrases", { jobs: [one] });
    expect((await ask("GET", "/api/jobs?site=unset&day=2026-03-04")).jobs).toHaveLength(1);
    expect((await ask("GET", `/api/jobs/${one.id}`)).day).toBe("2026-03-04");
  });

  it("lists oldest first, in brief", async () => {
    const { ask } = await bench();
    const early = job({ site: "north", tag: "A-1", startedAt: "2026-03-04T08:00:00-07:00" });
    const late = job({ site: "north", tag: "B-2", startedAt: "2026-03-04T09:00:00-07:00" });
    await ask("POST", "/api/phrases", { jobs: [late, early], phrases: [phrase(late, "smell gas")] });
    const { jobs } = await ask("GET", "/api/jobs?site=north&day=2026-03-04");
    expect(jobs.map((one: { tag: string }) => one.tag)).toEqual(["A-1", "B-2"]);
    expect(jobs[1]).toMatchObject({ phrases: 1, hazards: ["gas"], site: "north", finished: false });
  });
});

describe("GET /api/jobs/{id}", () => {
  it("gives the valve, the phrases with entries and unread, what stands and what follows", async () => {
    const { ask } = await bench();
    await ask("PUT", "/api/valves/lcv-213", { site: "north", family: "balanced_dump", size_in: 2 });
    const one = job({ site: "north", tag: "lcv-213" });
    const said = [phrase(one, "seat worn on one side", 0), phrase(one, "bonnet bolts torqued to 40", 1)];
    await ask("POST", "/api/phrases", { jobs: [one], phrases: said });
    const kept = await ask("GET", `/api/jobs/${one.id}`);
    expect(kept).toMatchObject({ id: one.id, site: "north", tag: "LCV-213", day: "2026-03-04" });
    expect(kept.valve).toMatchObject({ tag: "LCV-213", family: "balanced_dump", size_in: 2 });
    expect(kept.phrases[0]).toMatchObject({ text: "seat worn on one side", how: "typed", unread: [] });
    expect(kept.phrases[0].entries[0]).toMatchObject({ type: "finding", condition: "worn", part: "seat" });
    expect(kept.entries.map((e: { type: string }) => e.type)).toEqual(["finding", "reading"]);
    for (const key of ["checks", "followUps", "due", "missing", "parts"]) expect(kept.consequences).toHaveProperty(key);
  });

  it("belongs to the valve named by voice, where it came without one", async () => {
    const { ask } = await bench();
    const one = job({ site: "north" });
    const said = [phrase(one, "seat worn on one side", 0), phrase(one, "this is L C V two one three", 1)];
    await ask("POST", "/api/phrases", { jobs: [one], phrases: said });
    expect((await ask("GET", `/api/jobs/${one.id}`)).tag).toBe("LCV-213");
    expect((await ask("GET", "/api/valves/LCV-213")).history).toHaveLength(1);
  });

  it("gives what follows the naming of another valve to that valve's history", async () => {
    const { ask } = await bench();
    const one = job({ site: "north", tag: "LCV-213" });
    const said = ["seat worn on one side", "now on P V one oh four", "cage eroded bad"].map((text, n) =>
      phrase(one, text, n),
    );
    await ask("POST", "/api/phrases", { jobs: [one], phrases: said });
    const kept = await ask("GET", `/api/jobs/${one.id}`);
    expect(kept.tag).toBe("LCV-213");
    expect(kept.valves.map((share: { tag: string }) => share.tag)).toEqual(["LCV-213", "PV-104"]);
    const own = (await ask("GET", "/api/valves/LCV-213")).history[0].entries;
    const other = (await ask("GET", "/api/valves/PV-104")).history[0].entries;
    expect(own.map((e: { part?: string }) => e.part)).toEqual(["seat"]);
    expect(other.map((e: { part?: string }) => e.part).filter(Boolean)).toEqual(["cage"]);
  });

  it("reckons with earlier jobs on the valve only, also when they arrive later", async () => {
    const { ask } = await bench();
    const visits: unknown[] = [];
    const earlier = job({ site: "north", tag: "LCV-213", startedAt: "2026-01-04T10:00:00-07:00" });
    const later = job({ site: "north", tag: "LCV-213", startedAt: "2026-03-04T10:00:00-07:00" });
    await ask("POST", "/api/phrases", { jobs: [later], phrases: [phrase(later, "seat worn")] });
    const alone = await ask("GET", `/api/jobs/${later.id}`);
    await ask("POST", "/api/phrases", {
      jobs: [earlier],
      phrases: [phrase(earlier, "seat worn on one side"), phrase(earlier, "flipped it", 1)],
    });
    const together = await ask("GET", `/api/jobs/${later.id}`);
    visits.push(...(await ask("GET", "/api/valves/LCV-213")).history);
    expect(visits).toHaveLength(2);
    const rules = (kept: { consequences: { followUps: { rule: string }[] } }) =>
      kept.consequences.followUps.map((one) => one.rule);
    expect(rules(alone)).toContain("seat_which_side");
    expect(rules(together)).toContain("seat_spent");
  });
});

describe("POST /api/corrections", () => {
  it("reads other words in a phrase's place, strikes it, and leaves the phrase as heard", async () => {
    const { ask, send } = await bench();
    const one = job({ tag: "LCV-213" });
    const said = phrase(one, "plug worn");
    await ask("POST", "/api/phrases", { jobs: [one], phrases: [said, phrase(one, "flipped it", 1)] });
    const amend = { id: id(), phrase: said.id, text: "seat worn", why: "misheard", madeAt: "2026-03-04T18:00:00Z" };
    expect(await ask("POST", "/api/corrections", amend)).toEqual({ id: amend.id, status: "stored" });
    expect(await ask("POST", "/api/corrections", amend)).toEqual({ id: amend.id, status: "known" });
    expect((await send("POST", "/api/corrections", { ...amend, text: "other" })).status).toBe(409);
    const kept = await ask("GET", `/api/jobs/${one.id}`);
    expect(kept.phrases[0]).toMatchObject({
      text: "plug worn",
      corrections: [{ id: amend.id, text: "seat worn", why: "misheard" }],
    });
    expect(kept.entries.map((e: { part?: string }) => e.part)).toEqual(["seat", "seat"]);
    await ask("POST", "/api/corrections", { id: id(), phrase: said.id, madeAt: "2026-03-04T18:00:01Z" });
    // a phrase that comes after must not bring the struck one back
    await ask("POST", "/api/phrases", { phrases: [phrase(one, "cage eroded", 2)] });
    const struck = await ask("GET", `/api/jobs/${one.id}`);
    expect(struck.entries.some((e: { condition?: string }) => e.condition === "worn")).toBe(false);
    expect(struck.phrases).toHaveLength(3);
  });
});
