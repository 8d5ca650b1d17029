import { randomUUID } from "node:crypto";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createClient } from "@libsql/client";
import { makeCluster, NO_POSTGRES, POSTGRES_BIN } from "../postgres.ts";
import { gone, type Started, spawnBuilt } from "../server/server-process.ts";
import { phrases } from "./corpus-phrases.ts";
import { figure } from "./timing.ts";

const CLIENTS = 20;
const FOR_MS = 2500;

/**
 * Phrases acknowledged per second by the real server over HTTP, each read, its entries stored and on disk before the
 * answer; beside it, turn and turn about on the same disk, the same on PostgreSQL with its own settings, and bare single
 * inserts with the driver of the first.
 */
export async function storing(): Promise<string[]> {
  const folder = await mkdtemp(join(tmpdir(), "handsfull-bench-"));
  const cluster = POSTGRES_BIN ? await makeCluster({}) : undefined;
  const running: Started[] = [];
  const start = async (DATABASE_URL: string) => {
    const started = await spawnBuilt({ DATA_DIR: folder, DATABASE_URL });
    running.push(started);
    return started.address;
  };
  try {
    await cluster?.start();
    const lite = await start("");
    const onPg = cluster && (await start(cluster.url("postgres")));
    const bare: number[] = [];
    const [single, batches, pgSingle, pgBatches]: [number[], number[], number[], number[]] = [[], [], [], []];
    for (let round = 0; round < 3; round++) {
      bare.push(await bareInserts(join(folder, `bare-${round}.db`)));
      single.push(await post(lite, 1));
      if (onPg) pgSingle.push(await post(onPg, 1));
      batches.push(await post(lite, 25));
      if (onPg) pgBatches.push(await post(onPg, 25));
    }
    const [inserts, one, many] = [bare, single, batches].map(median) as [number, number, number];
    const beside = (rounds: number[], lite: number) =>
      `${figure(median(rounds))} phrases/s, ${figure(median(rounds) / lite)} of libSQL's`;
    return [
      `median of three rounds of ${FOR_MS / 1000} s each, everything durable (WAL, synchronous FULL); the clients share the machine`,
      `bare node and libSQL, one insert at a time        ${figure(inserts)} rows/s`,
      `${CLIENTS} clients, one phrase a request, jobs of 12      ${figure(one)} phrases/s, ${figure(one / inserts)} of bare`,
      `${CLIENTS} clients, 25 phrases a request (an outbox)     ${figure(many)} phrases/s, ${figure(many / inserts)} of bare`,
      ...(onPg
        ? [
            `one phrase a request, on PostgreSQL               ${beside(pgSingle, one)}`,
            `25 phrases a request, on PostgreSQL               ${beside(pgBatches, many)}`,
          ]
        : [`not measured: ${NO_POSTGRES}`]),
    ];
  } finally {
    for (const { child } of running) {
      child.kill("SIGTERM");
      await gone(child);
    }
    await cluster?.remove();
    await rm(folder, { recursive: true, force: true });
  }
}

/** Rows a second of the least that keeps a phrase: one insert, on disk before the next. */
export async function bareInserts(path: string, forMs = FOR_MS): Promise<number> {
  const client = createClient({ url: `file:${path}` });
  await client.execute("PRAGMA journal_mode = WAL");
  await client.execute(
    "CREATE TABLE phrases (id TEXT PRIMARY KEY, job TEXT NOT NULL, text TEXT NOT NULL, at TEXT NOT NULL)",
  );
  const until = performance.now() + forMs;
  let rows = 0;
  for (; performance.now() < until; rows++) {
    const args = [randomUUID(), "job", phrases[rows % phrases.length] ?? "", new Date().toISOString()];
    await client.execute({ sql: "INSERT INTO phrases VALUES (?, ?, ?, ?)", args });
  }
  client.close();
  return (1000 * rows) / forMs;
}

/** Phrases that were answered `stored`, per second. */
async function post(address: string, each: number): Promise<number> {
  const until = performance.now() + FOR_MS;
  let stored = 0;
  const client = async (n: number) => {
    let job = { id: randomUUID(), tag: `LCV-${n}`, startedAt: new Date().toISOString() };
    for (let said = 0; performance.now() < until; said += each) {
      if (said >= 12 * each) {
        job = { ...job, id: randomUUID() };
        said = 0;
      }
      const sent = Array.from({ length: each }, (_, k) => ({
        id: randomUUID(),
        job: job.id,
        text: phrases[(said + k + n * 40) % phrases.length] ?? "",
        saidAt: new Date(Date.now() + k).toISOString(),
        how: "typed",
      }));
      const reply = await fetch(`${address}/api/phrases`, {
        method: "POST",
        headers: { "content-type": "application/json" },
        body: JSON.stringify({ jobs: [job], phrases: sent }),
      });
      const { results } = (await reply.json()) as { results: { status: string }[] };
      stored += results.filter((one) => one.status === "stored").length;
    }
  };
  const began = performance.now();
  await Promise.all(Array.from({ length: CLIENTS }, (_, n) => client(n)));
  return (1000 * stored) / (performance.now() - began);
}

export const median = (values: number[]) =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;
