import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { Entry } from "../../../core/index.ts";
import { EXAMPLES } from "../../../core/parse/examples/index.ts";
import { bare, CORPORA, loadCases } from "../../corpora/corpus.ts";
import { say } from "./in-short.ts";

/** Runs every example that stands beside the rules of reading. */
const phrases = (said: string | readonly string[]): string[] => (typeof said === "string" ? [said] : [...said]);
const made = (rule: string, said: string | readonly string[]): Entry[] =>
  say(...phrases(said)).entries.filter((one) => one.rule === rule);

for (const example of EXAMPLES) {
  const about = [phrases(example.say).join(" / "), ...(example.why ? [`(${example.why})`] : [])].join(" ");
  if ("rule" in example)
    test(`${example.rule}: ${about}`, () =>
      expect(made(example.rule, example.say).map(bare)).toEqual(example.gives.map(bare)));
  else test(`not ${example.not}: ${about}`, () => expect(made(example.not, example.say)).toEqual([]));
}

/** Rule names as the source writes them; those put together while reading are met in the corpora. */
function writtenRules(): string[] {
  const folder = new URL("../../../core/parse/", import.meta.url);
  const source = readdirSync(folder)
    .filter((name) => name.endsWith(".ts"))
    .map((name) => readFileSync(new URL(name, folder), "utf8"))
    .join("\n");
  const inDrafts = [...source.matchAll(/\brule: (?:[^,}\n]*\? )?"([a-z_]+)"/g)].map((match) => match[1] as string);
  const inWorks = source
    .split("\n")
    .filter((line) => line.includes("emitWork("))
    .flatMap((line) => [...line.matchAll(/"([a-z]+_[a-z_]+|left|reused)"/g)].map((match) => match[1] as string));
  return [...inDrafts, ...inWorks];
}

describe("every rule has an example and a near miss", () => {
  const met = CORPORA.flatMap((name) => loadCases(name)).flatMap((one) =>
    say(...one.say).entries.flatMap(({ rule }) => (rule ? [rule] : [])),
  );
  const rules = [...new Set([...writtenRules(), ...met])].sort();
  test("the rules were found", () => expect(rules.length).toBeGreaterThan(24));
  for (const rule of rules)
    test(rule, () => {
      expect(EXAMPLES.some((one) => "rule" in one && one.rule === rule)).toBe(true);
      expect(EXAMPLES.some((one) => "not" in one && one.not === rule)).toBe(true);
    });
});
