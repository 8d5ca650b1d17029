import { cp, mkdir, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { createClient } from "@libsql/client";
import { describe, expect, it } from "vitest";
import { DATABASE, MANIFEST } from "../../../server/backups/manifest.ts";
import { putBack } from "../../../server/backups/put-back.ts";
import { takeBackup } from "../../../server/backups/take.ts";
import { keptFiles } from "../../../server/keepsakes/files.ts";
import { bench, folder, job, phrase } from "../app-under-test.ts";
import { run, startServer } from "../running.ts";

const PLATE = new URL("../keepsakes/pictures/plate.jpg", import.meta.url);

async function post(address: string, body: unknown): Promise<{ results: { id: string; status: string }[] }> {
  const headers = { "content-type": "application/json" };
  const answer = await fetch(`${address}/api/phrases`, { method: "POST", headers, body: JSON.stringify(body) });
  if (answer.status !== 200) throw new Error(`${answer.status} ${await answer.text()}`);
  return (await answer.json()) as { results: { id: string; status: string }[] };
}

describe("a backup taken of a running server under load", () => {
  it("put back elsewhere gives the same entries, and lacks nothing acknowledged before it began", async () => {
    const DATA_DIR = await folder();
    const { address, child } = await startServer({ DATA_DIR, DATABASE_URL: "" });
    const done = job({ tag: "LCV-213" });
    const said = [phrase(done, "seat worn one side, flipped it"), phrase(done, "no leak at sixty psi", 1)];
    await post(address, { jobs: [done], phrases: said });
    const photo = `api/photos/${crypto.randomUUID()}?job=${done.id}&at=2026-03-04T17:01:00Z`;
    const body = await readFile(PLATE);
    const sent = await fetch(`${address}/${photo}`, {
      method: "PUT",
      body,
      headers: { "content-type": "image/jpeg" },
    });
    expect(sent.status).toBe(200);

    const open = Array.from({ length: 6 }, () => job());
    const told = new Map(open.map((one) => [one.id, [] as string[]]));
    let over = false;
    const load = open.map(async (one) => {
      for (let n = 0; !over; n++) {
        const next = phrase(one, `seat worn ${n}`, n);
        await post(address, { jobs: [one], phrases: [next] });
        told.get(one.id)?.push(next.id);
      }
    });
    while (![...told.values()].every((ids) => ids.length > 3)) await new Promise(setImmediate);
    const before = new Map([...told].map(([one, ids]) => [one, [...ids]]));
    const to = join(await folder(), "copy");
    const took = await run("server/commands/backup.ts", [to], { DATA_DIR, DATABASE_URL: "" });
    over = true;
    await Promise.all(load);
    expect(took.err).toMatch(/^(backup: it is on the same disk.*\n)?$/);
    expect(took.code).toBe(0);
    expect(took.out).toMatch(/^\S+copy\n {2}7 jobs, [\d,]+ phrases.*\n.*\n {2}1 clips and photographs/);

    const back = join(await folder(), "new");
    const put = await run("server/commands/restore.ts", [to], { DATA_DIR: back, DATABASE_URL: "" });
    expect(put.err).toBe("");
    expect(put.out).toContain("It is as it was at");
    const other = await startServer({ DATA_DIR: back, DATABASE_URL: "" });
    const jobAt = async (at: string, id: string) => (await fetch(`${at}/api/jobs/${id}`)).json();
    expect(await jobAt(other.address, done.id)).toEqual(await jobAt(address, done.id));
    const bytes = await (await fetch(`${other.address}/${photo}`)).arrayBuffer();
    expect(Buffer.from(bytes).equals(Buffer.from(await (await fetch(`${address}/${photo}`)).arrayBuffer()))).toBe(true);
    type Kept = { phrases: { id: string; entries: unknown }[] };
    for (const [id, ids] of before) {
      const [here, there] = (await Promise.all([jobAt(address, id), jobAt(other.address, id)])) as [Kept, Kept];
      expect(ids.filter((one) => !there.phrases.some((kept) => kept.id === one))).toEqual([]);
      // in order and without a gap: as it stood at one moment
      expect(there.phrases).toEqual(here.phrases.slice(0, there.phrases.length));
    }
    child.kill("SIGTERM");
  });
});

/** A backup of a small log, as the functions make it. */
async function small() {
  const at = await bench();
  const one = job({ tag: "LCV-213" });
  await at.ask("POST", "/api/phrases", { jobs: [one], phrases: [phrase(one, "seat worn")] });
  const sent = await at.app.request(`/api/photos/${crypto.randomUUID()}?job=${one.id}&at=2026-03-04T17:01:00Z`, {
    method: "PUT",
    body: await readFile(PLATE),
    headers: { "content-type": "image/jpeg" },
  });
  expect(sent.status).toBe(200);
  const to = join(await folder(), "copy");
  return { ...at, to, manifest: await takeBackup(join(at.dir, "log.db"), at.kept, to) };
}

const fresh = async () => {
  const dataDir = join(await folder(), "new");
  return { path: join(dataDir, "handsfull.db"), dataDir };
};

describe("a backup", () => {
  it("is not written over anything, and nothing is left of one that fails", async () => {
    const { dir, kept, to } = await small();
    await expect(takeBackup(join(dir, "log.db"), kept, to)).rejects.toThrow(/is there already/);
    await mkdir(`${to}-empty`);
    await expect(takeBackup(join(dir, "log.db"), kept, `${to}-empty`)).rejects.toThrow(/is there already/);
    await expect(takeBackup(join(dir, "none.db"), kept, `${to}2`)).rejects.toThrow(/no database .*none.db yet/);
    const foreign = join(dir, "foreign.db");
    await writeFile(foreign, "shopping list: eggs");
    await expect(takeBackup(foreign, kept, `${to}3`)).rejects.toThrow(/is not a database/);
    expect((await readdir(join(to, ".."))).sort()).toEqual(["copy", "copy-empty"]);
    expect(await readFile(foreign, "utf8")).toBe("shopping list: eggs");
  });

  it("says which kept file the log itself had lost, and is taken all the same", async () => {
    const { dir, to, manifest } = await small();
    expect(manifest.files).toMatchObject({ count: 1, lost: [] });
    const without = await takeBackup(join(dir, "log.db"), keptFiles(join(dir, "nowhere")), `${to}-2`);
    expect(without.files).toMatchObject({ count: 0, lost: [expect.stringMatching(/^[0-9a-f]{64}$/)] });
    expect(await putBack(`${to}-2`, await fresh())).toMatchObject({ rows: { phrases: 1 } });
  });
});

describe("a backup is not put back", () => {
  it("where something is already, whatever it is; certificates may be", async () => {
    const { to } = await small();
    const at = await fresh();
    await mkdir(join(at.dataDir, "tls"), { recursive: true });
    await putBack(to, at);
    await expect(putBack(to, at)).rejects.toThrow(/is not empty \(handsfull.db/);
    const other = await fresh();
    await mkdir(other.dataDir);
    await writeFile(join(other.dataDir, "notes.txt"), "mine");
    await expect(putBack(to, other)).rejects.toThrow(/is not empty \(notes.txt.*Nothing was changed/);
    expect(await readdir(other.dataDir)).toEqual(["notes.txt"]);
  });

  const row = async (path: string, sql: string) => {
    const client = createClient({ url: `file:${path}` });
    await client.execute(sql);
    await client.execute("PRAGMA wal_checkpoint(TRUNCATE)");
    client.close();
  };
  /** As a backup whose list was written to fit: only what is inside can tell. */
  const relist = async (to: string) => {
    const { hashFile } = await import("../../../server/backups/hash-file.ts");
    const manifest = JSON.parse(await readFile(join(to, MANIFEST), "utf8"));
    await writeFile(join(to, MANIFEST), JSON.stringify({ ...manifest, database: await hashFile(join(to, DATABASE)) }));
  };

  it.each<[string, (to: string) => Promise<void>, RegExp]>([
    ["that was cut short", (to) => rm(join(to, MANIFEST)), /no whole backup/],
    ["whose list is none", (to) => writeFile(join(to, MANIFEST), "{}"), /not what a backup wrote/],
    ["without a database", (to) => rm(join(to, DATABASE)), /has no handsfull.db/],
    [
      "with one byte changed",
      async (to) => {
        const bytes = await readFile(join(to, DATABASE));
        bytes[5000] = (bytes[5000] ?? 0) ^ 1;
        await writeFile(join(to, DATABASE), bytes);
      },
      /not as it was written/,
    ],
    [
      "with a row taken out",
      async (to) => {
        await row(join(to, DATABASE), "DELETE FROM entries");
        await relist(to);
      },
      /entries has 0 rows, and had 1/,
    ],
    [
      "of another program",
      async (to) => {
        await row(join(to, DATABASE), "PRAGMA application_id = 7");
        await relist(to);
      },
      /another program/,
    ],
    [
      "with pages of nonsense",
      async (to) => {
        const bytes = await readFile(join(to, DATABASE));
        bytes.fill(0x5a, 4096 * 3, 4096 * 12);
        await writeFile(join(to, DATABASE), bytes);
        await relist(to);
      },
      /damaged/,
    ],
    [
      "of a newer version",
      async (to) => {
        await row(
          join(to, DATABASE),
          "INSERT INTO __drizzle_migrations (hash, created_at) VALUES ('x', 99999999999999)",
        );
        await relist(to);
      },
      /newer version/,
    ],
    ["without its photographs", (to) => rm(join(to, "kept"), { recursive: true }), /1 clips or photographs are gone/],
    [
      "with another photograph",
      async (to) => {
        const [aa = ""] = await readdir(join(to, "kept"));
        const [name = ""] = await readdir(join(to, "kept", aa));
        await writeFile(join(to, "kept", aa, name), "something else");
      },
      /kept file .* not as it was written/,
    ],
  ])("%s: nothing is left where it was to go", async (_, spoil, why) => {
    const { to } = await small();
    const spoilt = join(await folder(), "spoilt");
    await cp(to, spoilt, { recursive: true });
    await spoil(spoilt);
    const at = await fresh();
    await expect(putBack(spoilt, at)).rejects.toThrow(why);
    expect(await readdir(at.dataDir).catch(() => [])).toEqual([]);
  });
});
