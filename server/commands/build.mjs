import { mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

/**
 * Builds the client (with its service worker) and the server into dist/, each only when its sources are newer.
 * Plain JavaScript: it runs before anything is built, on a machine that has only Node and npm ci behind it.
 */
const ROOT = fileURLToPath(new URL("../..", import.meta.url));
const SHARED = ["package.json", "package-lock.json", "core"];
const TARGETS = [
  {
    name: "client",
    config: "web/vite.config.ts",
    out: "dist/web/index.html",
    from: ["web", "server/ear", "server/commands/ear-files.mjs", ...SHARED],
  },
  { name: "server", config: "server/vite.config.ts", out: "dist/server/main.js", from: ["server", ...SHARED] },
];

if (process.argv.includes("--help")) {
  process.stdout.write(
    "node server/commands/build.mjs [--force]\nBuilds client and server into dist/ where sources are newer; --force builds both.\nReads no settings from the environment.\n",
  );
  process.exit(0);
}
const unknown = process.argv.slice(2).find((word) => word !== "--force");
if (unknown) {
  process.stderr.write(`build: ${unknown} is not known here; see --help\n`);
  process.exit(2);
}

const start = Date.now();
const wanted = TARGETS.filter((target) => process.argv.includes("--force") || !isFresh(target));
for (const target of wanted) {
  // vite takes a second to load: not paid when nothing is to be built
  const began = Date.now();
  const { build } = await import("vite");
  await build({ configFile: join(ROOT, target.config), logLevel: "warn" });
  if (target.name === "client") {
    const { putEarFiles } = await import("./ear-files.mjs");
    await putEarFiles(ROOT, (line) => process.stderr.write(`build: ${line}\n`));
  }
  const stamp = stampOf(target);
  mkdirSync(join(stamp, ".."), { recursive: true });
  writeFileSync(stamp, `${new Date(began).toISOString()}\n`);
}
const what = wanted.length > 0 ? wanted.map(({ name }) => name).join(" and ") : "nothing: all is fresh";
process.stderr.write(`built ${what} (${((Date.now() - start) / 1000).toFixed(1)} s)\n`);

function isFresh(target) {
  try {
    statSync(join(ROOT, target.out));
    // compared with when the build began: what changed during it is built again
    const built = Date.parse(readFileSync(stampOf(target), "utf8").trim());
    return newest(target.from.map((path) => join(ROOT, path))) < built;
  } catch (cause) {
    if (cause.code === "ENOENT") return false;
    throw cause;
  }
}

function stampOf({ name }) {
  return join(ROOT, "dist", `.built-${name}`);
}

/** The latest change below these paths; a folder's own time tells of files that went away. */
function newest(paths) {
  let latest = 0;
  for (const path of paths) {
    const about = statSync(path);
    latest = Math.max(latest, about.mtimeMs);
    if (about.isDirectory()) latest = Math.max(latest, newest(readdirSync(path).map((name) => join(path, name))));
  }
  return latest;
}
