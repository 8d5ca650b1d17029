import type { Answer } from "./ask.ts";
import { call } from "./door.ts";

/** Bytes of a clip or photograph from the server, or why there are none, in words. */
export async function fetchBytes(path: string): Promise<Answer<Blob>> {
  try {
    const reply = await call(path, { signal: AbortSignal.timeout(60_000) });
    const kind = reply.headers.get("content-type") ?? "";
    if (reply.ok && /^(image|audio)\//.test(kind)) return { ok: true, value: await reply.blob() };
    if (reply.ok) return none(reply.status, "Something other than the server answered. Look again later.");
    const told: unknown = await reply.json().catch(() => "no words of the server");
    const detail = typeof told === "object" && told !== null && "detail" in told ? told.detail : undefined;
    return none(reply.status, typeof detail === "string" ? detail : `The server answered ${reply.status}.`);
  } catch {
    // unreachable, cut off or out of time
    return none(0, "The server cannot be reached. Look again when there is a network.");
  }
}

const none = (status: number, problem: string): Answer<Blob> => ({ ok: false, status, problem });
