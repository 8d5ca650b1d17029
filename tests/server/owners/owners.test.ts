import { describe, expect, it } from "vitest";
import type { AuditRecord, Owed, OwedList, ValveView } from "../../../core/index.ts";
import { letGo } from "../../../server/accounts/people.ts";
import { AT_COMMAND } from "../../../server/commands/at-command.ts";
import { followUpOwners } from "../../../server/db/review-tables.ts";
import { bench, id, job, phrase } from "../app-under-test.ts";
import { client, enrolled } from "../enrolled.ts";

const DIAPHRAGM = "replace|diaphragm|";

/** A log in which the diaphragm of a valve is to be replaced, a lead and a technician. */
async function owedLog() {
  const log = await bench();
  const lead = await enrolled(log.store, "Ada Lead", ["lead"]);
  const tech = await enrolled(log.store, "Ben Tech", ["technician"]);
  const boss = client(log.app, { token: lead.token });
  const worker = client(log.app, { token: tech.token });
  const must = async (who: typeof boss, method: string, path: string, body?: unknown) => {
    const answer = await who.call(method, path, body);
    if (answer.status !== 200) throw new Error(`${method} ${path}: ${answer.status} ${await answer.text()}`);
    return answer.json();
  };
  await must(boss, "PUT", "/api/sites/north", { name: "Northfield", zone: "America/Denver" });
  const visit = async (day: string, ...said: string[]) => {
    const one = job({ tag: "LCV-213", site: "north", startedAt: `${day}T09:00:00-07:00` });
    const phrases = said.map((text, at) => ({
      ...phrase(one, text),
      saidAt: `${day}T09:0${at + 1}:00-07:00`,
    }));
    await must(worker, "POST", "/api/phrases", { jobs: [one], phrases });
  };
  const owed = async (query = "") => (await must(boss, "GET", `/api/follow-ups?site=north${query}`)) as OwedList;
  const line = async (key: string) => (await owed()).owed.find((one) => one.key === key) as Owed;
  const give = (owner: string | null, about: object = {}) => ({
    ...{ id: id(), site: "north", tag: "LCV-213", key: DIAPHRAGM, owner, seen: 0 },
    ...about,
  });
  return { ...log, boss, worker, lead, tech, must, visit, owed, line, give };
}

const PATH = "/api/follow-ups/owner";

