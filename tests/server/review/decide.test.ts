import { describe, expect, it } from "vitest";
import type { DecisionResult, ReviewPage, Tried } from "../../../core/index.ts";
import { verifyTrail } from "../../../server/audit/read.ts";
import { bench, id, job, phrase } from "../app-under-test.ts";
import { client, enrolled } from "../enrolled.ts";

/** Two leads and a technician, and a job that the technician said. */
async function desk(words: readonly string[]) {
  const at = await bench();
  const leads = [await enrolled(at.store, "A. Lead", ["lead"]), await enrolled(at.store, "B. Lead", ["lead"])] as const;
  const technician = await enrolled(at.store, "C. Tech", ["technician"]);
  const one = job({ tag: "LCV-213", site: "north" });
  const phrases = words.map((text, n) => phrase(one, text, n));
  const as = (token: string) => {
    const caller = client(at.app, { token });
    return {
      // biome-ignore lint/suspicious/noExplicitAny: answers are looked at key by key
      async call(method: string, path: string, body?: unknown): Promise<{ status: number; told: any }> {
        const answer = await caller.call(method, path, body);
        return { status: answer.status, told: await answer.json() };
      },
    };
  };
  const first = as(leads[0].token);
  const second = as(leads[1].token);
  const tech = as(technician.token);
  await tech.call("POST", "/api/phrases", { jobs: [one], phrases });
  const page = async (query = "") => (await first.call("GET", `/api/review${query}`)).told as ReviewPage;
  const look = async (at: number) => {
    const { items } = await page();
    const all = [...items].sort((a, b) => (a.saidAt < b.saidAt ? -1 : 1));
    const item = all[at];
    if (!item) throw new Error(`no item ${at} of ${all.length}`);
    return item;
  };
  return { ...at, first, second, tech, job: one, phrases, page, look, technician, as };
}

const accept = (item: { decided: number; meaning: string }) => ({
  id: id(),
  what: "accepted" as const,
  seen: item.decided,
  meaning: item.meaning,
});

describe("a decision", () => {
  it("is kept with who and when, leaves the words as said, and stands in the chain", async () => {
    const { first, look, job: one, store } = await desk(["seat worn one side"]);
    const item = await look(0);
    const done = await first.call("POST", `/api/review/${item.phrase}`, accept(item));
    expect(done.status).toBe(200);
    const { item: now, job: then } = done.told as DecisionResult;
    expect(now).toMatchObject({ state: "settled", said: "seat worn one side", decided: 1 });
    expect(now?.decisions).toMatchObject([{ what: "accepted", by: "A. Lead", n: 1 }]);
    expect(then).toMatchObject({ doubtful: 0, certain: 0 });
    const { told } = await first.call("GET", "/api/audit");
    const acts = told.records.map((record: { act: string; about: { job?: string } }) => [record.act, record.about.job]);
    expect(acts).toContainEqual(["phrase_decided", one.id]);
    expect(await verifyTrail(store)).toMatchObject({ ok: true });
  });

  it("that amends reads the new words in the job, and can be taken back to what was said", async () => {
    const { first, look, job: one, phrases } = await desk(["seat worn one side", "bonnet bolts torqued to eighty"]);
    const item = await look(1);
    const tried = (
      await first.call("POST", "/api/readings", { phrase: item.phrase, text: "bonnet bolts torqued to twenty eight" })
    ).told as Tried;
    expect(tried.entries).toMatchObject([{ type: "reading", value: 28 }]);
    const words = "bonnet bolts torqued to twenty eight";
    await first.call("POST", `/api/review/${item.phrase}`, { id: id(), what: "amended", words, seen: 0 });
    const view = (await first.call("GET", `/api/jobs/${one.id}`)).told;
    expect(view.entries).toMatchObject([{ type: "finding" }, { type: "reading", value: 28 }]);
    expect(view.phrases[1]).toMatchObject({ text: "bonnet bolts torqued to eighty" });
    const back = await first.call("POST", `/api/review/${item.phrase}`, { id: id(), what: "returned", seen: 1 });
    expect(back.told.item).toMatchObject({ state: "open", text: phrases[1]?.text, decided: 2 });
    const after = (await first.call("GET", `/api/jobs/${one.id}`)).told;
    expect(after.entries).toMatchObject([{ type: "finding" }, { type: "reading", value: 80 }]);
  });

  it("that strikes leaves nothing of the phrase in the record but the phrase", async () => {
    const { first, look, job: one } = await desk(["seat worn one side", "the ball game was great"]);
    const item = await look(1);
    const done = await first.call("POST", `/api/review/${item.phrase}`, { id: id(), what: "struck", seen: 0 });
    expect(done.told.item).toBeUndefined();
    const view = (await first.call("GET", `/api/jobs/${one.id}`)).told;
    expect(view.unread).toEqual([]);
    expect(view.phrases[1].text).toBe("the ball game was great");
  });

  it("sent again with the same id is known; with the id of another, refused", async () => {
    const { first, look } = await desk(["seat worn one side", "flipped it"]);
    const [a, b] = [await look(0), await look(1)];
    const sent = accept(a);
    expect((await first.call("POST", `/api/review/${a.phrase}`, sent)).told.status).toBe("stored");
    expect((await first.call("POST", `/api/review/${a.phrase}`, sent)).told.status).toBe("known");
    expect((await first.call("POST", `/api/review/${b.phrase}`, sent)).status).toBe(409);
  });
});

