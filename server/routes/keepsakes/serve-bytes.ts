import type { Context } from "hono";

/**
 * Bytes that people sent, handed out so that a browser does nothing with them but show or play them: the kind that was
 * found by looking, no guessing (nosniff is set for every answer), no script, no frame, no other fetches.
 */
export function serveBytes(c: Context, bytes: Buffer, about: { type: string; sha256: string; name: string }): Response {
  const etag = `"${about.sha256}"`;
  const headers: Record<string, string> = {
    "content-type": about.type,
    "content-disposition": `inline; filename="${about.name}"`,
    // asked again each time: sound may have been removed since, and who may see it may have changed
    "cache-control": "private, no-cache",
    etag,
    // players ask for a part first, and some play nothing that cannot be had in parts
    "accept-ranges": "bytes",
  };
  if (c.req.header("if-none-match") === etag) return c.body(null, 304, headers);
  const range = rangeOf(c.req.header("range"), bytes.length);
  if (range === "none") return c.body(null, 416, { ...headers, "content-range": `bytes */${bytes.length}` });
  if (!range) return c.body(new Uint8Array(bytes), 200, headers);
  const [from, to] = range;
  headers["content-range"] = `bytes ${from}-${to}/${bytes.length}`;
  return c.body(new Uint8Array(bytes.subarray(from, to + 1)), 206, headers);
}

/** One range of RFC 9110, 14.1.2; several at once, or a form not known, is answered with the whole. */
function rangeOf(header: string | undefined, size: number): [number, number] | "none" | undefined {
  const found = /^bytes=(\d*)-(\d*)$/.exec(header ?? "");
  if (!found || (!found[1] && !found[2])) return undefined;
  const from = found[1] ? Number(found[1]) : Math.max(0, size - Number(found[2]));
  const to = found[1] && found[2] ? Math.min(Number(found[2]), size - 1) : size - 1;
  return from > to ? "none" : [from, to];
}

/** Goes around the routes of such bytes, outermost, because the page's own policy is set on every answer after them. */
export const BYTES_POLICY = "sandbox; default-src 'none'; frame-ancestors 'none'";
