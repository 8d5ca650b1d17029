import { describe, expect, it } from "vitest";
import type { Happening } from "../../../web/state/next.ts";
import type { CardPhrase } from "../../../web/state/state.ts";
import { noShelf } from "../../../web/storage/no-shelf.ts";
import { sender } from "../../../web/sync/flush.ts";

type Reply = { status: number; body: unknown };
interface Sent {
  jobs: { id: string }[];
  phrases: { id: string; text: string }[];
}

/** The sender on the shelf that lives in memory, against a server that answers as each test says. */
async function sending(texts: string[], answer: (sent: Sent, turn: number) => Reply) {
  const shelf = noShelf("a test");
  await shelf.keepJob({ id: "j", startedAt: "2026-03-04T09:00:00Z" });
  for (const [index, text] of texts.entries()) {
    const phrase: CardPhrase = {
      id: `p${index}`,
      job: "j",
      text,
      saidAt: "2026-03-04T09:00:00Z",
      how: "typed",
      delivery: "keeping",
    };
    await shelf.keepPhrase(phrase).catch(() => "this shelf refuses to call anything kept, and holds it for sending");
  }
  const told: Happening[] = [];
  const posts: Sent[] = [];
  const later: (() => void)[] = [];
  const flush = sender({
    shelf,
    async post(body) {
      const sent = JSON.parse(body) as Sent;
      posts.push(sent);
      return answer(sent, posts.length);
    },
    tell: (now) => void told.push(now),
    alone: (work) => work(),
    later: (work) => void later.push(work),
    now: () => "2026-03-04T09:41:00Z",
    chance: () => 0.5,
    ticks: () => 0,
  });
  return { shelf, told, posts, later, flush };
}

const stored = (sent: Sent): Reply => ({
  status: 200,
  body: { results: sent.phrases.map(({ id }) => ({ id, status: "stored" })) },
});

describe("sending", () => {
  it("sends a phrase again that was confirmed while it was on its way", async () => {
    const confirmed: CardPhrase = {
      id: "p0",
      job: "j",
      text: "one",
      saidAt: "2026-03-04T09:00:00Z",
      how: "heard",
      confidence: 1,
      delivery: "keeping",
    };
    const { shelf, posts, flush, told } = await sending(["one"], (sent, turn) => {
      if (turn === 1) void shelf.keepPhrase(confirmed).catch(() => "held for sending all the same");
      return stored(sent);
    });
    await flush();
    expect(posts.map((sent) => sent.phrases)).toMatchObject([[{ id: "p0" }], [{ id: "p0", confidence: 1 }]]);
    expect(told.filter((one) => one.is === "delivered")).toEqual([
      { is: "delivered", ids: [] },
      { is: "delivered", ids: ["p0"] },
    ]);
    expect(await shelf.counts()).toMatchObject({ waiting: 0 });
  });

  it("sends everything that waits and says so", async () => {
    const { shelf, posts, flush, told } = await sending(["one", "two"], stored);
    await flush();
    expect(posts.flatMap((sent) => sent.phrases.map((one) => one.text))).toEqual(["one", "two"]);
    expect(await shelf.counts()).toMatchObject({ waiting: 0, refused: 0, lastKeptAt: "2026-03-04T09:41:00Z" });
    expect(told).toContainEqual({ is: "delivered", ids: ["p0", "p1"] });
  });

  it("keeps the rows while the server is away and comes back for them", async () => {
    const { shelf, flush, later, told } = await sending(["one"], (sent, turn) =>
      turn < 3 ? { status: turn === 1 ? 0 : 503, body: undefined } : stored(sent),
    );
    await flush();
    expect(await shelf.counts()).toMatchObject({ waiting: 1 });
    expect(told.at(-1)).toMatchObject({ is: "outbox", outbox: { waiting: 1, trouble: "no network to the server" } });
    expect(later).toHaveLength(1);
    await flush();
    await flush();
    expect(await shelf.counts()).toMatchObject({ waiting: 0 });
  });

  it("finds the one bad row of a request that was turned down whole, and sends the others", async () => {
    const { shelf, flush } = await sending(["one", "bad", "three"], (sent) =>
      sent.phrases.some((one) => one.text === "bad")
        ? { status: 400, body: { detail: "cannot be kept" } }
        : stored(sent),
    );
    await flush();
    expect(await shelf.counts()).toMatchObject({ waiting: 0, refused: 1 });
    expect((await shelf.refused()).phrases).toMatchObject([{ text: "bad", problem: "cannot be kept" }]);
  });

  it("puts refused rows back when asked", async () => {
    const { shelf, flush } = await sending(["one"], (sent, turn) =>
      turn === 1
        ? { status: 200, body: { results: [{ id: "p0", status: "refused", problem: "no such job" }] } }
        : stored(sent),
    );
    await flush();
    expect(await shelf.counts()).toMatchObject({ refused: 1 });
    await shelf.askAgain();
    await flush();
    expect(await shelf.counts()).toMatchObject({ waiting: 0, refused: 0 });
  });
});
