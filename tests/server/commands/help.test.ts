import { describe, expect, it } from "vitest";
import { run } from "../running.ts";

describe("every command", () => {
  it("says with --help what it reads, and refuses what it does not know", { timeout: 40_000 }, async () => {
    const start = await run("server/main.ts", ["--help"]);
    expect(start.code).toBe(0);
    for (const name of [
      "PORT",
      "HOST",
      "DATA_DIR",
      "DATABASE_URL",
      "SMTP_URL",
      "MAIL_FROM",
      "TLS_CERT",
      "TLS_KEY",
      "LOG_LEVEL",
    ]) {
      expect(start.out).toContain(name);
    }
    expect((await run("server/commands/build.mjs", ["--help"])).out).toContain("--force");
    for (const command of [
      "main.ts",
      "commands/build.mjs",
      "commands/migrate.ts",
      "commands/reread.ts",
      "commands/report.ts",
    ]) {
      const wrong = await run(`server/${command}`, ["--frobnicate"]);
      expect(wrong.code).toBeGreaterThan(0);
      expect(wrong.err).toContain("--frobnicate");
    }
  });
});
