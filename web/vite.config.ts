import { createHash } from "node:crypto";
import { readdir, readFile, writeFile } from "node:fs/promises";
import { join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
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

export default defineConfig({
  root: HERE,
  oxc: { jsx: { runtime: "automatic", importSource: "hono/jsx/dom" } },
  build: {
    outDir: OUT,
    emptyOutDir: true,
    target: "es2022",
    modulePreload: false,
    // a strict content policy has no room for data: addresses
    assetsInlineLimit: 0,
    rolldownOptions: {
      treeshake: {
        // core is pure, so what only a later chunk uses of it need not come with the first one through core/index.ts
        moduleSideEffects: (id) => !/\/core\/[^?]*\.ts$/.test(id),
      },
    },
  },
  plugins: [serviceWorker()],
});
