import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, inject, it } from "vitest";
import type { Found, OwedList } from "../../../core/index.ts";
import { migrations } from "../../../server/db/shape.ts";
import { owed } from "../../../server/db/tables.ts";
import { MIGRATIONS, PG_MIGRATIONS } from "../../../server/places.ts";
import { bench, id, job, phrase } from "../app-under-test.ts";
import { ask } from "../at-database.ts";
import { client, enrolled } from "../enrolled.ts";

async function said() {
  const at = await bench();
  const jobs = [
    job({ tag: "LCV-213", site: "north" }),
    job({ tag: "PV-104", site: "south", startedAt: "2026-05-04T10:00:00-07:00" }),
  ] as const;
  const phrases = [
    phrase(jobs[0], "seat worn one side"),
    phrase(jobs[0], "100% sure the Cage is cracked", 1),
    phrase(jobs[0], "note the plate is hard to read", 2),
    { ...phrase(jobs[1], "cage looks good"), saidAt: "2026-05-04T17:00:00Z" },
  ];
  await at.ask("POST", "/api/phrases", { jobs, phrases });
  const found = async (query: string): Promise<string[]> =>
    (await at.ask("GET", `/api/search?${query}`)).found.map((one: Found) => one.text);
  return { ...at, jobs, phrases, found };
}

describe("looking for what was said", () => {
  it("goes by tag, words, part, condition, site and day, and by all of them at once; the latest first", async () => {
    const { found, phrases } = await said();
    const [seat, cage, note, good] = phrases.map((one) => one.text);
    expect(await found("")).toEqual([good, note, cage, seat]);
    expect(await found("tag=lcv-213")).toEqual([note, cage, seat]);
    expect(await found("words=cage")).toEqual([good, cage]);
    expect(await found("words=CRACKED+cage")).toEqual([cage]);
    expect(await found("words=100%25")).toEqual([cage]);
    expect(await found("words=_")).toEqual([]);
    expect(await found("condition=worn")).toEqual([seat]);
    expect(await found("part=cage&condition=cracked")).toEqual([cage]);
    expect(await found("part=cage&condition=worn")).toEqual([]);
    expect(await found("site=south")).toEqual([good]);
    expect(await found("from=2026-05-01")).toEqual([good]);
    expect(await found("to=2026-03-31&words=cage")).toEqual([cage]);
  });

  it("finds a phrase by the words that were read in its place too, and shows those said", async () => {
    const { ask, found, phrases } = await said();
    await ask("POST", `/api/review/${phrases[0]?.id}`, { id: id(), what: "amended", words: "plug is bent", seen: 0 });
    expect(await found("words=plug")).toEqual(["seat worn one side"]);
    expect(await found("condition=bent")).toEqual(["seat worn one side"]);
    expect(await found("condition=worn")).toEqual([]);
  });

  it("goes on page by page, each phrase once", async () => {
    const { ask, phrases } = await said();
    const all: string[] = [];
    let after: string | undefined;
    do {
      const page = await ask("GET", `/api/search?limit=1${after ? `&after=${encodeURIComponent(after)}` : ""}`);
      all.push(...page.found.map((one: Found) => one.phrase));
      after = page.next;
    } while (after);
    expect(all.sort()).toEqual(phrases.map((one) => one.id).sort());
  });

  it("refuses a part or a day that is none", async () => {
    const { send } = await said();
    expect((await send("GET", "/api/search?part=frobnitz")).status).toBe(400);
    expect((await send("GET", "/api/search?from=2026-02-30")).status).toBe(400);
  });
});

