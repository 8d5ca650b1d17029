/** An instant as the record keeps it: ISO 8601 to the millisecond, with the offset of this place. */
export function instantHere(at: Date): string {
  const offset = -at.getTimezoneOffset();
  const two = (n: number) => String(Math.trunc(Math.abs(n))).padStart(2, "0");
  const local = new Date(at.getTime() + offset * 60_000).toISOString().slice(0, -1);
  return `${local}${offset < 0 ? "-" : "+"}${two(offset / 60)}:${two(offset % 60)}`;
}

/** The hour on the wall here, "09:41". */
export function clockHere(instant: string): string {
  const at = new Date(instant);
  return `${String(at.getHours()).padStart(2, "0")}:${String(at.getMinutes()).padStart(2, "0")}`;
}

/** The hour it was where it was said: the offset is in the instant, so "09:41" stays 09:41 on any device. */
export function clockThere(instant: string): string {
  return instant.slice(11, 16);
}

/** "4 Mar 2026" for a date or an instant, by its own calendar day. */
export function dayWords(date: string): string {
  const [year, month, day] = date.slice(0, 10).split("-").map(Number);
  const name = MONTHS[(month ?? 0) - 1];
  return name ? `${day} ${name} ${year}` : date;
}
const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

/** The calendar day of an instant at a site: in its IANA zone, or, with none known, by the offset said. */
export function dayThere(instant: string, zone?: string): string {
  if (!zone) return instant.slice(0, 10);
  const format = new Intl.DateTimeFormat("en-CA", {
    timeZone: zone,
    year: "numeric",
    month: "2-digit",
    day: "2-digit",
  });
  return format.format(new Date(instant));
}

/** Today here, YYYY-MM-DD. */
export function todayHere(at: Date = new Date()): string {
  return instantHere(at).slice(0, 10);
}
