import { describe, expect, it } from "vitest";
import type { Caller, OneTimeCode, Person } from "../../../core/index.ts";
import { momentIn } from "../../../server/accounts/lifetimes.ts";
import { devices, oneTimeCodes } from "../../../server/db/people-tables.ts";
import { bench } from "../app-under-test.ts";
import { everythingIn } from "../at-database.ts";
import { client, codeFor, enrolled } from "../enrolled.ts";

type Client = ReturnType<typeof client>;
const read = async <T>(answer: Response) => (await answer.json()) as T;

async function withLead() {
  const all = await bench();
  const lead = await enrolled(all.store, "A. Person", ["lead"]);
  const desk = client(all.app, { token: lead.token });
  const add = async (name: string, roles: string[]): Promise<Person> => {
    const answer = await desk.call("POST", "/api/people", { name, roles });
    expect(answer.status).toBe(200);
    const { people } = await read<{ people: Person[] }>(answer);
    return people.find((one) => one.name === name) as Person;
  };
  const codeOf = async (person: string, wish: object = { for: "device" }) =>
    read<OneTimeCode>(await desk.call("POST", `/api/people/${person}/codes`, wish));
  return { ...all, lead, desk, add, codeOf };
}

const enrol = async (phone: Client, code: string) =>
  read<{ token: string; caller: Caller }>(await phone.call("POST", "/api/enrolments", { code, device: "phone 3" }));

describe("a device", () => {
  it("is enrolled by a code that the desk shows, and speaks for its person from then on", async () => {
    const { app, add, codeOf } = await withLead();
    const { id } = await add("B. Tech", ["technician"]);
    const made = await codeOf(id);
    expect(made.path).toBe(`/#/enrol?code=${made.code}`);
    const { token, caller } = await enrol(client(app), made.code);
    expect(caller).toMatchObject({ name: "B. Tech", roles: ["technician"], by: "device", device: "phone 3" });
    const answer = await client(app, { token }).call("GET", "/api/me");
    expect(await answer.json()).toEqual(caller);
  });

  it("is enrolled once by a code, within minutes, and by no other kind of code", async () => {
    const { app, store, add, codeOf } = await withLead();
    const { id } = await add("B. Tech", ["technician"]);
    const { code } = await codeOf(id);
    const status = async (one: string) => (await client(app).call("POST", "/api/enrolments", { code: one })).status;
    expect(await status(code)).toBe(200);
    expect(await status(code)).toBe(403);
    const late = await codeOf(id);
    await store.write((tx) => tx.update(oneTimeCodes).set({ expiresAt: momentIn(-1) }));
    expect(await status(late.code)).toBe(403);
    const { code: other } = await codeFor(store, id, "password");
    expect(await status(other)).toBe(403);
    expect(await status("hfc_made_up")).toBe(403);
  });

  it("two that open one code at once do not both get in", async () => {
    const { app, add, codeOf } = await withLead();
    const { code } = await codeOf((await add("B. Tech", ["technician"])).id);
    const both = await Promise.all([1, 2, 3].map(() => client(app).call("POST", "/api/enrolments", { code })));
    expect(both.map((one) => one.status).sort()).toEqual([200, 403, 403]);
  });

  it("enrolled for a shift is refused when it is over", async () => {
    const { app, store, add, codeOf } = await withLead();
    const { id } = await add("B. Tech", ["technician"]);
    const until = new Date(Date.now() + 3_600_000).toISOString();
    const { code } = await codeOf(id, { for: "device", until });
    const { token, caller } = await enrol(client(app), code);
    expect(caller.until).toBe(until);
    const phone = client(app, { token });
    expect((await phone.call("GET", "/api/jobs")).status).toBe(200);
    await store.write((tx) => tx.update(devices).set({ until: momentIn(-1) }));
    expect((await phone.call("GET", "/api/jobs")).status).toBe(401);
  });

  it("is refused from the moment it is revoked, and so is everything of one who left", async () => {
    const { app, desk, add, codeOf } = await withLead();
    const { id } = await add("B. Tech", ["technician"]);
    const [one, two] = [
      await enrol(client(app), (await codeOf(id)).code),
      await enrol(client(app), (await codeOf(id)).code),
    ];
    const status = async (token: string) => (await client(app, { token }).call("GET", "/api/jobs")).status;
    const { people } = await read<{ people: Person[] }>(await desk.call("GET", "/api/people"));
    const own = people.find((person) => person.id === id)?.devices ?? [];
    expect(own).toHaveLength(2);
    // the newest first
    expect((await desk.call("DELETE", `/api/devices/${own[1]?.id}`)).status).toBe(200);
    expect([await status(one.token), await status(two.token)]).toEqual([401, 200]);
    const { code } = await codeOf(id);
    expect((await desk.call("DELETE", `/api/people/${id}`)).status).toBe(200);
    expect(await status(two.token)).toBe(401);
    expect((await client(app).call("POST", "/api/enrolments", { code })).status).toBe(403);
    // the name is free again, for another person
    expect((await add("B. Tech", ["technician"])).id).not.toBe(id);
  });
});

describe("people", () => {
  it("keep a lead: the last one neither leaves nor becomes something else", async () => {
    const { desk, lead, add } = await withLead();
    expect((await desk.call("DELETE", `/api/people/${lead.person}`)).status).toBe(409);
    expect((await desk.call("PUT", `/api/people/${lead.person}`, { roles: ["office"] })).status).toBe(409);
    await add("Another Lead", ["lead", "technician"]);
    expect((await desk.call("PUT", `/api/people/${lead.person}`, { roles: ["office"] })).status).toBe(200);
    // and the lead who no longer is one is no longer let do it
    expect((await desk.call("GET", "/api/people")).status).toBe(403);
  });

  it("bear names that tell them apart, of at most a hundred characters", async () => {
    const { desk, add } = await withLead();
    await add("B. Tech", ["technician"]);
    const status = async (name: unknown, roles: unknown = ["technician"]) =>
      (await desk.call("POST", "/api/people", { name, roles })).status;
    expect(await status(" b.  TECH ")).toBe(409);
    expect(await status("")).toBe(400);
    expect(await status("x".repeat(101))).toBe(400);
    expect(await status("half \ud800")).toBe(400);
    expect(await status("C", [])).toBe(400);
    expect(await status("C", ["boss"])).toBe(400);
  });
});

describe("secrets", () => {
  it("stand nowhere in clear: not in the database, not in the log, not in the audit trail", async () => {
    const { app, store, url, logged, lead, add, codeOf } = await withLead();
    const { id } = await add("B. Tech", ["technician"]);
    const { code } = await codeOf(id);
    const { token } = await enrol(client(app), code);
    const words = "three valves in a row";
    const first = await codeFor(store, lead.person, "password");
    const page = client(app);
    await page.call("POST", "/api/first-password", { code: first.code, password: words });
    await page.call("POST", "/api/sign-in", { name: "A. Person", password: "wrong words here" });
    // a password typed where the name goes
    await page.call("POST", "/api/sign-in", { name: "my own secret words", password: words });
    await client(app, { token: "hfd_neverissued" }).call("GET", "/api/jobs");
    const kept = (await everythingIn(url)) + logged.join("\n");
    expect(kept).toContain("B. Tech");
    const session = page.cookie()?.split("=")[1] ?? "";
    expect(session).toMatch(/^hfs_/);
    for (const secret of [
      code,
      token,
      lead.token,
      first.code,
      words,
      "wrong words",
      "own secret",
      "hfd_never",
      session,
    ]) {
      expect(kept.includes(secret), secret).toBe(false);
    }
  });
});
