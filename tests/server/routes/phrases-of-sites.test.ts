import { describe, expect, it } from "vitest";
import { bench, id, job, phrase } from "../app-under-test.ts";
import { client, enrolled } from "../enrolled.ts";
import { wav } from "../keepsakes/with-place.ts";

/** Two sites, who sees both, and a technician kept to these. */
async function field(...sites: string[]) {
  const at = await bench();
  const boss = client(at.app, { token: (await enrolled(at.store, "A. Boss", ["lead"])).token });
  // biome-ignore lint/suspicious/noExplicitAny: answers are looked at key by key
  const told = async (who: typeof boss, method: string, path: string, body?: unknown): Promise<any> => {
    const answer = await who.call(method, path, body);
    return { ...((await answer.json()) as object), status: answer.status };
  };
  for (const site of ["north", "south"]) await told(boss, "PUT", `/api/sites/${site}`, { name: site, zone: "Etc/UTC" });
  const { person, token } = await enrolled(at.store, "B. Tech", ["technician"], null, sites);
  const tech = client(at.app, { token });
  const say = (who: typeof boss, ...sent: object[]) => told(who, "POST", "/api/phrases", Object.assign({}, ...sent));
  const keepTo = (...now: string[]) => told(boss, "PUT", `/api/people/${person}`, { sites: now });
  return { ...at, boss, tech, told, say, keepTo };
}

describe("a phrase of somebody kept to sites", () => {
  it("about another site is refused in words, keeps nothing by halves, and is taken once the site is his", async () => {
    const { tech, boss, told, say, keepTo } = await field("north");
    const [his, other] = [job({ tag: "PV-1", site: "north" }), job({ tag: "PV-2", site: "south" })];
    const said = [phrase(his, "seat worn one side"), phrase(other, "i smell gas")];
    const first = await say(tech, { jobs: [his, other], phrases: said });
    expect(first.jobs).toMatchObject([
      { status: "stored" },
      { status: "refused", problem: /south: ask a lead.*send it again/ },
    ]);
    expect(first.results).toMatchObject([{ status: "stored" }, { status: "refused", problem: /south: ask a lead/ }]);
    expect((await told(boss, "GET", `/api/jobs/${other.id}`)).status).toBe(404);
    await keepTo("north", "south");
    const again = await say(tech, { jobs: [other], phrases: said.slice(1) });
    expect(again).toMatchObject({ jobs: [{ status: "stored" }], results: [{ status: "stored" }] });
    expect((await told(boss, "GET", `/api/jobs/${other.id}`)).phrases).toMatchObject([{ text: "i smell gas" }]);
  });

  it("in a job begun by others at another site is not taken, nor told what it would become there", async () => {
    const { tech, boss, told, say } = await field("north");
    const theirs = job({ tag: "PV-2", site: "south" });
    const said = phrase(theirs, "seat worn one side");
    await say(boss, { jobs: [theirs], phrases: [said] });
    const none = { entries: [], unread: [] };
    for (const more of [
      {},
      { jobs: [theirs] },
      { jobs: [{ ...theirs, site: "north" }] },
      { jobs: [{ ...theirs, site: undefined }] },
    ]) {
      const answer = await say(tech, more, { phrases: [phrase(theirs, "flipped it", 1), said] });
      expect(answer.results).toMatchObject([
        { status: "refused", ...none },
        { status: "refused", ...none },
      ]);
    }
    // an id of theirs under a job of his own
    const his = job({ tag: "PV-1", site: "north" });
    const answer = await say(tech, { jobs: [his], phrases: [{ ...said, job: his.id }] });
    expect(answer.results).toMatchObject([{ status: "refused", problem: /used before: .*new id/, ...none }]);
    expect((await told(boss, "GET", `/api/jobs/${theirs.id}`)).phrases).toHaveLength(1);
  });

  it("that was taken before he was moved is known when it is sent again, since it is his own", async () => {
    const { tech, say, keepTo } = await field("north");
    const one = job({ tag: "PV-1", site: "north" });
    const said = phrase(one, "seat worn one side");
    await say(tech, { jobs: [one], phrases: [said] });
    await keepTo("south");
    expect((await say(tech, { phrases: [said] })).results).toMatchObject([{ id: said.id, status: "known" }]);
    const more = await say(tech, { jobs: [one], phrases: [phrase(one, "flipped it", 1)] });
    expect(more.results).toMatchObject([{ status: "refused", problem: /ask a lead/ }]);
  });

  it("in a job that names no site is of his one site, and stays there however it is sent again", async () => {
    const { tech, boss, told, say, keepTo } = await field("north");
    const one = job({ tag: "PV-9" });
    const said = phrase(one, "seat worn one side");
    expect((await say(tech, { jobs: [one], phrases: [said] })).results).toMatchObject([{ status: "stored" }]);
    expect(await told(tech, "GET", `/api/jobs/${one.id}`)).toMatchObject({ status: 200, site: "north" });
    await keepTo("north", "south");
    const again = await say(tech, { jobs: [one], phrases: [said] });
    expect(again).toMatchObject({ jobs: [{ status: "known" }], results: [{ status: "known" }] });
    expect((await told(boss, "GET", "/api/valves?site=north")).valves).toMatchObject([{ tag: "PV-9" }]);
  });

  it("in a job that names no site is taken of who has several, with its sound, for those who see every site", async () => {
    const { tech, boss, told, say } = await field("north", "south");
    const one = job({ tag: "PV-9" });
    const said = phrase(one, "seat worn one side");
    expect((await say(tech, { jobs: [one], phrases: [said] })).results).toMatchObject([{ status: "stored" }]);
    expect((await say(tech, { phrases: [phrase(one, "flipped it", 1)] })).results).toMatchObject([
      { status: "stored" },
    ]);
    const query = new URLSearchParams({ phrase: said.id, at: new Date().toISOString(), seconds: "1" });
    expect((await tech.call("PUT", `/api/clips/${id()}?${query}`, wav())).status).toBe(200);
    expect((await told(tech, "GET", `/api/jobs/${one.id}`)).status).toBe(404);
    expect((await told(tech, "GET", "/api/valves")).valves).toEqual([]);
    expect((await told(boss, "GET", `/api/jobs/${one.id}`)).phrases).toHaveLength(2);
    // what he is asked about it reaches him all the same
    await told(boss, "GET", "/api/review");
    const asks = { id: id(), what: "asked", words: "at which site?", seen: 0 };
    await told(boss, "POST", `/api/review/${said.id}`, asks);
    expect((await told(tech, "GET", "/api/questions")).questions).toMatchObject([{ id: asks.id }]);
    const answered = await told(tech, "POST", `/api/questions/${asks.id}`, { id: id(), text: "north", how: "typed" });
    expect(answered).toMatchObject({ status: 200 });
  });
});
