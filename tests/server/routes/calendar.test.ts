import ICAL from "ical.js";
import { describe, expect, it } from "vitest";
import { calendarFeeds } from "../../../server/db/report-tables.ts";
import { bench, job, phrase } from "../app-under-test.ts";

async function site() {
  const set = await bench();
  await set.ask("PUT", "/api/sites/north", { name: "North Pad", zone: "America/Denver" });
  const one = job({ site: "north", tag: "LCV-213" });
  await set.ask("POST", "/api/phrases", {
    jobs: [one],
    phrases: [phrase(one, "seat looks good"), phrase(one, "replaced the seals", 1)],
  });
  const open = async (): Promise<string> => (await set.ask("POST", "/api/sites/north/calendar")).address;
  return { ...set, open };
}

describe("a site's due dates as a calendar", () => {
  it("are read at a private address by whoever has it, without signing in", async () => {
    const { app, open, ask } = await site();
    expect(await ask("GET", "/api/sites/north/calendar")).toEqual({});
    const address = await open();
    expect(address).toMatch(/^\/calendar\/[\w-]{43}\.ics$/);
    const answer = await app.request(address);
    expect(answer.headers.get("content-type")).toBe("text/calendar; charset=utf-8");
    const calendar = new ICAL.Component(ICAL.parse(await answer.text()));
    const events = calendar.getAllSubcomponents("vevent").map((one) => new ICAL.Event(one));
    const { due } = await ask("GET", "/api/due?site=north&days=400");
    expect(events.map((one) => one.startDate.toString()).sort()).toEqual(
      due.map((one: { on: string }) => one.on).sort(),
    );
    expect(events.length).toBe(2);
    // asked again the events are the same ones, so that a calendar moves them rather than doubling them
    const again = new ICAL.Component(ICAL.parse(await (await app.request(address)).text()));
    expect(again.getAllSubcomponents("vevent").map((one) => new ICAL.Event(one).uid)).toEqual(
      events.map((one) => one.uid),
    );
  });

  it("are no longer there once the address is taken back, or another one is made", async () => {
    const { app, open, ask } = await site();
    const first = await open();
    const second = await open();
    expect(second).not.toBe(first);
    expect((await app.request(first)).status).toBe(404);
    expect((await app.request(second)).status).toBe(200);
    expect(await ask("DELETE", "/api/sites/north/calendar")).toEqual({ closed: true });
    expect((await app.request(second)).status).toBe(404);
    expect(await ask("DELETE", "/api/sites/north/calendar")).toEqual({ closed: false });
  });

  it("are not found by guessing, and the secret is neither stored nor logged", async () => {
    const { app, open, store, logged } = await site();
    const address = await open();
    const secret = address.slice("/calendar/".length, -".ics".length);
    for (const wrong of ["/calendar/", "/calendar/x.ics", `/calendar/${secret}`, `/calendar/${"A".repeat(43)}.ics`])
      expect((await app.request(wrong)).status).toBe(404);
    await app.request(address);
    expect(JSON.stringify([await store.db.select().from(calendarFeeds), logged])).not.toContain(secret);
  });

  it("need a site that is set up", async () => {
    const { send } = await site();
    expect((await send("POST", "/api/sites/nowhere/calendar")).status).toBe(404);
  });
});