describe("a follow-up", () => {
  it("is given to a person and taken away: on the board, at the valve, in the report, each a record in the chain", async () => {
    const { visit, must, boss, worker, tech, lead, owed, line, give } = await owedLog();
    await visit("2026-03-04", "diaphragm is torn");
    expect(await line(DIAPHRAGM)).toMatchObject({ given: 0, loggedBy: ["Ben Tech"] });
    expect((await owed("&owner=nobody")).count).toBe((await owed()).count);
    const people = await must(boss, "GET", "/api/follow-ups/people?site=north");
    expect(people).toEqual({
      people: [
        { id: lead.person, name: "Ada Lead" },
        { id: tech.person, name: "Ben Tech" },
      ],
    });

    const sent = give(tech.person);
    const given = await must(boss, "PUT", PATH, sent);
    expect(given).toMatchObject({ key: DIAPHRAGM, given: 1, owner: { name: "Ben Tech", by: "Ada Lead" } });
    expect(await must(boss, "PUT", PATH, sent)).toEqual(given);
    expect((await line(DIAPHRAGM)).owner).toMatchObject({ id: tech.person });
    expect((await owed(`&owner=${tech.person}`)).owed.map((one) => one.key)).toEqual([DIAPHRAGM]);
    expect((await owed("&owner=nobody")).owed.map((one) => one.key)).not.toContain(DIAPHRAGM);
    const view = (await must(worker, "GET", "/api/valves/LCV-213?site=north")) as ValveView;
    expect(view.owned.map((one) => one.key).length).toBe(view.open.length);
    expect(view.owned.find((one) => one.key === DIAPHRAGM)?.owner?.name).toBe("Ben Tech");
    for (const form of ["page", "text"]) {
      const report = await boss.call("GET", `/report?site=north&day=2026-03-04&form=${form}`);
      expect(await report.text()).toContain("Owner: Ben Tech");
    }

    expect(await must(boss, "PUT", PATH, give(null, { seen: 1 }))).toEqual({ key: DIAPHRAGM, given: 2 });
    const report = await (await boss.call("GET", "/report?site=north&day=2026-03-04&form=text")).text();
    expect(report).toContain("No owner yet, logged by Ben Tech");
    const { records } = (await must(boss, "GET", "/api/audit")) as { records: AuditRecord[] };
    const acts = records.filter((one) => one.act.startsWith("follow_up")).sort((a, b) => a.n - b.n);
    expect(acts.map((one) => [one.act, one.name, one.about.owner])).toEqual([
      ["follow_up_given", "Ada Lead", tech.person],
      ["follow_up_taken_away", "Ada Lead", undefined],
    ]);
  });

  it("is taken over by no lead unseen: the second is told who gave it to whom", async () => {
    const { visit, must, boss, app, store, tech, lead, give } = await owedLog();
    const other = await enrolled(store, "Cleo Lead", ["lead"]);
    await visit("2026-03-04", "diaphragm is torn");
    await must(boss, "PUT", PATH, give(tech.person));
    const second = client(app, { token: other.token });
    const refused = await second.call("PUT", PATH, give(lead.person));
    expect(refused.status).toBe(409);
    expect(((await refused.json()) as { detail: string }).detail).toMatch(/Given to Ben Tech by Ada Lead at \d\d:\d\d/);
    // who wanted the same has it
    expect((await second.call("PUT", PATH, give(tech.person))).status).toBe(200);
    expect((await second.call("PUT", PATH, give(lead.person, { seen: 1 }))).status).toBe(200);
  });

  it("is given by leads alone, to those who see the site, and only while it is open", async () => {
    const { visit, boss, worker, store, tech, give } = await owedLog();
    await visit("2026-03-04", "diaphragm is torn");
    await boss.call("PUT", "/api/sites/south", { name: "Southmoor", zone: "Etc/UTC" });
    const { person } = await enrolled(store, "Dora South", ["technician"], null, ["south"]);
    expect((await boss.call("PUT", PATH, give(person))).status).toBe(404);
    expect((await boss.call("PUT", PATH, give(id()))).status).toBe(404);
    expect((await worker.call("PUT", PATH, give(tech.person))).status).toBe(403);
    const closed = await boss.call("PUT", PATH, give(tech.person, { key: "replace|bonnet|" }));
    expect(closed.status).toBe(409);
    expect(((await closed.json()) as { detail: string }).detail).toContain("open at LCV-213");
  });

  it("stays with whoever has it while it stays open, and is nobody's where it was done and came again", async () => {
    const { visit, store, line, tech } = await owedLog();
    await visit("2026-03-04", "diaphragm is torn");
    const own = { id: id(), site: "north", tag: "LCV-213", key: DIAPHRAGM, n: 1, owner: tech.person, person: null };
    const madeAt = "2026-03-05T15:00:00.000000000Z";
    await store.write(async (tx) => {
      await tx.insert(followUpOwners).values({ ...own, by: "command", madeAt });
    });
    await visit("2026-04-04", "plug looks good");
    expect((await line(DIAPHRAGM)).owner?.name).toBe("Ben Tech");
    await visit("2026-05-04", "replaced the diaphragm");
    expect(await line(DIAPHRAGM)).toBeUndefined();
    await visit("2026-09-04", "diaphragm is torn");
    expect(await line(DIAPHRAGM)).toEqual(expect.objectContaining({ given: 1 }));
    expect((await line(DIAPHRAGM)).owner).toBeUndefined();
  });

  it("of somebody who left is shown so, and found with what nobody has", async () => {
    const { visit, must, boss, store, owed, line, tech, give } = await owedLog();
    await visit("2026-03-04", "diaphragm is torn");
    await must(boss, "PUT", PATH, give(tech.person));
    await store.write((tx) => letGo(tx, AT_COMMAND, tech.person));
    expect((await line(DIAPHRAGM)).owner).toMatchObject({ name: "Ben Tech", left: true });
    expect((await owed("&owner=nobody")).owed.map((one) => one.key)).toContain(DIAPHRAGM);
    expect((await boss.call("PUT", PATH, give(tech.person, { seen: 1 }))).status).toBe(404);
  });
});
