import { eq } from "drizzle-orm";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { listen, startListening } from "../../../core/index.ts";
import { phrases as phraseTable } from "../../../server/db/tables.ts";
import { bench, id, job, phrase } from "../app-under-test.ts";
import { client, enrolled } from "../enrolled.ts";

describe("POST /api/phrases", () => {
  it("stores jobs and phrases and answers for each phrase in its place", async () => {
    const { ask } = await bench();
    const one = job({ tag: "LCV-213", site: "north" });
    const said = [phrase(one, "seat worn on one side", 0), phrase(one, "flipped it", 1)];
    const { results, jobs } = await ask("POST", "/api/phrases", { jobs: [one], phrases: said });
    expect(jobs).toEqual([{ id: one.id, status: "stored" }]);
    expect(results.map((r: { id: string }) => r.id)).toEqual(said.map((p) => p.id));
    expect(results.map((r: { status: string }) => r.status)).toEqual(["stored", "stored"]);
    for (const result of results) {
      expect(Array.isArray(result.entries)).toBe(true);
      expect(Array.isArray(result.unread)).toBe(true);
      expect("problem" in result).toBe(false);
    }
    const kept = await ask("GET", `/api/jobs/${one.id}`);
    expect(kept.phrases.map((p: { text: string }) => p.text)).toEqual(["seat worn on one side", "flipped it"]);
    expect(kept.phrases[0].reader).toMatch(/^\d+\.\d+\.\d+\+[0-9a-f]{10}$/);
  });

  it("answers known for the same id with the same words, and changes nothing", async () => {
    const { ask } = await bench();
    const one = job();
    const said = phrase(one, "seat worn on one side");
    const first = await ask("POST", "/api/phrases", { jobs: [one], phrases: [said] });
    const before = await ask("GET", `/api/jobs/${one.id}`);
    const again = await ask("POST", "/api/phrases", { jobs: [one], phrases: [said] });
    expect(again.results[0]).toEqual({ ...first.results[0], status: "known" });
    expect(again.jobs).toEqual([{ id: one.id, status: "known" }]);
    expect(await ask("GET", `/api/jobs/${one.id}`)).toEqual(before);
  });

  it("refuses the same id with other words, and changes nothing", async () => {
    const { ask } = await bench();
    const one = job();
    const said = phrase(one, "seat worn on one side");
    await ask("POST", "/api/phrases", { jobs: [one], phrases: [said] });
    const before = await ask("GET", `/api/jobs/${one.id}`);
    const { results } = await ask("POST", "/api/phrases", { phrases: [{ ...said, text: "seat is fine" }] });
    expect(results[0]).toMatchObject({ id: said.id, status: "refused", entries: [], unread: [] });
    expect(results[0].problem).toMatch(/new id/);
    expect(await ask("GET", `/api/jobs/${one.id}`)).toEqual(before);
  });

  it("refuses an id that another job's phrase has, even with the same words", async () => {
    const { ask } = await bench();
    const [one, two] = [job(), job()];
    const said = phrase(one, "flipped it");
    const sent = { jobs: [one, two], phrases: [said, { ...said, job: two.id }] };
    const { results } = await ask("POST", "/api/phrases", sent);
    expect(results.map((r: { status: string }) => r.status)).toEqual(["stored", "refused"]);
  });

  it("judges the same id twice in one request one after the other", async () => {
    const { ask } = await bench();
    const one = job();
    const said = phrase(one, "flipped it");
    const sent = { jobs: [one], phrases: [said, said, { ...said, text: "left it" }] };
    const { results } = await ask("POST", "/api/phrases", sent);
    expect(results.map((r: { status: string }) => r.status)).toEqual(["stored", "known", "refused"]);
  });

  it("takes jobs before or with their phrases, in any request", async () => {
    const { ask } = await bench();
    const one = job();
    await ask("POST", "/api/phrases", { jobs: [one] });
    const { results } = await ask("POST", "/api/phrases", { phrases: [phrase(one, "flipped it")] });
    expect(results[0].status).toBe("stored");
  });

  it("refuses a phrase of an unknown job and says so; with its job it is taken later", async () => {
    const { ask } = await bench();
    const one = job();
    const said = phrase(one, "flipped it");
    const { results } = await ask("POST", "/api/phrases", { phrases: [said] });
    expect(results[0].status).toBe("refused");
    expect(results[0].problem).toContain(one.id);
    const again = await ask("POST", "/api/phrases", { jobs: [one], phrases: [said] });
    expect(again.results[0].status).toBe("stored");
  });

  it("does not let one bad phrase spoil its neighbours", async () => {
    const { ask } = await bench();
    const one = job();
    const good = [phrase(one, "seat worn", 0), phrase(one, "flipped it", 1)];
    const bad: unknown[] = [
      null,
      7,
      "seat worn",
      [],
      {},
      { ...phrase(one, "x"), id: "not-a-uuid" },
      { ...phrase(one, ""), text: "" },
      { ...phrase(one, "x"), text: 5 },
      { ...phrase(one, "x"), saidAt: "yesterday" },
      { ...phrase(one, "x"), saidAt: "2026-03-04T10:00:00" },
      { ...phrase(one, "x"), saidAt: "9999-12-31T23:59:59-12:00" },
      { ...phrase(one, "x"), how: "sung" },
      { ...phrase(one, "x"), confidence: 2 },
      { ...phrase(one, "x"), text: "a\u0000b" },
      { ...phrase(one, "x"), text: "half \ud83d of a face" },
      { ...phrase(one, "x"), text: "x".repeat(100_001) },
    ];
    const { results } = await ask("POST", "/api/phrases", { jobs: [one], phrases: [good[0], ...bad, good[1]] });
    expect(results).toHaveLength(bad.length + 2);
    expect(results[0].status).toBe("stored");
    expect(results.at(-1).status).toBe("stored");
    for (const result of results.slice(1, -1)) {
      expect(result.status).toBe("refused");
      expect(result.problem.length).toBeGreaterThan(10);
    }
    expect((await ask("GET", `/api/jobs/${one.id}`)).phrases).toHaveLength(2);
  });

  it("keeps words letter for letter", async () => {
    const { ask } = await bench();
    const words = [
      "  two  spaces ",
      "¼ turn, 28 ft·lbf ≥ żółw",
      "line\nbreak\ttab",
      "😀 مرحبا \u202e",
      "<b>'\"&;--",
      "x".repeat(100_000),
    ];
    const one = job();
    const sent = words.map((text, second) => phrase(one, text, second));
    await ask("POST", "/api/phrases", { jobs: [one], phrases: sent });
    const kept = await ask("GET", `/api/jobs/${one.id}`);
    expect(kept.phrases.map((p: { text: string }) => p.text)).toEqual(words);
  });

  it("refuses a bad job, and its phrases with the reason", async () => {
    const { ask } = await bench();
    const bad = { ...job(), startedAt: "soon" };
    const { results, jobs } = await ask("POST", "/api/phrases", {
      jobs: [bad, 3],
      phrases: [phrase(bad, "flipped it")],
    });
    expect(jobs.map((j: { status: string }) => j.status)).toEqual(["refused", "refused"]);
    expect(results[0].problem).toContain("startedAt");
  });

  it("keeps a job as first sent", async () => {
    const { ask } = await bench();
    const one = job({ tag: "LCV-213" });
    await ask("POST", "/api/phrases", { jobs: [one] });
    const other = await ask("POST", "/api/phrases", {
      jobs: [{ ...one, tag: "PV-9" }],
      phrases: [phrase(one, "flipped it")],
    });
    expect(other.jobs[0].status).toBe("refused");
    expect(other.results[0].status).toBe("stored");
    expect((await ask("GET", `/api/jobs/${one.id}`)).tag).toBe("LCV-213");
  });

  it("takes 200 phrases; 201, or more than 1 MB, is 413 and nothing of it is kept", async () => {
    const { ask, send } = await bench();
    const one = job();
    const many = Array.from({ length: 201 }, (_, n) => phrase(one, `phrase ${n}`, n));
    expect((await send("POST", "/api/phrases", { jobs: [one], phrases: many })).status).toBe(413);
    expect((await send("GET", `/api/jobs/${one.id}`)).status).toBe(404);
    const { results } = await ask("POST", "/api/phrases", { jobs: [one], phrases: many.slice(0, 200) });
    expect(results.every((r: { status: string }) => r.status === "stored")).toBe(true);
    const large = Array.from({ length: 12 }, (_, n) => phrase(one, "x".repeat(100_000), n));
    const answer = await send("POST", "/api/phrases", { phrases: large });
    expect(answer.status).toBe(413);
    expect(answer.headers.get("content-type")).toBe("application/problem+json");
    expect((await answer.json()).detail).toMatch(/1 MB/);
    expect((await ask("GET", `/api/jobs/${one.id}`)).phrases).toHaveLength(200);
  });

  it("reads in the order of saidAt, then id, whatever order the phrases arrive in", async () => {
    const { ask } = await bench();
    const texts = [
      "seat worn on one side",
      "flipped it",
      "scratch that",
      "bonnet bolts torqued to 28",
      "no leak at sixty psi",
      "cage eroded bad",
    ];
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.record({ text: fc.constantFrom(...texts), second: fc.integer({ min: 0, max: 4 }) }), {
          minLength: 1,
          maxLength: 8,
        }),
        fc.array(fc.nat({ max: 7 }), { maxLength: 4 }),
        fc.infiniteStream(fc.double({ min: 0, max: 1, noNaN: true })),
        async (said, cuts, chance) => {
          const one = job({ tag: "LCV-213" });
          const sent = said.map(({ text, second }) => phrase(one, text, second));
          const inOrder = [...sent].sort((a, b) => (a.saidAt + a.id < b.saidAt + b.id ? -1 : 1));
          const arrival = sent
            .map((p) => ({ p, at: chance.next().value }))
            .sort((a, b) => a.at - b.at)
            .map(({ p }) => p);
          await ask("POST", "/api/phrases", { jobs: [one] });
          const ends = [...new Set(cuts.map((cut) => cut % (arrival.length + 1)))].sort((a, b) => a - b);
          for (const [n, end] of [...ends, arrival.length].entries()) {
            const some = arrival.slice(n === 0 ? 0 : ends[n - 1], end);
            if (some.length > 0) await ask("POST", "/api/phrases", { phrases: some });
          }
          let heard = startListening();
          for (const { text } of inOrder) heard = listen(heard, text);
          const kept = await ask("GET", `/api/jobs/${one.id}`);
          expect(kept.phrases.map((p: { id: string }) => p.id)).toEqual(inOrder.map((p) => p.id));
          expect(kept.entries).toEqual(JSON.parse(JSON.stringify(heard.entries)));
          expect(kept.phrases.map((p: { entries: unknown }) => p.entries)).toEqual(
            JSON.parse(JSON.stringify(heard.phrases.map((p) => p.entries))),
          );
        },
      ),
      { numRuns: 25 },
    );
  });

  it("answers many devices at once, each in its own order", async () => {
    const { ask } = await bench();
    const devices = Array.from({ length: 20 }, () => job());
    await Promise.all(
      devices.map(async (one) => {
        await ask("POST", "/api/phrases", { jobs: [one] });
        for (let n = 0; n < 5; n++) {
          const { results } = await ask("POST", "/api/phrases", { phrases: [phrase(one, `seat worn ${n}`, n)] });
          expect(results[0].status).toBe("stored");
        }
      }),
    );
    for (const one of devices) expect((await ask("GET", `/api/jobs/${one.id}`)).phrases).toHaveLength(5);
  });

  it("an unknown id's answer is the same whatever else was sent", async () => {
    const { ask } = await bench();
    const { results } = await ask("POST", "/api/phrases", { phrases: [phrase({ id: id() }, "flipped it"), { id: 5 }] });
    expect(results.map((r: { status: string }) => r.status)).toEqual(["refused", "refused"]);
    expect(results[1].id).toBe("5");
  });
});

