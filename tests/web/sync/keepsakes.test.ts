import { expect, it } from "vitest";
import { judgeKeepsake } from "../../../web/sync/keepsakes.ts";

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
