/** Clock and calendar of the invented story: days as YYYY-MM-DD, moments as ISO 8601 with the site's offset. */

const DAY_MS = 86_400_000;

export const daysAfter = (day: string, count: number): string =>
  new Date(Date.parse(`${day}T00:00:00Z`) + count * DAY_MS).toISOString().slice(0, 10);

export const daysFrom = (from: string, to: string): number => Math.round((Date.parse(to) - Date.parse(from)) / DAY_MS);

/** The same day, or the Monday after it: nobody opens a valve on a weekend. */
export function workday(day: string): string {
  const weekday = new Date(`${day}T00:00:00Z`).getUTCDay();
  return weekday === 6 ? daysAfter(day, 2) : weekday === 0 ? daysAfter(day, 1) : day;
}

/** The last workday before this day. */
export function workdayBefore(day: string): string {
  let before = daysAfter(day, -1);
  while (workday(before) !== before) before = daysAfter(before, -1);
  return before;
}

/** The moment at which the clock of the zone shows this day and this many seconds after midnight. */
export function momentAt(day: string, seconds: number, zone: string): string {
  const wall = Date.parse(`${day}T00:00:00Z`) + seconds * 1000;
  const offset = offsetMinutes(wall - offsetMinutes(wall, zone) * 60_000, zone);
  const abs = Math.abs(offset);
  const two = (n: number) => String(n).padStart(2, "0");
  return `${new Date(wall).toISOString().slice(0, 19)}${offset < 0 ? "-" : "+"}${two(Math.floor(abs / 60))}:${two(abs % 60)}`;
}

/** How far the zone's clock is ahead of UTC at this instant, in minutes. */
function offsetMinutes(ms: number, zone: string): number {
  const parts = new Intl.DateTimeFormat("en-US", { timeZone: zone, timeZoneName: "longOffset" }).formatToParts(ms);
  const found = /GMT(?:([+-])(\d{2}):(\d{2}))?/.exec(parts.find((part) => part.type === "timeZoneName")?.value ?? "");
  return found?.[1] ? (found[1] === "-" ? -1 : 1) * (Number(found[2]) * 60 + Number(found[3])) : 0;
}
