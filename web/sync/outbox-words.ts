import type { Outbox } from "../state/state.ts";

/** How far the words have come, for a person. `clock` turns an instant into the hour on the wall. */
export function outboxWords(outbox: Outbox, clock: (instant: string) => string): string {
  const parts: string[] = [];
  if (outbox.refused) parts.push(`${outbox.refused} refused by the server`);
  if (outbox.waiting) parts.push(`${outbox.waiting} waiting`);
  if (!outbox.waiting && !outbox.refused)
    parts.push(outbox.lastKeptAt ? `all kept by the server ${clock(outbox.lastKeptAt)}` : "nothing waiting");
  // the server's own words are whole sentences
  if (outbox.trouble && /^[A-Z]/.test(outbox.trouble)) return `${parts.join(", ")}. ${outbox.trouble}`;
  if (outbox.trouble) parts.push(outbox.trouble);
  else if (outbox.waiting && outbox.lastKeptAt) parts.push(`last kept ${clock(outbox.lastKeptAt)}`);
  return parts.join(", ");
}
