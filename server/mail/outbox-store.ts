import { and, asc, desc, eq, getTableColumns, inArray, lte } from "drizzle-orm";
import { BY_ITSELF, record } from "../audit/record.ts";
import type { Store } from "../db/open.ts";
import { reportRecipients, reportVersions } from "../db/report-tables.ts";
import type { Tx } from "../db/writer.ts";

/** Which version of which day's report is meant. */
export interface VersionKey {
  site: string;
  day: string;
  version: number;
}
/** A version without its bytes, which are read only to be sent. */
export type VersionRow = Omit<typeof reportVersions.$inferSelect, "message">;
export type RecipientRow = typeof reportRecipients.$inferSelect;

export const isVersion = ({ site, day, version }: VersionKey) =>
  and(eq(reportVersions.site, site), eq(reportVersions.day, day), eq(reportVersions.version, version));
export const isRecipientOf = ({ site, day, version }: VersionKey) =>
  and(eq(reportRecipients.site, site), eq(reportRecipients.day, day), eq(reportRecipients.version, version));

const { message: _, ...WITHOUT_MESSAGE } = getTableColumns(reportVersions);

/** The oldest version that is to be tried now; undefined where none is. */
export async function nextWaiting(store: Store, now: string): Promise<(VersionRow & { message: Buffer }) | undefined> {
  const [row] = await store.db
    .select()
    .from(reportVersions)
    .where(and(eq(reportVersions.state, "waiting"), lte(reportVersions.nextTryAt, now)))
    .orderBy(asc(reportVersions.nextTryAt), asc(reportVersions.day), asc(reportVersions.version))
    .limit(1);
  return row;
}

/** A day's versions, the newest first. */
export async function versionsOf(db: Pick<Tx, "select">, site: string, day: string): Promise<VersionRow[]> {
  return db
    .select(WITHOUT_MESSAGE)
    .from(reportVersions)
    .where(and(eq(reportVersions.site, site), eq(reportVersions.day, day)))
    .orderBy(desc(reportVersions.version));
}

export async function recipientsOf(db: Pick<Tx, "select">, key: VersionKey): Promise<RecipientRow[]> {
  return db.select().from(reportRecipients).where(isRecipientOf(key)).orderBy(asc(reportRecipients.address));
}

/** Takes a waiting version up; false where another outbox was first. */
export function claim(store: Store, key: VersionKey, by: string): Promise<boolean> {
  return moved(store, key, ["waiting"], { state: "sending", claim: by });
}

/** From here on the outcome is unknown until the server answers; false where the claim is no longer ours. */
export function markHanding(store: Store, key: VersionKey, by: string): Promise<boolean> {
  return moved(store, key, ["sending"], { state: "handing" }, by);
}

async function moved(
  store: Store,
  key: VersionKey,
  from: VersionRow["state"][],
  set: Partial<VersionRow>,
  by?: string,
): Promise<boolean> {
  return store.write(async (tx) => {
    const ours = by === undefined ? undefined : eq(reportVersions.claim, by);
    const rows = await tx
      .update(reportVersions)
      .set(set)
      .where(and(isVersion(key), inArray(reportVersions.state, from), ours))
      .returning({ version: reportVersions.version });
    return rows.length > 0;
  });
}

/** What became of an attempt, all of it in one commit. */
export interface Settled {
  version: Partial<VersionRow>;
  recipients: { address: string; state: RecipientRow["state"]; reply: string | null }[];
  at: string;
}

/** Writes an attempt's outcome down, unless somebody else has taken the version over meanwhile. */
export async function settle(store: Store, key: VersionKey, by: string, settled: Settled): Promise<void> {
  await store.write(async (tx) => {
    const rows = await tx
      .update(reportVersions)
      .set(settled.version)
      .where(and(isVersion(key), eq(reportVersions.claim, by)))
      .returning({ version: reportVersions.version });
    if (rows.length === 0) return;
    for (const { address, state, reply } of settled.recipients) {
      await tx
        .update(reportRecipients)
        .set({ state, reply, at: settled.at })
        .where(and(isRecipientOf(key), eq(reportRecipients.address, address)));
    }
    const { site, day, version } = key;
    const { state } = settled.version;
    if (state === undefined || state === "waiting") return;
    const sent = settled.recipients.filter((one) => one.state === "sent").length;
    await record(tx, BY_ITSELF, "mail_sent", { site, day, version, state, recipients: sent });
  });
}

/**
 * What an outbox that died left behind (`by`: that one alone, else whichever). Not yet handed over: the server cannot have taken it, so it waits again.
 * Handed over and no answer written down: unknown, and left to a person. Answers how many of each.
 */
export async function recover(store: Store, now: string, by?: string): Promise<{ again: number; unknown: number }> {
  return store.write(async (tx) => {
    const left = await tx
      .select(WITHOUT_MESSAGE)
      .from(reportVersions)
      .where(
        and(
          inArray(reportVersions.state, ["sending", "handing"]),
          by === undefined ? undefined : eq(reportVersions.claim, by),
        ),
      );
    for (const row of left) {
      if (row.state === "sending") {
        await tx.update(reportVersions).set({ state: "waiting", claim: "", nextTryAt: now }).where(isVersion(row));
        continue;
      }
      const problem =
        "this log was stopped after it had handed the message over and before the answer was written down";
      await tx.update(reportVersions).set({ state: "unknown", settledAt: now, problem }).where(isVersion(row));
      await tx
        .update(reportRecipients)
        .set({ state: "unknown", at: now })
        .where(and(isRecipientOf(row), eq(reportRecipients.state, "waiting")));
    }
    const unknown = left.filter((row) => row.state === "handing").length;
    return { again: left.length - unknown, unknown };
  });
}
