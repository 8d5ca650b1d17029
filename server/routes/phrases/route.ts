import { createRoute, z } from "@hono/zod-openapi";
import { deliverySchema, jobSchema, phraseResultSchema, phraseSchema } from "../../../core/shapes/wire.ts";
import { may } from "../../access.ts";
import { Refusal, refusalOf } from "../../errors.ts";
import { type Given, json, refusals, router, writeRefusals } from "../kit.ts";
import { makeDeliver } from "./deliver.ts";

const jobResultSchema = z.object({
  id: z.string(),
  status: z.enum(["stored", "known", "refused"]),
  problem: z.string().optional(),
});

const post = createRoute({
  ...may("say"),
  method: "post",
  path: "/api/phrases",
  summary: "Deliver jobs and phrases; each is answered by itself, and may be sent again safely",
  description:
    "Each of `jobs` is a `Job` and each of `phrases` a `Phrase` (see components). At most 200 of each and 1 MB. " +
    "`stored` and `known` are on disk; `refused` says why in `problem` and changes nothing.",
  request: { body: { required: true, content: { "application/json": { schema: deliverySchema } } } },
  responses: {
    200: json(
      z.object({ results: z.array(phraseResultSchema), jobs: z.array(jobResultSchema) }),
      "one result a phrase, in the order sent; one a job likewise",
    ),
    ...refusals,
    ...writeRefusals,
  },
});

export function phraseRoutes(given: Given) {
  const routes = router();
  const deliver = makeDeliver(given);
  routes.openAPIRegistry.register("Job", jobSchema);
  routes.openAPIRegistry.register("Phrase", phraseSchema);
  routes.openapi(
    post,
    async (c) => {
      const raw: object = await c.req.json();
      if (!("jobs" in raw) && !("phrases" in raw)) {
        // a misspelt key would otherwise be answered 200 and the words be lost
        throw new Refusal(400, 'Send {"jobs": [...], "phrases": [...]}: at least one of the two.');
      }
      const delivered = await deliver(c.req.valid("json"), c.get("who"));
      for (const { status } of delivered.results) given.metrics.count("handsfull_phrases", { became: status });
      return c.json(delivered, 200);
    },
    (result) => {
      if (result.success) return;
      if (result.error.issues.some((issue) => issue.code === "too_big")) {
        throw new Refusal(413, "At most 200 phrases and 200 jobs a request: send them in several.");
      }
      throw refusalOf(result.error, "body");
    },
  );
  return routes;
}