describe("requests that come together", () => {
  it("are written as one and answered each for its own, in the order it sent, by who sent it", async () => {
    const { app, store } = await bench();
    const people = await Promise.all(
      Array.from({ length: 12 }, (_, n) => enrolled(store, `Person ${n}`, ["technician"])),
    );
    const said = people.map((who, n) => {
      const one = job({ tag: `LCV-${n}` });
      const bad = { ...phrase(one, "x", 5), saidAt: "no time" };
      return { who, one, phrases: [phrase(one, `seat worn ${n}`), bad, phrase(one, "flipped it", 2)] };
    });
    const before = store.figures().jobs;
    const answers = await Promise.all(
      said.map(async ({ who, one, phrases }) => {
        const answer = await client(app, { token: who.token }).call("POST", "/api/phrases", { jobs: [one], phrases });
        return (await answer.json()) as { results: { id: string; status: string; entries: unknown[] }[] };
      }),
    );
    expect(store.figures().jobs - before).toBeLessThan(6);
    for (const [n, { who, one, phrases }] of said.entries()) {
      expect(answers[n]?.results.map(({ id, status }) => [id, status])).toEqual([
        [phrases[0]?.id, "stored"],
        [phrases[1]?.id, "refused"],
        [phrases[2]?.id, "stored"],
      ]);
      expect(answers[n]?.results[2]?.entries.length).toBe(1);
      const kept = await store.db.select().from(phraseTable).where(eq(phraseTable.job, one.id));
      expect(kept.map((row) => row.person)).toEqual([who.person, who.person]);
    }
  });

  it("that bring the same phrase store it once, and each is told so", async () => {
    const { ask } = await bench();
    const one = job();
    const said = phrase(one, "seat worn");
    const other = { ...said, text: "seat good" };
    const sent = [said, said, other, said];
    const answers = await Promise.all(
      sent.map((phrase) => ask("POST", "/api/phrases", { jobs: [one], phrases: [phrase] })),
    );
    const told = answers.map(({ results }) => results[0].status);
    // where callers are looked up by several connections, another may come first than was sent first
    const first = told.indexOf("stored");
    const same = sent.map(({ text }) => text === sent[first]?.text);
    expect(told).toEqual(same.map((is, n) => (n === first ? "stored" : is ? "known" : "refused")));
    for (const [n, { results }] of answers.entries())
      if (same[n]) expect(results[0].entries).toEqual(answers[first].results[0].entries);
    expect((await ask("GET", `/api/jobs/${one.id}`)).phrases).toHaveLength(1);
  });

  it("that are more than one statement may hold are several, none left out", async () => {
    const { ask, store } = await bench();
    const one = job();
    const sent = Array.from({ length: 6 }, (_, n) =>
      Array.from({ length: 150 }, (_, k) => phrase(one, `seat worn ${n} ${k}`, n * 150 + k)),
    );
    const answers = await Promise.all(sent.map((phrases) => ask("POST", "/api/phrases", { jobs: [one], phrases })));
    expect(answers.flatMap(({ results }) => results).every(({ status }) => status === "stored")).toBe(true);
    expect(await store.db.$count(phraseTable)).toBe(900);
  });
});
