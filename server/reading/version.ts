import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { ROOT } from "../places.ts";

/** Set by the build; absent when running from source. */
declare const __READER__: string | undefined;

/** The rooms that decide what a phrase means and what follows from it. */
const DECIDING = ["parse", "vocabulary", "consequences", "compute", "families"];

/**
 * Names the reader: any change to the rooms that decide gives another name, so that nobody has to remember
 * to raise a number, and what an older reader made can be told apart and read again.
 */
export function nameReader(root: string): string {
  const hash = createHash("sha256");
  const take = (folder: string) => {
    for (const entry of readdirSync(folder, { withFileTypes: true }).sort((a, b) => (a.name < b.name ? -1 : 1))) {
      const path = join(folder, entry.name);
      if (entry.isDirectory()) take(path);
      else if (/\.(ts|json)$/.test(entry.name) && !entry.name.endsWith(".examples.ts")) {
        // a checkout with other line ends is the same reader
        hash.update(`${entry.name}\n${readFileSync(path, "utf8").replaceAll("\r\n", "\n")}\n`);
      }
    }
  };
  for (const room of DECIDING) take(join(root, "core", room));
  const { version } = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as { version: string };
  return `${version}+${hash.digest("hex").slice(0, 10)}`;
}

export const READER: string = typeof __READER__ === "string" ? __READER__ : nameReader(ROOT);
