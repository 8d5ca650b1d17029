import { fileURLToPath } from "node:url";
import type { Page } from "playwright-core";
import { build, type Rolldown } from "vite";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));

/**
 * Puts what a file of the page exports before a page as `globalThis.tried`, so that it is tried in the browser it is
 * written for, with the browser's own sound and store. As an evaluation: the page's content policy stays as it is.
 */
export async function inPage(page: Page, file: string): Promise<void> {
  const built = (await build({
    root: ROOT,
    configFile: false,
    logLevel: "error",
    build: { write: false, target: "es2022", lib: { entry: `${ROOT}${file}`, formats: ["iife"], name: "tried" } },
  })) as Rolldown.RolldownOutput[];
  await page.evaluate(`${built[0]?.output[0].code}; globalThis.tried = tried;`);
}
