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
  const apart = clockWords(outbox.aheadMs ?? 0);
  if (apart) sentences.push(apart);
  // each sentence ends in its own stop
  return [parts.join(", "), sentences.join(" ")].filter(Boolean).join(". ");
}

const MINUTE = 60_000;
/** Clocks nearer than this date what is said well enough. */
const APART_MS = 3 * MINUTE;

/** That the clocks of device and server disagree: neither can know which is wrong, and a person can. */
function clockWords(aheadMs: number): string | undefined {
  const apart = Math.abs(aheadMs);
  if (apart < APART_MS) return undefined;
  const units = [
    ["day", 24 * 60 * MINUTE],
    ["hour", 60 * MINUTE],
    ["minute", MINUTE],
  ] as const;
  const [unit, ms] = units.find(([, ms]) => apart >= ms) ?? ["minute", MINUTE];
  const many = Math.round(apart / ms);
  const far = `${many} ${unit}${many === 1 ? "" : "s"} ${aheadMs > 0 ? "ahead of" : "behind"}`;
  return `This device’s clock is ${far} the server’s, and what is said is dated by it: see which is right.`;
}

/** Which kinds wait, where it is not words alone. */
function kindsOf({ waiting, clips, photos }: Outbox): string {
  if (!clips && !photos) return "";
  const count = (many: number, one: string) => (many ? [`${many} ${one}${many === 1 ? "" : "s"}`] : []);
  return ` (${[...count(waiting, "phrase"), ...count(clips, "clip"), ...count(photos, "photo")].join(", ")})`;
}
