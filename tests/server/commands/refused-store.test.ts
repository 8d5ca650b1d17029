import { readdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { expect, it } from "vitest";
import { folder } from "../app-under-test.ts";
import { run } from "../running.ts";

/** What each needs to be asked so that only the database can be in its way. */
const COMMANDS: [script: string, args: string[]][] = [
  ["commands/migrate.ts", []],
  ["commands/enrol.ts", ["--name", "A. Person", "--role", "lead"]],
  ["commands/people.ts", []],
  ["commands/audit.ts", []],
  ["commands/reread.ts", ["--apply"]],
  ["commands/report.ts", ["--site", "north", "--day", "2026-03-04"]],
  ["commands/export.ts", ["-"]],
  ["commands/import.ts", ["package.json"]],
  ["commands/backup.ts", ["no-such-folder-is-made"]],
];

it("a file that is no database of this log stops the server and every command in words, and stays as it is", async () => {
  const dir = await folder();
  const path = join(dir, "handsfull.db");
  await writeFile(path, "shopping list: eggs");
  // two at a time: each is a process, and cores are few
  const waiting = [...COMMANDS];
  const worker = async () => {
    for (let next = waiting.shift(); next; next = waiting.shift()) {
      const [script, args] = next;
      const ran = await run(`server/${script}`, args, { DATA_DIR: dir, DATABASE_URL: "", PORT: "0" });
      expect(ran.err, script).toMatch(/handsfull\.db is not a database\. Nothing was changed\./);
      expect(ran.err, script).not.toMatch(/\n +at /);
      expect(ran.code, script).toBe(1);
    }
  };
  await Promise.all([worker(), worker()]);
  expect(await readFile(path, "utf8")).toBe("shopping list: eggs");
  expect(await readdir(dir)).toEqual(["handsfull.db"]);
});
