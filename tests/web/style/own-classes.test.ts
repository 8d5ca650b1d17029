import { readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { expect, it } from "vitest";

const VIEWS = fileURLToPath(new URL("../../../web/views", import.meta.url));

/** The classes that a style gives a look of their own, by screen. */
function classesOf(): Map<string, Set<string>> {
  const owners = new Map<string, Set<string>>();
  const files = readdirSync(VIEWS, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".css"));
  for (const file of files) {
    const css = readFileSync(join(VIEWS, file), "utf8").replaceAll(/\/\*.*?\*\//gs, "");
    for (const [, selectors = ""] of css.matchAll(/([^{}]+)\{/g))
      for (const selector of selectors.split(",").map((one) => one.trim()))
        if (/^\.[\w-]+$/.test(selector)) owners.set(selector, (owners.get(selector) ?? new Set()).add(dirname(file)));
  }
  return owners;
}

it("no class of one screen is styled by another too: all styles stand in one sheet, and the later would win", () => {
  const owners = classesOf();
  expect(owners.size).toBeGreaterThan(100);
  const shared = [...owners].filter(([, screens]) => screens.size > 1).map(([name, screens]) => [name, ...screens]);
  expect(shared).toEqual([]);
});
