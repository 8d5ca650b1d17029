import { eq } from "drizzle-orm";
import { expect, it } from "vitest";
import { deviceOf } from "../../../server/accounts/known-devices.ts";
import { sha256 } from "../../../server/accounts/secrets.ts";
import { devices } from "../../../server/db/people-tables.ts";
import { now } from "../../../server/moments.ts";
import { bench } from "../app-under-test.ts";
import { overhear } from "../db/statements.ts";
import { enrolled } from "../enrolled.ts";

it("calls that come together are looked up together, each told its own device and nobody another's", async () => {
  const { store } = await bench();
  const known: Awaited<ReturnType<typeof enrolled>>[] = [];
  for (let n = 0; n < 12; n++) known.push(await enrolled(store, `Person ${n}`, ["technician"]));
  const asked: string[] = [];
  overhear(store, { statement: ({ sql }) => asked.push(sql) });
  const tokens = [...known.map((one) => one.token), "no such token", known[3]?.token ?? ""];
  const found = await Promise.all(tokens.map((token) => deviceOf(store, sha256(token))));
  const ids = known.map((one) => one.device);
  expect(found.map((one) => one?.id)).toEqual([...ids, undefined, ids[3]]);
  expect(found.map((one) => one?.person).slice(0, 12)).toEqual(known.map((one) => one.person));
  expect(asked).toHaveLength(1);
});

it("nothing of it is remembered: a device that is revoked meanwhile is so at the next call", async () => {
  const { store } = await bench();
  const { token, device } = await enrolled(store, "A. Person", ["technician"]);
  expect((await deviceOf(store, sha256(token)))?.revokedAt).toBeNull();
  // as by a command in another process, which this one is not told of
  await store.write((tx) => tx.update(devices).set({ revokedAt: now().utc }).where(eq(devices.id, device)));
  expect((await deviceOf(store, sha256(token)))?.revokedAt).not.toBeNull();
});

it("a look that fails fails those who came with it, and not the next", async () => {
  const { store } = await bench();
  const { token, device } = await enrolled(store, "A. Person", ["technician"]);
  let fails = true;
  overhear(store, {
    statement: () => {
      if (fails) throw new Error("the disk is gone");
    },
  });
  const both = await Promise.allSettled([deviceOf(store, sha256(token)), deviceOf(store, "other")]);
  expect(both.map((one) => one.status)).toEqual(["rejected", "rejected"]);
  fails = false;
  expect((await deviceOf(store, sha256(token)))?.id).toBe(device);
});
