import { createRoute, z } from "@hono/zod-openapi";
import { answerSentSchema, questionsSchema } from "../../../core/shapes/review.ts";
import { may } from "../../access.ts";
import { Refusal } from "../../errors.ts";
import { type Given, json, notFound, refusals, router, unclear, writeRefusals } from "../kit.ts";
import { answer, questionsFor } from "./store.ts";

const list = createRoute({
  ...may("say"),
  method: "get",
  path: "/api/questions",
  summary: "What a lead asks about phrases of the one who calls",
  responses: { 200: json(questionsSchema, "the oldest phrase first"), ...refusals },
});
const post = createRoute({
  ...may("say"),
  method: "post",
  path: "/api/questions/{id}",
  summary: "Answer a question, in words of one's own; may be sent again safely",
  request: {
    params: z.object({ id: z.uuid() }),
    body: { required: true, content: { "application/json": { schema: answerSentSchema } } },
  },
  responses: {
    200: json(z.object({ id: z.string(), status: z.enum(["stored", "known"]) }), "kept"),
    ...notFound,
    ...unclear,
    ...refusals,
    ...writeRefusals,
  },
});

/** Questions of a lead, and the answers of those who said the phrases. */
export function questionRoutes({ store }: Given) {
  const routes = router();
  routes.openapi(list, async (c) => c.json({ questions: await questionsFor(store, c.get("who")) }, 200));
  routes.openapi(post, async (c) => {
    const sent = c.req.valid("json");
    const done = await answer(store, c.req.valid("param").id, sent, c.get("who"));
    if (!done.ok) throw new Refusal(done.status, done.problem);
    return c.json({ id: sent.id, status: done.status }, 200);
  });
  return routes;
}
