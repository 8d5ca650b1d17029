import { execFile } from "node:child_process";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { expect, it } from "vitest";

/** The README's worked phrase is what the command prints, to the letter: run it and paste it anew where this fails. */
const ROOT = fileURLToPath(new URL("..", import.meta.url));

it("the phrase worked through in the README prints what the README says", async () => {
  const readme = readFileSync(new URL("../README.md", import.meta.url), "utf8");
  const [, command = "", printed = ""] = /\n\n((?: {4}.*\n)+)\nprints\n\n((?: {4}.*\n|\n(?= {4}))+)/.exec(readme) ?? [];
  expect(command).toContain("npm run -s say");
  const { stdout } = await promisify(execFile)("bash", ["-c", unindented(command)], { cwd: ROOT });
  expect(stdout).toBe(unindented(printed));
});

const unindented = (block: string) => block.replaceAll(/^ {4}/gm, "");
