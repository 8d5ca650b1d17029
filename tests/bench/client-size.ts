import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { figure } from "./timing.ts";

const BUDGET_KB = 80;

/** Everything that the page loads, gzipped file by file as a server would send it. */
export function clientSize(root: string): string[] {
  const folder = join(root, "dist/web");
  const files = readdirSync(folder, { recursive: true, withFileTypes: true })
    // beside each file stands the same one squeezed by the build
    .filter((entry) => entry.isFile() && !/\.(br|gz)$/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name))
    .map((path) => ({ name: path.slice(folder.length + 1), kb: gzipSync(readFileSync(path)).length / 1000 }))
    .sort((a, b) => b.kb - a.kb);
  const all = files.reduce((sum, one) => sum + one.kb, 0);
  return [
    `${figure(all)} kB gzipped, without a speech engine (budget ${BUDGET_KB}: ${all <= BUDGET_KB ? "met" : "not met"})`,
    files.map(({ name, kb }) => `${name} ${figure(kb)}`).join(", "),
  ];
}
