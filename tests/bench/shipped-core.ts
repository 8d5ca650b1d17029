import { mkdtemp } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { build } from "vite";

/**
 * The core as the build ships it. Run straight from source, tsx names every inner function on each call, for the
 * sake of stack traces, and a reader made of small functions pays for that twice over.
 */
export async function shippedCore(): Promise<typeof import("../../core/index.ts")> {
  const outDir = await mkdtemp(join(tmpdir(), "core-"));
  await build({
    configFile: false,
    logLevel: "silent",
    ssr: { noExternal: true },
    build: {
      ssr: fileURLToPath(new URL("../../core/index.ts", import.meta.url)),
      outDir,
      rollupOptions: { output: { entryFileNames: "core.mjs" } },
    },
  });
  return import(pathToFileURL(join(outDir, "core.mjs")).href);
}
