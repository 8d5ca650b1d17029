import { eq } from "drizzle-orm";
import { describe, expect, it } from "vitest";
import { entries, phrases, readings } from "../../../server/db/tables.ts";
import { READER } from "../../../server/reading/version.ts";
import { bench, folder, job, phrase } from "../app-under-test.ts";
import { run } from "../running.ts";

describe("npm run reread", () => {
  it("prints what reads otherwise now, stores it only when told, and leaves phrases as heard", {
    timeout: 60_000,
  }, async () => {
    const { ask, store, url } = await bench();
    const one = job({ tag: "LCV-213" });
    const said = phrase(one, "seat worn on one side");
    await ask("POST", "/api/phrases", { jobs: [one], phrases: [said, phrase(one, "flipped it", 1)] });
    const heard = await store.db.select().from(phrases);
    // as an older reader might have left it: the first phrase not understood
    await store.write(async (tx) => {
      await tx.update(readings).set({ reader: "0.0.1+older", entries: "[]" }).where(eq(readings.phrase, said.id));
      await tx.delete(entries).where(eq(entries.n, 0));
    });
    const shown = await run("server/commands/reread.ts", [], { DATABASE_URL: url });
    expect(shown.code).toBe(0);
    expect(shown.out).toContain('"seat worn on one side" (read by 0.0.1+older)');
    expect(shown.out).toMatch(/\+ \{"condition":"worn"/);
    expect(shown.out).toMatch(/stands now: .*worn/);
    expect(shown.out).toMatch(/1 jobs read, 1 changed, not stored/);
    expect(await store.db.select().from(entries)).toHaveLength(1);

    expect((await run("server/commands/reread.ts", ["--apply"], { DATABASE_URL: url })).out).toMatch(
      /1 changed, stored/,
    );
    expect(await store.db.select().from(entries)).toHaveLength(2);
    expect((await store.db.select().from(readings)).map((row) => row.reader)).toEqual([READER, READER]);
    expect(await store.db.select().from(phrases)).toEqual(heard);
    // the running server must not go on from what it remembers of before
    await ask("POST", "/api/phrases", { phrases: [phrase(one, "cage eroded", 2)] });
    const kept = await ask("GET", `/api/jobs/${one.id}`);
    expect(kept.entries.map((e: { part: string }) => e.part)).toEqual(["seat", "seat", "cage"]);
    const again = await run("server/commands/reread.ts", [], { DATABASE_URL: url });
    expect(again.out).toMatch(/0 changed, nothing to store/);
  });
});

describe("npm run migrate", () => {
  it("makes a database and says so; --help names what it reads", { timeout: 40_000 }, async () => {
    const DATA_DIR = await folder();
    const made = await run("server/commands/migrate.ts", [], { DATA_DIR });
    expect(made.code).toBe(0);
    expect(made.out).toContain("handsfull.db");
    for (const command of ["migrate", "reread"]) {
      expect((await run(`server/commands/${command}.ts`, ["--help"])).out).toContain("DATABASE_URL");
    }
  });
});
