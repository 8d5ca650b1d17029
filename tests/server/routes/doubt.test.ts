import { expect, it } from "vitest";
import type { Entry, JobView } from "../../../core/index.ts";
import { bench, job, phrase } from "../app-under-test.ts";

const heard = (of: { id: string }, text: string, confidence: number, second = 0) => ({
  ...phrase(of, text, second),
  how: "heard" as const,
  confidence,
});

async function sent() {
  const { ask } = await bench();
  const one = job({ tag: "LCV-213", site: "north" });
  const post = (...phrases: object[]) => ask("POST", "/api/phrases", { jobs: [one], phrases });
  const view = (): Promise<JobView> => ask("GET", `/api/jobs/${one.id}`);
  const doubtful = async () => (await view()).entries.filter((entry: Entry) => entry.doubtful).length;
  return { one, post, view, doubtful };
}

it("keeps what was heard doubtfully as doubtful, and settles nothing by it", async () => {
  const { one, post, view, doubtful } = await sent();
  await post(heard(one, "replaced the seat", 0.95), heard(one, "no leak at sixty psi", 0.3, 1));
  expect(await doubtful()).toBe(2);
  const owed = (await view()).consequences.followUps.map((followUp) => followUp.test);
  expect(owed).toContain("seat_leak");
});

it("takes the speaker's yes as the same phrase sent again with more confidence, and never goes back", async () => {
  const { one, post, view, doubtful } = await sent();
  const said = heard(one, "no leak at sixty psi", 0.3, 1);
  await post(heard(one, "replaced the seat", 0.95), said);
  expect((await post({ ...said, confidence: 1 })).results[0].status).toBe("known");
  expect(await doubtful()).toBe(0);
  expect((await view()).consequences.followUps.map((followUp) => followUp.test)).not.toContain("seat_leak");
  // the first sending, repeated late by a flaky link
  await post(said);
  expect(await doubtful()).toBe(0);
  expect((await view()).phrases[1]?.confidence).toBe(1);
});

it("confirms in the same request that brings more of the job", async () => {
  const { one, post, view, doubtful } = await sent();
  const said = heard(one, "seat worn one side", 0.3);
  await post(said);
  await post({ ...said, confidence: 1 }, heard(one, "flipped it", 0.9, 1));
  expect(await doubtful()).toBe(0);
  expect((await view()).entries).toMatchObject([{ condition: "worn" }, { work: "flipped", part: "seat" }]);
});

it("is in doubt no more once a lead has written what was said", async () => {
  const { ask } = await bench();
  const one = job();
  const said = heard(one, "seat worn one side", 0.3);
  await ask("POST", "/api/phrases", { jobs: [one], phrases: [said] });
  await ask("POST", "/api/corrections", {
    id: crypto.randomUUID(),
    phrase: said.id,
    text: "seat worn both sides",
    madeAt: "2026-03-04T12:00:00-07:00",
  });
  expect((await ask("GET", `/api/jobs/${one.id}`)).entries[0]).not.toHaveProperty("doubtful");
});
