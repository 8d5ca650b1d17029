import type { Outbox } from "../state/state.ts";

/** How far words, sound and photographs have come, for a person. `clock` turns an instant into the hour on the wall. */
export function outboxWords(outbox: Outbox, clock: (instant: string) => string): string {
  const { refused, lastKeptAt } = outbox;
  const waiting = outbox.waiting + outbox.clips + outbox.photos;
  const trouble = outbox.trouble ?? outbox.keepsakeTrouble;
  const parts: string[] = [];
  if (refused) parts.push(`${refused} refused by the server`);
  if (waiting) parts.push(`${waiting} waiting${kindsOf(outbox)}`);
  if (!waiting && !refused) parts.push(lastKeptAt ? `all kept by the server ${clock(lastKeptAt)}` : "nothing waiting");
  // the server's own words are whole sentences
  const sentences = trouble !== undefined && /^[A-Z]/.test(trouble) ? [trouble] : [];
  if (trouble !== undefined && !sentences.length) parts.push(trouble);
  else if (!trouble && waiting && lastKeptAt) parts.push(`last sent ${clock(lastKeptAt)}`);
  // once all of it was sent, room is made when it is wanted
  if (outbox.full && waiting) sentences.push("This device is full: only words are kept until it has sent what waits.");
  return [parts.join(", "), ...sentences].join(". ");
}

/** Which kinds wait, where it is not words alone. */
function kindsOf({ waiting, clips, photos }: Outbox): string {
  if (!clips && !photos) return "";
  const count = (many: number, one: string) => (many ? [`${many} ${one}${many === 1 ? "" : "s"}`] : []);
  return ` (${[...count(waiting, "phrase"), ...count(clips, "clip"), ...count(photos, "photo")].join(", ")})`;
}