describe("what is left open", () => {
  it("stands with its valve, what cannot wait first, and with whoever logged it", async () => {
    const { app, store } = await bench();
    const tech = await enrolled(store, "C. Tech", ["technician"]);
    const { call } = client(app, { token: tech.token });
    const jobs = [job({ tag: "LCV-213", site: "north" }), job({ tag: "LCV-214", site: "north" })] as const;
    await call("POST", "/api/phrases", {
      jobs,
      phrases: [phrase(jobs[0], "seat worn one side, flipped it"), phrase(jobs[1], "hold on I smell gas")],
    });
    const owed = (await (await call("GET", "/api/follow-ups?site=north")).json()) as OwedList;
    expect(owed.owed[0]).toMatchObject({ tag: "LCV-214", do: "stop", loggedBy: ["C. Tech"], job: jobs[1].id });
    expect(owed.owed.at(-1)).toMatchObject({ tag: "LCV-213", when: "next_inspection", loggedBy: ["C. Tech"] });
    expect(owed.count).toBe(owed.owed.length);
    const few = (await (await call("GET", "/api/follow-ups?limit=1")).json()) as OwedList;
    expect(few).toMatchObject({ count: owed.count, owed: [{ do: "stop" }] });
  });

  /** Valves of two sites with all kinds of follow-ups, and one of which nothing is owed. */
  async function manyOwed() {
    const at = await bench();
    const said = [
      ["LCV-1", "north", "2026-03-01", "hold on I smell gas"],
      ["LCV-2", "south", "2026-03-02", "seat worn one side, flipped it"],
      ["LCV-3", "north", "2026-03-03", "diaphragm is torn"],
      ["LCV-4", "south", "2026-03-04", "packing is leaking, cage cracked, hold on I smell gas"],
      ["LCV-5", "north", "2026-03-05", "seat looks good"],
      ["LCV-6", undefined, "2026-03-06", "seat worn one side, flipped it"],
    ] as const;
    for (const [tag, site, day, text] of said) {
      const one = job({ tag, startedAt: `${day}T10:00:00Z`, ...(site ? { site } : {}) });
      await at.ask("POST", "/api/phrases", { jobs: [one], phrases: [{ ...phrase(one, text), saidAt: one.startedAt }] });
    }
    const owed = async (query = ""): Promise<OwedList> => at.ask("GET", `/api/follow-ups?${query}`);
    return { ...at, owed };
  }

  it("is one order over all valves, of which a page is the beginning", async () => {
    const { owed } = await manyOwed();
    const all = await owed();
    const first = ({ do: what, when }: OwedList["owed"][number]) =>
      what === "stop" ? 0 : when === "now" ? 1 : when === "next_inspection" ? 3 : 2;
    const places = all.owed.map((one) => `${first(one)} ${one.since}`);
    expect(places).toEqual([...places].sort());
    expect(new Set(all.owed.map((one) => one.tag))).toEqual(new Set(["LCV-1", "LCV-2", "LCV-3", "LCV-4", "LCV-6"]));
    expect(all.count).toBe(all.owed.length);
    for (const most of [1, 3, 5]) {
      expect(await owed(`limit=${most}`)).toEqual({ owed: all.owed.slice(0, most), count: all.count });
      expect(await owed(`limit=${most}&owner=nobody`)).toEqual({ owed: all.owed.slice(0, most), count: all.count });
    }
    const north = all.owed.filter((one) => one.site === "north");
    expect(await owed("site=north")).toEqual({ owed: north, count: north.length });
  });

  it("goes as soon as it is done", async () => {
    const { ask, owed } = await manyOwed();
    const ofValve = async () =>
      (await owed("site=north")).owed.filter((one) => one.tag === "LCV-3").map((one) => one.what);
    expect(await ofValve()).toContain("Replace the diaphragm");
    const later = job({ tag: "LCV-3", site: "north", startedAt: "2026-04-01T10:00:00Z" });
    const done = { ...phrase(later, "new diaphragm installed"), saidAt: later.startedAt };
    await ask("POST", "/api/phrases", { jobs: [later], phrases: [done] });
    expect(await ofValve()).not.toContain("Replace the diaphragm");
  });

  it("was put in the same order when it was first kept in one", async () => {
    const { url, store, owed: look } = await manyOwed();
    await look();
    const rows = () => store.db.select().from(owed).orderBy(owed.site, owed.tag, owed.n);
    const kept = await rows();
    expect(kept.length).toBeGreaterThan(6);
    await store.write((tx) => tx.delete(owed));
    const folder = inject("postgres") ? PG_MIGRATIONS : MIGRATIONS;
    const { tag = "" } = migrations(folder).find((one) => one.tag.endsWith("_owed")) ?? {};
    const [last = ""] = (await readFile(join(folder, `${tag}.sql`), "utf8"))
      .split("--> statement-breakpoint")
      .slice(-1);
    await ask(url, last);
    expect(await rows()).toEqual(kept);
  });
});
