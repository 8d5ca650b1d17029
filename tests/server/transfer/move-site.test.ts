import { eq } from "drizzle-orm";
import { describe, expect, it, onTestFinished } from "vitest";
import { verifyTrail } from "../../../server/audit/read.ts";
import { AT_COMMAND } from "../../../server/commands/at-command.ts";
import { openStore, type Store } from "../../../server/db/open.ts";
import { people } from "../../../server/db/people-tables.ts";
import { reportSettings, reportVersions } from "../../../server/db/report-tables.ts";
import { jobs, movedSites, phrases, sites } from "../../../server/db/tables.ts";
import { moveSite } from "../../../server/transfer/move-site.ts";
import { told } from "../../../server/transfer/site-rows.ts";
import { bench, folder, id, job, newDatabase, phrase } from "../app-under-test.ts";
import { client, enrolled } from "../enrolled.ts";
import { EVERY_OPERATION } from "../every-operation.ts";
import { run, startBuilt } from "../running.ts";
import { twoSites } from "../two-sites.ts";

const AT = "https://north.example";
type Bench = Awaited<ReturnType<typeof bench>>;
type TwoSites = Awaited<ReturnType<typeof twoSites>>;

const move = (from: Pick<Bench, "store" | "kept">, to: Pick<Bench, "store" | "kept">, site = "north") =>
  moveSite({ site, from, to, address: AT, who: AT_COMMAND });
const mailWent = (store: Store) => store.write((tx) => tx.update(reportVersions).set({ state: "written" }));

describe("a site moved to another log", () => {
  it("answers there as it did here, and nothing of another site comes along", async () => {
    const from = await twoSites();
    const to = await bench();
    await mailWent(from.store);
    const held = await told(from.store.db, "north");
    const south = await told(from.store.db, "south");
    const { things } = from.north;
    const paths = [
      `/api/jobs/${things.job}`,
      `/api/jobs/${things.signed}`,
      `/api/valves/${things.tag}?site=north`,
      "/api/due?site=north&days=3650",
      `/api/clips/${things.clip}`,
      `/api/photos/${things.photo}`,
      "/api/sites/north/report",
      "/api/sites/north/stock",
      "/api/sites/north/words",
      "/api/sites/north/calendar",
    ];
    const answers = async (boss: typeof from.boss) => {
      const all: string[] = [];
      for (const path of paths) {
        const answer = await boss.call("GET", path);
        all.push(`${path} ${answer.status} ${Buffer.from(await answer.arrayBuffer()).toString("latin1")}`);
      }
      return all;
    };
    const before = await answers(from.boss);
    expect(await move(from, to)).toEqual({ rows: held.rows, files: 2 });
    expect(await told(to.store.db, "north")).toEqual(held);
    expect((await told(to.store.db, "south")).rows).toBe(0);
    expect(await told(from.store.db, "south")).toEqual(south);
    const boss = client(to.app, { token: (await enrolled(to.store, "B. Lead", ["lead"])).token });
    expect(await answers(boss)).toEqual(before);
    expect(before.filter((one) => !/ 200 /.test(one))).toEqual([]);
    expect((await verifyTrail(to.store)).ok).toBe(true);
    expect((await verifyTrail(from.store)).ok).toBe(true);
    const speaker = await to.store.db.select().from(people).where(eq(people.id, things.person));
    expect(speaker).toMatchObject([{ sites: '["north"]', password: null }]);
  });

  it("takes nothing more here, whatever is asked, and what is said there is told where it is taken", async () => {
    const from = await twoSites();
    await mailWent(from.store);
    await move(from, await bench());
    const held = await told(from.store.db, "north");
    expect(await from.store.db.select().from(reportSettings)).toHaveLength(1);
    const answers: number[] = [];
    for (const [operation, make] of Object.entries(EVERY_OPERATION)) {
      const [method = "", path = ""] = operation.split(" ");
      // words of every site are of none: what was said here is read by them too
      if (
        method === "GET" ||
        path === "/api/words" ||
        !/site|job|review|question|valve|word|clip|photo|correct/.test(path)
      )
        continue;
      const { at = "", calls } = make(from.north.things) as {
        at?: string;
        calls: { query?: string; body?: unknown }[];
      };
      for (const { query = "", body } of calls) {
        const answer = await from.boss.call(method, `${path.replace(/\{\w+\}/, at)}${query && `?${query}`}`, body);
        answers.push(answer.status);
        expect(answer.status, operation).toBeLessThan(500);
        expect(await told(from.store.db, "north"), operation).toEqual(held);
      }
    }
    expect(answers.filter((status) => status === 421).length).toBeGreaterThan(8);
    expect(await from.store.db.select().from(reportSettings)).toHaveLength(1);

    const says = client(from.app, { token: from.north.speaker.token });
    const other = job({ site: "south" });
    const sent = [phrase(from.north.one, "seat worn", 9), phrase(other, "seat worn"), from.north.said];
    const answer = await from.boss.call("POST", "/api/phrases", { jobs: [other], phrases: sent });
    const { results } = (await answer.json()) as { results: { status: string; problem?: string }[] };
    expect(results.map(({ status }) => status)).toEqual(["refused", "stored", "known"]);
    expect(results[0]?.problem).toContain(AT);
    const anew = await says.call("POST", "/api/phrases", { jobs: [job({ site: "north" })], phrases: [] });
    expect(await anew.json()).toMatchObject({ jobs: [{ status: "refused", problem: expect.stringContaining(AT) }] });
  });
});

