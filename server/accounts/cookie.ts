import type { Context } from "hono";
import { deleteCookie, getCookie, setCookie } from "hono/cookie";
import type { Door } from "../access.ts";
import { SESSION_MOST_MS } from "./lifetimes.ts";

/**
 * The session's cookie: not readable by scripts, sent to this host alone. Over https it is marked Secure and carries
 * the prefix that keeps a neighbouring host from planting one. Lax, not Strict: a link to a report in a mail must open.
 */
const PLAIN = "handsfull";
const SECURED = "__Host-handsfull";

export function cookieToken(c: Context, door: Door): string | undefined {
  // behind a proxy that ends TLS a read does not tell how it was made; only then either name is looked for
  return getCookie(c, SECURED) ?? (door.tls ? undefined : getCookie(c, PLAIN));
}

export function giveCookie(c: Context, door: Door, token: string): void {
  const secure = isSecure(c, door);
  setCookie(c, secure ? SECURED : PLAIN, token, {
    httpOnly: true,
    secure,
    sameSite: "Lax",
    path: "/",
    maxAge: SESSION_MOST_MS / 1000,
  });
}

export function dropCookie(c: Context, door: Door): void {
  if (getCookie(c, SECURED) !== undefined) deleteCookie(c, SECURED, { path: "/", secure: true });
  if (!door.tls && getCookie(c, PLAIN) !== undefined) deleteCookie(c, PLAIN, { path: "/" });
}

/** The page itself says by its origin whether it was opened over https, whoever ends TLS. */
function isSecure(c: Context, door: Door): boolean {
  return door.tls || (c.req.header("origin") ?? "").startsWith("https:");
}
