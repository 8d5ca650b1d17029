import type { MiddlewareHandler } from "hono";

/** Who is calling. Nobody is known yet: the server listens on this machine alone unless HOST says otherwise. */
export interface Who {
  device: string | undefined;
  person: string | undefined;
}

/** The one place where a call is let in or turned away; every route below /api and /report passes it. */
export function access(): MiddlewareHandler<{ Variables: { who: Who } }> {
  return async (c, next) => {
    c.set("who", { device: undefined, person: undefined });
    await next();
  };
}
