import { createRoute, z } from "@hono/zod-openapi";
import type { Site } from "../../../core/index.ts";
import { reportSettingsSchema, reportStateSchema, sendAskSchema } from "../../../core/shapes/sending.ts";
import { siteKeySchema } from "../../../core/shapes/served.ts";
import { dateSchema } from "../../../core/shapes/valve.ts";
import { may } from "../../access.ts";
import { Refusal } from "../../errors.ts";
import { dayState } from "../../reports/day-state.ts";
import { issue } from "../../reports/issue.ts";
import { type Given, json, notFound, refusals, router, unclear, writeRefusals } from "../kit.ts";
import { siteOf } from "../sites/store.ts";
import { keepSettings, settingsOf } from "./store.ts";

const ofSite = z.object({ site: siteKeySchema });
const ofDay = ofSite.extend({ day: dateSchema });
const body = <T extends z.ZodType>(schema: T) => ({
  body: { required: true, content: { "application/json": { schema } } },
});

const read = createRoute({
  ...may("read_all"),
  method: "get",
  path: "/api/sites/{site}/report",
  summary: "Who gets a site's report of the day, and when; nothing where nobody said",
  request: { params: ofSite },
  responses: { 200: json(z.object({ settings: reportSettingsSchema.optional() }), "as set"), ...notFound, ...refusals },
});

const put = createRoute({
  ...may("set_up"),
  method: "put",
  path: "/api/sites/{site}/report",
  summary: "Say who gets a site's report of the day, and when",
  request: { params: ofSite, ...body(reportSettingsSchema) },
  responses: { 200: json(reportSettingsSchema, "as it stands now"), ...notFound, ...refusals, ...writeRefusals },
});

const state = createRoute({
  ...may("read_all"),
  method: "get",
  path: "/api/sites/{site}/reports/{day}",
  summary: "Whether a day's report has gone, to whom, and if not, why",
  request: { params: ofDay },
  responses: { 200: json(reportStateSchema, "the state in words"), ...notFound, ...refusals },
});

const send = createRoute({
  ...may("send_mail"),
  method: "post",
  path: "/api/sites/{site}/reports/{day}",
  summary: "Hand a day's report to the outbox: the first, a correction, or the last once more to those who lack it",
  request: { params: ofDay, ...body(sendAskSchema) },
  responses: { 200: json(reportStateSchema, "handed over"), ...notFound, ...unclear, ...refusals, ...writeRefusals },
});

/** The report of the day going out: settings, state, sending by hand. */
export function sendingRoutes({ store, mail }: Given) {
  const routes = router();
  const known = async (key: string): Promise<Site> => {
    const site = await siteOf(store, key);
    if (!site) throw new Refusal(404, `No site ${key} is set up: PUT /api/sites/{site} with its name and zone first.`);
    return site;
  };
  const about = { store, clock: mail.clock, post: mail.post };
  routes.openapi(read, async (c) => {
    const site = await known(c.req.valid("param").site);
    const settings = await settingsOf(store.db, site.site);
    return c.json(settings ? { settings: reportSettingsSchema.parse(settings) } : {}, 200);
  });
  routes.openapi(put, async (c) => {
    const site = await known(c.req.valid("param").site);
    const settings = c.req.valid("json");
    await keepSettings(store, site, settings, mail.clock(), c.get("who"));
    mail.wake();
    return c.json(settings, 200);
  });
  routes.openapi(state, async (c) => {
    const { site, day } = c.req.valid("param");
    return c.json(await dayState(about, await known(site), day), 200);
  });
  routes.openapi(send, async (c) => {
    const { site: key, day } = c.req.valid("param");
    const site = await known(key);
    const issuing = { store, clock: mail.clock, from: mail.from, server: mail.post.server !== undefined };
    const issued = await issue(issuing, key, day, { by: "person", who: c.get("who"), ...c.req.valid("json") });
    if (!issued.ok) throw new Refusal(issued.status, issued.problem);
    mail.wake();
    return c.json(await dayState(about, site, day), 200);
  });
  return routes;
}
