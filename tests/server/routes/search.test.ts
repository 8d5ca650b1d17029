import { describe, expect, it } from "vitest";
import type { Found, OwedList } from "../../../core/index.ts";
import { bench, id, job, phrase } from "../app-under-test.ts";
import { client, enrolled } from "../enrolled.ts";

async function said() {
  const at = await bench();
  const jobs = [
    job({ tag: "LCV-213", site: "north" }),
    job({ tag: "PV-104", site: "south", startedAt: "2026-05-04T10:00:00-07:00" }),
  ] as const;
  const phrases = [
    phrase(jobs[0], "seat worn one side"),
    phrase(jobs[0], "100% sure the Cage is cracked", 1),
    phrase(jobs[0], "note the plate is hard to read", 2),
    { ...phrase(jobs[1], "cage looks good"), saidAt: "2026-05-04T17:00:00Z" },
  ];
  await at.ask("POST", "/api/phrases", { jobs, phrases });
  const found = async (query: string): Promise<string[]> =>
    (await at.ask("GET", `/api/search?${query}`)).found.map((one: Found) => one.text);
  return { ...at, jobs, phrases, found };
}

describe("looking for what was said", () => {
  it("goes by tag, words, part, condition, site and day, and by all of them at once; the latest first", async () => {
    const { found, phrases } = await said();
    const [seat, cage, note, good] = phrases.map((one) => one.text);
    expect(await found("")).toEqual([good, note, cage, seat]);
    expect(await found("tag=lcv-213")).toEqual([note, cage, seat]);
    expect(await found("words=cage")).toEqual([good, cage]);
    expect(await found("words=CRACKED+cage")).toEqual([cage]);
    expect(await found("words=100%25")).toEqual([cage]);
    expect(await found("words=_")).toEqual([]);
    expect(await found("condition=worn")).toEqual([seat]);
    expect(await found("part=cage&condition=cracked")).toEqual([cage]);
    expect(await found("part=cage&condition=worn")).toEqual([]);
    expect(await found("site=south")).toEqual([good]);
    expect(await found("from=2026-05-01")).toEqual([good]);
    expect(await found("to=2026-03-31&words=cage")).toEqual([cage]);
  });

  it("finds a phrase by the words that were read in its place too, and shows those said", async () => {
    const { ask, found, phrases } = await said();
    await ask("POST", `/api/review/${phrases[0]?.id}`, { id: id(), what: "amended", words: "plug is bent", seen: 0 });
    expect(await found("words=plug")).toEqual(["seat worn one side"]);
    expect(await found("condition=bent")).toEqual(["seat worn one side"]);
    expect(await found("condition=worn")).toEqual([]);
  });

  it("goes on page by page, each phrase once", async () => {
    const { ask, phrases } = await said();
    const all: string[] = [];
    let after: string | undefined;
    do {
      const page = await ask("GET", `/api/search?limit=1${after ? `&after=${encodeURIComponent(after)}` : ""}`);
      all.push(...page.found.map((one: Found) => one.phrase));
      after = page.next;
    } while (after);
    expect(all.sort()).toEqual(phrases.map((one) => one.id).sort());
  });

  it("refuses a part or a day that is none", async () => {
    const { send } = await said();
    expect((await send("GET", "/api/search?part=frobnitz")).status).toBe(400);
    expect((await send("GET", "/api/search?from=2026-02-30")).status).toBe(400);
  });
});

describe("what is left open", () => {
  it("stands with its valve, what cannot wait first, and with whoever logged it", async () => {
    const { app, store } = await bench();
    const tech = await enrolled(store, "C. Tech", ["technician"]);
    const { call } = client(app, { token: tech.token });
    const jobs = [job({ tag: "LCV-213", site: "north" }), job({ tag: "LCV-214", site: "north" })] as const;
    await call("POST", "/api/phrases", {
      jobs,
      phrases: [phrase(jobs[0], "seat worn one side, flipped it"), phrase(jobs[1], "hold on I smell gas")],
    });
    const owed = (await (await call("GET", "/api/follow-ups?site=north")).json()) as OwedList;
    expect(owed.owed[0]).toMatchObject({ tag: "LCV-214", do: "stop", loggedBy: ["C. Tech"], job: jobs[1].id });
    expect(owed.owed.at(-1)).toMatchObject({ tag: "LCV-213", when: "next_inspection", loggedBy: ["C. Tech"] });
    expect(owed.count).toBe(owed.owed.length);
    const few = (await (await call("GET", "/api/follow-ups?limit=1")).json()) as OwedList;
    expect(few).toMatchObject({ count: owed.count, owed: [{ do: "stop" }] });
  });
});
