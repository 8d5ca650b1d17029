import { OpenAPIHono, type RouteConfig, z } from "@hono/zod-openapi";
import { problemSchema } from "../../core/shapes/served.ts";
import { type Door, isGuard, type Who } from "../access.ts";
import type { Store } from "../db/open.ts";
import { refusalOf } from "../errors.ts";
import type { KeptFiles } from "../keepsakes/files.ts";
import type { Log } from "../log.ts";
import type { Mailing } from "../mail/mailing.ts";
import type { Metrics } from "../metrics.ts";
import type { RecentJobs } from "../reading/keep-reading.ts";

/** What every route is given. */
export interface Given {
  store: Store;
  recent: RecentJobs;
  /** the bytes of clips and photographs */
  kept: KeptFiles;
  log: Log;
  metrics: Metrics;
  mail: Mailing;
  door: Door;
}

export type Env = { Variables: { who: Who; requestId: string } };

/** A router whose every misread query, path or body is answered as a problem, and whose every route names its right. */
export function router(): OpenAPIHono<Env> {
  const routes = new OpenAPIHono<Env>({
    defaultHook: (result) => {
      if (!result.success) throw refusalOf(result.error, result.target === "json" ? "body" : result.target);
    },
  });
  guard(routes);
  return routes;
}

/** A route that named no right would be open to everybody who is known: it is not built. */
function guard(routes: OpenAPIHono<Env>): void {
  type Adding = (first: never, ...rest: unknown[]) => unknown;
  const open = (method: string, path: string): never => {
    throw new Error(`${method} ${path} names no right: put ...may("read"), or what it needs, first in its createRoute`);
  };
  const openapi = routes.openapi.bind(routes) as Adding;
  routes.openapi = ((route: RouteConfig, ...rest: unknown[]) => {
    if (!("x-right" in route)) open(route.method, route.path);
    return openapi(route as never, ...rest);
  }) as typeof routes.openapi;
  for (const method of ["get", "post", "put", "patch", "delete"] as const) {
    const add = routes[method].bind(routes) as Adding;
    routes[method] = ((path: string, ...rest: unknown[]) => {
      if (/^\/(api\/|report$)/.test(path) && !rest.some(isGuard)) open(method, path);
      return add(path as never, ...rest);
    }) as (typeof routes)[typeof method];
  }
}

const problemBody = (description: string) => ({
  description,
  content: { "application/problem+json": { schema: problemSchema } },
});

/** What a route may answer beside its own: spread into `responses`. */
export const refusals = {
  400: problemBody("what was sent cannot be read; `detail` says what to mend"),
  401: problemBody("nobody is known by this; `detail` says how to become so"),
  403: problemBody("known, but this is not his to do"),
  404: problemBody("it names a site that the caller does not see, whether or not there is one"),
  429: problemBody("too many calls at once; `retry-after` says when to try again"),
  500: problemBody("something broke here"),
  503: problemBody("too much is asked or written at once; `retry-after` says when to try again"),
};
export const tooManyTries = { 429: problemBody("too many wrong tries; `retry-after` says when to try again") };
export const notFound = { 404: problemBody("there is no such thing; `detail` says where to look") };
export const unclear = { 409: problemBody("more than one is meant; `detail` says how to choose") };
export const writeRefusals = {
  413: problemBody("more than may be sent at once"),
  415: problemBody("the body is of a kind that is not taken here"),
  421: problemBody("it is of a site whose record is in another log now"),
  507: problemBody("no room left"),
};

export const json = <T>(schema: T, description: string) => ({
  description,
  content: { "application/json": { schema } },
});

/** `?site=` with nothing after it is as if it were not there. */
export const blank = <T extends z.ZodType>(schema: T) =>
  z.preprocess((text) => (text === "" ? undefined : text), schema);
