import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { inject, onTestFinished } from "vitest";
import { type App, makeApp } from "../../server/app.ts";
import { type Clock, systemClock } from "../../server/clock.ts";
import { openStore } from "../../server/db/open.ts";
import { keptFiles } from "../../server/keepsakes/files.ts";
import { makeLog } from "../../server/log.ts";
import type { Mailing } from "../../server/mail/mailing.ts";
import { makeMetrics } from "../../server/metrics.ts";
import { RecentJobs } from "../../server/reading/keep-reading.ts";
import { takeDatabase } from "../postgres-run.ts";

/** A folder of its own for one test, gone after it. */
export async function folder(): Promise<string> {
  const path = await mkdtemp(join(tmpdir(), "handsfull-test-"));
  onTestFinished(() => rm(path, { recursive: true, force: true }));
  return path;
}

export const FROM = "Log <log@example.com>";
/** A server that listens on the machine itself, and speaks no https. */
export const DOOR = { loopback: true, tls: false };

/** As node-server hands on where a call comes from. */
export const from = (address: string) => ({ incoming: { socket: { remoteAddress: address } } });

/** The app with every call made at its own machine where nothing else is said: while nobody is enrolled it is let in. */
export function fromHere(app: App): Pick<App, "request" | "routes"> {
  return { request: (path, init, env = from("127.0.0.1")) => app.request(path, init, env), routes: app.routes };
}

/** The address of a database that is not there yet, in the folder; or in the PostgreSQL that these tests are run on. */
export async function newDatabase(dir: string): Promise<string> {
  const cluster = inject("postgres");
  if (!cluster) return `file:${join(dir, "log.db")}`;
  const { url, giveBack } = await takeDatabase(cluster);
  onTestFinished(giveBack);
  return url;
}

/** The real app over a real database in a folder of its own. */
export async function bench(web?: string, about: Partial<Mailing["post"]> & { clock?: Clock } = {}) {
  const dir = await folder();
  const url = await newDatabase(dir);
  const store = await openStore(url);
  onTestFinished(() => store.close());
  const logged: string[] = [];
  const log = makeLog("debug", (line) => logged.push(line));
  const kept = keptFiles(join(dir, "kept"));
  const { clock = systemClock, ...post } = about;
  const mail = { clock, from: FROM, post: { server: undefined, folder: join(dir, "mail"), ...post }, wake: () => {} };
  const given = { store, kept, log, metrics: makeMetrics(), recent: new RecentJobs(), mail, door: DOOR };
  const app = fromHere(makeApp(given, web));
  const send = (method: string, path: string, body?: unknown) =>
    app.request(path, {
      method,
      ...(body === undefined ? {} : { body: JSON.stringify(body), headers: { "content-type": "application/json" } }),
    });
  return {
    dir,
    url,
    store,
    kept,
    given,
    app,
    logged,
    send,
    /** sends and reads; any answer but 200 is a failure of the test */
    // biome-ignore lint/suspicious/noExplicitAny: answers are looked at key by key
    async ask(method: string, path: string, body?: unknown): Promise<any> {
      const answer = await send(method, path, body);
      if (answer.status !== 200) throw new Error(`${method} ${path}: ${answer.status} ${await answer.text()}`);
      return answer.json();
    },
  };
}

export const id = () => crypto.randomUUID();

export function job(about: { tag?: string; site?: string; startedAt?: string } = {}) {
  return { id: id(), startedAt: "2026-03-04T10:00:00-07:00", ...about };
}

/** A phrase of a job, said so many seconds after ten. */
export function phrase(of: { id: string }, text: string, second = 0) {
  const saidAt = new Date(Date.UTC(2026, 2, 4, 17, 0, 0) + second * 1000).toISOString();
  return { id: id(), job: of.id, text, saidAt, how: "typed" as const };
}
