import { type AnyColumn, eq, inArray, type SQL } from "drizzle-orm";
import { Refusal } from "../errors.ts";

/**
 * The sites whose record somebody sees and works on: every one, or those he is kept to. It goes with the caller
 * (`Who.sees`), and whatever reads or writes the record asks it. What names no site ("") is nobody's in particular:
 * only those who see every site see it.
 */
export type SitesSeen = typeof EVERY_SITE | readonly string[];
export const EVERY_SITE = "every site";
export const NO_SITE: SitesSeen = [];

export const seesSite = (seen: SitesSeen, site: string): boolean => seen === EVERY_SITE || seen.includes(site);

/** The same of several sites; of every site only who sees every site. */
export function seesSites(seen: SitesSeen, others: SitesSeen): boolean {
  return seen === EVERY_SITE || (others !== EVERY_SITE && others.every((site) => seen.includes(site)));
}

/**
 * Where his words go: to the sites he sees, and to what names no site, since nobody could tell whose that is and words
 * come first.
 */
export const addsTo = (seen: SitesSeen): SitesSeen => (seen === EVERY_SITE ? seen : [...seen, ""]);

/** What is seen of the site that was asked for; of all that is seen, where none was. */
export function seenOf(seen: SitesSeen, site: string | undefined): SitesSeen {
  if (site === undefined) return seen;
  return seesSite(seen, site) ? [site] : NO_SITE;
}

/** The one site there is to see; undefined where there are several, or none. */
export function onlySite(seen: SitesSeen): string | undefined {
  return seen !== EVERY_SITE && seen.length === 1 ? seen[0] : undefined;
}

/** Narrows a query to these sites, by the column that names the site. */
export function ofSites(seen: SitesSeen, column: AnyColumn): SQL | undefined {
  if (seen === EVERY_SITE) return undefined;
  const only = onlySite(seen);
  return only === undefined ? inArray(column, [...seen]) : eq(column, only);
}

/** Refuses a site that is not seen, in the same words whether or not there is one of that name. */
export function mustSee(seen: SitesSeen, site: string): void {
  if (!seesSite(seen, site))
    throw new Refusal(404, `No site ${site.slice(0, 80)} is here that you see. GET /api/sites lists those you do.`);
}
