import { expect, it } from "vitest";
import { outboxWords } from "../../../web/sync/outbox-words.ts";

const clock = (instant: string) => instant.slice(11, 16);
const at = "2026-03-04T09:41:00Z";

it.each([
  [{ waiting: 0, refused: 0 }, "nothing waiting"],
  [{ waiting: 0, refused: 0, lastKeptAt: at }, "all kept by the server 09:41"],
  [{ waiting: 2, refused: 0, lastKeptAt: at }, "2 waiting, last sent 09:41"],
  [{ waiting: 2, refused: 0, trouble: "no network to the server" }, "2 waiting, no network to the server"],
  [{ waiting: 0, refused: 1, lastKeptAt: at }, "1 refused by the server"],
  [
    { waiting: 9, clips: 2, photos: 1, refused: 0, lastKeptAt: at },
    "12 waiting (9 phrases, 2 clips, 1 photo), last sent 09:41",
  ],
  [{ waiting: 0, clips: 0, photos: 2, refused: 0, lastKeptAt: at }, "2 waiting (2 photos), last sent 09:41"],
  [
    { waiting: 0, clips: 1, refused: 0, keepsakeTrouble: "the server is busy" },
    "1 waiting (1 clip), the server is busy",
  ],
  [
    { waiting: 1, refused: 0, lastKeptAt: at, full: true },
    "1 waiting, last sent 09:41. This device is full: only words are kept until it has sent what waits.",
  ],
  [{ waiting: 0, refused: 0, lastKeptAt: at, aheadMs: 90_000 }, "all kept by the server 09:41"],
  [
    { waiting: 0, refused: 0, lastKeptAt: at, aheadMs: 3 * 86_400_000 + 5000 },
    "all kept by the server 09:41. This device’s clock is 3 days ahead of the server’s, and what is said is dated by it: see which is right.",
  ],
  [
    { waiting: 1, refused: 0, lastKeptAt: at, full: true, aheadMs: -3_600_000 },
    "1 waiting, last sent 09:41. This device is full: only words are kept until it has sent what waits. This device’s clock is 1 hour behind the server’s, and what is said is dated by it: see which is right.",
  ],
])("says how far the words have come: %o", (outbox, words) => {
  expect(outboxWords({ clips: 0, photos: 0, ...outbox }, clock)).toBe(words);
});
