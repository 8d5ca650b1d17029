import { Readable } from "node:stream";
import SMTPConnection from "nodemailer/lib/smtp-connection";
import type { SmtpServer } from "./smtp-server.ts";

/** What an attempt came to. `unknown` only where the message was handed over whole and no answer came back. */
export type Outcome =
  | { is: "taken"; reply: string; refused: Refused[] }
  /** no recipient was let in */
  | { is: "refused"; refused: Refused[] }
  /** the server surely did not take it; `final`: its own lasting no */
  | { is: "not-taken"; final: boolean; why: string }
  | { is: "unknown"; why: string };
/** One recipient turned away; `final` for a 5xx, else it may be let in later. */
export interface Refused {
  address: string;
  reply: string;
  final: boolean;
}

export interface Times {
  /** until connected, greeted and secured */
  connectMs: number;
  /** silence after which the connection is given up: RFC 5321 4.5.3.2.6 asks for 10 minutes after the message */
  silenceMs: number;
}
export const TIMES: Times = { connectMs: 30_000, silenceMs: 600_000 };

interface Letter {
  from: string;
  to: string[];
  message: Buffer;
}

interface Trouble extends Error {
  code?: string;
  responseCode?: number;
  response?: string;
  recipient?: string;
  rejectedErrors?: Trouble[];
}

/**
 * Sends one message over one connection. A server must not take a message before it has seen the dot that ends it
 * (RFC 5321 4.1.1.4): so the last thing before the dot is `handing`, which writes down that from here on the outcome
 * is unknown until answered. Where it answers false, the message is not ended and the connection is cut.
 */
export function attempt(
  server: SmtpServer,
  letter: Letter,
  handing: () => Promise<boolean>,
  stop: AbortSignal,
  times: Times = TIMES,
): Promise<Outcome> {
  const connection = new SMTPConnection({
    ...server,
    connectionTimeout: times.connectMs,
    greetingTimeout: times.connectMs,
    socketTimeout: times.silenceMs,
  });
  let handed = false;
  const body = endedBy(letter.message, async () => {
    if (stop.aborted || !(await handing())) return false;
    handed = true;
    return true;
  });
  return new Promise<Outcome>((resolve) => {
    const end = (outcome: Outcome) => {
      stop.removeEventListener("abort", cut);
      if (outcome.is === "taken") connection.quit();
      else connection.close();
      resolve(outcome);
    };
    const fail = (cause: Trouble) => end(outcomeOf(cause, handed));
    // once handed over, the answer is worth waiting for
    const cut = () => {
      if (!handed) end({ is: "not-taken", final: false, why: "this log was stopped meanwhile" });
    };
    stop.addEventListener("abort", cut);
    connection.on("error", fail);
    const send = () =>
      connection.send({ from: letter.from, to: letter.to, size: letter.message.length }, body, (cause, info) =>
        cause
          ? fail(cause)
          : end({ is: "taken", reply: info?.response ?? "", refused: (info?.rejectedErrors ?? []).map(refusal) }),
      );
    connection.connect((cause) => {
      if (cause) fail(cause);
      else if (!server.auth) send();
      else connection.login({ ...server.auth }, (wrong) => (wrong ? fail(wrong) : send()));
    });
  });
}

const PIECE_BYTES = 16_384;

/** The message as a stream whose end comes only after `mayEnd` says so. */
function endedBy(message: Buffer, mayEnd: () => Promise<boolean>): Readable {
  let at = 0;
  return new Readable({
    read() {
      // in pieces, so that the end is not asked for while the most of it still waits here
      if (at < message.length) {
        this.push(message.subarray(at, at + PIECE_BYTES));
        at += PIECE_BYTES;
        return;
      }
      mayEnd().then(
        (may) => (may ? this.push(null) : this.destroy(new Error("another outbox has taken this message over"))),
        (cause: Error) => this.destroy(cause),
      );
    },
  });
}

function outcomeOf(cause: Trouble, handed: boolean): Outcome {
  if (cause.rejectedErrors?.length) return { is: "refused", refused: cause.rejectedErrors.map(refusal) };
  const why = oneLine(cause.response ?? cause.message);
  // a number from the server is an answer, whenever it comes: it did not take the message
  if (cause.responseCode) return { is: "not-taken", final: cause.responseCode >= 500, why };
  if (handed) return { is: "unknown", why };
  return { is: "not-taken", final: cause.code === "EMESSAGE", why };
}

function refusal(cause: Trouble): Refused {
  return {
    address: cause.recipient ?? "",
    reply: oneLine(cause.response ?? cause.message),
    final: (cause.responseCode ?? 0) >= 500,
  };
}

/** A server's words go onto a page: one line, not without end. */
const oneLine = (text: string): string =>
  text
    .replace(/[\s\p{Cc}]+/gu, " ")
    .trim()
    .slice(0, 400);
