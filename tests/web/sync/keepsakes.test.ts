import { expect, it } from "vitest";
import type { CardKeepsake } from "../../../web/state/keepsake.ts";
import type { Happening } from "../../../web/state/next.ts";
import { judgeKeepsake, keepsakeSender } from "../../../web/sync/keepsakes.ts";

it.each([
  [{ status: 200, body: { id: "a", status: "stored" } }, { is: "kept" }],
  [{ status: 200, body: { id: "a", status: "known" } }, { is: "kept" }],
  [
    { status: 200, body: { id: "a", status: "not_kept", why: "this site keeps no sound" } },
    { is: "unwanted", problem: "this site keeps no sound" },
  ],
  [
    { status: 415, body: { detail: "By its bytes this is no sound." } },
    { is: "refused", problem: "By its bytes this is no sound." },
  ],
  [
    { status: 413, body: undefined },
    { is: "refused", problem: "the server turned it down (413)" },
  ],
  // a network's sign-in page answers 200 too
  [
    { status: 200, body: undefined },
    { is: "later", trouble: { why: "something other than the server answered" } },
  ],
  [
    { status: 0, body: undefined },
    { is: "later", trouble: { why: "no network to the server" } },
  ],
  [
    { status: 401, body: { detail: "Enrol." } },
    { is: "later", trouble: { why: "Enrol." } },
  ],
  [
    { status: 503, body: {}, waitMs: 2000 },
    { is: "later", trouble: { why: "the server has trouble (503)", waitMs: 2000 } },
  ],
  [
    { status: 507, body: { detail: "The disk is full." }, waitMs: 60_000 },
    { is: "later", trouble: { why: "The disk is full.", waitMs: 60_000 } },
  ],
])("what became of one that was sent: %o is %o", (reply, verdict) => {
  expect(judgeKeepsake(reply)).toEqual(verdict);
});

it("one that breaks the server does not hold up those behind it", async () => {
  const rows = new Map(
    ["a", "b", "c"].map((id): [string, CardKeepsake] => [
      id,
      { id, kind: "photo", job: "j", at: "", type: "image/jpeg", size: 1, delivery: "waiting" },
    ]),
  );
  const told: Happening[] = [];
  const asked: string[] = [];
  const send = keepsakeSender({
    shelf: {
      async toSend(but) {
        const row = [...rows.values()].find((one) => one.delivery === "waiting" && !but?.has(one.id));
        return row && { row, bytes: new ArrayBuffer(1) };
      },
      async mark(id, delivery) {
        const row = rows.get(id);
        if (row) rows.set(id, { ...row, delivery });
        return rows.get(id);
      },
    },
    counts: async () => ({}),
    async put(address) {
      asked.push(address.replace(/\?.*/, ""));
      return address.includes("/a?") ? { status: 500, body: {} } : { status: 200, body: { status: "stored" } };
    },
    setLastKeptAt: async () => {},
    tell: (now) => void told.push(now),
    now: () => "2026-03-04T09:41:00Z",
    alone: (work) => work(),
    later: () => {},
    chance: () => 0.5,
    ticks: () => 0,
  });
  await send();
  expect(asked).toEqual(["/api/photos/a", "/api/photos/b", "/api/photos/c"]);
  expect([...rows.values()].map((row) => row.delivery)).toEqual(["waiting", "kept", "kept"]);
  expect(told).toContainEqual({ is: "outbox", outbox: { keepsakeTrouble: "the server has trouble (500)" } });
});
