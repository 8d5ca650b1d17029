import { call } from "./door.ts";
import { retryAfterMs } from "./retry-after.ts";

/** What came back for something sent. */
export interface Reply {
  /** 0: no reply at all */
  status: number;
  /** undefined: not JSON, so not ours */
  body: unknown;
  /** how long the server asks to be left alone */
  waitMs?: number;
  /** how far this device's clock is ahead of that of whoever answered; below 0 it is behind */
  aheadMs?: number;
}

/** Sends a body and waits for the answer at most `patienceMs`. Never rejects: whoever sent it keeps it. */
export async function replyTo(
  method: string,
  path: string,
  body: BodyInit,
  type: string,
  patienceMs: number,
): Promise<Reply> {
  let reply: Response;
  try {
    // a shop's flaky link can hang for ever: give up, keep it, come back
    const signal = AbortSignal.timeout(patienceMs);
    reply = await call(path, { method, headers: { "content-type": type }, body, signal });
  } catch {
    // unreachable, cut off or out of time: the caller keeps what it sent
    return { status: 0, body: undefined };
  }
  const { status } = reply;
  const waitMs = retryAfterMs(reply.headers.get("retry-after"), Date.now());
  const dated = Date.parse(reply.headers.get("date") ?? "");
  const aheadMs = Number.isNaN(dated) ? undefined : Date.now() - dated;
  try {
    return { status, body: await reply.json(), waitMs, aheadMs };
  } catch {
    return { status, body: undefined, waitMs, aheadMs };
  }
}
