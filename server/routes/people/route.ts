import { createRoute, z } from "@hono/zod-openapi";
import {
  auditListSchema,
  codeWishSchema,
  enrolledSchema,
  enrolmentSchema,
  newPersonSchema,
  oneTimeCodeSchema,
  peopleSchema,
  personChangeSchema,
} from "../../../core/shapes/people.ts";
import { may, type Who } from "../../access.ts";
import { ENROL_FIRST, whoOfDevice } from "../../accounts/caller.ts";
import { CODE_SPENT, makeCode, takeCode } from "../../accounts/codes.ts";
import { enrolDevice, revokeDevice } from "../../accounts/devices.ts";
import { callerOf } from "../../accounts/me.ts";
import {
  addPerson,
  changePerson,
  type Done,
  everyone,
  letGo,
  NO_PERSON,
  personManaged,
} from "../../accounts/people.ts";
import { lastActs } from "../../audit/read.ts";
import { Refusal } from "../../errors.ts";
import { now, readMoment } from "../../moments.ts";
import { blank, type Given, json, notFound, refusals, router, unclear, writeRefusals } from "../kit.ts";

const params = z.object({ id: z.uuid() });
const body = <T>(schema: T) => ({ required: true, content: { "application/json": { schema } } });
const everybody = json(peopleSchema, "as it stands now: who has left comes last");
const answers = { 200: everybody, ...notFound, ...unclear, ...refusals, ...writeRefusals };

const list = createRoute({
  ...may("manage_people"),
  method: "get",
  path: "/api/people",
  summary: "Everybody enrolled here whom the caller manages, with their devices",
  responses: { 200: everybody, ...refusals },
});
const add = createRoute({
  ...may("manage_people"),
  method: "post",
  path: "/api/people",
  summary: "Enrol a person",
  request: { body: body(newPersonSchema) },
  responses: answers,
});
const change = createRoute({
  ...may("manage_people"),
  method: "put",
  path: "/api/people/{id}",
  summary: "Give a person other roles, or keep him or her to other sites",
  request: { params, body: body(personChangeSchema) },
  responses: answers,
});
const remove = createRoute({
  ...may("manage_people"),
  method: "delete",
  path: "/api/people/{id}",
  summary: "A person has left: every device and session of theirs ends",
  request: { params },
  responses: answers,
});
const code = createRoute({
  ...may("manage_people"),
  method: "post",
  path: "/api/people/{id}/codes",
  summary: "A one-time code with which a person's device is enrolled, or a password chosen",
  request: { params, body: body(codeWishSchema) },
  responses: { 200: json(oneTimeCodeSchema, "shown once"), ...notFound, ...refusals, ...writeRefusals },
});
const revoke = createRoute({
  ...may("manage_people"),
  method: "delete",
  path: "/api/devices/{id}",
  summary: "Revoke a device: it is refused from now on",
  request: { params },
  responses: answers,
});
const enrol = createRoute({
  ...may("anyone"),
  method: "post",
  path: "/api/enrolments",
  summary: "Exchange a one-time code for the bearer token of this device",
  request: { body: body(enrolmentSchema) },
  responses: { 200: json(enrolledSchema, "the token is told once"), ...refusals, ...writeRefusals },
});
const trail = createRoute({
  ...may("every_site"),
  method: "get",
  path: "/api/audit",
  summary: "The latest acts of the audit trail",
  request: { query: z.object({ most: blank(z.coerce.number().int().min(1).max(1000).default(100)) }) },
  responses: { 200: json(auditListSchema, "latest first"), ...refusals },
});

export function peopleRoutes({ store }: Given) {
  const routes = router();
  routes.openapi(list, async (c) => c.json({ people: await everyone(store, c.get("who")) }, 200));
  routes.openapi(add, async (c) => {
    const who = c.get("who");
    onlyOnceEnrolled(who);
    await store.write(async (tx) => must(await addPerson(tx, who, c.req.valid("json"))));
    return c.json({ people: await everyone(store, c.get("who")) }, 200);
  });
  routes.openapi(change, async (c) => {
    const { id } = c.req.valid("param");
    await store.write(async (tx) => must(await changePerson(tx, c.get("who"), id, c.req.valid("json"))));
    return c.json({ people: await everyone(store, c.get("who")) }, 200);
  });
  routes.openapi(remove, async (c) => {
    await store.write(async (tx) => must(await letGo(tx, c.get("who"), c.req.valid("param").id)));
    return c.json({ people: await everyone(store, c.get("who")) }, 200);
  });
  routes.openapi(code, async (c) => {
    const { id } = c.req.valid("param");
    const wish = c.req.valid("json");
    const until = wish.until === undefined ? null : later(wish.until);
    const made = await store.write(async (tx) => {
      const person = await personManaged(tx, c.get("who"), id);
      if (!person) throw new Refusal(404, NO_PERSON);
      return makeCode(tx, c.get("who"), person, { for: wish.for, until });
    });
    c.header("cache-control", "no-store");
    return c.json(made, 200);
  });
  routes.openapi(revoke, async (c) => {
    await store.write(async (tx) => must(await revokeDevice(tx, c.get("who"), c.req.valid("param").id)));
    return c.json({ people: await everyone(store, c.get("who")) }, 200);
  });
  routes.openapi(enrol, async (c) => {
    const sent = c.req.valid("json");
    const done = await store.write(async (tx) => {
      const taken = await takeCode(tx, sent.code, "device");
      if (!taken) throw new Refusal(403, CODE_SPENT);
      const { person, until } = taken;
      const who = { ...c.get("who"), person: person.id };
      return { person, ...(await enrolDevice(tx, who, person, { name: sent.device ?? "a device", until })) };
    });
    c.header("cache-control", "no-store");
    const caller = await callerOf(store, whoOfDevice(done.person, done.id));
    return c.json({ token: done.token, caller }, 200);
  });
  routes.openapi(trail, async (c) => c.json({ records: await lastActs(store, c.req.valid("query").most) }, 200));
  return routes;
}

/** The first person is made where the server runs: from then on every call needs one, this page's next one too. */
function onlyOnceEnrolled(who: Who): void {
  if (who.by === "open")
    throw new Refusal(409, `The first lead is enrolled at the server’s own machine: ${ENROL_FIRST}`);
}

function must<T>(done: Done<T>): T {
  if (!done.ok) throw new Refusal(done.status, done.problem);
  return done.value;
}

function later(text: string): string {
  const moment = readMoment(text);
  if (!moment || moment.utc <= now().utc)
    throw new Refusal(400, "until must be a time yet to come, ISO 8601 with offset.");
  return moment.utc;
}
