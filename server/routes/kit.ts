import { OpenAPIHono, z } from "@hono/zod-openapi";
import { problemSchema } from "../../core/shapes/served.ts";
import type { Who } from "../access.ts";
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
}

export type Env = { Variables: { who: Who } };

/** A router whose every misread query, path or body is answered as a problem. */
export function router(): OpenAPIHono<Env> {
  return new OpenAPIHono<Env>({
    defaultHook: (result) => {
      if (!result.success) throw refusalOf(result.error, result.target === "json" ? "body" : result.target);
    },
  });
}

const problemBody = (description: string) => ({
  description,
  content: { "application/problem+json": { schema: problemSchema } },
});

/** What a route may answer beside its own: spread into `responses`. */
export const refusals = {
  400: problemBody("what was sent cannot be read; `detail` says what to mend"),
  500: problemBody("something broke here"),
};
export const notFound = { 404: problemBody("there is no such thing; `detail` says where to look") };
export const unclear = { 409: problemBody("more than one is meant; `detail` says how to choose") };
export const writeRefusals = {
  413: problemBody("more than may be sent at once"),
  415: problemBody("the body is of a kind that is not taken here"),
  503: problemBody("too much is being written; `retry-after` says when to try again"),
  507: problemBody("no room left"),
};

export const json = <T>(schema: T, description: string) => ({
  description,
  content: { "application/json": { schema } },
});

/** `?site=` with nothing after it is as if it were not there. */
export const blank = <T extends z.ZodType>(schema: T) =>
  z.preprocess((text) => (text === "" ? undefined : text), schema);
