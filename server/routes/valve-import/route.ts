import { createRoute, z } from "@hono/zod-openapi";
import { FAMILIES } from "../../../core/index.ts";
import { siteKeySchema } from "../../../core/shapes/served.ts";
import { valveListReadSchema, valveListSentSchema } from "../../../core/shapes/valve-list.ts";
import { may } from "../../access.ts";
import { Refusal } from "../../errors.ts";
import { ownFamiliesAt } from "../../reading/site-families.ts";
import { type Given, json, refusals, router, writeRefusals } from "../kit.ts";
import { knownAt, setUpValve } from "../valves/store.ts";
import { readList } from "./read-list.ts";

const post = createRoute({
  ...may("set_up"),
  method: "post",
  path: "/api/sites/{site}/valve-list",
  summary: "A list of valves as CSV: what each row would do, and, with `apply`, all of it done",
  description:
    "The first row names the columns; only `tag` is needed. Without `apply` nothing is kept. With it, nothing is kept " +
    "where a single row is refused. A row says all that is known of its valve: what it leaves out is unsaid.",
  request: {
    params: z.object({ site: siteKeySchema }),
    body: { required: true, content: { "application/json": { schema: valveListSentSchema } } },
  },
  responses: { 200: json(valveListReadSchema, "row by row"), ...refusals, ...writeRefusals },
});

/** Valves out of a spreadsheet. */
export function valveImportRoutes({ store }: Given) {
  const routes = router();
  routes.openapi(post, async (c) => {
    const { site } = c.req.valid("param");
    const { csv, apply = false } = c.req.valid("json");
    const own = await ownFamiliesAt(store.db, site);
    const families = [...new Set([...FAMILIES.map((one) => one.family), ...own.keys()])];
    const rows = readList(csv, { site, families }, await knownAt(store, site));
    const of = (becomes: string) => rows.filter((row) => row.becomes === becomes).length;
    if (apply && of("refused") > 0)
      throw new Refusal(400, `${of("refused")} rows are refused: mend them and send the list again. Nothing was kept.`);
    if (apply) {
      // each joins this one: all of them or none
      await store.write(async () => {
        for (const { becomes, valve } of rows)
          if (valve && becomes !== "same") await setUpValve(store, { ...valve, site }, c.get("who"));
      });
    }
    const told = rows.map(({ valve: _, ...row }) => row);
    const counts = { new: of("new"), changed: of("changed"), same: of("same"), refused: of("refused") };
    return c.json({ rows: told, ...counts, applied: apply }, 200);
  });
  return routes;
}
