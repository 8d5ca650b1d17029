import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { serveStatic } from "@hono/node-server/serve-static";
import type { Context } from "hono";
import { Refusal } from "../../errors.ts";
import { WEB } from "../../places.ts";
import { router } from "../kit.ts";

/**
 * The built client, squeezed where the browser takes it and the build has it. Files named by their content are kept
 * for good; the rest is asked for again each time.
 */
export function staticRoutes(folder: string = WEB) {
  const routes = router();
  const files = serveStatic({ root: folder, precompressed: true });
  routes.use("*", async (c, next) => {
    const answer = await files(c, next);
    if (!(answer instanceof Response)) return answer;
    const byContent = /^\/assets\/.+-[\w-]{8,}\.\w+$/.test(c.req.path);
    answer.headers.set("cache-control", byContent ? "public, max-age=31536000, immutable" : "no-cache");
    return answer;
  });
  // the client draws its own screens: any page address is answered with the one page
  routes.get("*", async (c) => {
    if (!asksForPage(c))
      throw new Refusal(404, `Nothing is served at ${c.req.path.slice(0, 200)}. The pages start at /.`);
    try {
      const page = await readFile(join(folder, "index.html"), "utf8");
      return c.html(page, 200, { "cache-control": "no-cache" });
    } catch (cause) {
      throw new Refusal(404, "The pages are not built yet: run npm run build.", { cause });
    }
  });
  return routes;
}

function asksForPage(c: Context): boolean {
  if (/^\/(api|report)(\/|$)/.test(c.req.path)) return false;
  if (/\.\w+$/.test(c.req.path)) return false;
  return (c.req.header("accept") ?? "").includes("text/html");
}
