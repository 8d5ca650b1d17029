import { randomUUID } from "node:crypto";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { FollowUp } from "../../core/index.ts";
import { EVERY_SITE } from "../../server/accounts/sites-seen.ts";
import { AT_COMMAND } from "../../server/commands/at-command.ts";
import { openStore, type Store } from "../../server/db/open.ts";
import { due, entries, jobs, phrases as phraseRows, valveStates, valveTags } from "../../server/db/tables.ts";
import type { Tx } from "../../server/db/writer.ts";
import { addDays } from "../../server/moments.ts";
import { RecentJobs } from "../../server/reading/keep-reading.ts";
import { keepOwed } from "../../server/reading/owed.ts";
import { READER } from "../../server/reading/version.ts";
import { weighChanged } from "../../server/review/weigh-changed.ts";
import { dueWithin } from "../../server/routes/due/store.ts";
import { stillOwed } from "../../server/routes/follow-ups/store.ts";
import { makeDeliver } from "../../server/routes/phrases/deliver.ts";
import { reviewPage } from "../../server/routes/review/queue.ts";
import { phrases } from "./corpus-phrases.ts";
import { figure } from "./timing.ts";

const MOST_MS = 100;
const ITEMS = 10_000;
const A_JOB = 12;
const VALVES = 100_000;

/** What a desk asks for all day: a page of what waits for the lead, and a page of what is due. */
export async function lookingUp(): Promise<string[]> {
  const folder = await mkdtemp(join(tmpdir(), "handsfull-bench-"));
  const store = await openStore(`file:${join(folder, "log.db")}`);
  try {
    return [...(await review(store)), ...(await dueBoard(store)), ...(await leftOpen(store))];
  } finally {
    await store.close();
    await rm(folder, { recursive: true, force: true });
  }
}

async function review(store: Store): Promise<string[]> {
  const deliver = makeDeliver({ store, recent: new RecentJobs() });
  const jobs = Math.ceil(ITEMS / A_JOB) + 200;
  for (let n = 0; n < jobs; n++) {
    const startedAt = new Date(Date.UTC(2026, 0, 1, 0, n * 10)).toISOString();
    const job = { id: randomUUID(), site: "north", tag: `LCV-${n % 300}`, startedAt };
    const said = Array.from({ length: A_JOB }, (_, at) => ({
      id: randomUUID(),
      job: job.id,
      text: phrases[(n * A_JOB + at) % phrases.length] ?? "seat ok",
      saidAt: new Date(Date.parse(startedAt) + at * 1000).toISOString(),
      how: "typed",
    }));
    await deliver({ jobs: [job], phrases: said }, AT_COMMAND);
  }
  const weighing = (await timed(() => weighChanged(store))).ms;
  const times: Took[] = [];
  let items = 0;
  let after: string | undefined;
  do {
    const from: string | undefined = after;
    const look = async () => {
      const page = await reviewPage(store, EVERY_SITE, { state: "open", most: 25, after: from });
      JSON.stringify(page);
      items += page.items.length;
      after = page.next;
    };
    times.push(await timed(look));
  } while (after);
  return [
    `${figure(items)} phrases to review, weighed for the first time: ${figure(weighing / 1000)} s, ${figure(weighing / jobs)} ms a job`,
    `${judged("a page of 25 of them with words, entries and reasons", times)}`,
  ];
}

