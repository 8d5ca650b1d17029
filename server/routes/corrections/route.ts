import { createRoute, z } from "@hono/zod-openapi";
import { correctionSchema } from "../../../core/shapes/served.ts";
import { may } from "../../access.ts";
import { Refusal } from "../../errors.ts";
import { type Given, json, notFound, refusals, router, unclear, writeRefusals } from "../kit.ts";
import { correct } from "./store.ts";

const post = createRoute({
  ...may("correct"),
  method: "post",
  path: "/api/corrections",
  summary: "Strike a phrase, or have other words read in its place; the phrase stays as heard",
  request: { body: { required: true, content: { "application/json": { schema: correctionSchema } } } },
  responses: {
    200: json(z.object({ id: z.string(), status: z.enum(["stored", "known"]) }), "kept"),
    ...notFound,
    ...unclear,
    ...refusals,
    ...writeRefusals,
  },
});

export function correctionRoutes(given: Given) {
  const routes = router();
  routes.openapi(post, async (c) => {
    const sent = c.req.valid("json");
    const done = await correct(given.store, sent, c.get("who"));
    if (!done.ok) throw new Refusal(done.status, done.problem);
    return c.json({ id: sent.id, status: done.status }, 200);
  });
  return routes;
}
