import { createRoute, z } from "@hono/zod-openapi";
import { jobListSchema, jobViewSchema } from "../../../core/shapes/served.ts";
import { dateSchema } from "../../../core/shapes/valve.ts";
import { may } from "../../access.ts";
import { seenOf } from "../../accounts/sites-seen.ts";
import { Refusal } from "../../errors.ts";
import { blank, type Given, json, notFound, refusals, router } from "../kit.ts";
import { jobsOf, jobView } from "./store.ts";

const one = createRoute({
  ...may("read"),
  method: "get",
  path: "/api/jobs/{id}",
  summary: "One job: valve, phrases in the order said, entries that stand, consequences",
  request: { params: z.object({ id: z.uuid() }) },
  responses: { 200: json(jobViewSchema, "the job"), ...notFound, ...refusals },
});

const list = createRoute({
  ...may("read"),
  method: "get",
  path: "/api/jobs",
  summary: "The jobs of a site's day; without a day the newest 200",
  request: {
    query: z.object({ site: blank(z.string().max(80).optional()), day: blank(dateSchema.optional()) }),
  },
  responses: { 200: json(jobListSchema, "oldest first"), ...refusals },
});

export function jobRoutes({ store }: Given) {
  const routes = router();
  routes.openapi(one, async (c) => {
    const { id } = c.req.valid("param");
    const job = await jobView(store, id, c.get("who").sees);
    if (!job) throw new Refusal(404, `No job ${id} is stored here. GET /api/jobs?site=&day= lists those that are.`);
    return c.json(job, 200);
  });
  routes.openapi(list, async (c) => {
    const { site, day } = c.req.valid("query");
    const jobs = await jobsOf(store, seenOf(c.get("who").sees, site), day);
    return c.json({ ...(day ? { day } : {}), jobs }, 200);
  });
  return routes;
}
