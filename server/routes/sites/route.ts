import { createRoute, z } from "@hono/zod-openapi";
import { siteKeySchema, siteListSchema, siteSchema } from "../../../core/shapes/served.ts";
import { may } from "../../access.ts";
import { Refusal } from "../../errors.ts";
import { isZone } from "../../moments.ts";
import { type Given, json, refusals, router, writeRefusals } from "../kit.ts";
import { setUpSite, sitesOf } from "./store.ts";

const list = createRoute({
  ...may("read"),
  method: "get",
  path: "/api/sites",
  summary: "The sites that are set up, each with its own today",
  responses: { 200: json(siteListSchema, "by name"), ...refusals },
});

const put = createRoute({
  ...may("set_up"),
  method: "put",
  path: "/api/sites/{site}",
  summary: "Set up a site, or change its name or time zone",
  request: {
    params: z.object({ site: siteKeySchema }),
    body: { required: true, content: { "application/json": { schema: siteSchema.omit({ site: true }) } } },
  },
  responses: { 200: json(siteSchema, "as it stands now"), ...refusals, ...writeRefusals },
});

export function siteRoutes({ store }: Given) {
  const routes = router();
  routes.openapi(list, async (c) => c.json({ sites: await sitesOf(store, c.get("who").sees) }, 200));
  routes.openapi(put, async (c) => {
    const site = { ...c.req.valid("param"), ...c.req.valid("json") };
    if (!isZone(site.zone)) {
      throw new Refusal(400, 'zone must be a name of the IANA time zone list, such as "America/Denver" or "Etc/UTC".');
    }
    await setUpSite(store, site, c.get("who"));
    return c.json(site, 200);
  });
  return routes;
}