async function dueBoard(store: Store): Promise<string[]> {
  const today = "2026-03-04";
  for (let from = 0; from < VALVES; from += 500) {
    const some = Array.from({ length: 500 }, (_, n) => from + n);
    await store.write(async (tx) => {
      const of = (n: number) => ({ site: `site-${n % 20}`, tag: `INV-${n}` });
      const state = { reader: READER, open: JSON.stringify(OPEN), lastOn: today };
      const service = (n: number) => (n % 3 ? "normal" : "severe");
      await tx.insert(valveTags).values(some.map((n) => ({ ...of(n), stale: 0 })));
      await tx.insert(valveStates).values(some.map((n) => ({ ...of(n), ...state, service: service(n) })));
      const lines = some.flatMap((n) =>
        (["seat_inspection", "seal_replacement"] as const).map((task, at) => {
          const on = addDays(today, ((n * 7 + at * 31) % 420) - 60);
          const body = JSON.stringify({ task, on, months: 6, basis: "interval", why: "every 6 months" });
          return { ...of(n), task, on, body, rank: n % 3 ? 1 : 0 };
        }),
      );
      await tx.insert(due).values(lines);
      await visitOnce(tx, some.map(of));
      for (const valve of some.map(of)) await keepOwed(tx, { ...valve, lastOn: today }, OPEN);
    });
  }
  const first = await timed(() => dueWithin(store, EVERY_SITE, 90, { limit: 200 }));
  const times: Took[] = [];
  for (let n = 0; n < 100; n++) {
    const seen = n % 2 ? [`site-${n % 20}`] : EVERY_SITE;
    times.push(await timed(async () => JSON.stringify(await dueWithin(store, seen, 90, { limit: 200 }))));
  }
  return [
    `the due board of ${figure(VALVES)} valves, first: ${figure(first.ms)} ms, ${figure(first.core)} of a core`,
    judged("then 200 lines of it, of all sites and of one", times),
  ];
}

/** What every valve has open. */
const OPEN: FollowUp[] = [
  { do: "replace", part: "packing", when: "now", why: "packing is leaking", rule: "packing_leaks", source: "" },
  { do: "replace", part: "seat", when: "next_inspection", why: "seat is worn", rule: "seat_worn", source: "" },
];

/** A job of one phrase at each. */
async function visitOnce(tx: Tx, valves: readonly { site: string; tag: string }[]): Promise<void> {
  const at = "2026-03-04T10:00:00.000000000Z";
  const said = valves.map((valve) => ({ ...valve, job: randomUUID(), phrase: randomUUID() }));
  const held = { stale: 0, unweighed: 0, signed: 1, revision: 1, receivedAt: at };
  await tx
    .insert(jobs)
    .values(said.map(({ site, tag, job }) => ({ id: job, site, tag, startedAt: at, startedOffset: 0, ...held })));
  const words = { text: "seat worn", saidAt: at, saidOffset: 0, how: "typed" as const, reader: READER, receivedAt: at };
  await tx.insert(phraseRows).values(said.map(({ site, job, phrase }) => ({ id: phrase, site, job, ...words })));
  const entry = { n: 0, startedAt: at, type: "finding", body: "{}", reader: READER };
  await tx.insert(entries).values(said.map(({ site, tag, job, phrase }) => ({ site, tag, job, phrase, ...entry })));
}

async function leftOpen(store: Store): Promise<string[]> {
  const times: Took[] = [];
  for (let n = 0; n < 100; n++) {
    const seen = n % 2 ? [`site-${n % 20}`] : EVERY_SITE;
    times.push(await timed(async () => JSON.stringify(await stillOwed(store, seen, 200))));
  }
  return [
    judged(
      `what is still owed of them, the first 200 of ${figure(VALVES * OPEN.length)}, of all sites and of one`,
      times,
    ),
  ];
}

/** Milliseconds on the clock, which others on the machine lengthen, and of a core. */
interface Took {
  ms: number;
  core: number;
}

async function timed(work: () => Promise<unknown>): Promise<Took> {
  const [start, before] = [performance.now(), process.cpuUsage()];
  await work();
  const { user, system } = process.cpuUsage(before);
  return { ms: performance.now() - start, core: (user + system) / 1_000 };
}

function judged(what: string, times: readonly Took[]): string {
  const [wall, core] = (["ms", "core"] as const).map((of) => times.map((one) => one[of]).sort((a, b) => a - b));
  const at = (sorted: readonly number[] = [], share = 0.5) =>
    sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? Number.NaN;
  const p95 = at(wall, 0.95);
  return `${what}: median ${figure(at(wall))} ms, ${figure(at(core))} of a core; p95 ${figure(p95)} ms (at most ${MOST_MS} ms asked: ${p95 <= MOST_MS ? "met" : "NOT met"})`;
}
