import type { ChildProcess } from "node:child_process";
import { expect, it } from "vitest";
import type { ReportState } from "../../../core/index.ts";
import { folder, job, phrase } from "../app-under-test.ts";
import { gone, startBuilt } from "../running.ts";
import { type PostOffice, postOffice, type Step } from "./post-office.ts";

const DAY = "2026-03-04";

/** A server of its own with one day said, its report to go through this office. */
async function site(office: PostOffice) {
  const env = { DATA_DIR: await folder(), SMTP_URL: office.url, MAIL_FROM: "log@example.com" };
  let { address, child } = await startBuilt(env);
  const ask = async (method: string, path: string, body?: object) => {
    const reply = await fetch(`${address}${path}`, {
      method,
      ...(body ? { body: JSON.stringify(body), headers: { "content-type": "application/json" } } : {}),
    });
    if (!reply.ok) throw new Error(`${method} ${path}: ${reply.status} ${await reply.text()}`);
    return reply.json();
  };
  await ask("PUT", "/api/sites/north", { name: "North Pad", zone: "America/Denver" });
  const recipients = ["a@example.com", "b@example.com"];
  await ask("PUT", "/api/sites/north/report", { recipients, hour: "18:00", weekends: true, quiet: false });
  const one = job({ site: "north", tag: "LCV-213" });
  await ask("POST", "/api/phrases", { jobs: [one], phrases: [phrase(one, "seat worn on one side")] });
  return {
    child: (): ChildProcess => child,
    async restart() {
      await gone(child);
      ({ address, child } = await startBuilt(env));
    },
    send: () => ask("POST", `/api/sites/north/reports/${DAY}`, {}),
    /** waits until nothing is under way any more */
    async ended(): Promise<ReportState> {
      for (;;) {
        const state = (await ask("GET", `/api/sites/north/reports/${DAY}`)) as ReportState;
        if (["settled", "unknown", "stopped"].includes(state.versions[0]?.state ?? "")) return state;
        await new Promise((wake) => setTimeout(wake, 50));
      }
    },
  };
}

const cases: [string, Step, boolean, "settled" | "unknown"][] = [
  ["while connecting", "connect", true, "settled"],
  ["at the sender", "mail", true, "settled"],
  ["at a recipient", "rcpt", true, "settled"],
  ["with the message taken and not yet answered", "end", true, "unknown"],
  ["with the message lost and not answered", "end", false, "unknown"],
];

it.each(cases)(
  "killed %s, the report arrives once or is shown as unknown",
  { timeout: 60_000 },
  async (_what, step, keeps, state) => {
    const office = await postOffice();
    const { child, send, restart, ended } = await site(office);
    office.keeps = keeps;
    office.at[step] = () => {
      child().kill("SIGKILL");
      // no answer: the client is gone before it could read one
      return new Promise(() => {});
    };
    await send();
    await restart();
    office.at = {};
    office.keeps = true;
    const after = await ended();
    expect(after.versions.map((one) => one.state)).toEqual([state]);
    // another turn of the post room would have sent a second one
    await restartedOnce(child(), restart);
    await ended();
    expect(office.arrived.length).toBe(state === "settled" || keeps ? 1 : 0);
    if (state === "unknown")
      expect(after.versions[0]?.says[0]).toMatch(/not known whether report reached 2.*stopped after it had handed/);
  },
);

it("killed at any moment, never sends twice", { timeout: 120_000 }, async () => {
  for (const ms of [2, 8, 16, 24]) {
    const office = await postOffice();
    const { child, send, restart, ended } = await site(office);
    // each answer takes its time, so that a kill falls between two steps rather than after the last
    const slow = () => new Promise((late) => setTimeout(late, 4));
    office.at = { connect: slow, mail: slow, rcpt: slow, end: slow };
    await send();
    await new Promise((wake) => setTimeout(wake, ms));
    child().kill("SIGKILL");
    await restart();
    const [version] = (await ended()).versions;
    if (version?.state === "settled") expect(office.arrived.length).toBe(1);
    else expect([version?.state, office.arrived.length <= 1]).toEqual(["unknown", true]);
    child().kill("SIGKILL");
  }
});

it("told to stop while the answer is awaited, waits for it and writes it down", { timeout: 60_000 }, async () => {
  const office = await postOffice();
  const { child, send, restart, ended } = await site(office);
  office.at.end = () => {
    child().kill("SIGTERM");
    return new Promise((late) => setTimeout(late, 700));
  };
  await send();
  expect(await gone(child())).toBe(0);
  office.at = {};
  await restart();
  expect((await ended()).versions[0]?.state).toBe("settled");
  expect(office.arrived.length).toBe(1);
});

async function restartedOnce(child: ChildProcess, restart: () => Promise<void>): Promise<void> {
  child.kill("SIGKILL");
  await restart();
}
