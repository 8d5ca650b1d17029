import { createRoute, z } from "@hono/zod-openapi";
import { carryList } from "../../../core/index.ts";
import { carryListSchema } from "../../../core/shapes/fleet.ts";
import { isStockName } from "../../../core/shapes/stock.ts";
import { may } from "../../access.ts";
import { seenOf } from "../../accounts/sites-seen.ts";
import { recordedValves, todayAt } from "../../reading/recorded-valves.ts";
import { blank, type Given, json, refusals, router } from "../kit.ts";
import { stockAt } from "../stock/store.ts";

const STOCK = /^([^:]+):(\d{1,6})$/;

/** "packing:4,seat/balanced_dump/2:1": part, or part/family, or part/family/size, and how many are on hand. */
const stockText = z
  .string()
  .max(4000)
  .transform((text, c) => {
    const stock: Record<string, number> = {};
    for (const piece of text.split(",").map((one) => one.trim())) {
      if (piece === "") continue;
      const read = STOCK.exec(piece);
      const [, name = "", count] = read ?? [];
      if (!isStockName(name)) {
        c.addIssue({
          code: "custom",
          message: `"${piece.slice(0, 60)}" is no stock: write part:count, or part/family/size:count`,
        });
        return z.NEVER;
      }
      stock[name] = (stock[name] ?? 0) + Number(count);
    }
    return stock;
  });

const list = createRoute({
  ...may("read"),
  method: "get",
  path: "/api/carry",
  summary: "What to carry for the work due within so many days (14): certain and likely demand, enough with 95 %",
  request: {
    query: z.object({
      site: blank(z.string().max(80).optional()),
      days: blank(z.coerce.number().int().min(0).max(3650).default(14)),
      stock: blank(stockText.optional()).openapi({
        type: "string",
        description:
          "what is on hand: part:count, or part/family/size:count, with commas between; left out, what the site keeps",
      }),
    }),
  },
  responses: { 200: json(carryListSchema, "by part, family and size"), ...refusals },
});

export function carryRoutes({ store }: Given) {
  const routes = router();
  routes.openapi(list, async (c) => {
    const { site, days, stock } = c.req.valid("query");
    const seen = seenOf(c.get("who").sees, site);
    const valves = await recordedValves(store, seen);
    const today = await todayAt(store, seen);
    // over several sites nothing is on hand: what lies on one shelf is no help at another
    const kept = stock === undefined && site !== undefined;
    const onHand = kept ? await stockAt(store, site) : (stock ?? {});
    const ask = { today, days, stock: onHand, standing: kept, ...(site ? { site } : {}) };
    return c.json(carryList(valves, ask), 200);
  });
  return routes;
}
