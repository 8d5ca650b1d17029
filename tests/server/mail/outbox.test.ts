import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { simpleParser } from "mailparser";
import { describe, expect, it } from "vitest";
import { GIVE_UP_MS } from "../../../server/mail/backoff.ts";
import { postOffice, replying, type Step } from "./post-office.ts";
import { SETTINGS, sendingSite } from "./sending-site.ts";

const EVENING = "2026-03-04T18:00:04-07:00";

describe("the day's report through a mail server", () => {
  it("goes at the site's hour, once, to everybody in one message, and the desk says so", async () => {
    const office = await postOffice();
    const { hand, turn, state } = await sendingSite(office);
    expect((await state()).says).toEqual(["Will go at 18:00 to a@example.com, b@example.com."]);
    await turn();
    expect(office.arrived).toEqual([]);
    hand.set(EVENING);
    for (let n = 0; n < 3; n++) await turn();
    expect(office.arrived.map((one) => one.to)).toEqual([SETTINGS.recipients]);
    const mail = await simpleParser(office.arrived[0]?.raw ?? "");
    expect(mail.subject).toBe("Valve work, North Pad, 2026-03-04");
    expect(mail.messageId).toMatch(/^<report\.[0-9a-f]{16}\.2026-03-04\.1@example\.com>$/);
    expect(mail.date?.toISOString()).toBe(new Date(EVENING).toISOString());
    expect(mail.text).toContain("The seat was found worn on one side.");
    const { versions, next, trouble } = await state();
    expect(versions[0]?.says).toEqual(["Report sent at 18:00:04 to 2: a@example.com, b@example.com."]);
    expect([next, trouble]).toEqual(["nothing", false]);
  });

  it.each<[string, Step, number]>([
    ["greeting", "connect", 421],
    ["sender", "mail", 451],
    ["every recipient", "rcpt", 450],
    ["message", "end", 452],
  ])("turned away for now at the %s, it waits longer each time and then arrives once", async (_what, step, code) => {
    const office = await postOffice();
    const { hand, turn, state } = await sendingSite(office);
    office.at[step] = () => replying(code, "come back later");
    hand.set(EVENING);
    await turn();
    const [version] = (await state()).versions;
    expect(version?.says[0]).toMatch(/not sent yet to 2.*come back later.*Next try at 18:00:34\.$/);
    hand.on(29);
    await turn();
    expect((await state()).versions[0]?.says).toEqual(version?.says);
    hand.on(1);
    await turn();
    expect((await state()).versions[0]?.says[0]).toMatch(/Next try at 18:01:34\.$/);
    office.at = {};
    hand.on(60);
    await turn();
    await turn();
    expect(office.arrived.length).toBe(1);
    expect((await state()).versions[0]?.says).toEqual(["Report sent at 18:01:34 to 2: a@example.com, b@example.com."]);
  });

  it.each<[string, Step, number]>([
    ["sender", "mail", 550],
    ["message", "end", 554],
  ])(
    "refused for good at the %s, it stops, shows the server's words, and goes when asked to",
    async (_what, step, code) => {
      const office = await postOffice();
      const { hand, turn, state, send } = await sendingSite(office);
      office.at[step] = () => replying(code, "no valves here");
      hand.set(EVENING);
      await turn();
      hand.on(86_400);
      await turn();
      expect(office.arrived).toEqual([]);
      const stopped = await state();
      expect(stopped.versions[0]?.says[0]).toMatch(/^Report not sent: .*no valves here.*not tried again by itself/);
      expect([stopped.next, stopped.trouble]).toEqual(["repeat", true]);
      office.at = {};
      expect((await send()).status).toBe(200);
      await turn();
      expect(office.arrived.length).toBe(1);
      expect((await state()).versions.length).toBe(1);
    },
  );

  it("says which recipient was refused and why, and sends to the others", async () => {
    const office = await postOffice();
    const { hand, turn, state, ask, send } = await sendingSite(office);
    office.at.rcpt = ({ address }) => (address === "b@example.com" ? replying(550, "no such person") : undefined);
    hand.set(EVENING);
    await turn();
    expect(office.arrived.map((one) => one.to)).toEqual([["a@example.com"]]);
    const { versions, trouble, next } = await state();
    expect(versions[0]?.says).toEqual([
      "Report sent at 18:00:04 to 1: a@example.com.",
      "Refused for b@example.com: 550 no such person.",
    ]);
    expect([trouble, next]).toEqual([true, "repeat"]);
    // the address is put right: only it is sent to, and the same message
    await ask("PUT", "/api/sites/north/report", { ...SETTINGS, recipients: ["a@example.com", "c@example.com"] });
    expect((await send()).status).toBe(200);
    await turn();
    expect(office.arrived.map((one) => one.to)).toEqual([["a@example.com"], ["c@example.com"]]);
    expect(office.arrived[1]?.raw).toBe(office.arrived[0]?.raw);
  });

  it("tries one recipient again who was turned away for now, and nobody else", async () => {
    const office = await postOffice();
    const { hand, turn, state } = await sendingSite(office);
    office.at.rcpt = ({ address }) => (address === "b@example.com" ? replying(450, "mailbox busy") : undefined);
    hand.set(EVENING);
    await turn();
    expect((await state()).versions[0]?.says).toEqual([
      "Report sent at 18:00:04 to 1: a@example.com.",
      expect.stringMatching(/not sent yet to 1: b@example\.com: .*mailbox busy.*Next try at 18:00:34/),
    ]);
    office.at = {};
    hand.on(30);
    await turn();
    expect(office.arrived.map((one) => one.to)).toEqual([["a@example.com"], ["b@example.com"]]);
  });

  it.each([true, false])(
    "cut off after the message (kept there: %s), it is unknown and not sent again by itself",
    async (kept) => {
      const office = await postOffice();
      office.keeps = kept;
      const { hand, turn, state, send } = await sendingSite(office);
      office.at.end = ({ cut }) => cut();
      hand.set(EVENING);
      await turn();
      hand.on(86_400);
      await turn();
      expect(office.arrived.length).toBe(kept ? 1 : 0);
      const unknown = await state();
      expect(unknown.versions[0]?.says[0]).toMatch(/^It is not known whether report reached 2: .*ask there first\.$/);
      expect([unknown.next, unknown.trouble]).toEqual(["again", true]);
      const refused = await send();
      expect(refused.status).toBe(409);
      expect(await refused.json()).toMatchObject({ detail: expect.stringMatching(/may have arrived/) });
      office.at = {};
      office.keeps = true;
      expect((await send({ again: true })).status).toBe(200);
      await turn();
      // a person decided: the same message under the same name, for a receiver to tell it is a repetition
      expect(office.arrived.length).toBe(kept ? 2 : 1);
      expect(new Set(office.arrived.map((one) => one.raw)).size).toBe(1);
    },
  );

  it("is unknown as well where the server never answers", async () => {
    const office = await postOffice();
    office.at.end = () => new Promise(() => {});
    const { hand, turn, state } = await sendingSite(office);
    hand.set(EVENING);
    await turn();
    expect((await state()).versions[0]?.state).toBe("unknown");
  });

  it("waits for a slow answer", async () => {
    const office = await postOffice();
    office.at.end = () => new Promise((late) => setTimeout(late, 600));
    const { hand, turn, state } = await sendingSite(office);
    hand.set(EVENING);
    await turn();
    expect((await state()).versions[0]?.state).toBe("settled");
    expect(office.arrived.length).toBe(1);
  });

  it.each<Step>(["connect", "mail", "rcpt", "data"])(
    "cut off at %s, the server cannot have it: tried again",
    async (step) => {
      const office = await postOffice();
      const { hand, turn, state, ask } = await sendingSite(office);
      if (step === "data") {
        // more than goes into the buffers on the way, so that the end is not written yet
        const long = Array.from({ length: 3 }, (_, n) => ({ text: `note ${"so it was ".repeat(9_000)}`, n }));
        for (const { text, n } of long) await say(ask, text, n);
      }
      office.at[step] = ({ cut }) => cut();
      hand.set(EVENING);
      await turn();
      expect((await state()).versions[0]?.state).toBe("waiting");
      office.at = {};
      hand.on(30);
      await turn();
      expect(office.arrived.length).toBe(1);
      expect((await state()).versions[0]?.state).toBe("settled");
    },
  );

  it("bears a mail server that is down for a while, and gives up after three days", async () => {
    const office = await postOffice();
    const { port } = office;
    await office.close();
    const { hand, turn, state, send } = await sendingSite(office);
    hand.set(EVENING);
    await turn();
    expect((await state()).versions[0]?.says[0]).toMatch(/not sent yet to 2.*ECONNREFUSED/);
    let tries = 1;
    for (let hours = 0; hours < 80; hours++) {
      hand.on(3_600);
      await turn();
      tries++;
    }
    const stopped = (await state()).versions[0];
    expect(stopped?.says[0]).toMatch(/given up after \d+ attempts.*ECONNREFUSED/);
    expect(Number(/after (\d+) attempts/.exec(stopped?.says[0] ?? "")?.[1])).toBeLessThan(tries);
    expect(GIVE_UP_MS).toBe(3 * 86_400_000);
    const again = await postOffice(port);
    expect((await send()).status).toBe(200);
    await turn();
    expect(again.arrived.length).toBe(1);
  });

  it("logs in where SMTP_URL says so, and shows a wrong password", async () => {
    const office = await postOffice(0, { auth: { user: "log", pass: "s3cret" } });
    const { hand, turn, state, logged } = await sendingSite(office);
    hand.set(EVENING);
    await turn();
    expect(office.arrived.length).toBe(1);
    const other = await postOffice(0, { auth: { user: "log", pass: "other" } });
    other.server.auth = { user: "log", pass: "s3cret" };
    const wrong = await sendingSite(other);
    wrong.hand.set(EVENING);
    await wrong.turn();
    expect((await wrong.state()).versions[0]?.says[0]).toMatch(/refused it: 535 authentication failed/);
    expect(JSON.stringify([await wrong.state(), await state(), logged, wrong.logged])).not.toContain("s3cret");
  });
});

