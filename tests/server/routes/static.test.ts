import { mkdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { brotliCompressSync, brotliDecompressSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { bench, folder } from "../app-under-test.ts";

const PAGE = { accept: "text/html,application/xhtml+xml" };

async function client() {
  const web = await folder();
  await mkdir(join(web, "assets"));
  await writeFile(join(web, "index.html"), "<!doctype html><title>client</title>");
  await writeFile(join(web, "sw.js"), "// worker");
  await writeFile(join(web, "assets/index-BxuYVRgr.js"), "// code");
  return { ...(await bench(web)), web };
}

describe("the built client", () => {
  it("is one page at every address that is none of ours", async () => {
    const { app } = await client();
    for (const path of ["/", "/bench", "/desk/jobs/7", "/valves/LCV-213"]) {
      const answer = await app.request(path, { headers: PAGE });
      expect(answer.status).toBe(200);
      expect(answer.headers.get("cache-control")).toBe("no-cache");
      expect(await answer.text()).toContain("client");
    }
  });

  it("is not what a missing file, a call or another kind of client gets", async () => {
    const { app } = await client();
    for (const path of ["/missing.js", "/api/nothing", "/report/other"]) {
      expect((await app.request(path, { headers: PAGE })).status).toBe(404);
    }
    expect((await app.request("/bench", { headers: { accept: "application/json" } })).status).toBe(404);
    expect((await app.request("/bench", { method: "POST", headers: PAGE })).status).toBe(404);
  });

  it("is squeezed for whoever takes it, and plain for whoever does not", async () => {
    const { app, web } = await client();
    await writeFile(join(web, "assets/index-BxuYVRgr.js.br"), brotliCompressSync("// code"));
    const path = "/assets/index-BxuYVRgr.js";
    const squeezed = await app.request(path, { headers: { "accept-encoding": "gzip, br" } });
    expect(squeezed.headers.get("content-encoding")).toBe("br");
    expect(squeezed.headers.get("content-type")).toContain("javascript");
    expect(squeezed.headers.get("vary")).toContain("Accept-Encoding");
    expect(brotliDecompressSync(Buffer.from(await squeezed.arrayBuffer())).toString()).toBe("// code");
    const plain = await app.request(path);
    expect(plain.headers.get("content-encoding")).toBeNull();
    expect(await plain.text()).toBe("// code");
  });

  it("keeps files named by their content for good, and asks again for the worker", async () => {
    const { app } = await client();
    const asset = await app.request("/assets/index-BxuYVRgr.js");
    expect(asset.headers.get("cache-control")).toContain("immutable");
    expect(asset.headers.get("content-type")).toContain("javascript");
    expect((await app.request("/sw.js")).headers.get("cache-control")).toBe("no-cache");
  });

  it("does not leave its folder", async () => {
    const { app } = await client();
    for (const path of ["/..%2fpackage.json", "/assets/%2e%2e/%2e%2e/package.json", "/assets/..%5c..%5cpackage.json"]) {
      expect((await app.request(path)).status).toBe(404);
    }
  });

  it("says what to do where it is not built", async () => {
    const { app } = await bench(await folder());
    const answer = await app.request("/", { headers: PAGE });
    expect(answer.status).toBe(404);
    expect((await answer.json()).detail).toContain("npm run build");
  });
});
