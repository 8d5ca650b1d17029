import type { Context, MiddlewareHandler } from "hono";
import { matchedRoutes } from "hono/route";
import type { Log } from "./log.ts";
import type { Metrics } from "./metrics.ts";
import type { Env } from "./routes/kit.ts";

/**
 * Counts and logs each answered request: by its route, never its path or query, in which tags and words stand that
 * people said, or the secret of a calendar. `request` is the id that the answer carries as `x-request-id`.
 */
export function requestsSeen(log: Log, metrics: Metrics): MiddlewareHandler<Env> {
  return async (c, next) => {
    const start = performance.now();
    await next();
    const ms = performance.now() - start;
    const { status } = c.res;
    const method = knownMethod(c.req.method);
    const route = routeOf(c);
    metrics.took(route, ms / 1000);
    metrics.count("handsfull_requests", { method, route, status: String(status) });
    const worthIt = /^\/(api|report|calendar)\b/.test(route);
    log[worthIt ? "info" : "debug"]("request", {
      request: c.get("requestId"),
      method,
      route,
      status,
      ms: Number(ms.toFixed(1)),
      by: c.get("who")?.by,
    });
  };
}

/** The pattern that a call was answered by; the pages and what is nowhere are one. */
export const routeOf = (c: Context): string => matchedRoutes(c).find(({ path }) => !path.includes("*"))?.path ?? "/*";

const knownMethod = (method: string) => (/^(GET|HEAD|POST|PUT|DELETE|PATCH|OPTIONS)$/.test(method) ? method : "other");
