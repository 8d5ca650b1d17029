import { createHash } from "node:crypto";
import { readdir, readFile, writeFile } from "node:fs/promises";
import { join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { brotliCompressSync, gzipSync } from "node:zlib";
import { defineConfig, type Plugin, transformWithOxc } from "vite";

const HERE = fileURLToPath(new URL(".", import.meta.url));
const OUT = join(HERE, "../dist/web");

/** Writes sw.js after the client: the worker's source behind the list of emitted files and a hash over all of them. */
function serviceWorker(): Plugin {
  let out = OUT;
  return {
    name: "handsfull-service-worker",
    apply: "build",
    configResolved(config) {
      out = resolve(config.root, config.build.outDir);
    },
    async closeBundle() {
      const names = (await readdir(out, { recursive: true, withFileTypes: true }))
        .filter((entry) => entry.isFile() && entry.name !== "sw.js")
        .map((entry) =>
          join(entry.parentPath, entry.name)
            .slice(out.length + 1)
            .replaceAll("\\", "/"),
        )
        .sort();
      const source = await readFile(join(HERE, "offline/worker.ts"), "utf8");
      const hash = createHash("sha256").update(source);
      for (const name of names) hash.update(name).update(await readFile(join(out, name)));
      // the page itself is asked for as "/"
      const files = names.map((name) => (name === "index.html" ? "/" : `/${name}`));
      const { code } = await transformWithOxc(source, "worker.ts", { target: "es2022" });
      const head = `const FILES=${JSON.stringify(files)},VERSION="${hash.digest("hex").slice(0, 16)}";\n`;
      await writeFile(join(out, "sw.js"), head + code.replace(/^export\s*\{\s*\};?$/m, ""));
    },
  };
}

/**
 * Writes each text file a second and third time, as brotli and gzip at their slowest and smallest: squeezed once here,
 * not at every request. The server hands out what the browser takes; the worker's list knows the plain names only.
 */
function squeezed(): Plugin {
  let out = OUT;
  return {
    name: "handsfull-squeezed",
    apply: "build",
    configResolved(config) {
      out = resolve(config.root, config.build.outDir);
    },
    closeBundle: {
      // after the worker has been written and has listed the files
      order: "post",
      sequential: true,
      async handler() {
        for (const entry of await readdir(out, { recursive: true, withFileTypes: true })) {
          if (!entry.isFile() || !/\.(js|css|html|svg|wasm|webmanifest)$/.test(entry.name)) continue;
          const path = join(entry.parentPath, entry.name);
          const plain = await readFile(path);
          await writeFile(`${path}.br`, brotliCompressSync(plain));
          await writeFile(`${path}.gz`, gzipSync(plain, { level: 9 }));
        }
      },
    },
  };
}

export default defineConfig({
  root: HERE,
  // the same code whoever builds it: the test runner's NODE_ENV would have every element carry its place in the source
  oxc: { jsx: { runtime: "automatic", importSource: "hono/jsx/dom", development: false } },
  build: {
    outDir: OUT,
    emptyOutDir: true,
    target: "es2022",
    // every browser that runs this build knows the link itself
    modulePreload: { polyfill: false },
    // a strict content policy has no room for data: addresses
    assetsInlineLimit: 0,
    rolldownOptions: {
      output: {
        codeSplitting: {
          groups: [
            {
              // the reader and its words are most of the weight and change apart from the screens: a newer screen
              // leaves the device the reader it has
              name: "reader",
              test: /\/core\/(?!pages\/(glossary|help|sayings))|\/dale-chall\//,
            },
          ],
        },
      },
      treeshake: {
        // core is pure, so what only a later chunk uses of it need not come with the first one through core/index.ts
        moduleSideEffects: (id) => !/\/core\/[^?]*\.ts$/.test(id),
      },
    },
  },
  worker: { format: "es" },
  // the speech engine's package brings a stand-in for what every browser has by now
  resolve: { alias: { "blob-polyfill": join(HERE, "speech/own-ear/blob.ts") } },
  plugins: [serviceWorker(), squeezed()],
});
