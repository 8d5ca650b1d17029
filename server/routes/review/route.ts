import { createRoute, z } from "@hono/zod-openapi";
import {
  decisionResultSchema,
  decisionSentSchema,
  jobsToSignSchema,
  jobToSignSchema,
  reopenSchema,
  reviewItemSchema,
  reviewPageSchema,
  signSchema,
  triedSchema,
  trySchema,
} from "../../../core/shapes/review.ts";
import { siteKeySchema } from "../../../core/shapes/served.ts";
import { may, type Who } from "../../access.ts";
import { seenOf } from "../../accounts/sites-seen.ts";
import type { Tx } from "../../db/writer.ts";
import { Refusal } from "../../errors.ts";
import { type Decided, decide } from "../../review/decide.ts";
import { acceptAll, jobOf, reopen, sign } from "../../review/sign.ts";
import { blank, type Given, json, notFound, refusals, router, unclear, writeRefusals } from "../kit.ts";
import { itemOf } from "./items.ts";
import { reviewPage } from "./queue.ts";
import { jobsToSign, toSign } from "./signing.ts";
import { tryWords } from "./try-words.ts";

const byId = z.object({ id: z.uuid() });
const site = blank(siteKeySchema.optional());
const after = blank(z.string().max(400).optional());
const limit = (usual: number) => blank(z.coerce.number().int().min(1).max(100).default(usual));
const body = <T extends z.ZodType>(schema: T) => ({
  body: { required: true, content: { "application/json": { schema } } },
});
const changes = { ...notFound, ...unclear, ...refusals, ...writeRefusals };

const queue = createRoute({
  ...may("review"),
  method: "get",
  path: "/api/review",
  summary: "What waits for a lead, page by page: what can hurt or mislead first",
  request: {
    query: z.object({
      site,
      job: blank(z.uuid().optional()),
      state: blank(z.enum(["open", "asked", "settled"]).default("open")),
      after,
      limit: limit(25),
    }),
  },
  responses: { 200: json(reviewPageSchema, "a page of it, and how many wait in all"), ...refusals },
});
const one = createRoute({
  ...may("review"),
  method: "get",
  path: "/api/review/{id}",
  summary: "One phrase to look at, by its id",
  request: { params: byId },
  responses: { 200: json(reviewItemSchema, "as it stands now"), ...notFound, ...refusals },
});
const decision = createRoute({
  ...may("review"),
  method: "post",
  path: "/api/review/{id}",
  summary: "Accept a phrase, amend it, strike it, ask who said it, or put it back; what was said stays",
  description:
    "`seen` is the number of decisions seen on it. Where somebody decided otherwise meanwhile nothing is done, and " +
    "`detail` of the 409 says who did what. May be sent again safely.",
  request: { params: byId, ...body(decisionSentSchema) },
  responses: { 200: json(decisionResultSchema, "kept"), ...changes },
});
const tries = createRoute({
  ...may("review"),
  method: "post",
  path: "/api/readings",
  summary: "What other words in a phrase's place would become; nothing is kept",
  request: body(trySchema),
  responses: { 200: json(triedSchema, "as it would read in its job"), ...notFound, ...refusals },
});
const toBeSigned = createRoute({
  ...may("review"),
  method: "get",
  path: "/api/signing",
  summary: "The jobs that wait for a signature, or those signed",
  request: {
    query: z.object({ site, state: blank(z.enum(["open", "signed"]).default("open")), after, limit: limit(50) }),
  },
  responses: { 200: json(jobsToSignSchema, "the oldest first; of those signed the latest"), ...refusals },
});
const accepts = createRoute({
  ...may("review"),
  method: "post",
  path: "/api/jobs/{id}/acceptance",
  summary: "Accept every phrase of a job that nothing speaks against",
  request: { params: byId },
  responses: { 200: json(jobToSignSchema, "the job as it stands now"), ...changes },
});
const signs = createRoute({
  ...may("review"),
  method: "post",
  path: "/api/jobs/{id}/signature",
  summary: "Sign a job: what nothing speaks against is accepted with it, and nothing in it changes from then on",
  request: { params: byId, ...body(signSchema) },
  responses: { 200: json(jobToSignSchema, "signed"), ...changes },
});
const reopens = createRoute({
  ...may("review"),
  method: "post",
  path: "/api/jobs/{id}/reopening",
  summary: "Open a signed job again, with the reason",
  request: { params: byId, ...body(reopenSchema) },
  responses: { 200: json(jobToSignSchema, "open again"), ...changes },
});

/** What a lead looks at, decides and signs. */
export function reviewRoutes({ store }: Given) {
  const routes = router();
  const kept = async (act: (tx: Tx) => Promise<Decided>) => {
    const done = await store.write(act);
    if (!done.ok) throw new Refusal(done.status, done.problem);
    return done;
  };
  const jobNow = async (id: string, { sees }: Who) => {
    const job = await jobOf(store.db, id, sees);
    const [now] = job ? await toSign(store.db, [job]) : [];
    if (!now) throw new Error(`job ${id} is gone`);
    return now;
  };
  routes.openapi(queue, async (c) => {
    const { site: at, job, state, after: from, limit: most } = c.req.valid("query");
    return c.json(await reviewPage(store, seenOf(c.get("who").sees, at), { job, state, after: from, most }), 200);
  });
  routes.openapi(one, async (c) => {
    const { id } = c.req.valid("param");
    const item = await itemOf(store.db, id, c.get("who").sees);
    if (!item) throw new Refusal(404, `Nothing is left to look at in phrase ${id}. GET /api/review lists what is.`);
    return c.json(item, 200);
  });
  routes.openapi(decision, async (c) => {
    const { id } = c.req.valid("param");
    const done = await kept((tx) => decide(tx, id, c.req.valid("json"), c.get("who")));
    const item = await itemOf(store.db, id, c.get("who").sees);
    return c.json({ status: done.status, ...(item ? { item } : {}), job: await jobNow(done.job, c.get("who")) }, 200);
  });
  routes.openapi(tries, async (c) => {
    const { phrase, text } = c.req.valid("json");
    const tried = await tryWords(store, phrase, text, c.get("who").sees);
    if (!tried) throw new Refusal(404, `No phrase ${phrase} is stored here.`);
    return c.json(tried, 200);
  });
  routes.openapi(toBeSigned, async (c) => {
    const { site: at, state, after: from, limit: most } = c.req.valid("query");
    return c.json(await jobsToSign(store, seenOf(c.get("who").sees, at), { state, after: from, most }), 200);
  });
  routes.openapi(accepts, async (c) => {
    const { job } = await kept((tx) => acceptAll(tx, c.req.valid("param").id, c.get("who")));
    return c.json(await jobNow(job, c.get("who")), 200);
  });
  routes.openapi(signs, async (c) => {
    const { job } = await kept((tx) => sign(tx, c.req.valid("param").id, c.req.valid("json"), c.get("who")));
    return c.json(await jobNow(job, c.get("who")), 200);
  });
  routes.openapi(reopens, async (c) => {
    const { job } = await kept((tx) => reopen(tx, c.req.valid("param").id, c.req.valid("json"), c.get("who")));
    return c.json(await jobNow(job, c.get("who")), 200);
  });
  return routes;
}
