import { randomUUID } from "node:crypto";
import type { Clock } from "../clock.ts";
import type { Store } from "../db/open.ts";
import type { Log } from "../log.ts";
import { momentOf, msOf } from "../moments.ts";
import { attempt, type Outcome, type Times } from "./attempt.ts";
import { GIVE_UP_MS, waitAfter } from "./backoff.ts";
import { putInFolder } from "./folder.ts";
import {
  claim,
  markHanding,
  nextWaiting,
  type RecipientRow,
  recipientsOf,
  recover,
  type Settled,
  settle,
  type VersionRow,
} from "./outbox-store.ts";
import { type SmtpServer, serverName } from "./smtp-server.ts";

/** Where reports go: through a mail server, or without one into a folder. */
export interface Post {
  server: SmtpServer | undefined;
  folder: string;
  times?: Times;
}

export interface Outbox {
  /** once, before the first `work`: sees to what a killed outbox left */
  begin(): Promise<void>;
  /** sends all that is to be tried now, one after the other */
  work(): Promise<void>;
  /** cuts what the server cannot have taken yet; what was handed over waits for its answer */
  stop(): void;
}

/**
 * Carries versions from `waiting` to where they end. SMTP has no exactly-once: after the end of a message the server
 * may have taken it and the answer may be lost. The rule here: what the server surely did not take is tried again,
 * what it may have taken is `unknown`, shown, and never sent again by itself. So every version arrives at most once
 * unless a person decides otherwise.
 *
 *     waiting -> sending -> handing -> settled | stopped | unknown | waiting (turned away for now)
 *                `-> waiting: nothing was handed over      without a mail server: waiting -> sending -> written
 */
export function makeOutbox(given: { store: Store; log: Log; clock: Clock; post: Post }): Outbox {
  const { store, log, clock, post } = given;
  const me = randomUUID();
  const stopping = new AbortController();
  const now = () => momentOf(clock()).utc;

  async function carry(row: VersionRow & { message: Buffer }): Promise<void> {
    if (!(await claim(store, row, me))) return;
    const open = (await recipientsOf(store.db, row)).filter((one) => one.state === "waiting");
    if (!post.server) {
      const path = await putInFolder(post.folder, row);
      await settle(store, row, me, {
        version: { state: "written", settledAt: now(), problem: path },
        recipients: [],
        at: now(),
      });
      return;
    }
    if (open.length === 0) {
      const version = { state: "stopped", settledAt: now(), problem: "nobody is set to get it" } as const;
      await settle(store, row, me, { version, recipients: [], at: now() });
      return;
    }
    const letter = { from: row.sender, to: open.map((one) => one.address), message: row.message };
    const handing = () => markHanding(store, row, me);
    const outcome = await attempt(post.server, letter, handing, stopping.signal, post.times);
    const settled = afterAttempt(row, open, outcome, clock(), serverName(post.server));
    await settle(store, row, me, settled);
    log.info("report attempt", {
      day: row.day,
      version: row.version,
      outcome: outcome.is,
      state: settled.version.state,
    });
  }

  return {
    async begin() {
      const left = await recover(store, now());
      if (left.again + left.unknown > 0) log.warn("reports were under way when the log stopped", left);
    },
    async work() {
      // of ours only where an outcome could not be written down
      await recover(store, now(), me);
      for (
        let row = await nextWaiting(store, now());
        row && !stopping.signal.aborted;
        row = await nextWaiting(store, now())
      )
        await carry(row);
    },
    stop: () => stopping.abort(),
  };
}

/** What an outcome means for the version and each recipient it was for. Pure. */
export function afterAttempt(
  row: Pick<VersionRow, "attempts" | "askedAt">,
  open: readonly RecipientRow[],
  outcome: Outcome,
  at: Date,
  server: string,
): Settled {
  const attempts = row.attempts + 1;
  const now = momentOf(at).utc;
  const later = (problem: string): Settled["version"] =>
    at.getTime() - msOf(row.askedAt) >= GIVE_UP_MS
      ? { state: "stopped", attempts, settledAt: now, problem: `given up after ${attempts} attempts: ${problem}` }
      : {
          state: "waiting",
          claim: "",
          attempts,
          problem,
          nextTryAt: momentOf(new Date(at.getTime() + waitAfter(attempts))).utc,
        };
  if (outcome.is === "unknown") {
    const problem = `the connection to ${server} ended after the message was handed over and before an answer (${outcome.why})`;
    return {
      version: { state: "unknown", attempts, settledAt: now, problem },
      recipients: open.map(({ address }) => ({ address, state: "unknown", reply: null })),
      at: now,
    };
  }
  if (outcome.is === "not-taken") {
    const problem = outcome.final
      ? `${server} refused it: ${outcome.why}`
      : `${server} has not taken it: ${outcome.why}`;
    const version = outcome.final ? ({ state: "stopped", attempts, settledAt: now, problem } as const) : later(problem);
    return { version, recipients: [], at: now };
  }
  const refused = new Map(outcome.refused.map((one) => [one.address, one]));
  const recipients = open.map(({ address }): Settled["recipients"][number] => {
    const no = refused.get(address);
    if (!no) return { address, state: "sent", reply: outcome.is === "taken" ? outcome.reply : null };
    return { address, state: no.final ? "refused" : "waiting", reply: no.reply };
  });
  const turnedAway = recipients.find((one) => one.state === "waiting");
  return {
    version: turnedAway
      ? later(`${server} does not take it for ${turnedAway.address} yet: ${turnedAway.reply}`)
      : { state: "settled", attempts, settledAt: now, problem: null },
    recipients,
    at: now,
  };
}
