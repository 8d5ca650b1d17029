import { cp, mkdir, readdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { type Client, createClient } from "@libsql/client";
import { describe, expect, it } from "vitest";
import { checkFile, claimFile, connectFile } from "../../../server/db/database-file.ts";
import { StoreRefused } from "../../../server/db/failures.ts";
import { openStore } from "../../../server/db/open.ts";
import { bringForward, migrations } from "../../../server/db/shape.ts";
import { MIGRATIONS } from "../../../server/places.ts";
import { folder } from "../app-under-test.ts";

/** The migrations as they stood when the nth was the newest. */
async function upTo(n: number): Promise<string> {
  const to = join(await folder(), "migrations");
  await cp(MIGRATIONS, to, { recursive: true });
  const path = join(to, "meta/_journal.json");
  const journal = JSON.parse(await readFile(path, "utf8"));
  await writeFile(path, JSON.stringify({ ...journal, entries: journal.entries.slice(0, n) }));
  return to;
}

interface Column {
  name: string;
  type: string;
  pk: number;
}

const tablesOf = async (client: Client) =>
  (
    await client.execute(
      "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT GLOB 'sqlite*' ORDER BY name",
    )
  ).rows
    .map((row) => String(row.name))
    .filter((name) => name !== "__drizzle_migrations")
    // the rows of a site that moved are taken no more
    .sort((one, other) => Number(one === "moved_sites") - Number(other === "moved_sites"));

const columnsOf = async (client: Client, table: string) =>
  (await client.execute(`PRAGMA table_info("${table}")`)).rows as unknown as Column[];

/** Two rows in every table, each column filled; what points at another row points at the first or second one. */
async function fill(client: Client): Promise<Map<string, Record<string, unknown>[]>> {
  const held = new Map<string, Record<string, unknown>[]>();
  await client.execute("PRAGMA foreign_keys = OFF");
  for (const table of await tablesOf(client)) {
    const columns = await columnsOf(client, table);
    const rows = [1, 2].map((n) =>
      Object.fromEntries(columns.map(({ name, type }) => [name, /int|real/i.test(type) ? n : `row-${n}`])),
    );
    for (const row of rows) {
      const names = columns.map(({ name }) => `"${name}"`).join(", ");
      const marks = columns.map(() => "?").join(", ");
      await client.execute({
        sql: `INSERT INTO "${table}" (${names}) VALUES (${marks})`,
        args: Object.values(row) as (string | number)[],
      });
    }
    held.set(table, rows);
  }
  await client.execute("PRAGMA foreign_keys = ON");
  return held;
}

const shapeOf = async (client: Client) =>
  (await client.execute("SELECT type, name, tbl_name, sql FROM sqlite_master ORDER BY type, name")).rows.map((row) => ({
    ...row,
  }));

let fresh: Promise<unknown[]> | undefined;
const freshShape = () => {
  fresh ??= makeFresh();
  return fresh;
};

async function makeFresh(): Promise<unknown[]> {
  const path = join(await folder(), "fresh.db");
  await (await openStore(`file:${path}`)).close();
  const client = createClient({ url: `file:${path}` });
  try {
    return await shapeOf(client);
  } finally {
    client.close();
  }
}

const all = migrations();

describe("a database of every shape there ever was", () => {
  it.each(all.map((one, n) => [one.tag, n + 1] as const))(
    "%s comes to the present one, every row with it",
    async (_, n) => {
      const dir = await folder();
      const path = join(dir, "log.db");
      const before = connectFile(path);
      await claimFile(before);
      await bringForward(before, path, await upTo(n));
      const held = await fill(before);
      expect(held.size).toBeGreaterThan(6);
      before.close();

      const store = await openStore(`file:${path}`);
      await store.ping();
      await store.close();
      const after = connectFile(path);
      await checkFile(after, path);
      expect(await shapeOf(after)).toEqual(await freshShape());
      for (const [table, rows] of held) {
        const found = (await after.execute(`SELECT * FROM "${table}" ORDER BY 1`)).rows.map((row) => ({ ...row }));
        expect(found, table).toMatchObject(rows);
        expect(found, table).toHaveLength(rows.length);
      }
      after.close();
      expect((await readdir(dir)).filter((name) => name.includes("rehearsal"))).toEqual([]);
    },
  );
});

describe("a migration that goes wrong", () => {
  it("is seen on the copy: the database is refused in words, and every byte of it is as it was", async () => {
    const dir = await folder();
    const path = join(dir, "log.db");
    const store = await openStore(`file:${path}`);
    await store.close();
    const before = await readFile(path);
    const broken = await upTo(all.length);
    const journal = JSON.parse(await readFile(join(broken, "meta/_journal.json"), "utf8"));
    journal.entries.push({ ...journal.entries.at(-1), tag: "9999_broken", when: 9_999_999_999_999 });
    await writeFile(join(broken, "meta/_journal.json"), JSON.stringify(journal));
    const statements = ["CREATE TABLE half (id text)", "INSERT INTO half SELECT id FROM nowhere"];
    await writeFile(join(broken, "9999_broken.sql"), statements.join(";--> statement-breakpoint\n"));
    const client = connectFile(path);
    const failure = await bringForward(client, path, broken).then(
      () => undefined,
      (cause: unknown) => cause,
    );
    client.close();
    expect(failure).toBeInstanceOf(StoreRefused);
    expect(String(failure)).toMatch(/tried on a copy.*nowhere.*Nothing was changed/);
    expect((await readFile(path)).equals(before)).toBe(true);
    expect((await readdir(dir)).filter((name) => name.includes("rehearsal"))).toEqual([]);
  });
});

describe("several that start at once on one folder", () => {
  it("all open the same database", async () => {
    const url = `file:${join(await folder(), "deep/log.db")}`;
    const stores = await Promise.all(Array.from({ length: 6 }, () => openStore(url)));
    for (const store of stores) await store.ping();
    for (const store of stores) await store.close();
  });

  it("in a folder whose name has signs in it", async () => {
    const dir = join(await folder(), "a b %41 ü #");
    await mkdir(dir);
    const store = await openStore(`file:${join(dir, "log.db")}`);
    await store.close();
    expect(await readdir(dir)).toContain("log.db");
  });
});
