import { expect, it } from "vitest";
import { outboxWords } from "../../../web/sync/outbox-words.ts";

const clock = (instant: string) => instant.slice(11, 16);
const at = "2026-03-04T09:41:00Z";

it.each([
  [{ waiting: 0, refused: 0 }, "nothing waiting"],
  [{ waiting: 0, refused: 0, lastKeptAt: at }, "all kept by the server 09:41"],
  [{ waiting: 2, refused: 0, lastKeptAt: at }, "2 waiting, last kept 09:41"],
  [{ waiting: 2, refused: 0, trouble: "no network to the server" }, "2 waiting, no network to the server"],
  [{ waiting: 0, refused: 1, lastKeptAt: at }, "1 refused by the server"],
])("says how far the words have come: %o", (outbox, words) => {
  expect(outboxWords(outbox, clock)).toBe(words);
});