describe("a site is not moved", () => {
  const refusedOf = async (from: TwoSites, to: Pick<Bench, "store" | "kept">, words: RegExp, site = "north") => {
    await expect(move(from, to, site)).rejects.toThrow(words);
    // it goes on here
    await from.must(from.boss, "POST", "/api/phrases", {
      jobs: [],
      phrases: [phrase(from.north.one, `again ${id()}`)],
    });
    const [row] = await from.store.db.select().from(jobs).where(eq(jobs.id, from.north.one.id));
    expect(row?.site).toBe("north");
  };

  it("while its mail is on the way, where the other log has one of that name, or somebody else of a name, or twice", async () => {
    const from = await twoSites();
    await refusedOf(from, await bench(), /is on its way/);
    await mailWent(from.store);
    await refusedOf(from, await bench(), /no site nowhere/, "nowhere");
    const own = await bench();
    await own.ask("PUT", "/api/sites/north", { name: "Another north", zone: "Etc/UTC" });
    await refusedOf(from, own, /has a site north of its own/);
    const named = await bench();
    await enrolled(named.store, "Northfield Speaker", ["technician"]);
    await refusedOf(from, named, /knows somebody else as Northfield Speaker/);
    await refusedOf(from, from, /lead to one database/);
    const to = await bench();
    // a command that was killed left it held: the next takes it up
    await from.store.write(async (tx) => void (await tx.insert(movedSites).values({ site: "north", to: "", at: "" })));
    await move(from, to);
    await expect(move(from, to)).rejects.toThrow(/was moved to https:\/\/north.example/);
    await expect(move({ ...to }, from)).rejects.toThrow(/moved away from there/);
  });

  it("where the other holds what this one does not; and is, once that is gone", async () => {
    const from = await twoSites();
    await mailWent(from.store);
    const to = await bench();
    const [north] = await from.store.db.select().from(sites).where(eq(sites.site, "north"));
    const stray = { ...job(), site: "north", tag: null, startedOffset: 0, receivedAt: "", revision: 0, stale: 0 };
    await to.store.write(async (tx) => {
      await tx.insert(sites).values(north as never);
      await tx.insert(jobs).values(stray);
    });
    await refusedOf(from, to, /holds other rows/);
    expect(await to.store.db.select().from(reportSettings)).toEqual([]);
    await to.store.write(async (tx) => void (await tx.delete(jobs).where(eq(jobs.id, stray.id))));
    await move(from, to);
    expect(await told(to.store.db, "north")).toEqual(await told(from.store.db, "north"));
  });
});

it("is moved by the command while devices send: what was acknowledged is there, once and in order", async () => {
  const dir = await folder();
  const [here, there] = [`file:${dir}/handsfull.db`, await newDatabase(await folder())];
  const { address } = await startBuilt({ DATA_DIR: dir, DATABASE_URL: here });
  const send = async (method: string, path: string, body: unknown) => {
    const headers = { "content-type": "application/json" };
    const answer = await fetch(`${address}${path}`, { method, headers, body: JSON.stringify(body) });
    // biome-ignore lint/suspicious/noExplicitAny: answers are looked at key by key
    return { status: answer.status, told: (await answer.json()) as any };
  };
  for (const site of ["north", "south"])
    await send("PUT", `/api/sites/${site}`, { name: site, zone: "America/Denver" });
  let over = false;
  const device = async (site: string) => {
    const own = job({ site, tag: "LCV-213" });
    const acknowledged: string[] = [];
    for (let n = 0; !over; n++) {
      const said = phrase(own, `seat worn ${n}`, n);
      for (;;) {
        const { status, told } = await send("POST", "/api/phrases", { jobs: [own], phrases: [said] });
        if (status === 503) continue;
        expect(status).toBe(200);
        if (told.results[0].status === "refused") return { own, acknowledged, why: told.results[0].problem as string };
        acknowledged.push(said.id);
        break;
      }
    }
    return { own, acknowledged, why: "" };
  };
  const [norths, souths] = ["north", "south"].map((site) => [1, 2, 3].map(() => device(site))) as [
    ReturnType<typeof device>[],
    ReturnType<typeof device>[],
  ];
  const moved = await run(
    "server/commands/move-site.ts",
    ["north", "--to", there, "--data", await folder(), "--at", AT],
    { DATA_DIR: dir, DATABASE_URL: here },
  );
  expect(moved).toMatchObject({ code: 0, err: "" });
  expect(moved.out).toContain(`at ${AT} now`);
  const gone = await Promise.all(norths);
  over = true;
  const stayed = await Promise.all(souths);
  const store = await openStore(there);
  onTestFinished(() => store.close());
  for (const { own, acknowledged, why } of gone) {
    expect(why).toContain(AT);
    const kept = await store.db.select().from(phrases).where(eq(phrases.job, own.id)).orderBy(phrases.saidAt);
    expect(kept.map((row) => row.id)).toEqual(acknowledged);
    expect(acknowledged.length).toBeGreaterThan(0);
  }
  expect(stayed.every(({ why, acknowledged }) => why === "" && acknowledged.length > 0)).toBe(true);
  expect(await store.db.select({ site: sites.site }).from(sites)).toEqual([{ site: "north" }]);
});
