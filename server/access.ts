import type { Context, MiddlewareHandler } from "hono";
import type { Right, Role } from "../core/shapes/roles.ts";
import { type Barred, whoCalls } from "./accounts/caller.ts";
import { cookieToken } from "./accounts/cookie.ts";
import { RIGHT_WORDS } from "./accounts/roles.ts";
import { mustSee, NO_SITE, type SitesSeen } from "./accounts/sites-seen.ts";
import type { BackPressure } from "./back-pressure.ts";
import type { Store } from "./db/open.ts";
import { Refusal } from "./errors.ts";

/** Who is calling. */
export interface Who {
  device: string | undefined;
  person: string | undefined;
  session: string | undefined;
  roles: readonly Role[];
  rights: readonly Right[];
  /** the sites whose record he sees and works on */
  sees: SitesSeen;
  /** how the caller is known, as the audit trail writes it: nobody, open, command, device:ID, session:ID */
  by: string;
}

/** Where this server stands: decides who is let in while nobody is enrolled, and how cookies are marked. */
export interface Door {
  /** it listens on this machine's own addresses alone */
  loopback: boolean;
  /** it speaks https itself */
  tls: boolean;
}

/** The calls by which somebody unknown becomes known; every other call below /api and /report needs a caller. */
export const DOORS: readonly string[] = ["/api/sign-in", "/api/enrolments", "/api/first-password"];

/**
 * The one place where a call is let in or turned away: who is it, and may he do what this route names? A route says
 * which right it needs with `may`; a router without one is not built (see kit.ts).
 */
export function access(
  store: Store,
  door: Door,
  pressure: BackPressure,
): MiddlewareHandler<{ Variables: { who: Who } }> {
  return async (c, next) => {
    refuseForeignPages(c, door);
    const caller = await whoCalls(c, store, door);
    if (!caller.ok) pressure.guessed(c);
    if (!caller.ok && !DOORS.includes(c.req.path)) return turnAway(c, caller.barred);
    const who = caller.ok ? caller.who : NOBODY;
    c.set("who", who);
    const leave = pressure.enter(who);
    try {
      await next();
    } finally {
      leave();
    }
  };
}

export const NOBODY: Who = {
  device: undefined,
  person: undefined,
  session: undefined,
  roles: [],
  rights: ["anyone"],
  sees: NO_SITE,
  by: "nobody",
};

const GUARDS = new WeakSet<object>();

/** Whether a handler is one that `may` made. */
export const isGuard = (handler: unknown): boolean => typeof handler === "function" && GUARDS.has(handler);

/**
 * Lets a call on that has the right, and names no site but one its caller sees: spread into `createRoute`, where the
 * document shows it as `x-right`. What stands at other places than path and query is for the route to look at.
 */
export function may(right: Right) {
  const needs: MiddlewareHandler<{ Variables: { who: Who } }> = async (c, next) => {
    if (!c.get("who").rights.includes(right)) throw new Refusal(403, `${RIGHT_WORDS[right]} Ask a lead.`);
    for (const site of [c.req.param("site"), ...(c.req.queries("site") ?? [])])
      if (site) mustSee(c.get("who").sees, site);
    return next();
  };
  GUARDS.add(needs);
  return { middleware: needs, "x-right": right };
}

/**
 * Another site's page may make a browser send a call with our cookie, or to a machine's own address. Browsers say
 * which page a changing call comes from; one that comes from elsewhere is refused whoever makes it.
 */
function refuseForeignPages(c: Context, door: Door): void {
  if (["GET", "HEAD", "OPTIONS"].includes(c.req.method)) return;
  const origin = c.req.header("origin");
  const site = c.req.header("sec-fetch-site");
  const own = origin === undefined ? undefined : hostOf(origin) === new URL(c.req.url).host;
  // no browser leaves out both; what does is a program, which has no business with a cookie
  const unsaid = own === undefined && site !== "same-origin" && cookieToken(c, door) !== undefined;
  if (own === false || unsaid || site === "cross-site" || site === "same-site") {
    throw new Refusal(403, "This call comes from a page of another site. Open the log itself and do it there.");
  }
}

function hostOf(origin: string): string | undefined {
  return URL.canParse(origin) ? new URL(origin).host : undefined;
}

function turnAway(c: Context, { detail }: Barred): Response {
  // a report opened by its link is a page, and its reader a person: sent to the door, and back from there
  if (c.req.path.startsWith("/report") && c.req.header("accept")?.includes("text/html")) {
    const { pathname, search } = new URL(c.req.url);
    return c.redirect(`/#/sign-in?next=${encodeURIComponent(pathname + search)}`, 303);
  }
  throw new Refusal(401, detail, { headers: { "www-authenticate": 'Bearer realm="handsfull"' } });
}