describe("two leads at one job", () => {
  it("the second is told what the first decided, and nothing of either is lost", async () => {
    const { first, second, look } = await desk(["seat worn one side"]);
    const item = await look(0);
    await first.call("POST", `/api/review/${item.phrase}`, accept(item));
    const late = { id: id(), what: "struck", words: "not this valve", seen: item.decided };
    const told = await second.call("POST", `/api/review/${item.phrase}`, late);
    expect(told.status).toBe(409);
    expect(told.told.detail).toMatch(/^Accepted by A\. Lead at \d\d:\d\d UTC meanwhile\. Nothing of yours was done/);
    // having seen it, the second decides again, and both stand
    const again = await second.call("POST", `/api/review/${item.phrase}`, { ...late, seen: 1 });
    expect(again.status).toBe(200);
    const { told: view } = await first.call("POST", `/api/review/${item.phrase}`, {
      id: id(),
      what: "returned",
      seen: 2,
    });
    expect(view.item.decisions.map((one: { what: string; by: string }) => [one.what, one.by])).toEqual([
      ["accepted", "A. Lead"],
      ["struck", "B. Lead"],
      ["returned", "A. Lead"],
    ]);
  });

  it("who say the same have said it once", async () => {
    const { first, second, look } = await desk(["seat worn one side"]);
    const item = await look(0);
    await first.call("POST", `/api/review/${item.phrase}`, accept(item));
    const told = await second.call("POST", `/api/review/${item.phrase}`, accept(item));
    expect(told).toMatchObject({ status: 200, told: { status: "known" } });
  });

  it("at the very same moment: one is kept, the other told so", async () => {
    const { first, second, look } = await desk(["seat worn one side"]);
    const item = await look(0);
    const both = await Promise.all([
      first.call("POST", `/api/review/${item.phrase}`, accept(item)),
      second.call("POST", `/api/review/${item.phrase}`, { id: id(), what: "struck", seen: 0 }),
    ]);
    expect(both.map((one) => one.status).sort()).toEqual([200, 409]);
  });
});

describe("what was accepted", () => {
  it("comes back where it means something else later, and only then", async () => {
    const { first, tech, look, page, job: one } = await desk(["bonnet bolts torqued to twenty eight"]);
    const item = await look(0);
    await first.call("POST", `/api/review/${item.phrase}`, accept(item));
    await tech.call("POST", "/api/phrases", { jobs: [], phrases: [phrase(one, "seat worn one side", 5)] });
    expect((await page()).items.map((more) => more.said)).toEqual(["seat worn one side"]);
    await tech.call("POST", "/api/phrases", { jobs: [], phrases: [phrase(one, "correction, thirty", 1)] });
    const back = (await page()).items.find((more) => more.phrase === item.phrase);
    expect(back?.reasons[0]).toMatchObject({ reason: "changed" });
  });

  it("is refused where it reads otherwise than it was seen", async () => {
    const { first, tech, look, job: one } = await desk(["bonnet bolts torqued to twenty eight"]);
    const item = await look(0);
    await tech.call("POST", "/api/phrases", { jobs: [], phrases: [phrase(one, "correction, thirty", 1)] });
    const told = await first.call("POST", `/api/review/${item.phrase}`, accept(item));
    expect(told.status).toBe(409);
    expect(told.told.detail).toMatch(/reads otherwise by now/);
  });
});

