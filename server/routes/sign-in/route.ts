import { createRoute, z } from "@hono/zod-openapi";
import type { Context } from "hono";
import { callerSchema, firstPasswordSchema, passwordChangeSchema, signInSchema } from "../../../core/shapes/people.ts";
import { may } from "../../access.ts";
import { bySessionToken } from "../../accounts/caller.ts";
import { cookieToken, dropCookie, giveCookie } from "../../accounts/cookie.ts";
import { callerOf } from "../../accounts/me.ts";
import { changePassword, firstPassword, signIn, signOut } from "../../accounts/signing-in.ts";
import { addressOf } from "../../accounts/this-machine.ts";
import { type Env, type Given, json, refusals, router, tooManyTries, writeRefusals } from "../kit.ts";

const body = <T>(schema: T) => ({ required: true, content: { "application/json": { schema } } });
const known = json(callerSchema, "who you are now");

const me = createRoute({
  ...may("self"),
  method: "get",
  path: "/api/me",
  summary: "Who you are here, and what you may do",
  responses: { 200: known, ...refusals },
});
const enter = createRoute({
  ...may("anyone"),
  method: "post",
  path: "/api/sign-in",
  summary: "Sign in with name and password: sets a session's cookie",
  request: { body: body(signInSchema) },
  responses: { 200: known, ...refusals, ...tooManyTries, ...writeRefusals },
});
const leave = createRoute({
  ...may("self"),
  method: "post",
  path: "/api/sign-out",
  summary: "Sign out: the session ends here and now; asked with a device's token, the device is given back",
  responses: { 200: json(z.object({ signedOut: z.literal(true) }), "done"), ...refusals, ...writeRefusals },
});
const first = createRoute({
  ...may("anyone"),
  method: "post",
  path: "/api/first-password",
  summary: "Choose a password by a one-time code, and be signed in; every session before it ends",
  request: { body: body(firstPasswordSchema) },
  responses: { 200: known, ...refusals, ...writeRefusals },
});
const change = createRoute({
  ...may("self"),
  method: "put",
  path: "/api/password",
  summary: "Change your password; every other session of yours ends",
  request: { body: body(passwordChangeSchema) },
  responses: { 200: known, ...tooManyTries, ...refusals, ...writeRefusals },
});

export function signInRoutes({ store, door }: Given) {
  const routes = router();
  const welcome = async (c: Context<Env>, token: string) => {
    giveCookie(c, door, token);
    const caller = await bySessionToken(store, token);
    if (!caller.ok) throw new Error("a session just begun is not known");
    return callerOf(store, caller.who);
  };
  routes.openapi(me, async (c) => c.json(await callerOf(store, c.get("who")), 200));
  routes.openapi(enter, async (c) => {
    const from = { who: c.get("who"), address: addressOf(c), brought: cookieToken(c, door) };
    const token = await signIn(store, from, c.req.valid("json"));
    return c.json(await welcome(c, token), 200);
  });
  routes.openapi(leave, async (c) => {
    await signOut(store, c.get("who"));
    dropCookie(c, door);
    return c.json({ signedOut: true as const }, 200);
  });
  routes.openapi(first, async (c) => {
    const token = await firstPassword(store, cookieToken(c, door), c.req.valid("json"));
    return c.json(await welcome(c, token), 200);
  });
  routes.openapi(change, async (c) => {
    await changePassword(store, c.get("who"), addressOf(c), c.req.valid("json"));
    return c.json(await callerOf(store, c.get("who")), 200);
  });
  return routes;
}
