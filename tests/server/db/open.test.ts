import { spawn } from "node:child_process";
import { createHash } from "node:crypto";
import { copyFile, cp, readFile, stat, writeFile } from "node:fs/promises";
import { join, relative } from "node:path";
import { createClient } from "@libsql/client";
import { describe, expect, it } from "vitest";
import { StoreRefused } from "../../../server/db/failures.ts";
import { openStore } from "../../../server/db/open.ts";
import { sites } from "../../../server/db/tables.ts";
import { folder } from "../app-under-test.ts";
import { ended, run } from "../running.ts";

const digest = async (path: string) =>
  createHash("sha256")
    .update(await readFile(path))
    .digest("hex");

/** Opening must fail with words that name the file and what to do, and leave the file as it was. */
async function refused(path: string, words: RegExp): Promise<void> {
  const before = await digest(path);
  const failure = await openStore(`file:${path}`).then(
    () => undefined,
    (cause: unknown) => cause,
  );
  expect(failure).toBeInstanceOf(StoreRefused);
  expect(String(failure)).toMatch(words);
  expect(String(failure)).toContain(path);
  expect(String(failure)).toContain("DATA_DIR");
  expect(await digest(path)).toBe(before);
}

async function filled(path: string): Promise<void> {
  const store = await openStore(`file:${path}`);
  await store.write(async (tx) => {
    for (let n = 0; n < 300; n++) {
      await tx.insert(sites).values({ site: `s${n}`, name: "x".repeat(500), zone: "Etc/UTC", createdAt: "" });
    }
  });
  await store.close();
}

describe("opening the database", () => {
  it("makes it where there is none, folder and all, and keeps full synchrony", async () => {
    const path = join(await folder(), "deep/er/log.db");
    const store = await openStore(`file:${path}`);
    await store.ping();
    await store.close();
    const client = createClient({ url: `file:${path}` });
    expect((await client.execute("PRAGMA journal_mode")).rows[0]?.journal_mode).toBe("wal");
    expect((await client.execute("PRAGMA synchronous")).rows[0]?.synchronous).toBe(2);
    client.close();
  });

  it("after closing, the file alone holds everything", async () => {
    const dir = await folder();
    const path = join(dir, "log.db");
    await filled(path);
    await copyFile(path, join(dir, "copy.db"));
    const copy = await openStore(`file:${join(dir, "copy.db")}`);
    expect(await copy.db.select().from(sites)).toHaveLength(300);
    await copy.close();
  });

  it("refuses a file that is no database", async () => {
    const path = join(await folder(), "log.db");
    await writeFile(path, "shopping list: eggs");
    await refused(path, /is not a database/);
  });

  it("refuses another program's database", async () => {
    const path = join(await folder(), "log.db");
    const client = createClient({ url: `file:${path}` });
    await client.execute("CREATE TABLE invoices (id)");
    client.close();
    await refused(path, /another program/);
  });

  it("refuses a damaged database", async () => {
    const path = join(await folder(), "log.db");
    await filled(path);
    const bytes = await readFile(path);
    bytes.fill(0x5a, 4096 * 3, 4096 * 30);
    await writeFile(path, bytes);
    await refused(path, /damaged/);
  });

  it("refuses a cut-off database", async () => {
    const path = join(await folder(), "log.db");
    await filled(path);
    await writeFile(path, (await readFile(path)).subarray(0, 4096 * 5 + 100));
    await refused(path, /damaged/);
  });

  it("refuses a database of a newer version", async () => {
    const path = join(await folder(), "log.db");
    await filled(path);
    const client = createClient({ url: `file:${path}` });
    await client.execute("INSERT INTO __drizzle_migrations (hash, created_at) VALUES ('later', 99999999999999)");
    await client.execute("PRAGMA wal_checkpoint(TRUNCATE)");
    client.close();
    await refused(path, /newer version/);
  });

  it("opened again in the same process, it is not taken for closed by another that comes and goes", {
    timeout: 60_000,
  }, async () => {
    const dir = await folder();
    const path = join(dir, "handsfull.db");
    await (await openStore(`file:${path}`)).close();
    const store = await openStore(`file:${path}`);
    const add = (site: string) =>
      store.write(async (tx) => {
        await tx.insert(sites).values({ site, name: site, zone: "Etc/UTC", createdAt: "" });
      });
    await add("before");
    // whoever closes as the last one takes the log away: what was written after would be lost, or spoil the file
    const { code, err } = await run("server/commands/people.ts", [], { DATA_DIR: dir });
    expect([code, err]).toEqual([0, ""]);
    expect((await stat(`${path}-wal`)).isFile()).toBe(true);
    await add("after");
    const other = await run("server/commands/enrol.ts", ["--name", "A. Person", "--role", "lead"], { DATA_DIR: dir });
    expect(other.code, other.err).toBe(0);
    await add("last");
    expect(await store.db.select().from(sites)).toHaveLength(3);
    await store.close();
    const client = createClient({ url: `file:${path}` });
    expect((await client.execute("PRAGMA integrity_check")).rows[0]?.integrity_check).toBe("ok");
    expect((await client.execute("SELECT count(*) AS n FROM sites")).rows[0]?.n).toBe(3);
    client.close();
  });

  it("refuses to start anew beside the log of a database that is gone", async () => {
    const path = join(await folder(), "log.db");
    await writeFile(`${path}-wal`, "something");
    await expect(openStore(`file:${path}`)).rejects.toThrow(/is missing/);
    await expect(stat(path)).rejects.toThrow();
  });
});

describe("migrations", () => {
  it.each(["migrations", "pg-migrations"])(
    "in %s ascend in time: an older one would be skipped in silence",
    async (of) => {
      const journal = JSON.parse(await readFile(`server/db/${of}/meta/_journal.json`, "utf8"));
      const times = journal.entries.map((entry: { when: number }) => entry.when);
      expect(times).toEqual([...times].sort((a, b) => a - b));
      expect(new Set(times).size).toBe(times.length);
    },
  );

  it.each([
    ["sqlite", "migrations", "{tables,people-tables,report-tables,review-tables}"],
    ["postgresql", "pg-migrations", "pg-tables"],
  ])("make exactly the tables that the code names, in %s", async (dialect, named, tables) => {
    const out = join(await folder(), "migrations");
    await cp(`server/db/${named}`, out, { recursive: true });
    // it takes every path as one below the folder it runs in
    const to = relative(process.cwd(), out);
    const kit = ["generate", "--dialect", dialect, "--schema", `./server/db/${tables}.ts`, "--out", to];
    const { out: said } = await ended(spawn(process.execPath, ["node_modules/drizzle-kit/bin.cjs", ...kit]));
    expect(said).toContain("No schema changes");
  });
});
