import { createRoute, z } from "@hono/zod-openapi";
import { tagKeySchema, valveListSchema, valveSetUpSchema, valveViewSchema } from "../../../core/shapes/served.ts";
import { may } from "../../access.ts";
import { mustSee, seenOf } from "../../accounts/sites-seen.ts";
import { Refusal } from "../../errors.ts";
import { blank, type Given, json, notFound, refusals, router, unclear, writeRefusals } from "../kit.ts";
import { setUpValve, sitesWith, valvesOf, valveView } from "./store.ts";

const query = z.object({ site: blank(z.string().max(80).optional()) });
const params = z.object({ tag: tagKeySchema });

const list = createRoute({
  ...may("read"),
  method: "get",
  path: "/api/valves",
  summary: "Every valve that was set up or named",
  request: { query },
  responses: { 200: json(valveListSchema, "by site and tag"), ...refusals },
});

const one = createRoute({
  ...may("read"),
  method: "get",
  path: "/api/valves/{tag}",
  summary: "One valve: what is known, its history, its seat, what is due, what is open",
  request: { params, query },
  responses: { 200: json(valveViewSchema, "the valve"), ...notFound, ...unclear, ...refusals },
});

const put = createRoute({
  ...may("set_up"),
  method: "put",
  path: "/api/valves/{tag}",
  summary: "Set up a valve, or say anew what is known of it; earlier records stay",
  request: {
    params,
    body: { required: true, content: { "application/json": { schema: valveSetUpSchema.partial({ tag: true }) } } },
  },
  responses: { 200: json(valveSetUpSchema, "as it stands now"), ...refusals, ...writeRefusals },
});

export function valveRoutes({ store }: Given) {
  const routes = router();
  routes.openapi(list, async (c) => {
    const seen = seenOf(c.get("who").sees, c.req.valid("query").site);
    return c.json({ valves: await valvesOf(store, seen) }, 200);
  });
  routes.openapi(one, async (c) => {
    const { tag } = c.req.valid("param");
    const { site } = c.req.valid("query");
    const at = await sitesWith(store, tag, c.get("who").sees);
    const chosen = site === undefined ? at : at.filter((one) => one === site);
    const [only] = chosen;
    if (only === undefined) {
      const where = at.length > 0 ? ` It is known at: ${at.map((one) => one || "(no site)").join(", ")}.` : "";
      throw new Refusal(
        404,
        `No valve ${tag} is known${site ? ` at ${site}` : ""}.${where} GET /api/valves lists all.`,
      );
    }
    if (chosen.length > 1) {
      throw new Refusal(
        409,
        `${tag} is known at ${at.map((one) => one || "(no site)").join(", ")}: add ?site= to choose.`,
      );
    }
    return c.json(await valveView(store, only, tag), 200);
  });
  routes.openapi(put, async (c) => {
    const { tag } = c.req.valid("param");
    const valve = c.req.valid("json");
    if (valve.tag !== undefined && valve.tag !== tag) {
      throw new Refusal(400, `The path names ${tag} and the body ${valve.tag}: send one tag.`);
    }
    mustSee(c.get("who").sees, valve.site);
    const set = { ...valve, tag };
    await setUpValve(store, set, c.get("who"));
    return c.json(set, 200);
  });
  return routes;
}
