import { call } from "./door.ts";

/** A server's answer, or why there is none, in words. */
export type Answer<T> = { ok: true; value: T } | { ok: false; status: number; problem: string };

/**
 * Asks the server for a page's data, or, with a body, puts it there. The shape is the one in core/index.ts, made by the same build and served
 * from the same origin: it is not checked again here, only that it is an answer of ours and not some sign-in page.
 */
export function ask<T>(path: string, put?: object): Promise<Answer<T>> {
  return send<T>(put ? "PUT" : "GET", path, put);
}

/** The same in any way a call can be made. */
export async function send<T>(method: string, path: string, body?: object): Promise<Answer<T>> {
  let reply: Response;
  try {
    reply = await call(path, {
      method,
      ...(body ? { body: JSON.stringify(body) } : {}),
      headers: { accept: "application/json", ...(body ? { "content-type": "application/json" } : {}) },
      signal: AbortSignal.timeout(20_000),
    });
  } catch {
    // unreachable or out of time
    return { ok: false, status: 0, problem: "The server cannot be reached. Look again when there is a network." };
  }
  let told: unknown;
  try {
    told = await reply.json();
  } catch {
    return { ok: false, status: reply.status, problem: "Something other than the server answered. Look again later." };
  }
  if (reply.ok && typeof told === "object" && told !== null) return { ok: true, value: told as T };
  const detail = typeof told === "object" && told !== null && "detail" in told ? told.detail : undefined;
  return {
    ok: false,
    status: reply.status,
    problem: typeof detail === "string" ? detail : `The server answered ${reply.status}.`,
  };
}

/** A path with its query; what is undefined is left out. */
export function path(base: string, query: Record<string, string | undefined>): string {
  const asked = new URLSearchParams();
  for (const [key, value] of Object.entries(query)) if (value) asked.set(key, value);
  const text = asked.toString();
  return text ? `${base}?${text}` : base;
}
