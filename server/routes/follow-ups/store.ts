import { and, desc, eq, ne } from "drizzle-orm";
import { type FollowUp, followUpWords, type Owed, type OwedList } from "../../../core/index.ts";
import { namesOf } from "../../accounts/people.ts";
import { ofSites, type SitesSeen } from "../../accounts/sites-seen.ts";
import type { Store } from "../../db/open.ts";
import { entries, phrases, valveStates } from "../../db/tables.ts";
import { refreshStates } from "../../reading/valve-states.ts";

/** What every valve's last job left open: what stops everything first, then what is due now, then the rest. */
export async function stillOwed(store: Store, seen: SitesSeen, most: number): Promise<OwedList> {
  await refreshStates(store, seen);
  const states = await store.db
    .select()
    .from(valveStates)
    .where(and(ne(valveStates.open, "[]"), ofSites(seen, valveStates.site)));
  const all = states.flatMap((state) =>
    (JSON.parse(state.open) as FollowUp[]).map((one) => ({ site: state.site, tag: state.tag, on: state.lastOn, one })),
  );
  const rank = ({ one }: (typeof all)[number]) =>
    one.do === "stop" ? "0" : one.when === "now" ? "1" : one.when === "next_inspection" ? "3" : `2 ${one.when}`;
  const key = (line: (typeof all)[number]) => `${rank(line)}~${line.on}~${line.site}~${line.tag}`;
  const shown = all
    .map((line) => ({ line, key: key(line) }))
    .sort((a, b) => (a.key < b.key ? -1 : a.key > b.key ? 1 : 0))
    .slice(0, most);
  const names = await namesOf(store.db);
  const lastJobs = new Map<string, { job: string; owners: string[] } | undefined>();
  const owed: Owed[] = [];
  for (const { line } of shown) {
    const of = JSON.stringify([line.site, line.tag]);
    if (!lastJobs.has(of)) lastJobs.set(of, await lastJobOf(store, line, names));
    const last = lastJobs.get(of);
    owed.push({
      ...(line.site ? { site: line.site } : {}),
      tag: line.tag,
      do: line.one.do,
      what: followUpWords(line.one),
      when: line.one.when,
      why: line.one.why,
      ...(line.on ? { since: line.on } : {}),
      ...(last ? { job: last.job } : {}),
      owners: last?.owners ?? [],
    });
  }
  return { owed, count: all.length };
}

/** A valve's last job, and the names of those who logged it. */
async function lastJobOf(
  store: Store,
  { site, tag }: { site: string; tag: string },
  names: ReadonlyMap<string, string>,
): Promise<{ job: string; owners: string[] } | undefined> {
  const [last] = await store.db
    .select({ job: entries.job })
    .from(entries)
    .where(and(eq(entries.site, site), eq(entries.tag, tag)))
    .orderBy(desc(entries.startedAt), desc(entries.job))
    .limit(1);
  if (!last) return undefined;
  const said = await store.db
    .selectDistinct({ person: phrases.person })
    .from(phrases)
    .where(and(eq(phrases.site, site), eq(phrases.job, last.job)));
  const owners = said.flatMap((row) => (row.person === null ? [] : (names.get(row.person) ?? [])));
  return { job: last.job, owners };
}
