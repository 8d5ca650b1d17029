import { spawn } from "node:child_process";
import { describe, expect, it } from "vitest";
import { hear } from "../../../core/index.ts";
import { run } from "../running.ts";

const SAY = "server/commands/say.ts";
const say = (args: string[], input?: string, env?: Record<string, string>) => run(SAY, args, env, input);

describe("say --batch", () => {
  it("writes one line for each, in order, errors in their place, and leaves with 1", async () => {
    const lines = [
      '{"id": "a", "say": ["seat worn on one side", "flipped it"], "on": "2026-03-04"}',
      "not json",
      '{"id": "b"}',
      '{"id": 7, "say": []}',
      "",
      "[]",
      "null",
      '{"id": "c", "say": ["seat worn", 5]}',
      '{"id": "d", "say": ["seat worn"], "on": "2026-02-30"}',
      '{"id": "e", "say": ["x"], "valve": {"size_in": "two"}}',
      '{"id": "f", "say": [], "more": "is let by"}',
    ];
    const { code, out } = await say(["--batch"], `${lines.join("\n")}\n`);
    expect(code).toBe(1);
    expect(out.endsWith("\n")).toBe(true);
    const answers = out
      .trimEnd()
      .split("\n")
      .map((line) => JSON.parse(line));
    expect(answers.map((one) => one.id)).toEqual(["a", null, null, null, null, null, null, null, null, null, "f"]);
    for (const answer of answers.slice(1, -1)) expect(answer.error.length).toBeGreaterThan(5);
    expect(answers[0]).toEqual(
      JSON.parse(JSON.stringify(hear({ id: "a", say: ["seat worn on one side", "flipped it"], on: "2026-03-04" }))),
    );
    expect(Object.keys(answers[0])).toEqual(
      expect.arrayContaining(["entries", "unread", "ask", "checks", "followUps", "due", "missing", "parts"]),
    );
  });

  it("leaves with 0 where every line is a session, takes CRLF and a last line without an end", async () => {
    const { code, out } = await say(["--batch"], '{"id":"a","say":["x"]}\r\n{"id":"b","say":["żółw ≥ 😀"]}');
    expect(code).toBe(0);
    expect(
      out
        .trimEnd()
        .split("\n")
        .map((line) => JSON.parse(line).id),
    ).toEqual(["a", "b"]);
    expect((await say(["--batch"], "")).out).toBe("");
  });

  it("answers each line as it comes, without waiting for the end", async () => {
    const child = spawn(process.execPath, ["--import", "tsx", SAY, "--batch"]);
    const next = () => new Promise<string>((resolve) => child.stdout.once("data", (bytes) => resolve(String(bytes))));
    for (const id of ["one", "two"]) {
      const answer = next();
      child.stdin.write(`{"id":"${id}","say":["seat worn"]}\n`);
      expect(JSON.parse(await answer).id).toBe(id);
    }
    child.stdin.end();
    expect(await new Promise((resolve) => child.once("exit", resolve))).toBe(0);
  });

  it("keeps characters whole that fall across two reads", async () => {
    const child = spawn(process.execPath, ["--import", "tsx", SAY, "--batch"]);
    const bytes = Buffer.from('{"id":"żółw","say":["x"]}\n');
    let out = "";
    child.stdout.on("data", (some) => {
      out += some;
    });
    for (let at = 0; at < bytes.length; at += 8) {
      child.stdin.write(bytes.subarray(at, at + 8));
      await new Promise((wake) => setTimeout(wake, 5));
    }
    child.stdin.end();
    await new Promise((resolve) => child.once("close", resolve));
    expect(JSON.parse(out).id).toBe("żółw");
  });

  it("reads ten thousand lines in one process, in order", async () => {
    const lines = Array.from({ length: 10_000 }, (_, n) => `{"id":"${n}","say":["cage eroded on the outlet side"]}`);
    const { code, out } = await say(["--batch"], lines.join("\n"));
    expect(code).toBe(0);
    expect(
      out
        .trimEnd()
        .split("\n")
        .map((line) => JSON.parse(line).id),
    ).toEqual(lines.map((_, n) => String(n)));
  });
});

describe("say", () => {
  it("tells a person what was understood, without colour where no terminal is", async () => {
    const { code, out } = await say([
      "seat worn on one side",
      "blargle the frobnitz",
      "--on",
      "2026-03-04",
      "--tag",
      "lcv-213",
    ]);
    expect(code).toBe(0);
    expect(out).toContain("> seat worn on one side");
    expect(out).toContain("The seat was found worn on one side.");
    expect(out).toMatch(/Not understood: ".*frobnitz.*"/);
    expect(out).toContain("for LCV-213, job of 2026-03-04");
    expect(out).toContain("site procedure governs");
    expect(out).not.toContain("\u001b");
  });

  it("reads phrases from standard input for -", async () => {
    const { out } = await say(["-"], "seat worn on one side\n\nflipped it\n");
    expect(out).toContain("> seat worn on one side");
    expect(out).toContain("> flipped it");
  });

  it("says what it takes, and refuses what it does not know", async () => {
    const help = await say(["--help"]);
    expect(help.code).toBe(0);
    for (const word of ["--batch", "--on", "--tag", "--family", "--service"]) expect(help.out).toContain(word);
    expect((await say([])).code).toBe(2);
    const unknown = await say(["seat worn", "--colour"]);
    expect(unknown.code).toBe(2);
    expect(unknown.err).toContain("--colour");
    expect((await say(["x", "--on", "today"])).code).toBe(2);
    expect((await say(["x", "--on"])).code).toBe(2);
    expect((await say(["x", "--service", "heavenly"])).code).toBe(2);
    expect((await say(["--batch", "x"])).code).toBe(2);
  });
});
