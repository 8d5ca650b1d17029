import { randomUUID } from "node:crypto";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { makeApp } from "../../server/app.ts";
import { systemClock } from "../../server/clock.ts";
import { openStore, type Store } from "../../server/db/open.ts";
import { keptFiles } from "../../server/keepsakes/files.ts";
import { makeLog } from "../../server/log.ts";
import { makeMetrics } from "../../server/metrics.ts";
import { RecentJobs } from "../../server/reading/keep-reading.ts";
import { dayData } from "../../server/reports/day-data.ts";
import { dayMail } from "../../server/reports/day-mail.ts";
import { makeReport } from "../../server/reports/day-report.ts";
import { reportPage } from "../../server/reports/page.tsx";
import { reportPdf } from "../../server/reports/pdf.ts";
import { phrases } from "./corpus-phrases.ts";
import { figure } from "./timing.ts";

const JOBS = 500;
const PHRASES = 12;
const MOST_SECONDS = 2;
const DAY = "2026-03-04";
/** while nobody is enrolled, only a call made on the machine itself is answered */
const AT_THIS_MACHINE = { incoming: { socket: { remoteAddress: "127.0.0.1" } } };

/** A day of many jobs as one mail with all that is attached: read from the database, worded, set as PDF, composed. */
export async function reporting(): Promise<string[]> {
  const folder = await mkdtemp(join(tmpdir(), "handsfull-bench-"));
  const store = await openStore(`file:${join(folder, "log.db")}`);
  try {
    await tell(store, folder);
    const times: [string, number][] = [];
    const took = async <T>(what: string, work: () => T | Promise<T>): Promise<T> => {
      const start = performance.now();
      const done = await work();
      times.push([what, performance.now() - start]);
      return done;
    };
    // the first one loads the PDF maker and its fonts
    const about = { from: "log@example.com", to: ["a@example.com"] };
    const first = await dayData(store, "bench", "2026-03-03");
    if (first) await dayMail(store, first, 1, about);
    const before = process.cpuUsage();
    const data = await took("read from the database", () => dayData(store, "bench", DAY));
    if (!data) throw new Error("the day was not stored");
    const mail = await took("the mail with all attached", () => dayMail(store, data, 1, about));
    const { user, system } = process.cpuUsage(before);
    const report = makeReport(data);
    await took("of it: the page", () => reportPage(report, { css: "" }));
    await took("of it: the PDF", () => reportPdf(report));
    const [read = 0, composed = 0] = times.map(([, ms]) => ms);
    const whole = (read + composed) / 1000;
    return [
      `${JOBS} jobs of ${PHRASES} phrases, a mail of ${figure(mail.length / 1e6)} MB: ${figure(whole)} s (at most ${MOST_SECONDS} s asked: ${whole <= MOST_SECONDS ? "met" : "NOT met"})`,
      `  of processors, PDF and all     ${figure((user + system) / 1000)} ms: on a busy machine this tells more than the clock`,
      ...times.map(([what, ms]) => `  ${what.padEnd(28)} ${figure(ms)} ms`),
    ];
  } finally {
    await store.close();
    await rm(folder, { recursive: true, force: true });
  }
}

async function tell(store: Store, folder: string): Promise<void> {
  const post = { server: undefined, folder: "nowhere" };
  const mail = { clock: systemClock, from: "log@example.com", post, wake: () => {} };
  const kept = keptFiles(join(folder, "kept"));
  const app = makeApp({
    store,
    kept,
    log: makeLog("silent"),
    metrics: makeMetrics(),
    recent: new RecentJobs(),
    mail,
    door: { loopback: true, tls: false },
  });
  const ask = async (method: string, path: string, body: object) => {
    const headers = { "content-type": "application/json" };
    const reply = await app.request(path, { method, headers, body: JSON.stringify(body) }, AT_THIS_MACHINE);
    if (!reply.ok) throw new Error(`${path}: ${reply.status} ${await reply.text()}`);
  };
  await ask("PUT", "/api/sites/bench", { name: "Bench", zone: "Etc/UTC" });
  for (let n = 0; n < JOBS; n++) {
    const at = (second: number) => new Date(Date.UTC(2026, 2, 4, 0, n, second)).toISOString();
    const job = { id: randomUUID(), site: "bench", tag: `LCV-${n}`, startedAt: at(0) };
    const said = Array.from({ length: PHRASES }, (_, k) => ({
      id: randomUUID(),
      job: job.id,
      text: phrases[(n * PHRASES + k) % phrases.length] ?? "seat worn",
      saidAt: at(k),
      how: "typed",
    }));
    await ask("POST", "/api/phrases", { jobs: [job], phrases: said });
  }
}
