import { createRoute, z } from "@hono/zod-openapi";
import { owedListSchema } from "../../../core/shapes/search.ts";
import { may } from "../../access.ts";
import { seenOf } from "../../accounts/sites-seen.ts";
import { blank, type Given, json, refusals, router } from "../kit.ts";
import { stillOwed } from "./store.ts";

const get = createRoute({
  ...may("read"),
  method: "get",
  path: "/api/follow-ups",
  summary: "What is still owed of every valve, what cannot wait first, with whom to ask",
  request: {
    query: z.object({
      site: blank(z.string().max(80).optional()),
      limit: blank(z.coerce.number().int().min(1).max(1000).default(200)),
    }),
  },
  responses: { 200: json(owedListSchema, "the most urgent, and how many in all"), ...refusals },
});

/** Follow-ups that stand open. */
export function followUpRoutes({ store }: Given) {
  const routes = router();
  routes.openapi(get, async (c) => {
    const { site, limit } = c.req.valid("query");
    return c.json(await stillOwed(store, seenOf(c.get("who").sees, site), limit), 200);
  });
  return routes;
}
