import { createRoute, z } from "@hono/zod-openapi";
import { siteKeySchema } from "../../../core/shapes/served.ts";
import { familySentSchema, siteFamiliesSchema } from "../../../core/shapes/site-family.ts";
import { may } from "../../access.ts";
import { Refusal } from "../../errors.ts";
import { dataOf, ownFamiliesAt } from "../../reading/site-families.ts";
import { type Given, json, notFound, refusals, router, writeRefusals } from "../kit.ts";
import { keepFamily } from "./store.ts";

const params = z.object({ site: siteKeySchema });

const read = createRoute({
  ...may("read"),
  method: "get",
  path: "/api/sites/{site}/families",
  summary: "The valve families that a site set up for itself, beside or in place of those that ship",
  request: { params },
  responses: { 200: json(siteFamiliesSchema, "by code"), ...refusals },
});

const put = createRoute({
  ...may("set_up"),
  method: "put",
  path: "/api/sites/{site}/families",
  summary: "Set up a valve family of the site, say anew what it is, or take it back; earlier ones stay in the record",
  request: { params, body: { required: true, content: { "application/json": { schema: familySentSchema } } } },
  responses: { 200: json(siteFamiliesSchema, "as they stand now"), ...notFound, ...refusals, ...writeRefusals },
});

export function familyRoutes({ store }: Given) {
  const routes = router();
  const standing = async (site: string) => ({ site, families: dataOf(await ownFamiliesAt(store.db, site)) });
  routes.openapi(read, async (c) => c.json(await standing(c.req.valid("param").site), 200));
  routes.openapi(put, async (c) => {
    const { site } = c.req.valid("param");
    const kept = await keepFamily(store, site, c.req.valid("json"), c.get("who"));
    if (!kept) throw new Refusal(404, `${site} has no family of its own by that code.`);
    return c.json(await standing(site), 200);
  });
  return routes;
}
