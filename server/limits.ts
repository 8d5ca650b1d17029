import type { Context, MiddlewareHandler } from "hono";
import { MOST_CLIP_BYTES, MOST_PHOTO_BYTES } from "../core/shapes/keepsake-bounds.ts";
import { Refusal } from "./errors.ts";

/** Every bound on a request, in one place. */
export const MOST_BODY_BYTES = 1_048_576;
export const TIMES = {
  /** the whole request must have come in by then: a photograph of 400 kB over a link of 4 kB a second just does */
  requestTimeout: 100_000,
  headersTimeout: 10_000,
  keepAliveTimeout: 5_000,
};

/** How much may be asked. A day of thirty valves said on one device is some hundred calls. */
export const RATES = {
  /** somebody known: an outbox of weeks goes at once, and a program that runs wild does not stand in others' way */
  known: { perSecond: 200, burst: 4_000 },
  /** nobody known: tokens, codes and cookies that are none */
  unknown: { perSecond: 20, burst: 1_000 },
  /** being answered at once, to one caller and to all */
  openEach: 256,
  openAtAll: 1_000,
  /** callers whose rate is remembered */
  mostRemembered: 10_000,
};
/** More connections than this are not taken: each takes memory before it says anything. */
export const MOST_CONNECTIONS = 2_000;

/** Where a body is a clip or a photograph and not JSON. */
const BYTES_PATH = /^\/api\/(clips|photos)\/[^/]+$/;
export const isBytesPath = (path: string) => BYTES_PATH.test(path);

const TOO_LARGE = "The body is over 1 MB: send fewer phrases at a time, at most 200.";

/**
 * Reads a body once, up to the limit, and refuses what is not JSON in UTF-8, before any route looks at it.
 * What is over the limit is still read to its end and thrown away: a client that is cut off while sending
 * sees a broken connection and never the answer.
 */
export function bodies(): MiddlewareHandler {
  return async (c, next) => {
    if (c.req.method === "GET" || c.req.method === "HEAD" || c.req.method === "OPTIONS") return next();
    const kind = BYTES_PATH.exec(c.req.path)?.[1];
    if (kind) return sentBytes(c, next, kind === "clips" ? MOST_CLIP_BYTES : MOST_PHOTO_BYTES);
    const told = Number(c.req.header("content-length") ?? Number.NaN);
    // a body of known length is read whole at once, which is much the faster way
    const bytes = await arrived(() =>
      told <= MOST_BODY_BYTES ? wholeBody(c) : readUpTo(c.req.raw.body, MOST_BODY_BYTES),
    );
    if (!bytes) throw new Refusal(413, TOO_LARGE);
    if (bytes.length > 0 && !/^application\/json\s*(;|$)/i.test(c.req.header("content-type") ?? "")) {
      throw new Refusal(415, "Send the body as JSON with content-type: application/json.");
    }
    // kept where the routes look for it: a new Request around it costs more than all the rest of this
    const text = Promise.resolve(bytes.length > 0 ? readJson(bytes) : "");
    // its type says string, but what it holds are the promises of one
    c.req.bodyCache = { text: text as unknown as string };
    return next();
  };
}

/** A clip or photograph: any bytes up to the limit; the route looks at what they are. */
async function sentBytes(c: Context, next: () => Promise<void>, most: number): Promise<void> {
  const bytes = await arrived(() => readUpTo(c.req.raw.body, most));
  if (!bytes) throw new Refusal(413, `This is over ${most / 1_048_576} MB: send it smaller.`);
  c.req.bodyCache = { arrayBuffer: Promise.resolve(bytes.buffer) as unknown as ArrayBuffer };
  return next();
}

const wholeBody = async (c: Context) => new Uint8Array(await c.req.arrayBuffer());

async function arrived<T>(read: () => Promise<T>): Promise<T> {
  try {
    return await read();
  } catch (cause) {
    throw new Refusal(400, "The body did not arrive whole: send it again.", { cause });
  }
}

async function readUpTo(
  body: ReadableStream<Uint8Array> | null,
  most: number,
): Promise<Uint8Array<ArrayBuffer> | undefined> {
  const parts: Uint8Array[] = [];
  let size = 0;
  if (body) {
    const reader = body.getReader();
    for (let part = await reader.read(); !part.done; part = await reader.read()) {
      size += part.value.length;
      if (size <= most) parts.push(part.value);
      else if (size > most * 16) {
        // no honest client: stop listening
        await reader.cancel();
        break;
      }
    }
  }
  if (size > most) return undefined;
  const whole = new Uint8Array(size);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/** The body's text, once it is known to be JSON in UTF-8. */
function readJson(bytes: Uint8Array): string {
  let text: string;
  try {
    text = new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch (cause) {
    throw new Refusal(400, "The body is not UTF-8: encode it as UTF-8 and send it again.", { cause });
  }
  try {
    JSON.parse(text);
    return text;
  } catch (cause) {
    const what = cause instanceof Error ? cause.message.replace(/"[\s\S]*"/, "…") : "";
    throw new Refusal(400, `The body is not JSON (${what}): send one JSON object.`, { cause });
  }
}
