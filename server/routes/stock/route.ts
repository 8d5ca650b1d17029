import { createRoute, z } from "@hono/zod-openapi";
import { siteKeySchema } from "../../../core/shapes/served.ts";
import { siteStockSchema, stockSchema } from "../../../core/shapes/stock.ts";
import { may } from "../../access.ts";
import { type Given, json, refusals, router, writeRefusals } from "../kit.ts";
import { keepStock, stockAt } from "./store.ts";

const params = z.object({ site: siteKeySchema });

const read = createRoute({
  ...may("read"),
  method: "get",
  path: "/api/sites/{site}/stock",
  summary: "What a site has on hand; empty where it never said",
  request: { params },
  responses: { 200: json(siteStockSchema, "by part"), ...refusals },
});

const put = createRoute({
  ...may("set_up"),
  method: "put",
  path: "/api/sites/{site}/stock",
  summary: "Say what a site has on hand, all of it: what is not named is no longer counted",
  request: {
    params,
    body: { required: true, content: { "application/json": { schema: z.object({ stock: stockSchema }) } } },
  },
  responses: { 200: json(siteStockSchema, "as it stands now"), ...refusals, ...writeRefusals },
});

export function stockRoutes({ store }: Given) {
  const routes = router();
  routes.openapi(read, async (c) => {
    const { site } = c.req.valid("param");
    return c.json({ site, stock: await stockAt(store, site) }, 200);
  });
  routes.openapi(put, async (c) => {
    const { site } = c.req.valid("param");
    await keepStock(store, site, c.req.valid("json").stock, c.get("who"));
    return c.json({ site, stock: await stockAt(store, site) }, 200);
  });
  return routes;
}
