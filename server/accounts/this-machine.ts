import type { Context } from "hono";

/** The part of Node's request that is looked at; absent where a call did not come through a socket. */
interface Incoming {
  incoming?: { socket?: { remoteAddress?: string } };
}

const LOOPBACK = /^(127\.\d+\.\d+\.\d+|::1|::ffff:127\.\d+\.\d+\.\d+)$/;
const OWN_NAMES = /^(localhost|127\.\d+\.\d+\.\d+|\[::1\])$/;

export const isLoopback = (host: string): boolean => LOOPBACK.test(host) || host === "localhost";

/** The address at the other end of the connection; "" where there is none. */
export function addressOf(c: Context): string {
  return (c.env as Incoming | undefined)?.incoming?.socket?.remoteAddress ?? "";
}

/**
 * Whether a call was made on this machine, to this machine. Not so where something in between says it passes it on for
 * another, nor under any other host name: a page may have its own name point here to reach what listens on loopback.
 */
export function isAtThisMachine(c: Context): boolean {
  const passedOn = ["forwarded", "x-forwarded-for", "x-real-ip", "via"].some(
    (name) => c.req.header(name) !== undefined,
  );
  return LOOPBACK.test(addressOf(c)) && OWN_NAMES.test(new URL(c.req.url).hostname) && !passedOn;
}