describe("what was heard doubtfully", () => {
  it("counts once a lead has accepted it, and no more once that is put back", async () => {
    const { first, tech, job: one, ask: _ } = await desk([]);
    const heard = { ...phrase(one, "seat worn both sides", 1), how: "heard", confidence: 0.4 };
    await tech.call("POST", "/api/phrases", { jobs: [one], phrases: [heard] });
    const owed = async () => {
      const { consequences } = (await first.call("GET", `/api/jobs/${one.id}`)).told;
      return consequences.followUps.map((line: { do: string }) => line.do);
    };
    expect(await owed()).not.toContain("replace");
    const { items } = (await first.call("GET", "/api/review")).told as ReviewPage;
    expect(items[0]?.reasons[0]).toMatchObject({ reason: "low_confidence" });
    const done = await first.call("POST", `/api/review/${heard.id}`, { id: id(), what: "accepted", seen: 0 });
    expect(done.told).toMatchObject({ status: "stored", item: { state: "settled" } });
    expect(await owed()).toContain("replace");
    await first.call("POST", `/api/review/${heard.id}`, { id: id(), what: "returned", seen: 1 });
    expect(await owed()).not.toContain("replace");
  });
});

describe("a question", () => {
  it("goes to whoever said the phrase and to nobody else, and comes back with the answer", async () => {
    const { first, tech, look, page, store, as, technician } = await desk([
      "seat worn one side",
      "the frobnitz blorps",
    ]);
    const item = await look(1);
    await first.call("POST", `/api/review/${item.phrase}`, { id: id(), what: "asked", words: "Which one?", seen: 0 });
    expect((await page()).asked).toBe(1);
    expect((await page()).items.map((one) => one.said)).toEqual(["seat worn one side"]);
    const other = as((await enrolled(store, "D. Tech", ["technician"])).token);
    expect((await other.call("GET", "/api/questions")).told.questions).toEqual([]);
    const { questions } = (await tech.call("GET", "/api/questions")).told;
    expect(questions).toMatchObject([
      { question: "Which one?", said: "the frobnitz blorps", by: "A. Lead", tag: "LCV-213" },
    ]);
    const answer = { id: id(), text: "the lower diaphragm was torn", how: "typed" };
    const path = `/api/questions/${questions[0].id}`;
    expect((await other.call("POST", path, answer)).status).toBe(404);
    expect((await tech.call("POST", path, answer)).told.status).toBe("stored");
    expect((await tech.call("POST", path, answer)).told.status).toBe("known");
    expect((await tech.call("GET", "/api/questions")).told.questions).toEqual([]);
    const back = (await page()).items.find((one) => one.phrase === item.phrase);
    expect(back).toMatchObject({ state: "open", answers: [{ text: "the lower diaphragm was torn", by: "C. Tech" }] });
    expect(technician.person).toBeDefined();
  });

  it("is no question without words", async () => {
    const { first, look } = await desk(["seat worn one side"]);
    const item = await look(0);
    const told = await first.call("POST", `/api/review/${item.phrase}`, { id: id(), what: "asked", seen: 0 });
    expect(told.status).toBe(400);
    expect(told.told.detail).toMatch(/what to ask/);
  });
});

