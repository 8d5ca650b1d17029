import type { Context } from "hono";
import { HTTPException } from "hono/http-exception";
import type { ContentfulStatusCode } from "hono/utils/http-status";
import type { z } from "zod";
import type { Problem } from "../core/index.ts";
import { busyIn, isMoved, StoreAway, StoreFull } from "./db/failures.ts";
import type { Log } from "./log.ts";
import { routeOf } from "./requests-seen.ts";

/** The one place where a failure becomes a reply: RFC 9457 problem details, whose `detail` says what to do. */

const TITLES: Record<number, string> = {
  400: "The request cannot be read",
  401: "Nobody is known by this",
  403: "This is not yours to do",
  404: "There is no such thing here",
  405: "This is not done here",
  408: "The request took too long",
  409: "It is not clear which is meant",
  413: "The request is too large",
  415: "The body is of another kind",
  421: "This is kept elsewhere",
  429: "Too much at once",
  500: "Something broke on our side",
  503: "The log is busy",
  507: "The log has no room left",
};

/** Thrown by any route to answer with a problem. */
export class Refusal extends Error {
  constructor(
    readonly status: ContentfulStatusCode,
    detail: string,
    readonly more: { errors?: Problem["errors"]; headers?: Record<string, string>; cause?: unknown } = {},
  ) {
    super(detail, { cause: more.cause });
  }
}

export function problem(status: number, detail: string, errors?: Problem["errors"]): Problem {
  return {
    type: "about:blank",
    title: TITLES[status] ?? "The request was refused",
    status,
    detail,
    ...(errors ? { errors } : {}),
  };
}

export function answerProblem(
  c: Context,
  status: ContentfulStatusCode,
  detail: string,
  more: { errors?: Problem["errors"]; headers?: Record<string, string> } = {},
): Response {
  return c.body(JSON.stringify(problem(status, detail, more.errors)), status, {
    ...more.headers,
    "content-type": "application/problem+json",
  });
}

/** Every failure that reached the top. What is unknown is logged whole and told in general. */
export function answerFailure(cause: unknown, c: Context, log: Log): Response {
  if (cause instanceof Refusal) return answerProblem(c, cause.status, cause.message, cause.more);
  const busy = busyIn(cause);
  if (busy instanceof StoreAway) {
    log.error("store away", { problem: busy.message });
    const detail =
      "The database does not answer. Whether this request was kept is not known: send it again in a moment, phrases are kept once.";
    return answerProblem(c, 503, detail, { headers: { "retry-after": "2" } });
  }
  if (busy) {
    const detail = "Too much is being written at once. Nothing of this request was kept: send it again in a moment.";
    return answerProblem(c, 503, detail, { headers: { "retry-after": "2" } });
  }
  if (cause instanceof StoreFull) {
    log.error("store full", { problem: cause.message });
    const detail =
      "The database could not be written: the disk may be full. Nothing of this request was kept. Keep it and send it again once there is room.";
    return answerProblem(c, 507, detail, { headers: { "retry-after": "60" } });
  }
  if (isMoved(cause)) {
    const detail =
      "The record of this site is in another log now, or on its way there, and nothing is added to it here. Whoever looks after the log knows its address: open it there.";
    return answerProblem(c, 421, detail);
  }
  if (cause instanceof HTTPException && cause.status === 415) {
    return answerProblem(c, 415, "Send the body as JSON with content-type: application/json.");
  }
  if (cause instanceof HTTPException && cause.status < 500) {
    return answerProblem(c, cause.status as ContentfulStatusCode, `${cause.message}. Send one JSON object, UTF-8.`);
  }
  const request = c.get("requestId") as string | undefined;
  log.error("request failed", { request, method: c.req.method, route: routeOf(c), problem: stackOf(cause) });
  const detail = `Nothing of this request was kept unless told so. Send it again; if it fails again, look at the server's log for the request ${request}.`;
  return answerProblem(c, 500, detail);
}

/** zod's issues as a problem: where, and what is wrong there. */
export function refusalOf(error: z.ZodError | { issues: readonly z.core.$ZodIssue[] }, where: string): Refusal {
  const errors = error.issues
    .slice(0, 20)
    .map((issue) => ({ at: issue.path.map(String).join("."), problem: issue.message }));
  const words = errors.slice(0, 5).map(({ at, problem: what }) => (at ? `${at}: ${what}` : what));
  return new Refusal(400, `Mend the ${where} and send it again: ${words.join("; ")}`, { errors });
}

function stackOf(cause: unknown): string {
  if (!(cause instanceof Error)) return String(cause);
  // the query builder puts the values, which people said, into its message
  const stack = (cause.stack ?? cause.message).replace(/\nparams:[\s\S]*?(?=\n {4}at |$)/, "");
  return `${stack}${cause.cause ? `\ncaused by ${stackOf(cause.cause)}` : ""}`;
}
