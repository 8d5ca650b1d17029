import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import type { AxeResults } from "axe-core";
import type { Page } from "playwright-core";

const AXE = createRequire(import.meta.url).resolve("axe-core/axe.min.js");
const WCAG = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];

/** What axe finds against WCAG 2.2 A and AA on the page as it stands: one line a rule, with where. */
export async function violations(page: Page): Promise<string[]> {
  // as source of an evaluation, not as a script tag: the page's own content policy stays as strict as it is
  await page.evaluate(await readFile(AXE, "utf8"));
  const found = (await page.evaluate(
    (tags) =>
      (globalThis as unknown as { axe: { run(options: object): Promise<unknown> } }).axe.run({
        runOnly: { type: "tag", values: tags },
        resultTypes: ["violations"],
      }),
    WCAG,
  )) as AxeResults;
  return found.violations.map(
    ({ id, help, nodes }) => `${id}: ${help}: ${nodes.map((node) => node.target.join(" ")).join(", ")}`,
  );
}
