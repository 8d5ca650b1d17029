import { createRoute, z } from "@hono/zod-openapi";
import { exportLines, fleetReliability } from "../../../core/index.ts";
import { reliabilitySchema } from "../../../core/shapes/fleet.ts";
import { may } from "../../access.ts";
import { seenOf } from "../../accounts/sites-seen.ts";
import { refusalOf } from "../../errors.ts";
import { recordedValves, todayAt } from "../../reading/recorded-valves.ts";
import { blank, type Given, json, refusals, router } from "../kit.ts";

const query = z.object({ site: blank(z.string().max(80).optional()) });

const fleet = createRoute({
  ...may("read_all"),
  method: "get",
  path: "/api/reliability",
  summary: "Failures per valve-year with exact bounds, trends, and the valves of which most trouble is to be expected",
  request: { query },
  responses: { 200: json(reliabilitySchema, "worst valves first"), ...refusals },
});

const lines = createRoute({
  ...may("read_all"),
  method: "get",
  path: "/api/export",
  summary: "Failures and maintenance with the codes of ISO 14224, as JSON Lines",
  request: { query },
  responses: {
    200: {
      description: "one JSON object a line: see exportLineSchema; `sure` says how far the codes are to be trusted",
      content: { "application/x-ndjson": { schema: z.string() } },
    },
    ...refusals,
  },
});

export function reliabilityRoutes({ store }: Given) {
  const routes = router();
  routes.openapi(fleet, async (c) => {
    const { site } = c.req.valid("query");
    const seen = seenOf(c.get("who").sees, site);
    return c.json(fleetReliability(await recordedValves(store, seen), await todayAt(store, seen), [], site), 200);
  });
  // Lines are neither text nor JSON to the router's types, so the path is described and served side by side.
  routes.openAPIRegistry.registerPath(lines);
  routes.get(lines.path, lines.middleware, async (c) => {
    const asked = query.safeParse(c.req.query());
    if (!asked.success) throw refusalOf(asked.error, "query");
    const seen = seenOf(c.get("who").sees, asked.data.site);
    const made = exportLines(await recordedValves(store, seen), await todayAt(store, seen));
    return c.body(made.map((line) => `${JSON.stringify(line)}\n`).join(""), 200, {
      "content-type": "application/x-ndjson; charset=utf-8",
      "content-disposition": 'attachment; filename="record.jsonl"',
    });
  });
  return routes;
}
