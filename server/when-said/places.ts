import { type SQL, sql } from "drizzle-orm";
import { phrases } from "../db/tables.ts";
import { readMoment } from "../moments.ts";

/** A phrase's place in time: when it was said, then its id, so that two of one moment have an order as well. */
export const placeOf = ({ saidAt, id }: { saidAt: string; id: string }): string => `${saidAt}~${id}`;

/** Behind every place: those begin with a digit, which stands before it. */
export const AFTER_ALL = ":";
/** In front of every place. */
export const BEFORE_ALL = "";

/** Where a day begins: in front of whatever was said on it, a day as `dayOf` tells it. */
export const beginningOf = (day: string): string => placeOf({ saidAt: `${day}T00:00:00.000000000Z`, id: "" });

export const isPlace = (place: string): boolean => readMoment(place.split("~")[0] ?? "") !== undefined;

export const isBefore = (place: string): SQL => sql`(${phrases.saidAt}, ${phrases.id}) < ${partsOf(place)}`;
export const isFrom = (place: string): SQL => sql`(${phrases.saidAt}, ${phrases.id}) >= ${partsOf(place)}`;

function partsOf(place: string): SQL {
  const [saidAt = "", id = ""] = place.split("~");
  return sql`(${saidAt}, ${id})`;
}
