import type { ReportSettings, ReportState } from "../../../core/index.ts";
import { makeOutbox } from "../../../server/mail/outbox.ts";
import { makePostRoom } from "../../../server/reports/post-room.ts";
import { runSchedule } from "../../../server/reports/schedule.ts";
import { bench, FROM, job, phrase } from "../app-under-test.ts";
import type { PostOffice } from "./post-office.ts";

export const DAY = "2026-03-04";

/** A clock that stands until it is told to go on. */
export function handClock(iso: string) {
  let at = new Date(iso);
  return {
    clock: () => at,
    set: (to: string) => {
      at = new Date(to);
    },
    /** so many seconds on */
    on: (seconds: number) => {
      at = new Date(at.getTime() + seconds * 1000);
    },
  };
}

export const SETTINGS: ReportSettings = {
  recipients: ["a@example.com", "b@example.com"],
  hour: "18:00",
  weekends: true,
  quiet: false,
};

/** A site in Denver whose report goes through this office: four o'clock in the afternoon, one job said. */
export async function sendingSite(office: PostOffice | undefined, settings: Partial<ReportSettings> = {}) {
  const hand = handClock("2026-03-04T16:00:00-07:00");
  const times = { connectMs: 2_000, silenceMs: 1_000 };
  const app = await bench(undefined, { clock: hand.clock, server: office?.server, times });
  const issuing = { store: app.store, clock: hand.clock, from: FROM, server: office !== undefined };
  const outbox = makeOutbox({ ...app.given, clock: hand.clock, post: app.given.mail.post });
  await app.ask("PUT", "/api/sites/north", { name: "North Pad", zone: "America/Denver" });
  await app.ask("PUT", "/api/sites/north/report", { ...SETTINGS, ...settings });
  const one = job({ site: "north", tag: "LCV-213" });
  await app.ask("POST", "/api/phrases", { jobs: [one], phrases: [phrase(one, "seat worn on one side")] });
  return {
    ...app,
    hand,
    outbox,
    issuing,
    job: one,
    /** one turn of the post room: the clock is looked at, then what waits is sent */
    async turn() {
      await runSchedule({ ...issuing, log: app.given.log });
      await outbox.work();
    },
    say: (text: string, second: number) =>
      app.ask("POST", "/api/phrases", { jobs: [], phrases: [phrase(one, text, second)] }),
    state: (day = DAY): Promise<ReportState> => app.ask("GET", `/api/sites/north/reports/${day}`),
    send: (body: object = {}, day = DAY) => app.send("POST", `/api/sites/north/reports/${day}`, body),
    postRoom: () => makePostRoom({ ...issuing, log: app.given.log, post: app.given.mail.post }),
  };
}
