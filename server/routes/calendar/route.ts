import { createRoute, z } from "@hono/zod-openapi";
import { siteKeySchema } from "../../../core/shapes/served.ts";
import { may } from "../../access.ts";
import { Refusal } from "../../errors.ts";
import { writeMoment } from "../../moments.ts";
import { dueCalendar } from "../../reports/due-calendar.ts";
import { dueWithin } from "../due/store.ts";
import { type Given, json, notFound, refusals, router, writeRefusals } from "../kit.ts";
import { siteOf } from "../sites/store.ts";
import { closeFeed, feedOf, openFeed, siteOfFeed } from "./store.ts";

/** How far ahead the calendar tells. */
const AHEAD_DAYS = 400;

const ofSite = { params: z.object({ site: siteKeySchema }) };
const path = "/api/sites/{site}/calendar";

const read = createRoute({
  ...may("set_up"),
  method: "get",
  path,
  summary: "Since when a site's due dates have a calendar address; the address itself is told only when it is made",
  request: ofSite,
  responses: { 200: json(z.object({ since: z.string().optional() }), "whether there is one"), ...refusals },
});

const open = createRoute({
  ...may("set_up"),
  method: "post",
  path,
  summary: "Make a private calendar address of a site's due dates; an earlier one ends",
  request: ofSite,
  responses: {
    200: json(z.object({ address: z.string() }), "told this once: whoever has it can read"),
    ...notFound,
    ...refusals,
    ...writeRefusals,
  },
});

const close = createRoute({
  ...may("set_up"),
  method: "delete",
  path,
  summary: "Take the calendar address back: it leads nowhere from now on",
  request: ofSite,
  responses: { 200: json(z.object({ closed: z.boolean() }), "whether there was one"), ...refusals, ...writeRefusals },
});

/** A site's due dates as a calendar to subscribe to. Calendars know no sign-in: the address is the key. */
export function calendarRoutes({ store, mail }: Given) {
  const routes = router();
  routes.openapi(read, async (c) => {
    const since = await feedOf(store, c.req.valid("param").site);
    return c.json(since ? { since: writeMoment({ utc: since, offset: 0 }) } : {}, 200);
  });
  routes.openapi(open, async (c) => {
    const { site } = c.req.valid("param");
    if (!(await siteOf(store, site))) throw new Refusal(404, `No site ${site} is set up: PUT /api/sites/{site} first.`);
    return c.json({ address: `/calendar/${await openFeed(store, site, c.get("who"))}.ics` }, 200);
  });
  routes.openapi(close, async (c) => {
    return c.json({ closed: await closeFeed(store, c.req.valid("param").site, c.get("who")) }, 200);
  });
  routes.get("/calendar/:file", async (c) => {
    const [, secret = ""] = /^([\w-]{43})\.ics$/.exec(c.req.param("file")) ?? [];
    const key = await siteOfFeed(store, secret);
    const site = key === undefined ? undefined : await siteOf(store, key);
    if (!site) throw new Refusal(404, "No calendar is at this address, or it was taken back: ask for the present one.");
    const { due } = await dueWithin(store, [site.site], AHEAD_DAYS);
    return c.body(dueCalendar({ key: site.site, name: site.name }, due, mail.clock()), 200, {
      "content-type": "text/calendar; charset=utf-8",
      "content-disposition": 'inline; filename="due.ics"',
      "cache-control": "private, max-age=300",
      "x-robots-tag": "noindex",
    });
  });
  return routes;
}
