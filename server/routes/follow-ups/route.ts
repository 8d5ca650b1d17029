import { createRoute, z } from "@hono/zod-openapi";
import { mayOwnSchema, ownedSchema } from "../../../core/shapes/owner.ts";
import { owedListSchema, ownerSentSchema } from "../../../core/shapes/search.ts";
import { may } from "../../access.ts";
import { mustSee, seenOf } from "../../accounts/sites-seen.ts";
import { Refusal } from "../../errors.ts";
import { giveFollowUp } from "../../owners/give.ts";
import { mayOwnAt, ownersOfValves } from "../../owners/owners-of.ts";
import { refreshStates } from "../../reading/valve-states.ts";
import { blank, type Given, json, notFound, refusals, router, unclear, writeRefusals } from "../kit.ts";
import { NOBODYS, stillOwed } from "./store.ts";

const site = blank(z.string().max(80).optional());

const get = createRoute({
  ...may("read"),
  method: "get",
  path: "/api/follow-ups",
  summary: "What is still owed of every valve, what cannot wait first, with who does it and whom to ask",
  request: {
    query: z.object({
      site,
      /** a person's id, or "nobody": what nobody has yet */
      owner: blank(z.union([z.literal(NOBODYS), z.uuid()]).optional()),
      limit: blank(z.coerce.number().int().min(1).max(1000).default(200)),
    }),
  },
  responses: { 200: json(owedListSchema, "the most urgent, and how many in all"), ...refusals },
});

const people = createRoute({
  ...may("review"),
  method: "get",
  path: "/api/follow-ups/people",
  summary: "Those who can have a follow-up of a site, or of any that is seen: whoever sees it",
  request: { query: z.object({ site }) },
  responses: { 200: json(mayOwnSchema, "by name"), ...refusals },
});

const give = createRoute({
  ...may("review"),
  method: "put",
  path: "/api/follow-ups/owner",
  summary: "Give a follow-up to a person, or take it away",
  description:
    "`key` is the follow-up\u2019s own, `seen` how often it was seen to be given. Where somebody gave it meanwhile nothing " +
    "is done, and `detail` of the 409 says who did what. May be sent again safely.",
  request: { body: { required: true, content: { "application/json": { schema: ownerSentSchema } } } },
  responses: { 200: json(ownedSchema, "as it stands now"), ...notFound, ...unclear, ...refusals, ...writeRefusals },
});

/** Follow-ups that stand open, and who does them. */
export function followUpRoutes({ store }: Given) {
  const routes = router();
  routes.openapi(get, async (c) => {
    const { site: at, owner, limit } = c.req.valid("query");
    return c.json(await stillOwed(store, seenOf(c.get("who").sees, at), limit, owner), 200);
  });
  routes.openapi(people, async (c) => {
    const at = seenOf(c.get("who").sees, c.req.valid("query").site);
    return c.json({ people: (await mayOwnAt(store.db, at)).map(({ id, name }) => ({ id, name })) }, 200);
  });
  routes.openapi(give, async (c) => {
    const sent = c.req.valid("json");
    const who = c.get("who");
    const { site: at = "", tag, key } = sent;
    mustSee(who.sees, at);
    await refreshStates(store, [at]);
    const done = await store.write((tx) => giveFollowUp(tx, sent, who));
    if (!done.ok) throw new Refusal(done.status, done.problem);
    const owners = await ownersOfValves(store.db, [{ site: at, tag }]);
    return c.json(await owners.of({ site: at, tag, key }), 200);
  });
  return routes;
}
