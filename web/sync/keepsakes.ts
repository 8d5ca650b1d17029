import type { CardKeepsake } from "../state/keepsake.ts";
import type { Happening } from "../state/next.ts";
import type { Outbox } from "../state/state.ts";
import type { KeepsakeShelf } from "../storage/keepsake-shelf.ts";
import { path } from "./ask.ts";
import type { Reply } from "./reply.ts";
import { type RoundHands, rounds, type Trouble } from "./rounds.ts";

/** Everything that sending sound and photographs touches, handed in so that it can be tried without a page. */
export interface SendingKeepsakes extends RoundHands {
  shelf: Pick<KeepsakeShelf, "toSend" | "mark">;
  /** how many of everything wait */
  counts(): Promise<Partial<Outbox>>;
  put(address: string, bytes: ArrayBuffer, type: string): Promise<Reply>;
  setLastKeptAt(at: string): Promise<void>;
  tell(now: Happening): void;
  now(): string;
}

const MOST_STUCK = 3;

/**
 * Makes what sends sound and photographs, each after the words it belongs to, one at a time and the oldest first. Each
 * is sent whole until the server answers for it; the id was made here, so the server keeps once what it gets twice.
 */
export function keepsakeSender(at: SendingKeepsakes): () => Promise<void> {
  async function sendAll(): Promise<Trouble | undefined> {
    const stuck = new Map<string, Trouble>();
    for (;;) {
      const next = await at.shelf.toSend(stuck);
      if (!next) return [...stuck.values()].at(-1);
      const { row, bytes } = next;
      const reply = await at.put(addressOf(row), bytes, row.type);
      const verdict = judgeKeepsake(reply);
      if (verdict.is === "later") {
        // what breaks the server may be this one alone: a few others are tried before the round is given up
        if (reply.status !== 500 || stuck.size >= MOST_STUCK) return verdict.trouble;
        stuck.set(row.id, verdict.trouble);
        continue;
      }
      const marked = await at.shelf.mark(row.id, verdict.is, verdict.problem);
      if (verdict.is === "kept") await at.setLastKeptAt(at.now());
      if (marked) at.tell({ is: "keepsake", keepsake: marked });
      at.tell({ is: "outbox", outbox: await at.counts() });
    }
  }
  return rounds(at, sendAll, async (trouble) => {
    // first the words, then the count: where even the count fails, why is known
    at.tell({ is: "outbox", outbox: { keepsakeTrouble: trouble?.why } });
    at.tell({ is: "outbox", outbox: await at.counts() });
  });
}

function addressOf(row: CardKeepsake): string {
  const base = `/api/${row.kind}s/${row.id}`;
  if (row.kind === "clip") return path(base, { phrase: row.phrase, at: row.at, seconds: String(row.seconds) });
  return path(base, { job: row.job, phrase: row.phrase, at: row.at });
}

type Verdict =
  | { is: "kept" | "refused" | "unwanted"; problem?: string }
  /** nothing is decided: it stays and goes again */
  | { is: "later"; trouble: Trouble };

/** What a reply says of the one that was sent. */
export function judgeKeepsake({ status, body, waitMs }: Reply): Verdict {
  const told = typeof body === "object" && body !== null ? (body as Record<string, unknown>) : {};
  const detail = typeof told.detail === "string" ? told.detail : undefined;
  const later = (why: string): Verdict => ({ is: "later", trouble: { why, waitMs } });
  if (status === 0) return later("no network to the server");
  if (status === 401) return later(detail ?? "the server does not know this device");
  if (status === 408 || status === 429) return later("the server is busy");
  // out of room is its own matter, and will be mended there
  if (status === 507) return later(detail ?? "the server has no room left");
  if (status >= 500) return later(`the server has trouble (${status})`);
  if (status >= 400) return { is: "refused", problem: detail ?? `the server turned it down (${status})` };
  if (told.status === "stored" || told.status === "known") return { is: "kept" };
  if (told.status === "not_kept")
    return { is: "unwanted", problem: typeof told.why === "string" ? told.why : "the site does not keep it" };
  return later("something other than the server answered");
}
