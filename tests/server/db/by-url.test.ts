import { join } from "node:path";
import { expect, it, onTestFinished } from "vitest";
import { verifyTrail } from "../../../server/audit/read.ts";
import { codeOf } from "../../../server/db/failures.ts";
import { openStore } from "../../../server/db/open.ts";
import { sites } from "../../../server/db/tables.ts";
import { keptFiles } from "../../../server/keepsakes/files.ts";
import { exportAll } from "../../../server/transfer/export.ts";
import { folder, job, phrase } from "../app-under-test.ts";
import { startServer } from "../running.ts";
import { libsqlServer } from "./libsql-server.ts";

async function served() {
  const dir = await folder();
  const { url, close } = await libsqlServer(join(dir, "log.db"));
  onTestFinished(close);
  const store = await openStore(url);
  onTestFinished(() => store.close());
  return { dir, url, store };
}
const site = (name: string) => ({ site: name, name, zone: "Etc/UTC", createdAt: "" });

it("a database behind the address of a libSQL server is made, written in groups, and one that fails fails alone", async () => {
  const { store } = await served();
  const written = await Promise.allSettled(
    ["a", "b", "a", "c"].map((name) => store.write(async (tx) => void (await tx.insert(sites).values(site(name))))),
  );
  expect(written.map((one) => one.status)).toEqual(["fulfilled", "fulfilled", "rejected", "fulfilled"]);
  expect(codeOf((written[2] as PromiseRejectedResult).reason)).toMatch(/^SQLITE_CONSTRAINT/);
  expect(await store.db.$count(sites)).toBe(3);
});

it("the server runs on it, and all of it is exported as of one moment, while others write", async () => {
  const { dir, url, store } = await served();
  const { address } = await startServer({ DATA_DIR: dir, DATABASE_URL: url });
  const send = (path: string, method: string, body: unknown) =>
    fetch(`${address}${path}`, {
      method,
      headers: { "content-type": "application/json" },
      body: JSON.stringify(body),
    });
  expect((await send("/api/sites/north", "PUT", { name: "North", zone: "America/Denver" })).status).toBe(200);
  const one = job({ site: "north", tag: "LCV-213" });
  const said = [phrase(one, "seat worn one side, flipped it"), phrase(one, "no leak at sixty psi", 1)];
  const answer = (await (await send("/api/phrases", "POST", { jobs: [one], phrases: said })).json()) as {
    results: { status: string }[];
  };
  expect(answer.results.map(({ status }) => status)).toEqual(["stored", "stored"]);
  const lines: string[] = [];
  await exportAll(store, keptFiles(join(dir, "kept")), async (line) => {
    // whoever writes meanwhile is not in it
    if (lines.length === 1) await store.write(async (tx) => void (await tx.insert(sites).values(site("late"))));
    lines.push(line);
  });
  const rows = (table: string) => lines.filter((line) => line.startsWith(`{"table":"${table}"`));
  expect(rows("phrases")).toHaveLength(2);
  expect(rows("entries").length).toBeGreaterThan(2);
  expect(rows("sites")).toHaveLength(1);
  expect((await verifyTrail(store)).ok).toBe(true);
});
