import { describe, expect, it } from "vitest";
import type { Right, Role } from "../../core/index.ts";
import { ROLES } from "../../core/shapes/roles.ts";
import { DOORS } from "../../server/access.ts";
import { revokeDevice } from "../../server/accounts/devices.ts";
import { letGo } from "../../server/accounts/people.ts";
import { rightsOf } from "../../server/accounts/roles.ts";
import { EVERY_SITE } from "../../server/accounts/sites-seen.ts";
import { makeApp } from "../../server/app.ts";
import { AT_COMMAND } from "../../server/commands/at-command.ts";
import { phrases } from "../../server/db/tables.ts";
import { router } from "../../server/routes/kit.ts";
import { bench, DOOR, from, fromHere, id, job, phrase } from "./app-under-test.ts";
import { client, enrolled } from "./enrolled.ts";

interface Operation {
  method: string;
  path: string;
  right: Right;
}

/** Every call of the OpenAPI document, with the right it names. */
async function operations(token: string, app: Parameters<typeof client>[0]): Promise<Operation[]> {
  const document = (await (await client(app, { token }).call("GET", "/api/openapi.json")).json()) as {
    paths: Record<string, Record<string, { "x-right"?: Right }>>;
  };
  return Object.entries(document.paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, about]) => ({
      method: method.toUpperCase(),
      path: path.replaceAll(/\{(\w+)\}/g, (_, name) => (name === "id" ? id() : "NORTH-1")),
      right: about["x-right"] as Right,
    })),
  );
}

/** Asked with nothing in it that could be done: whoever is let in gets some other answer. */
const ask = (who: ReturnType<typeof client>, one: Operation) =>
  who.call(one.method, one.path, one.method === "GET" || one.method === "DELETE" ? undefined : {});

describe("every call of the document, as every kind of caller", () => {
  it("is let in or turned away as the table of roles says", { timeout: 60_000 }, async () => {
    const { store, app } = await bench();
    const people: Record<Role, { token: string }> = {
      technician: await enrolled(store, "T", ["technician"]),
      lead: await enrolled(store, "L", ["lead"]),
      office: await enrolled(store, "O", ["office"]),
    };
    const all = await operations(people.lead.token, app);
    expect(all.length).toBeGreaterThan(25);
    expect(all.filter((one) => one.right === undefined)).toEqual([]);
    // asked last: with it a device is given back
    const isLast = (one: Operation) => Number(one.path === "/api/sign-out");
    for (const one of all.sort((a, b) => isLast(a) - isLast(b))) {
      for (const role of ROLES) {
        const { status } = await ask(client(app, { token: people[role].token }), one);
        const let_in = rightsOf([role], EVERY_SITE).includes(one.right);
        // a door is open to everybody, and says no in its own way to a code or password that is none
        if (one.right === "anyone") expect([400], `${one.method} ${one.path}`).toContain(status);
        else if (let_in) expect([401, 403], `${role} ${one.method} ${one.path}: ${status}`).not.toContain(status);
        else expect(status, `${role} ${one.method} ${one.path}`).toBe(403);
      }
    }
  });

  it("is let in at the site he is kept to alone, and to nothing that holds at every site", {
    timeout: 60_000,
  }, async () => {
    const { store, app } = await bench();
    const lead = await enrolled(store, "L", ["lead"]);
    await client(app, { token: lead.token }).call("PUT", "/api/sites/north", { name: "North", zone: "Etc/UTC" });
    for (const role of ROLES) {
      const { token } = await enrolled(store, role, [role], null, ["north"]);
      const kept = client(app, { token });
      for (const one of await operations(lead.token, app)) {
        if (one.right === "anyone" || one.right === "self") continue;
        const { status } = await ask(kept, one);
        const what = `${role} ${one.method} ${one.path}: ${status}`;
        if (!rightsOf([role], ["north"]).includes(one.right)) expect(status, what).toBe(403);
        else if (one.path.includes("/NORTH-1")) expect([404, 400], what).toContain(status);
        else expect([401, 403], what).not.toContain(status);
      }
    }
  });

  it("is turned away from nobody, a revoked or ended device, one who left, and a token of no device", {
    timeout: 60_000,
  }, async () => {
    const { store, app } = await bench();
    const lead = await enrolled(store, "L", ["lead"]);
    const revoked = await enrolled(store, "R", ["lead"]);
    const left = await enrolled(store, "G", ["lead"]);
    const ended = await enrolled(store, "E", ["lead"], "2020-01-01T00:00:00.000000000Z");
    await store.write((tx) => revokeDevice(tx, AT_COMMAND, revoked.device));
    await store.write((tx) => letGo(tx, AT_COMMAND, left.person));
    const strangers: [string, ReturnType<typeof client>, RegExp][] = [
      ["nobody", client(app), /known here/],
      ["nobody at the machine itself", client(app, { address: "127.0.0.1" }), /known here/],
      ["revoked", client(app, { token: revoked.token }), /revoked.*stays on it.*lead/],
      ["left", client(app, { token: left.token }), /revoked/],
      ["ended", client(app, { token: ended.token }), /ended/],
      ["made up", client(app, { token: "hfd_nonsense" }), /not enrolled here/],
      ["no token at all", client(app, { token: "" }), /known here/],
    ];
    for (const one of await operations(lead.token, app)) {
      for (const [name, stranger, words] of strangers) {
        const answer = await ask(stranger, one);
        const what = `${name}: ${one.method} ${one.path}`;
        if (DOORS.includes(one.path)) expect(answer.status, what).toBe(400);
        else {
          expect(answer.status, what).toBe(401);
          expect(answer.headers.get("www-authenticate"), what).toMatch(/^Bearer/);
          expect(((await answer.json()) as { detail: string }).detail, what).toMatch(words);
        }
      }
    }
    for (const path of ["/api/openapi.json", "/api/nothing", "/report?site=x"]) {
      expect((await client(app).call("GET", path)).status, path).toBe(401);
    }
  });

  it("names as doors just the calls that need no right", async () => {
    const { store, app } = await bench();
    const { token } = await enrolled(store, "L", ["lead"]);
    const open = (await operations(token, app)).filter((one) => one.right === "anyone").map((one) => one.path);
    expect(open.sort()).toEqual([...DOORS].sort());
  });

  it("a route that names no right is not built", () => {
    const bare = { method: "get" as const, path: "/api/bare", responses: { 200: { description: "none" } } };
    expect(() => router().openapi(bare, (c) => c.text(""))).toThrow(/get \/api\/bare names no right/);
    expect(() => router().get("/api/bare", (c) => c.text(""))).toThrow(/names no right/);
  });

  it("health needs nobody", async () => {
    const { store, app } = await bench();
    await enrolled(store, "L", ["lead"]);
    for (const path of ["/healthz", "/readyz", "/metrics"])
      expect((await client(app).call("GET", path)).status, path).toBe(200);
  });
});

