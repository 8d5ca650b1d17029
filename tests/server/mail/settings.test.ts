import { describe, expect, it } from "vitest";
import { bench } from "../app-under-test.ts";
import { postOffice } from "./post-office.ts";
import { SETTINGS, sendingSite } from "./sending-site.ts";

describe("who gets the report", () => {
  it("is kept for a site that is set up, each address once", async () => {
    const { ask, send } = await bench();
    expect((await send("PUT", "/api/sites/north/report", SETTINGS)).status).toBe(404);
    await ask("PUT", "/api/sites/north", { name: "North", zone: "America/Denver" });
    expect(await ask("GET", "/api/sites/north/report")).toEqual({});
    const recipients = ["a@example.com", " A@Example.com ", "b@example.com"];
    await ask("PUT", "/api/sites/north/report", { ...SETTINGS, recipients });
    expect(await ask("GET", "/api/sites/north/report")).toEqual({
      settings: { ...SETTINGS, recipients: ["A@Example.com", "b@example.com"] },
    });
  });

  it.each<[string, object]>([
    ["a header in an address", { recipients: ["a@example.com\r\nBcc: all@example.com"] }],
    ["a bracket in an address", { recipients: ["a@example.com>,<b@example.com"] }],
    ["two in one", { recipients: ["a@example.com, b@example.com"] }],
    ["no address", { recipients: ["A. Person"] }],
    ["too many", { recipients: Array.from({ length: 51 }, (_, n) => `a${n}@example.com`) }],
    ["no hour", { hour: "24:00" }],
    ["a spoken hour", { hour: "6 pm" }],
  ])("refuses %s and says what to write", async (_what, wrong) => {
    const { ask, send } = await bench();
    await ask("PUT", "/api/sites/north", { name: "North", zone: "America/Denver" });
    const answer = await send("PUT", "/api/sites/north/report", { ...SETTINGS, ...wrong });
    expect(answer.status).toBe(400);
    expect(((await answer.json()) as { detail: string }).detail).toMatch(/^Mend the body/);
    expect(await ask("GET", "/api/sites/north/report")).toEqual({});
  });
});

describe("what goes by itself", () => {
  it("is nothing on a day with nothing said, unless the site wants it", async () => {
    const office = await postOffice();
    const { hand, turn, state, ask } = await sendingSite(office);
    hand.set("2026-03-05T18:00:00-07:00");
    await turn();
    expect(office.arrived.length).toBe(1);
    expect((await state("2026-03-05")).says).toEqual(["Nothing was said on this day, so nothing was sent."]);
    await ask("PUT", "/api/sites/north/report", { ...SETTINGS, quiet: true });
    hand.set("2026-03-06T18:00:00-07:00");
    await turn();
    await turn();
    expect(office.arrived.length).toBe(2);
    expect(office.arrived[1]?.raw).toContain("No job was recorded on this day.");
  });

  it("is nothing that had ended before anybody was to get it", async () => {
    const office = await postOffice();
    const { hand, turn, state, ask, send } = await sendingSite(office, { recipients: [] });
    hand.set("2026-03-07T18:00:00-07:00");
    await turn();
    await ask("PUT", "/api/sites/north/report", SETTINGS);
    await turn();
    hand.set("2026-03-08T18:00:00-06:00");
    await turn();
    expect(office.arrived).toEqual([]);
    expect((await state()).says).toEqual([expect.stringMatching(/^Not sent by itself: the day ended before/)]);
    expect((await send()).status).toBe(200);
    await turn();
    expect(office.arrived.length).toBe(1);
  });

  it("is what was missed while the log was down, and what a phone brought days later", async () => {
    const office = await postOffice();
    const { hand, turn, state, say, ask } = await sendingSite(office);
    hand.set("2026-03-07T09:00:00-07:00");
    await turn();
    expect(office.arrived.length).toBe(1);
    await say("flipped it", 60);
    const late = { id: crypto.randomUUID(), site: "north", tag: "LCV-9", startedAt: "2026-03-05T10:00:00-07:00" };
    const text = { id: crypto.randomUUID(), job: late.id, text: "seat worn", saidAt: late.startedAt, how: "typed" };
    await ask("POST", "/api/phrases", { jobs: [late], phrases: [text] });
    expect((await state("2026-03-05")).says[0]).toMatch(/^Not sent yet\. What was said goes at the next 18:00/);
    hand.set("2026-03-07T18:00:00-07:00");
    await turn();
    await turn();
    const subjects = office.arrived.map((one) => /^Subject: (.*)$/m.exec(one.raw)?.[1]);
    expect(subjects).toEqual([
      "Valve work, North Pad, 2026-03-04",
      "Correction 1: Valve work, North Pad, 2026-03-04",
      "Valve work, North Pad, 2026-03-05",
    ]);
  });

  it("waits over the weekend where the site says so, and says when it goes", async () => {
    const office = await postOffice();
    const { hand, turn, state, ask } = await sendingSite(office, { weekends: false });
    const saturday = { id: crypto.randomUUID(), site: "north", tag: "LCV-9", startedAt: "2026-03-07T10:00:00-07:00" };
    const text = {
      id: crypto.randomUUID(),
      job: saturday.id,
      text: "seat worn",
      saidAt: saturday.startedAt,
      how: "typed",
    };
    await ask("POST", "/api/phrases", { jobs: [saturday], phrases: [text] });
    expect((await state("2026-03-07")).says[0]).toMatch(/^Will go at 18:00 on 2026-03-09 to /);
    for (const day of ["06", "07", "08"]) {
      hand.set(`2026-03-${day}T19:00:00-07:00`);
      await turn();
    }
    expect(office.arrived.length).toBe(1);
    hand.set("2026-03-09T18:00:00-06:00");
    await turn();
    expect(office.arrived.length).toBe(2);
  });

  it("is one version even where two servers see to the same hour", async () => {
    const office = await postOffice();
    const { hand, issuing, given, outbox, store } = await sendingSite(office);
    const { runSchedule } = await import("../../../server/reports/schedule.ts");
    const { makeOutbox } = await import("../../../server/mail/outbox.ts");
    hand.set("2026-03-04T18:00:00-07:00");
    await Promise.all([1, 2, 3].map(() => runSchedule({ ...issuing, log: given.log })));
    const other = makeOutbox({ store, log: given.log, clock: hand.clock, post: given.mail.post });
    await Promise.all([outbox.work(), other.work()]);
    expect(office.arrived.length).toBe(1);
  });
});
