import { desc } from "drizzle-orm";
import type { Who } from "../access.ts";
import { audit } from "../db/people-tables.ts";
import type { Tx } from "../db/writer.ts";
import { now } from "../moments.ts";
import { BEFORE_FIRST, canonical, chainHash } from "./chain.ts";

/** Every kind of act that leaves a record. */
export type ActName =
  | "person_enrolled"
  | "roles_changed"
  | "sites_changed"
  | "person_left"
  | "code_made"
  | "device_enrolled"
  | "device_revoked"
  | "signed_in"
  | "sign_in_refused"
  | "signed_out"
  | "password_set"
  | "password_change_refused"
  | "phrase_corrected"
  | "phrase_decided"
  | "phrases_accepted"
  | "question_answered"
  | "job_signed"
  | "job_reopened"
  | "follow_up_given"
  | "follow_up_taken_away"
  | "words_taught"
  | "site_set_up"
  | "valve_set_up"
  | "family_set_up"
  | "family_taken_back"
  | "stock_set"
  | "keeping_set"
  | "calendar_opened"
  | "calendar_closed"
  | "report_set_up"
  | "report_handed_over"
  | "mail_sent"
  | "database_imported"
  | "site_moved"
  | "site_taken_over";

/** What the server does by the clock, with nobody asking. */
export const BY_ITSELF = { person: undefined, by: "server" };

/**
 * Writes down an act, in the transaction of the act itself: neither stands without the other. `about` names things by
 * their ids; no token, no password and nothing that was said at a valve goes into it.
 */
export async function record(
  tx: Tx,
  who: Pick<Who, "person" | "by">,
  act: ActName,
  about: Record<string, unknown>,
): Promise<void> {
  const [last] = await tx.select({ n: audit.n, hash: audit.hash }).from(audit).orderBy(desc(audit.n)).limit(1);
  const own = {
    n: (last?.n ?? 0) + 1,
    at: now().utc,
    person: who.person ?? null,
    by: who.by,
    act,
    about: canonical(about),
  };
  await tx.insert(audit).values({ ...own, hash: chainHash(last?.hash ?? BEFORE_FIRST, own) });
}
