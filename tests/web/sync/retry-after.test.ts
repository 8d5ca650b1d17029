import { expect, it } from "vitest";
import { retryAfterMs } from "../../../web/sync/retry-after.ts";

const now = Date.parse("2026-03-04T09:41:00Z");

// the forms are those of RFC 9110, 10.2.3
it.each([
  [null, undefined],
  ["", undefined],
  ["120", 120_000],
  ["0", 0],
  ["Wed, 04 Mar 2026 09:42:00 GMT", 60_000],
  ["Wed, 04 Mar 2026 09:00:00 GMT", 0],
  ["soon", undefined],
  ["-5 seconds", undefined],
])("a reply's wish to be left alone: %s is %s", (header, ms) => {
  expect(retryAfterMs(header, now)).toBe(ms);
});
