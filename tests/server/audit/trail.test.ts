import { eq } from "drizzle-orm";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { canonical } from "../../../server/audit/chain.ts";
import { lastActs, verifyTrail } from "../../../server/audit/read.ts";
import { record } from "../../../server/audit/record.ts";
import { audit } from "../../../server/db/people-tables.ts";
import { bench, id, job, phrase } from "../app-under-test.ts";
import { client, codeFor, enrolled } from "../enrolled.ts";

const WHO = { person: undefined, by: "command" };

/** A trail of so many records. */
async function trail(records: number) {
  const all = await bench();
  for (let n = 1; n <= records; n++) await all.store.write((tx) => record(tx, WHO, "stock_set", { site: "north", n }));
  return all;
}

describe("the audit trail", () => {
  it("has one record an act: who, when, what", async () => {
    const { store, app } = await bench();
    const lead = await enrolled(store, "A. Person", ["lead"]);
    const desk = client(app, { token: lead.token });
    const one = job({ site: "north" });
    const said = phrase(one, "seat worn");
    await desk.call("PUT", "/api/sites/north", { name: "North", zone: "Etc/UTC" });
    await desk.call("PUT", "/api/valves/LCV-1", { site: "north" });
    await desk.call("PUT", "/api/sites/north/stock", { stock: { seat: 2 } });
    await desk.call("PUT", "/api/words", {
      words: [{ id: id(), say: "doohickey", as: { part: "positioner" }, at: "2026-03-04T10:00:00Z" }],
    });
    await desk.call("POST", "/api/phrases", { jobs: [one], phrases: [said] });
    await desk.call("POST", "/api/corrections", { id: id(), phrase: said.id, madeAt: "2026-03-04T12:00:00Z" });
    const { code } = await codeFor(store, lead.person, "password");
    const page = client(app);
    await page.call("POST", "/api/first-password", { code, password: "three valves in a row" });
    await client(app).call("POST", "/api/sign-in", { name: "A. Person", password: "wrong words here" });
    await page.call("POST", "/api/sign-out");
    const acts = (await lastActs(store, 100)).reverse();
    expect(acts.map((act) => act.act)).toEqual([
      "person_enrolled",
      "device_enrolled",
      "site_set_up",
      "valve_set_up",
      "stock_set",
      "words_taught",
      "phrase_corrected",
      "code_made",
      "password_set",
      "signed_in",
      "sign_in_refused",
      "signed_out",
    ]);
    expect(acts[2]).toMatchObject({ name: "A. Person", by: `device:${lead.device}`, about: { site: "north" } });
    expect(acts[9]).toMatchObject({ name: "A. Person", by: expect.stringMatching(/^session:/) });
    expect(acts[10]).toMatchObject({ by: "nobody", about: { person: lead.person } });
    expect(await verifyTrail(store)).toMatchObject({ ok: true, records: 12 });
    expect(await (await desk.call("GET", "/api/audit?most=2")).json()).toMatchObject({
      records: [{ n: 12 }, { n: 11 }],
    });
  });

  it("and its act stand or fall together", async () => {
    const { store } = await bench();
    const failed = store.write(async (tx) => {
      await record(tx, WHO, "site_set_up", {});
      throw new Error("in the middle");
    });
    await expect(failed).rejects.toThrow("in the middle");
    expect(await verifyTrail(store)).toMatchObject({ ok: true, records: 0 });
  });

  it("is one chain though many write at once", async () => {
    const { store } = await bench();
    await Promise.all(Array.from({ length: 100 }, (_, n) => store.write((tx) => record(tx, WHO, "stock_set", { n }))));
    expect(await verifyTrail(store)).toMatchObject({ ok: true, records: 100 });
  });

  it.each([
    ["what it was about", { about: canonical({ site: "south", n: 4 }) }],
    ["who did it", { person: "somebody else" }],
    ["when", { at: "2020-01-01T00:00:00.000000000Z" }],
    ["the act", { act: "signed_in" }],
    ["how the doer was known", { by: "open" }],
  ])("breaks where a record is changed: %s", async (_, change) => {
    const { store } = await trail(6);
    await store.write((tx) => tx.update(audit).set(change).where(eq(audit.n, 4)));
    expect(await verifyTrail(store)).toMatchObject({ ok: false, n: 4, problem: /as it was written/ });
  });

  it("breaks where a record is taken out, and shows a cut end to whoever noted it down", async () => {
    const { store } = await trail(6);
    const noted = await verifyTrail(store);
    if (!noted.ok) throw new Error("broken");
    await store.write((tx) => tx.delete(audit).where(eq(audit.n, 6)));
    expect(await verifyTrail(store)).toMatchObject({ ok: true, records: 5 });
    expect(await verifyTrail(store, { n: 6, hash: noted.last })).toMatchObject({ ok: false, n: 6 });
    // written anew in its place, it has another hash
    await store.write((tx) => record(tx, WHO, "stock_set", { site: "south" }));
    expect(await verifyTrail(store, { n: 6, hash: noted.last })).toMatchObject({ ok: false, n: 6 });
    await store.write((tx) => tx.delete(audit).where(eq(audit.n, 2)));
    expect(await verifyTrail(store)).toMatchObject({ ok: false, n: 2, problem: /missing/ });
  });
});

it("canonical JSON is one text a value, whatever the order of its keys", () => {
  expect(canonical({ b: [1, { d: null, c: "x" }], a: undefined })).toBe('{"b":[1,{"c":"x","d":null}]}');
  fc.assert(
    fc.property(fc.dictionary(fc.string(), fc.jsonValue()), (value) => {
      const turned = Object.fromEntries(Object.entries(value).reverse());
      expect(canonical(turned)).toBe(canonical(value));
      expect(JSON.parse(canonical(value))).toEqual(JSON.parse(JSON.stringify(value)));
    }),
  );
});
