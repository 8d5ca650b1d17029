import { NOBODY, type Who } from "../access.ts";
import { EVERY_SITE } from "../accounts/sites-seen.ts";
import type { Settings } from "../env.ts";

/** Whoever runs a command at the server's machine: the audit trail says so, and knows no name for it. */
export const AT_COMMAND: Who = { ...NOBODY, sees: EVERY_SITE, by: "command" };

/** A page's address at the server that these settings start. Opened to the network, it has the machine's own name. */
export function linkAt({ host, port, tls }: Settings, path: string): string {
  const name = host === "0.0.0.0" || host === "::" ? "localhost" : host.includes(":") ? `[${host}]` : host;
  return `${tls ? "https" : "http"}://${name}:${port}${path}`;
}
