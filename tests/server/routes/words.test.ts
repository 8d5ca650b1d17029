import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { makeApp } from "../../../server/app.ts";
import { systemClock } from "../../../server/clock.ts";
import { openStore } from "../../../server/db/open.ts";
import { readings } from "../../../server/db/tables.ts";
import { keptFiles } from "../../../server/keepsakes/files.ts";
import { makeLog } from "../../../server/log.ts";
import { makeMetrics } from "../../../server/metrics.ts";
import { RecentJobs } from "../../../server/reading/keep-reading.ts";
import { readAgain } from "../../../server/reading/read-again.ts";
import { READER } from "../../../server/reading/version.ts";
import { bench, DOOR, FROM, folder, fromHere, id, job, phrase } from "../app-under-test.ts";

const AT = "2026-03-04T10:00:00-07:00";
const word = (say: string, as: object = { part: "positioner" }, more: object = {}) => ({
  id: id(),
  say,
  as,
  at: AT,
  ...more,
});

describe("words taught at a site", () => {
  it("are read in what was said there before, and nowhere else", async () => {
    const { ask, store } = await bench();
    const north = job({ tag: "LCV-213", site: "north" });
    const south = job({ tag: "LCV-213", site: "south" });
    await ask("POST", "/api/phrases", {
      jobs: [north, south],
      phrases: [phrase(north, "doohickey is bent"), phrase(south, "doohickey is bent")],
    });
    const entries = async (one: { id: string }) => (await ask("GET", `/api/jobs/${one.id}`)).entries;
    expect(await entries(north)).toEqual([]);
    const taught = word("Doohickey");
    const answer = await ask("PUT", "/api/sites/north/words", { words: [taught] });
    expect(answer.results).toEqual([{ id: taught.id, status: "stored" }]);
    expect(answer.words).toEqual([{ ...taught, say: "doohickey" }]);
    expect(await entries(north)).toMatchObject([{ type: "finding", part: "positioner", condition: "bent" }]);
    expect(await entries(south)).toEqual([]);
    const named = new Map((await store.db.select().from(readings)).map((row) => [row.job, row.reader]));
    expect(named.get(south.id)).toBe(READER);
    expect(named.get(north.id)).toMatch(`${READER}.words-`);
    // and in the next phrase, which goes on from what was read again
    await ask("POST", "/api/phrases", { phrases: [phrase(north, "replaced the doohickey", 1)] });
    expect((await entries(north)).at(-1)).toMatchObject({ type: "work", part: "positioner" });
  });

  it("taught for every site are read at each, and in jobs of no site", async () => {
    const { ask } = await bench();
    const one = job({ tag: "LCV-213", site: "north" });
    const none = job({ tag: "LCV-214" });
    await ask("PUT", "/api/words", { words: [word("doohickey")] });
    const { results } = await ask("POST", "/api/phrases", {
      jobs: [one, none],
      phrases: [phrase(one, "doohickey is bent"), phrase(none, "doohickey is bent")],
    });
    for (const { entries } of results) expect(entries).toMatchObject([{ part: "positioner" }]);
  });

  it("are still read after a restart", async () => {
    const url = `file:${join(await folder(), "log.db")}`;
    /** the app on that file, opened for one request and closed after it */
    const asked = async (method: string, path: string, body?: object) => {
      const store = await openStore(url);
      const kept = keptFiles(`${url.slice("file:".length)}.kept`);
      const log = makeLog("error", () => {});
      const post = { server: undefined, folder: "nowhere" };
      const mail = { clock: systemClock, from: FROM, post, wake: () => {} };
      const given = { store, kept, log, metrics: makeMetrics(), recent: new RecentJobs(), mail, door: DOOR };
      const headers = { "content-type": "application/json" };
      const answer = await fromHere(makeApp(given)).request(path, {
        method,
        headers,
        body: body && JSON.stringify(body),
      });
      const read = await answer.json();
      await store.close();
      return read;
    };
    const taught = word("doohickey");
    await asked("PUT", "/api/sites/north/words", { words: [taught] });
    const one = job({ tag: "LCV-213", site: "north" });
    const sent = await asked("POST", "/api/phrases", { jobs: [one], phrases: [phrase(one, "doohickey is bent")] });
    expect(sent.results[0].entries).toMatchObject([{ part: "positioner" }]);
    expect((await asked("GET", "/api/sites/north/words")).words).toEqual([taught]);
  });

  it("are kept once, withdrawn for good, and refused where they would change what everybody says", async () => {
    const { ask } = await bench();
    const put = async (...words: unknown[]) => (await ask("PUT", "/api/sites/north/words", { words })).results;
    const taught = word("doohickey");
    const one = job({ tag: "LCV-213", site: "north" });
    await ask("POST", "/api/phrases", { jobs: [one], phrases: [phrase(one, "doohickey is bent")] });
    expect(await put(taught, { ...taught, say: "Doohickey" })).toMatchObject([
      { status: "stored" },
      { status: "known" },
    ]);
    expect(await put(word("doohickey"))).toMatchObject([{ status: "known" }]);
    const no = await put(
      word("seat"),
      word("doohickey", { part: "plug" }),
      { ...taught, as: { part: "plug" } },
      { ...taught, say: "gizmo" },
      7,
    );
    expect(no.map((result: { status: string }) => result.status)).toEqual(Array(5).fill("refused"));
    expect(no[0].problem).toBe("“seat” is read already: seat.");
    expect(no[1].problem).toBe("“doohickey” is taught already, for positioner.");
    expect(await put({ ...taught, withdrawn: true })).toMatchObject([{ status: "stored" }]);
    expect(await put(taught)).toMatchObject([{ status: "known" }]);
    expect((await ask("GET", "/api/sites/north/words")).words).toEqual([{ ...taught, withdrawn: true }]);
    expect((await ask("GET", `/api/jobs/${one.id}`)).entries).toEqual([]);
  });

  it("are read at once in the jobs in which they were said, however old, so that reading again finds nothing more", async () => {
    const { ask, store } = await bench();
    const old = job({ tag: "LCV-213", site: "north", startedAt: "2025-01-01T10:00:00Z" });
    const later = Array.from({ length: 20 }, () => job({ site: "north" }));
    await ask("POST", "/api/phrases", { jobs: [old, ...later], phrases: [phrase(old, "doohickey is bent")] });
    await ask("PUT", "/api/sites/north/words", { words: [word("doohickey")] });
    expect((await ask("GET", `/api/jobs/${old.id}`)).entries).toMatchObject([{ part: "positioner" }]);
    expect(await readAgain(store, false, () => {})).toEqual({ jobs: 21, changed: 0 });
  });
});
