import { describe, expect, it } from "vitest";
import type { AuditRecord, Person, Role } from "../../../core/index.ts";
import { verifyTrail } from "../../../server/audit/read.ts";
import { bench } from "../app-under-test.ts";
import { client, enrolled } from "../enrolled.ts";

/** Three sites, a lead who sees every site, and one kept to two of them. */
async function office() {
  const at = await bench();
  const boss = await enrolled(at.store, "A. Boss", ["lead"]);
  const desk = client(at.app, { token: boss.token });
  for (const site of ["north", "south", "west"])
    expect((await desk.call("PUT", `/api/sites/${site}`, { name: site, zone: "Etc/UTC" })).status).toBe(200);
  const kept = await enrolled(at.store, "B. Lead", ["lead"], null, ["south", "north"]);
  const person = (name: string, sites?: string[], roles: Role[] = ["technician"]) =>
    enrolled(at.store, name, roles, null, sites);
  return { ...at, boss, desk, kept, his: client(at.app, { token: kept.token }), person };
}

type Desk = ReturnType<typeof client>;
const told = async (desk: Desk, method: string, path: string, body?: unknown) => {
  const answer = await desk.call(method, path, body);
  // biome-ignore lint/suspicious/noExplicitAny: answers are looked at key by key
  return { ...((await answer.json()) as any), status: answer.status };
};
const seen = async (desk: Desk): Promise<Person[]> => (await told(desk, "GET", "/api/people")).people;

describe("a lead who sees every site", () => {
  it("keeps people to sites and lets them out again, and each change is an act in the trail", async () => {
    const { desk, store, person } = await office();
    const tech = await person("C. Tech");
    const put = (body: object) => told(desk, "PUT", `/api/people/${tech.person}`, body);
    const of = ({ people }: { people: Person[] }) => people.find((one) => one.id === tech.person);
    expect(of(await put({ sites: ["south", "north", "south"] }))).toMatchObject({
      roles: ["technician"],
      sites: ["north", "south"],
    });
    expect(of(await put({ roles: ["office"] }))).toMatchObject({ roles: ["office"], sites: ["north", "south"] });
    expect(of(await put({ sites: null }))?.sites).toBeUndefined();
    // the same once more is no act
    await put({ sites: null });
    const { records } = await told(desk, "GET", "/api/audit");
    const acts = (records as AuditRecord[]).filter((one) => one.about.person === tech.person).slice(0, 3);
    expect(acts.map(({ act, about }) => [act, about.sites ?? about.roles, about.before])).toEqual([
      ["sites_changed", "every site", ["north", "south"]],
      ["roles_changed", ["office"], ["technician"]],
      ["sites_changed", ["north", "south"], "every site"],
    ]);
    expect(await verifyTrail(store)).toMatchObject({ ok: true });
  });

  it("is told of a site that is not set up, and of a change that changes nothing", async () => {
    const { desk, person } = await office();
    const tech = await person("C. Tech");
    const put = (body: object) => told(desk, "PUT", `/api/people/${tech.person}`, body);
    expect(await put({ sites: ["north", "nroth"] })).toMatchObject({ status: 409, detail: /nroth/ });
    expect(await put({ sites: [] })).toMatchObject({ status: 400 });
    expect(await put({})).toMatchObject({ status: 400, detail: /roles, sites/ });
    const added = { name: "D. Tech", roles: ["technician"], sites: ["nroth"] };
    expect(await told(desk, "POST", "/api/people", added)).toMatchObject({ status: 409 });
    expect((await seen(desk)).map((one) => one.name)).not.toContain("D. Tech");
  });

  it("stays one where he is the only one, whatever other leads there are", async () => {
    const { desk, boss, kept } = await office();
    const put = (id: string, body: object) => told(desk, "PUT", `/api/people/${id}`, body);
    expect(await put(boss.person, { sites: ["north"] })).toMatchObject({ status: 409, detail: /every site/ });
    expect(await put(boss.person, { roles: ["office"] })).toMatchObject({ status: 409 });
    expect((await told(desk, "DELETE", `/api/people/${boss.person}`)).status).toBe(409);
    expect((await put(kept.person, { sites: null })).status).toBe(200);
    expect((await put(boss.person, { sites: ["north"] })).status).toBe(200);
  });
});

describe("a lead kept to sites", () => {
  it("manages those who are kept to his sites or fewer, and to him there is nobody else", async () => {
    const { his, boss, person } = await office();
    const within = await person("C. North", ["north"]);
    const beyond = [boss, await person("D. All"), await person("E. Partly", ["north", "west"])];
    expect((await seen(his)).map((one) => one.name)).toEqual(["B. Lead", "C. North"]);
    for (const { person: id, device } of beyond) {
      for (const [method, path, body] of [
        ["PUT", `/api/people/${id}`, { roles: ["office"] }],
        ["PUT", `/api/people/${id}`, { sites: ["north"] }],
        ["DELETE", `/api/people/${id}`],
        ["POST", `/api/people/${id}/codes`, { for: "device" }],
        ["DELETE", `/api/devices/${device}`],
      ] as const)
        expect((await told(his, method, path, body)).status, `${method} ${path}`).toBe(404);
    }
    expect((await told(his, "POST", `/api/people/${within.person}/codes`, { for: "device" })).status).toBe(200);
    expect((await told(his, "DELETE", `/api/devices/${within.device}`)).status).toBe(200);
    expect((await told(his, "PUT", `/api/people/${within.person}`, { sites: ["south"] })).status).toBe(200);
    expect((await told(his, "DELETE", `/api/people/${within.person}`)).status).toBe(200);
  });

  it("widens nobody beyond his own sites, himself as little as others", async () => {
    const { his, kept, person } = await office();
    const tech = await person("C. North", ["north"]);
    for (const sites of [null, ["west"], ["north", "west"], ["nowhere"]])
      for (const id of [tech.person, kept.person])
        expect(await told(his, "PUT", `/api/people/${id}`, { sites }), JSON.stringify(sites)).toMatchObject({
          status: 403,
          detail: /kept to north, south/,
        });
    const add = (more: object) => told(his, "POST", "/api/people", { name: "D. New", roles: ["lead"], ...more });
    expect((await add({})).status).toBe(403);
    expect((await add({ sites: ["west"] })).status).toBe(403);
    expect((await add({ sites: ["north", "south"] })).status).toBe(200);
  });

  it("loses what was taken from him with the next call", async () => {
    const { his, desk, kept } = await office();
    expect((await told(his, "GET", "/api/sites/north/stock")).status).toBe(200);
    await told(desk, "PUT", `/api/people/${kept.person}`, { sites: ["west"] });
    expect((await told(his, "GET", "/api/sites/north/stock")).status).toBe(404);
    expect((await told(his, "GET", "/api/me")).sites).toEqual(["west"]);
  });
});
