import { describe, expect, it } from "vitest";
import type { CardPhrase } from "../../../web/state/state.ts";
import type { KeptJob } from "../../../web/storage/database.ts";
import { bodyOf, fitting, judge } from "../../../web/sync/batch.ts";

const job = (id: string): KeptJob => ({ id, startedAt: "2026-03-04T09:00:00Z", delivery: "waiting" });
const phrase = (id: string, text = "seat worn", of = "j"): CardPhrase => ({
  id,
  job: of,
  text,
  saidAt: "2026-03-04T09:00:00Z",
  how: "typed",
  delivery: "waiting",
});
const batch = { jobs: [job("j")], phrases: [phrase("a"), phrase("b")] };

describe("what goes in one request", () => {
  it("is at most so many phrases, with their jobs and no others' phrases waiting", () => {
    const rows = {
      jobs: [job("j"), job("k"), job("idle")],
      phrases: [phrase("a"), phrase("b"), phrase("c", "x", "k")],
    };
    const first = fitting(rows, 2);
    expect(first.phrases.map((one) => one.id)).toEqual(["a", "b"]);
    expect(first.jobs.map((one) => one.id)).toEqual(["j", "idle"]);
  });
  it("stops before it grows too long, but takes one phrase however long", () => {
    const long = "x".repeat(200_000);
    expect(fitting({ jobs: [job("j")], phrases: [phrase("a", long), phrase("b", long)] }).phrases).toHaveLength(1);
  });
  it("carries what the service reads and nothing else", () => {
    const sent = JSON.parse(bodyOf({ jobs: [job("j")], phrases: [{ ...phrase("a"), alertSeen: true }] }));
    expect(Object.keys(sent.jobs[0])).toEqual(["id", "startedAt"]);
    expect(Object.keys(sent.phrases[0])).toEqual(["id", "job", "text", "saidAt", "how"]);
  });
});

describe("what a reply says", () => {
  it("per phrase: stored and known are kept, refused is told", () => {
    const results = [
      { id: "a", status: "known", entries: [], unread: [] },
      { id: "b", status: "refused", problem: "other words", entries: [], unread: [] },
    ];
    expect(judge(200, { results, jobs: [{ id: "j", status: "stored" }] }, batch)).toEqual({
      is: "answered",
      delivered: ["a", "j"],
      refused: [{ id: "b", problem: "other words" }],
    });
  });
  it.each([0, 401, 408, 429, 500, 503])("%d keeps every row for later", (status) => {
    expect(judge(status, undefined, batch).is).toBe("later");
  });
  it.each([
    ["a sign-in page in place of the server", "<html>"],
    ["no results", {}],
    ["results of others", { results: [{ id: "z", status: "stored" }] }],
    ["broken results", { results: [{ id: 1 }] }],
  ])("200 with %s keeps every row", (_what, body) => {
    expect(judge(200, body, batch).is).toBe("later");
  });
  it("a 4xx for many is tried one by one; for one it is that one's refusal, with the server's words", () => {
    expect(judge(400, { detail: "x" }, batch)).toEqual({ is: "split" });
    expect(judge(413, { detail: "too long" }, { jobs: [job("j")], phrases: [phrase("a")] })).toEqual({
      is: "turned_down",
      problem: "too long",
    });
  });
});
