/**
 * A moment as stored: UTC text of fixed width, nine decimals, so that text order is time order;
 * beside it the offset that was said, in minutes, so that it can be shown as it was.
 */
export interface Moment {
  utc: string;
  offset: number;
}

const FORM = /^(\d{4}-\d{2}-\d{2}T\d{2}:\d{2})(?::(\d{2}))?(?:\.(\d+))?(?:Z|([+-])(\d{2}):?(\d{2}))$/;

/** Reads ISO 8601 with an offset; undefined where it is no such time or its year needs more than four digits. */
export function readMoment(text: string): Moment | undefined {
  const found = FORM.exec(text);
  if (!found) return undefined;
  const [, minute, second = "00", fraction = "", sign, hours = "0", minutes = "0"] = found;
  const offset = (sign === "-" ? -1 : 1) * (Number(hours) * 60 + Number(minutes));
  const ms = Date.parse(`${minute}:${second}Z`) - offset * 60_000;
  if (!Number.isFinite(ms)) return undefined;
  const iso = new Date(ms).toISOString();
  if (iso.length !== 24) return undefined;
  // finer than a millisecond is kept: two phrases a few microseconds apart still have an order
  return { utc: `${iso.slice(0, 19)}.${fraction.slice(0, 9).padEnd(9, "0")}Z`, offset };
}

/** The moment as ISO 8601 with the offset it was said with. */
export function writeMoment({ utc, offset }: Moment): string {
  const local = new Date(Date.parse(`${utc.slice(0, 19)}Z`) + offset * 60_000).toISOString().slice(0, 19);
  const fraction = utc.slice(20, 29).replace(/0{1,6}$/, "");
  const abs = Math.abs(offset);
  const two = (n: number) => String(n).padStart(2, "0");
  const zone = `${offset < 0 ? "-" : "+"}${two(Math.floor(abs / 60))}:${two(abs % 60)}`;
  return `${local}.${fraction}${zone}`;
}

/** This moment, in UTC. */
export const now = (): Moment => momentOf(new Date());

/** A moment of a clock, in UTC. */
export function momentOf(at: Date): Moment {
  return { utc: `${at.toISOString().slice(0, 23)}000000Z`, offset: 0 };
}

/** A stored moment in milliseconds since 1970, to the millisecond. */
export const msOf = (utc: string): number => Date.parse(`${utc.slice(0, 23)}Z`);

const clocks = new Map<string, Intl.DateTimeFormat>();

/** HH:MM:SS of a stored moment on the clock of a zone. */
export function clockTime(utc: string, zone: string): string {
  let clock = clocks.get(zone);
  if (!clock) {
    const form = { timeZone: zone, hour: "2-digit", minute: "2-digit", second: "2-digit" } as const;
    clock = new Intl.DateTimeFormat("en-GB", form);
    clocks.set(zone, clock);
  }
  return clock.format(msOf(utc));
}

const formats = new Map<string, Intl.DateTimeFormat>();

/** Whether the name is an IANA time zone that this machine knows. */
export function isZone(zone: string): boolean {
  try {
    return Boolean(formatOf(zone));
  } catch {
    // only probing: an unknown name throws a RangeError
    return false;
  }
}

function formatOf(zone: string): Intl.DateTimeFormat {
  let format = formats.get(zone);
  if (!format) {
    format = new Intl.DateTimeFormat("en-CA", { timeZone: zone, year: "numeric", month: "2-digit", day: "2-digit" });
    formats.set(zone, format);
  }
  return format;
}

/** The calendar day, YYYY-MM-DD, on which a moment falls: in the site's zone, or, without one, by the offset said. */
export function localDay(moment: Moment, zone?: string): string {
  const ms = Date.parse(`${moment.utc.slice(0, 19)}Z`);
  if (!zone) return new Date(ms + moment.offset * 60_000).toISOString().slice(0, 10);
  const parts = Object.fromEntries(
    formatOf(zone)
      .formatToParts(ms)
      .map((part) => [part.type, part.value]),
  );
  return `${(parts.year ?? "").padStart(4, "0")}-${parts.month}-${parts.day}`;
}

/** Moments, as stored, between which a local day must lie whatever the zone: wide, to be narrowed by `localDay`. */
export function aroundDay(day: string): [string, string] {
  const start = Date.parse(`${day}T00:00:00Z`);
  const edge = (ms: number) => `${new Date(ms).toISOString().slice(0, 23)}000000Z`;
  return [edge(start - 16 * 3_600_000), edge(start + 40 * 3_600_000)];
}

/** The day that lies `count` days after. */
export function addDays(day: string, count: number): string {
  return new Date(Date.parse(`${day}T00:00:00Z`) + count * 86_400_000).toISOString().slice(0, 10);
}
