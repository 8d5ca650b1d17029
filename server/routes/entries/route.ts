import { createRoute, z } from "@hono/zod-openapi";
import { siteKeySchema } from "../../../core/shapes/served.ts";
import { dateSchema } from "../../../core/shapes/valve.ts";
import { may } from "../../access.ts";
import { Refusal, refusalOf } from "../../errors.ts";
import { addDays } from "../../moments.ts";
import { todayIn, zoneOf } from "../../reading/what-is-known.ts";
import { entriesCsv } from "../../reports/entries-csv.ts";
import { entryRows } from "../../reports/entry-rows.ts";
import { blank, type Given, refusals, router } from "../kit.ts";

const MOST_DAYS = 400;
const DAYS_UNLESS_SAID = 30;

const query = z.object({
  site: siteKeySchema,
  from: blank(dateSchema.optional()),
  to: blank(dateSchema.optional()),
  form: blank(z.enum(["csv", "jsonl"]).default("csv")),
});

const guarded = may("read_all");
const list = createRoute({
  ...guarded,
  method: "get",
  path: "/api/entries",
  summary: "The entries that stand at a site between two days (the last 30), as CSV or as JSON Lines (form=jsonl)",
  request: { query },
  responses: {
    200: {
      description: "one entry a line, with the phrase it was read from; at most 400 days at once",
      content: { "text/csv": { schema: z.string() }, "application/x-ndjson": { schema: z.string() } },
    },
    ...refusals,
  },
});

export function entryRoutes({ store }: Given) {
  const routes = router();
  // lines are neither text nor JSON to the router's types, so the path is described and served side by side
  routes.openAPIRegistry.registerPath(list);
  routes.get(list.path, guarded.middleware, async (c) => {
    const asked = query.safeParse(c.req.query());
    if (!asked.success) throw refusalOf(asked.error, "query (/api/entries?site=SITE&from=YYYY-MM-DD&to=YYYY-MM-DD)");
    const { site, form } = asked.data;
    const to = asked.data.to ?? todayIn(await zoneOf(store.db, site));
    const from = asked.data.from ?? addDays(to, -DAYS_UNLESS_SAID);
    if (from > to) throw new Refusal(400, "from comes after to: turn them round.");
    if (addDays(from, MOST_DAYS) < to) throw new Refusal(400, `Ask for at most ${MOST_DAYS} days at once.`);
    const rows = await entryRows(store, site, from, to);
    const [type, text] =
      form === "csv"
        ? ["text/csv", entriesCsv(rows)]
        : ["application/x-ndjson", rows.map((row) => `${JSON.stringify(row)}\n`).join("")];
    return c.body(text, 200, {
      "content-type": `${type}; charset=utf-8`,
      "content-disposition": `attachment; filename="entries-${from}-to-${to}.${form}"`,
      "cache-control": "no-store",
    });
  });
  return routes;
}