describe("amended after it went", () => {
  it("goes as a numbered correction at the next hour, or at once when asked; as it stood, never again", async () => {
    const office = await postOffice();
    const { hand, turn, state, send, say } = await sendingSite(office);
    hand.set(EVENING);
    await turn();
    expect((await send()).status).toBe(409);
    await say("flipped it", 60);
    const changed = await state();
    expect(changed.next).toBe("correct");
    expect(changed.says[0]).toMatch(
      /^Something was said or amended since it went\. The correction goes at the next 18:00/,
    );
    await turn();
    expect(office.arrived.length).toBe(1);
    hand.set("2026-03-05T18:00:00-07:00");
    await turn();
    await turn();
    expect(office.arrived.length).toBe(2);
    await say("order a seat", 90);
    expect((await send()).status).toBe(200);
    await turn();
    const mails = await Promise.all(office.arrived.map((one) => simpleParser(one.raw)));
    expect(mails.map((one) => one.subject)).toEqual([
      "Valve work, North Pad, 2026-03-04",
      "Correction 1: Valve work, North Pad, 2026-03-04",
      "Correction 2: Valve work, North Pad, 2026-03-04",
    ]);
    expect(new Set(mails.map((one) => one.messageId)).size).toBe(3);
    expect(mails[2]?.inReplyTo).toBe(mails[0]?.messageId);
    expect(mails[1]?.text).toContain("It replaces what was sent of this day before");
    expect(mails[1]?.text).toContain("was flipped to its other side");
    expect((await state()).versions.map((one) => one.name)).toEqual(["Correction 2", "Correction 1", "Report"]);
  });

  it("what nobody has yet is made anew under its own name, without a correction", async () => {
    const office = await postOffice();
    const { hand, turn, state, say } = await sendingSite(office);
    office.at.mail = () => replying(451, "later");
    hand.set(EVENING);
    await turn();
    await say("flipped it", 60);
    office.at = {};
    hand.set("2026-03-05T18:00:00-07:00");
    await turn();
    expect(office.arrived.length).toBe(1);
    expect(office.arrived[0]?.raw).toContain("flipped");
    expect((await state()).versions.map((one) => one.name)).toEqual(["Report"]);
  });
});

