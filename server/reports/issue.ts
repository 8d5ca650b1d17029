import { createHash } from "node:crypto";
import type { Who } from "../access.ts";
import { record as recordAct } from "../audit/record.ts";
import type { Clock } from "../clock.ts";
import type { Store } from "../db/open.ts";
import { reportRecipients, reportVersions } from "../db/report-tables.ts";
import type { Tx } from "../db/writer.ts";
import {
  isRecipientOf,
  isVersion,
  type RecipientRow,
  recipientsOf,
  type VersionKey,
  type VersionRow,
  versionsOf,
} from "../mail/outbox-store.ts";
import { momentOf } from "../moments.ts";
import { settingsOf } from "../routes/sending/store.ts";
import { dayData } from "./day-data.ts";
import { dayMail } from "./day-mail.ts";
import { addressOnly, domainOf } from "./mail.ts";
import { nextStep, type Step } from "./next-step.ts";
import { NOTHING_SAID, recordOfDays } from "./record-digest.ts";

export interface Issuing {
  store: Store;
  clock: Clock;
  /** sender, as in MAIL_FROM */
  from: string;
  /** whether there is a mail server to send through */
  server: boolean;
}

export type Issued = { ok: true; version: number; step: Step } | { ok: false; status: 404 | 409; problem: string };

/**
 * Hands a day's report to the outbox, as a new version or the last one once more: see next-step.ts. `by` the clock
 * only what is new goes; a person may also repeat what was refused, or with `again` what may have arrived.
 */
export async function issue(
  given: Issuing,
  site: string,
  day: string,
  how: { by: "clock" | "person"; who: Pick<Who, "person" | "by">; again?: boolean },
): Promise<Issued> {
  const { store } = given;
  for (let turn = 0; turn < 5; turn++) {
    const [last] = await versionsOf(store.db, site, day);
    const wanted = (await settingsOf(store.db, site))?.recipients ?? [];
    if (given.server && wanted.length === 0)
      return refuse("Nobody is set to get this site's report: set recipients first (PUT /api/sites/SITE/report).");
    const record = (await recordOfDays(store, site, day, day)).get(day)?.digest ?? NOTHING_SAID;
    const recipients = last ? await recipientsOf(store.db, last) : [];
    const step = nextStep({ last, recipients, record, wanted, server: given.server });
    const refusal = refusalOf(step, last, how);
    if (refusal) return refuse(refusal);
    const version = step === "send" ? 1 : (last?.version ?? 0) + (step === "correct" ? 1 : 0);
    // nobody has it yet: what goes is the day as it stands now, under the same name
    const fresh = step === "send" || step === "correct" || step === "remake" || !recipients.some(mayHave);
    const letter = fresh ? await compose(given, { site, day, version }, wanted) : undefined;
    if (fresh && !letter) return { ok: false, status: 404, problem: `No site ${site} is set up and no job names it.` };
    const done = await store.write(async (tx) => {
      const [now] = await versionsOf(tx, site, day);
      // somebody was faster: look again
      if (now?.version !== last?.version || now?.state !== last?.state) return false;
      if (letter) await putNew(tx, { site, day, version }, letter, record, wanted);
      else if (last) await putAgain(tx, last, recipients, wanted, momentOf(given.clock()).utc, how.again === true);
      await recordAct(tx, how.who, "report_handed_over", { site, day, version });
      return true;
    });
    if (done) return { ok: true, version, step };
  }
  return refuse("The report is being sent at this very moment: look again in a moment.");
}

/** Why this is not done; undefined where it is. */
function refusalOf(step: Step, last: VersionRow | undefined, how: { by: string; again?: boolean }): string | undefined {
  if (how.by === "clock") return step === "send" || step === "correct" || step === "remake" ? undefined : "nothing new";
  if (step === "nothing")
    return last?.state === "settled" || last?.state === "written"
      ? "It has been sent as it stands: everybody has it, and nothing was said or amended since."
      : "It is being sent at this moment: look again in a moment.";
  if (step === "again" && !how.again)
    return 'It may have arrived: ask a recipient first. To send it all the same, which may bring it twice, send {"again": true}.';
  return undefined;
}

const refuse = (problem: string): Issued => ({ ok: false, status: 409, problem });
const mayHave = (one: RecipientRow) => one.state === "sent" || one.state === "unknown";

type Letter = Pick<VersionRow, "messageId" | "sender" | "madeAt"> & { message: Buffer };

async function compose(given: Issuing, key: VersionKey, to: string[]): Promise<Letter | undefined> {
  const data = await dayData(given.store, key.site, key.day);
  if (!data) return undefined;
  const at = given.clock();
  const messageId = messageIdOf(key, given.from);
  const message = await dayMail(given.store, data, key.version, {
    from: given.from,
    to,
    messageId,
    date: at,
    inReplyTo: key.version > 1 ? messageIdOf({ ...key, version: 1 }, given.from) : undefined,
  });
  return { messageId, sender: addressOnly(given.from), message, madeAt: momentOf(at).utc };
}

/** The same for a (site, day, version), whenever and however often it is made: a receiver can tell a repetition. */
export function messageIdOf({ site, day, version }: VersionKey, from: string): string {
  const name = createHash("sha256").update(site).digest("hex").slice(0, 16);
  return `<report.${name}.${day}.${version}@${domainOf(from)}>`;
}

async function putNew(tx: Tx, key: VersionKey, letter: Letter, record: string, to: readonly string[]): Promise<void> {
  const row = {
    ...letter,
    record,
    state: "waiting",
    claim: "",
    attempts: 0,
    askedAt: letter.madeAt,
    nextTryAt: letter.madeAt,
    settledAt: null,
    problem: null,
  } as const;
  await tx
    .insert(reportVersions)
    .values({ ...key, ...row })
    .onConflictDoUpdate({ target: [reportVersions.site, reportVersions.day, reportVersions.version], set: row });
  await tx.delete(reportRecipients).where(isRecipientOf(key));
  if (to.length > 0)
    await tx.insert(reportRecipients).values(to.map((address) => ({ ...key, address, state: "waiting" as const })));
}

/** The same bytes once more, for those who do not have them, and with `again` for those who may. */
async function putAgain(
  tx: Tx,
  last: VersionRow,
  recipients: readonly RecipientRow[],
  wanted: readonly string[],
  now: string,
  again: boolean,
): Promise<void> {
  const key = { site: last.site, day: last.day, version: last.version };
  const known = new Map(recipients.map((one) => [one.address, one.state]));
  for (const address of wanted) {
    const state = known.get(address);
    if (state === "sent" || (state === "unknown" && !again)) continue;
    await tx
      .insert(reportRecipients)
      .values({ ...key, address, state: "waiting" })
      .onConflictDoUpdate({
        target: [reportRecipients.site, reportRecipients.day, reportRecipients.version, reportRecipients.address],
        set: { state: "waiting", reply: null, at: null },
      });
  }
  await tx
    .update(reportVersions)
    .set({ state: "waiting", claim: "", attempts: 0, askedAt: now, nextTryAt: now, settledAt: null, problem: null })
    .where(isVersion(key));
}
