import type { RecipientRow, VersionRow } from "../mail/outbox-store.ts";

/**
 * What sending a day's report would do now:
 * - `send`: make the first version;
 * - `correct`: the record changed since somebody got it, so make a numbered correction;
 * - `remake`: the record changed and nobody has it yet, so make the same version anew;
 * - `repeat`: try the version again for those who surely do not have it;
 * - `again`: try it for those who may have it, which only a person decides;
 * - `nothing`: it is under way, or everybody has it.
 */
export type Step = "send" | "correct" | "remake" | "repeat" | "again" | "nothing";

export interface Standing {
  last: Pick<VersionRow, "state" | "record"> | undefined;
  recipients: readonly Pick<RecipientRow, "address" | "state">[];
  /** what the record holds now */
  record: string;
  /** who is to get it, as set now */
  wanted: readonly string[];
  /** whether there is a mail server to send through */
  server: boolean;
}

export function nextStep({ last, recipients, record, wanted, server }: Standing): Step {
  if (!last) return "send";
  if (last.state === "sending" || last.state === "handing") return "nothing";
  const changed = last.record !== record;
  const out = last.state === "written" || recipients.some((one) => one.state === "sent" || one.state === "unknown");
  if (changed) return out ? "correct" : "remake";
  if (last.state === "unknown") return "again";
  if (last.state === "waiting" || last.state === "stopped") return "repeat";
  if (last.state === "written") return server && wanted.length > 0 ? "repeat" : "nothing";
  const has = new Set(recipients.filter((one) => one.state !== "refused").map((one) => one.address));
  return wanted.some((address) => !has.has(address)) ? "repeat" : "nothing";
}