describe("signing", () => {
  it("accepts what is certain, freezes the job, and says who signed", async () => {
    const { first, second, look, job: one, page } = await desk(["seat worn one side", "flipped it"]);
    const item = await look(0);
    const signed = await first.call("POST", `/api/jobs/${one.id}/signature`, { id: id(), phrases: 2 });
    expect(signed.told).toMatchObject({ state: "signed", signedBy: "A. Lead", certain: 0, doubtful: 0 });
    expect((await page()).items).toEqual([]);
    const strike = { id: id(), what: "struck", seen: 1 };
    const told = await second.call("POST", `/api/review/${item.phrase}`, strike);
    expect(told.status).toBe(409);
    expect(told.told.detail).toMatch(/^Signed by A\. Lead at .*open the job again and say why/);
    const correction = { id: id(), phrase: item.phrase, madeAt: "2026-03-05T10:00:00Z" };
    expect((await second.call("POST", "/api/corrections", correction)).status).toBe(409);
    expect((await second.call("POST", `/api/jobs/${one.id}/signature`, { id: id(), phrases: 2 })).told.detail).toMatch(
      /Signed already, by A\. Lead/,
    );
  });

  it("is refused while a phrase still needs a look, waits for an answer, or came meanwhile", async () => {
    const { first, tech, look, job: one } = await desk(["seat worn one side", "the frobnitz blorps"]);
    const sign = (phrases: number) => first.call("POST", `/api/jobs/${one.id}/signature`, { id: id(), phrases });
    expect((await sign(2)).told.detail).toMatch(/^1 phrase is still to be looked at/);
    const item = await look(1);
    await first.call("POST", `/api/review/${item.phrase}`, { id: id(), what: "asked", words: "Which?", seen: 0 });
    expect((await sign(2)).told.detail).toMatch(/still with a technician/);
    await first.call("POST", `/api/review/${item.phrase}`, { id: id(), what: "struck", seen: 1 });
    await tech.call("POST", "/api/phrases", { jobs: [], phrases: [phrase(one, "flipped it", 9)] });
    expect((await sign(2)).told.detail).toMatch(/^A phrase came meanwhile/);
    expect((await sign(3)).status).toBe(200);
  });

  it("is taken back only with a reason, and both stay in the record", async () => {
    const { first, second, job: one, look } = await desk(["seat worn one side"]);
    const sign = { id: id(), phrases: 1 };
    await first.call("POST", `/api/jobs/${one.id}/signature`, sign);
    expect((await second.call("POST", `/api/jobs/${one.id}/reopening`, { id: id(), why: " " })).status).toBe(400);
    const open = await second.call("POST", `/api/jobs/${one.id}/reopening`, { id: id(), why: "wrong valve" });
    expect(open.told).toMatchObject({ state: "open", reopened: { by: "B. Lead", why: "wrong valve" } });
    // the same signature sent again late signs nothing
    expect((await first.call("POST", `/api/jobs/${one.id}/signature`, sign)).told).toMatchObject({ state: "open" });
    await expect(look(0)).rejects.toThrow(/no item/);
    const again = await second.call("POST", `/api/jobs/${one.id}/signature`, { id: id(), phrases: 1 });
    expect(again.told).toMatchObject({ state: "signed", signedBy: "B. Lead" });
    const acts = (await first.call("GET", "/api/audit")).told.records.map((record: { act: string }) => record.act);
    expect(acts.filter((act: string) => /^job_/.test(act)).sort()).toEqual([
      "job_reopened",
      "job_signed",
      "job_signed",
    ]);
  });

  it("what comes from a device after it is kept, and the job waits to be signed again", async () => {
    const { first, tech, job: one, page } = await desk(["seat worn one side"]);
    await first.call("POST", `/api/jobs/${one.id}/signature`, { id: id(), phrases: 1 });
    const late = await tech.call("POST", "/api/phrases", { jobs: [], phrases: [phrase(one, "flipped it", 9)] });
    expect(late.told.results).toMatchObject([{ status: "stored" }]);
    expect((await page()).items).toMatchObject([{ said: "flipped it", reasons: [{ reason: "late" }] }]);
    const { jobs } = (await first.call("GET", "/api/signing")).told;
    expect(jobs).toMatchObject([{ id: one.id, state: "open", signedBy: "A. Lead", cameAfter: 1, doubtful: 1 }]);
  });

  it("a word taught later leaves a signed job as it was signed", async () => {
    const { first, job: one } = await desk(["seat worn one side"]);
    await first.call("POST", `/api/jobs/${one.id}/signature`, { id: id(), phrases: 1 });
    const word = { id: id(), say: "wibble", as: { part: "cage" }, at: "2026-03-05T10:00:00Z" };
    await first.call("PUT", "/api/sites/north/words", { words: [word] });
    const { jobs } = (await first.call("GET", "/api/signing?state=signed")).told;
    expect(jobs).toMatchObject([{ id: one.id, state: "signed" }]);
  });

  it("is refused to a technician and to the office", async () => {
    const { tech, job: one, store, as } = await desk(["seat worn one side"]);
    const office = as((await enrolled(store, "E. Office", ["office"])).token);
    for (const who of [tech, office]) {
      const told = await who.call("POST", `/api/jobs/${one.id}/signature`, { id: id(), phrases: 1 });
      expect(told).toMatchObject({ status: 403, told: { detail: expect.stringMatching(/for leads/) } });
    }
  });

  it("'accept all' of a job leaves what needs a look", async () => {
    const { first, job: one } = await desk(["seat worn one side", "flipped it", "the frobnitz blorps"]);
    const { told } = await first.call("POST", `/api/jobs/${one.id}/acceptance`, {});
    expect(told).toMatchObject({ certain: 0, doubtful: 1 });
  });
});