describe("while nobody is enrolled", () => {
  it("whoever is at the machine may do all, and is told so", async () => {
    const { app } = await bench();
    const here = client(app, { address: "127.0.0.1" });
    expect(await (await here.call("GET", "/api/me")).json()).toMatchObject({ open: true, by: "open" });
    expect((await here.call("PUT", "/api/sites/north", { name: "North", zone: "Etc/UTC" })).status).toBe(200);
  });

  it("nobody from elsewhere is let in, nor by a proxy, nor by another name for this machine", async () => {
    const { app } = await bench();
    const status = async (address: string, headers: Record<string, string> = {}, host = "localhost") =>
      (await app.request(`http://${host}/api/jobs`, { headers }, from(address))).status;
    expect(await status("127.0.0.1")).toBe(200);
    expect(await status("::1")).toBe(200);
    expect(await status("::ffff:127.0.0.1")).toBe(200);
    expect(await status("192.0.2.1")).toBe(401);
    expect(await status("")).toBe(401);
    expect(await status("127.0.0.1", { "x-forwarded-for": "192.0.2.1" })).toBe(401);
    expect(await status("127.0.0.1", {}, "rebound.example")).toBe(401);
    expect((await app.request("/api/jobs", {}, {})).status).toBe(401);
  });

  it("a server open to the network answers nobody, and says how to enrol the first lead", async () => {
    const { given } = await bench();
    const app = fromHere(makeApp({ ...given, door: { ...DOOR, loopback: false } }));
    for (const address of ["127.0.0.1", "192.0.2.1"]) {
      const answer = await client(app, { address }).call("GET", "/api/jobs");
      expect(answer.status).toBe(401);
      expect(((await answer.json()) as { detail: string }).detail).toContain("npm run -s enrol -- --name");
    }
  });

  it("the first person is not made by a page: it would lock itself out", async () => {
    const { app } = await bench();
    const here = client(app, { address: "127.0.0.1" });
    const answer = await here.call("POST", "/api/people", { name: "L", roles: ["lead"] });
    expect(answer.status).toBe(409);
    expect(((await answer.json()) as { detail: string }).detail).toContain("npm run -s enrol");
  });
});

describe("a call of a page of another site", () => {
  it("is refused whoever makes it, and none of its answer may be read there", async () => {
    const { store, app } = await bench();
    const put = (headers: Record<string, string>, token?: string) =>
      client(app, { token, address: "127.0.0.1" }).call(
        "PUT",
        "/api/sites/north",
        { name: "N", zone: "Etc/UTC" },
        headers,
      );
    // while nobody is enrolled too: a page on the web may make a browser on this machine send it
    expect((await put({ origin: "https://evil.example" })).status).toBe(403);
    expect((await put({ origin: "null" })).status).toBe(403);
    const { token } = await enrolled(store, "L", ["lead"]);
    expect((await put({ origin: "https://evil.example" }, token)).status).toBe(403);
    expect((await put({ "sec-fetch-site": "cross-site" }, token)).status).toBe(403);
    const own = await put({}, token);
    expect(own.status).toBe(200);
    expect(own.headers.get("access-control-allow-origin")).toBeNull();
  });
});

describe("what is said", () => {
  it("carries who said it and on which device", async () => {
    const { store, app } = await bench();
    const { person, device, token } = await enrolled(store, "A. Person", ["technician"]);
    const one = job();
    const sent = await client(app, { token }).call("POST", "/api/phrases", {
      jobs: [one],
      phrases: [phrase(one, "seat worn")],
    });
    expect(sent.status).toBe(200);
    expect(await store.db.select({ person: phrases.person, device: phrases.device }).from(phrases)).toEqual([
      { person, device },
    ]);
  });
});
