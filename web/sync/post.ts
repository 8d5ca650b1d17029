import { call } from "./door.ts";

/** Hands the server one request's body. Never rejects: no reply is status 0, a reply that is not JSON has no body. */
export async function postPhrases(body: string): Promise<{ status: number; body: unknown }> {
  let reply: Response;
  try {
    reply = await call("/api/phrases", {
      method: "POST",
      headers: { "content-type": "application/json" },
      body,
      // a shop's flaky link can hang for ever: give up, keep the words, come back
      signal: AbortSignal.timeout(20_000),
    });
  } catch {
    // unreachable, cut off or out of time: the caller keeps every row
    return { status: 0, body: undefined };
  }
  try {
    return { status: reply.status, body: await reply.json() };
  } catch {
    return { status: reply.status, body: undefined };
  }
}
