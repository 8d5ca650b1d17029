import { and, desc, eq, ne } from "drizzle-orm";
import { type FollowUp, followUpKey, followUpWords, type Owed, type OwedList } from "../../../core/index.ts";
import { namesOf } from "../../accounts/people.ts";
import { ofSites, type SitesSeen } from "../../accounts/sites-seen.ts";
import type { Store } from "../../db/open.ts";
import { entries, phrases, valveStates } from "../../db/tables.ts";
import { type Owners, ownersOfSites } from "../../owners/owners-of.ts";
import { refreshStates } from "../../reading/valve-states.ts";

/** Of whom: somebody's by his id, or what is nobody's yet. */
export const NOBODYS = "nobody";

/**
 * What every valve's last job left open: what stops everything first, then what is due now, then the rest. `whose`
 * leaves out what is another's.
 */
export async function stillOwed(store: Store, seen: SitesSeen, most: number, whose?: string): Promise<OwedList> {
  await refreshStates(store, seen);
  const states = await store.db
    .select()
    .from(valveStates)
    .where(and(ne(valveStates.open, "[]"), ofSites(seen, valveStates.site)));
  const owners = await ownersOfSites(store.db, seen);
  const open = states.flatMap((state) =>
    (JSON.parse(state.open) as FollowUp[]).map((one) => ({
      ...{ site: state.site, tag: state.tag, on: state.lastOn, one },
      key: followUpKey(one),
    })),
  );
  const all = whose === undefined ? open : await ofWhom(open, owners, whose);
  const rank = ({ one }: (typeof all)[number]) =>
    one.do === "stop" ? "0" : one.when === "now" ? "1" : one.when === "next_inspection" ? "3" : `2 ${one.when}`;
  const shown = all
    .map((line) => ({ line, place: `${rank(line)}~${line.on}~${line.site}~${line.tag}` }))
    .sort((a, b) => (a.place < b.place ? -1 : a.place > b.place ? 1 : 0))
    .slice(0, most);
  const names = await namesOf(store.db);
  const lastJobs = new Map<string, { job: string; loggedBy: string[] } | undefined>();
  const owed: Owed[] = [];
  for (const { line } of shown) {
    const of = JSON.stringify([line.site, line.tag]);
    if (!lastJobs.has(of)) lastJobs.set(of, await lastJobOf(store, line, names));
    const last = lastJobs.get(of);
    owed.push({
      ...(await owners.of(line)),
      ...(line.site ? { site: line.site } : {}),
      tag: line.tag,
      do: line.one.do,
      what: followUpWords(line.one),
      when: line.one.when,
      why: line.one.why,
      ...(line.on ? { since: line.on } : {}),
      ...(last ? { job: last.job } : {}),
      loggedBy: last?.loggedBy ?? [],
    });
  }
  return { owed, count: all.length };
}

async function ofWhom<L extends { site: string; tag: string; key: string }>(
  lines: readonly L[],
  owners: Owners,
  whose: string,
): Promise<L[]> {
  const own: L[] = [];
  for (const line of lines) {
    const { owner } = await owners.of(line);
    // what is left by somebody who is gone is nobody's
    const is = owner && !owner.left ? owner.id : NOBODYS;
    if (is === whose) own.push(line);
  }
  return own;
}

/** A valve's last job, and the names of those who logged it. */
async function lastJobOf(
  store: Store,
  { site, tag }: { site: string; tag: string },
  names: ReadonlyMap<string, string>,
): Promise<{ job: string; loggedBy: string[] } | undefined> {
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
  const loggedBy = said.flatMap((row) => (row.person === null ? [] : (names.get(row.person) ?? [])));
  return { job: last.job, loggedBy };
}
