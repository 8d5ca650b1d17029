import { createRoute, z } from "@hono/zod-openapi";
import { dueListSchema } from "../../../core/shapes/served.ts";
import { may } from "../../access.ts";
import { seenOf } from "../../accounts/sites-seen.ts";
import { blank, type Given, json, refusals, router } from "../kit.ts";
import { dueWithin } from "./store.ts";

const list = createRoute({
  ...may("read"),
  method: "get",
  path: "/api/due",
  summary:
    "What is overdue or falls due within so many days (30): severe service first, then by date; all, or page by page with `limit`",
  request: {
    query: z.object({
      site: blank(z.string().max(80).optional()),
      days: blank(z.coerce.number().int().min(0).max(3650).default(30)),
      limit: blank(z.coerce.number().int().min(1).max(1000).optional()),
      after: blank(z.string().max(400).optional()),
    }),
  },
  responses: { 200: json(dueListSchema, "the due board"), ...refusals },
});

export function dueRoutes({ store }: Given) {
  const routes = router();
  routes.openapi(list, async (c) => {
    const { site, days, limit, after } = c.req.valid("query");
    return c.json(await dueWithin(store, seenOf(c.get("who").sees, site), days, { limit, after }), 200);
  });
  return routes;
}
