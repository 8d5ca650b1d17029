import { createRoute, z } from "@hono/zod-openapi";
import { foundListSchema, searchSchema } from "../../../core/shapes/search.ts";
import { may } from "../../access.ts";
import { seenOf } from "../../accounts/sites-seen.ts";
import { isPlace } from "../../when-said/places.ts";
import { blank, type Given, json, refusals, router } from "../kit.ts";
import { search } from "./store.ts";

const asked = searchSchema.shape;
const get = createRoute({
  ...may("read"),
  method: "get",
  path: "/api/search",
  summary: "Phrases by site, tag, words, part, condition and day, the latest first",
  request: {
    query: z.object({
      site: blank(asked.site),
      tag: blank(asked.tag),
      words: blank(asked.words),
      part: blank(asked.part),
      condition: blank(asked.condition),
      from: blank(asked.from),
      to: blank(asked.to),
      after: blank(z.string().max(200).refine(isPlace, "this is no `next` of a page before").optional()),
      limit: blank(z.coerce.number().int().min(1).max(200).default(50)),
    }),
  },
  responses: { 200: json(foundListSchema, "a page of them"), ...refusals },
});

/** Looking for something that was said. */
export function searchRoutes({ store }: Given) {
  const routes = router();
  routes.openapi(get, async (c) => {
    const { after, limit, ...wish } = c.req.valid("query");
    return c.json(await search(store, wish, seenOf(c.get("who").sees, wish.site), { most: limit, after }), 200);
  });
  return routes;
}