describe("without a mail server", () => {
  it("reports are written into a folder, once a version, and the desk says so", async () => {
    const { hand, turn, state, dir, say } = await sendingSite(undefined, { recipients: [] });
    expect((await state()).says[0]).toMatch(/^Will go at 18:00 into .*mail, for no mail server is set \(SMTP_URL\)\.$/);
    hand.set(EVENING);
    await turn();
    await turn();
    const folder = join(dir, "mail");
    const [first, ...more] = await readdir(folder);
    expect(more).toEqual([]);
    expect(first).toMatch(/^north-[0-9a-f]{8}-2026-03-04-v1\.eml$/);
    expect((await simpleParser(await readFile(join(folder, first ?? "")))).subject).toBe(
      "Valve work, North Pad, 2026-03-04",
    );
    expect((await state()).versions[0]?.says[0]).toMatch(
      /^Report written at 18:00:04 to .*v1\.eml: no mail server is set/,
    );
    await say("flipped it", 60);
    hand.set("2026-03-05T18:00:00-07:00");
    await turn();
    expect((await readdir(folder)).length).toBe(2);
  });
});

/** A phrase of a job of its own. */
async function say(ask: (...args: [string, string, unknown]) => Promise<unknown>, text: string, second: number) {
  const { job, phrase } = await import("../app-under-test.ts");
  const one = job({ site: "north", tag: "LCV-214" });
  await ask("POST", "/api/phrases", { jobs: [one], phrases: [phrase(one, text, second)] });
}
