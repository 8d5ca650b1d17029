import { type AnyColumn, and, eq, inArray, or, type SQL, sql } from "drizzle-orm";

/** Tags by their site. */
export type ValvesBySite = ReadonlyMap<string, ReadonlySet<string>>;

export function bySite(valves: Iterable<{ site: string; tag: string }>): ValvesBySite {
  const sites = new Map<string, Set<string>>();
  for (const { site, tag } of valves) sites.set(site, (sites.get(site) ?? new Set()).add(tag));
  return sites;
}

/** Narrows a query to these valves: to no row at all where there are none. */
export function ofValves(valves: ValvesBySite, of: { site: AnyColumn; tag: AnyColumn }): SQL {
  const each = [...valves].map(([site, tags]) => and(eq(of.site, site), inArray(of.tag, [...tags])));
  return or(...each) ?? sql`false`;
}
