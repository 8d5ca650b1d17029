import { type Reply, replyTo } from "./reply.ts";

/** Hands the server one request's worth of words. */
export function postPhrases(body: string): Promise<Reply> {
  return replyTo("POST", "/api/phrases", body, "application/json", 20_000);
}

/** Hands the server a clip or photograph. The server itself waits 100 s for a slow one to come in. */
export function putKeepsake(address: string, bytes: ArrayBuffer, type: string): Promise<Reply> {
  return replyTo("PUT", address, bytes, type, 110_000);
}
