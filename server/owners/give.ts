import { and, desc, eq } from "drizzle-orm";
import type { FollowUp, OwnerSent } from "../../core/index.ts";
import type { Who } from "../access.ts";
import { namesOf } from "../accounts/people.ts";
import { record } from "../audit/record.ts";
import { followUpOwners } from "../db/review-tables.ts";
import { valveStates } from "../db/tables.ts";
import type { Tx } from "../db/writer.ts";
import { now } from "../moments.ts";
import { type Refused, refuse } from "../review/decide.ts";
import { whoAndWhen } from "../review/who-and-when.ts";
import { isOpen, mayOwnAt, type OwnerRow } from "./owners-of.ts";

type Given = { ok: true; status: "stored" | "known" } | Refused;

/**
 * Gives a follow-up to a person, or takes it away: a record of its own, after which the newest stands. Nothing is taken
 * over unseen: where another lead was first, it is refused with what he did. The valve's state is fresh: see the route.
 */
export async function giveFollowUp(tx: Tx, sent: OwnerSent, who: Who): Promise<Given> {
  const { id, tag, key, owner } = sent;
  const site = sent.site ?? "";
  const [before] = await tx.select().from(followUpOwners).where(eq(followUpOwners.id, id));
  if (before) {
    const same = before.site === site && before.tag === tag && before.key === key && before.owner === owner;
    return same ? { ok: true, status: "known" } : refuse(409, "This id is already used by another: use a new id.");
  }
  const last = await newestOf(tx, { site, tag, key });
  if (last && last.n !== sent.seen) {
    if (last.owner === owner) return { ok: true, status: "known" };
    return refuse(409, `${await didWords(tx, last)} meanwhile. Nothing of yours was done: look, and give it again.`);
  }
  const [state] = await tx
    .select({ open: valveStates.open })
    .from(valveStates)
    .where(and(eq(valveStates.site, site), eq(valveStates.tag, tag)));
  if (!state || !isOpen(JSON.parse(state.open) as FollowUp[], key))
    return refuse(409, `Nothing like this is open at ${tag} any more: look at the valve again.`);
  if (owner !== null && !(await mayOwnAt(tx, [site])).some((one) => one.id === owner))
    return refuse(
      404,
      "Nobody of this id is here who sees the site: GET /api/follow-ups/people lists who can have it.",
    );
  const n = (last?.n ?? 0) + 1;
  const by = { person: who.person ?? null, by: who.by, madeAt: now().utc };
  await tx.insert(followUpOwners).values({ id, site, tag, key, n, owner, ...by });
  const about = { ...(site ? { site } : {}), tag, key, n };
  if (owner === null) await record(tx, who, "follow_up_taken_away", about);
  else await record(tx, who, "follow_up_given", { ...about, owner });
  return { ok: true, status: "stored" };
}

async function newestOf(
  tx: Tx,
  { site, tag, key }: Pick<OwnerRow, "site" | "tag" | "key">,
): Promise<OwnerRow | undefined> {
  const of = and(eq(followUpOwners.site, site), eq(followUpOwners.tag, tag), eq(followUpOwners.key, key));
  const [last] = await tx.select().from(followUpOwners).where(of).orderBy(desc(followUpOwners.n)).limit(1);
  return last;
}

async function didWords(tx: Tx, last: OwnerRow): Promise<string> {
  const by = await whoAndWhen(tx, last);
  if (last.owner === null) return `Taken away by ${by}`;
  return `Given to ${(await namesOf(tx)).get(last.owner) ?? "somebody"} by ${by}`;
}
