import { randomUUID } from "node:crypto";
import { mkdtemp, readFile, rm, stat } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createClient } from "@libsql/client";
import { gone, spawnBuilt } from "../server/server-process.ts";
import { type Field, makeField, SITES } from "./field-of.ts";
import { figure } from "./timing.ts";

/** What is made and looked at in some minutes. */
export const STEPS: readonly Field[] = [
  { valves: 1, jobsEach: 10 },
  { valves: 100, jobsEach: 10 },
  { valves: 1000, jobsEach: 10 },
  { valves: 10_000, jobsEach: 10 },
  { valves: 100_000, jobsEach: 1 },
];
/** Ten million entries: most of an hour, and the disk for it. */
export const WHOLE: readonly Field[] = [{ valves: 100_000, jobsEach: 10 }];

/** The same looks at stores of every size, at the real server over HTTP, one at a time: what grows, and how. */
export async function scale(steps: readonly Field[] = STEPS): Promise<string[]> {
  const lines = [
    "p95 in ms, one caller at a time; `store` is one phrase, on the disk before the answer",
    `| ${HEADS.join(" | ")} |`,
    `| ${HEADS.map(() => "---").join(" | ")} |`,
  ];
  for (const step of steps) lines.push(`| ${(await measured(step)).join(" | ")} |`);
  return lines;
}

const HEADS = [
  "valves",
  "entries",
  "phrases",
  "disk MB",
  "start s",
  "store",
  "due",
  "review",
  "valve",
  "valves of a site",
  "search: often",
  "word not there",
  "part never so",
  "of a valve",
  "MB in use",
  "made in s",
];

async function measured(field: Field): Promise<string[]> {
  const folder = await mkdtemp(join(tmpdir(), "handsfull-scale-"));
  try {
    const file = join(folder, "handsfull.db");
    const began = performance.now();
    await makeField(file, field);
    const making = performance.now() - began;
    return [...(await looks(folder, field)), figure(making / 1000)];
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** What is seen of the store in a folder that was made so. */
export async function looks(folder: string, field: Field): Promise<string[]> {
  const file = join(folder, "handsfull.db");
  const [phrases, entries] = await counts(file);
  const disk = (await stat(file)).size;
  const starting = performance.now();
  const { address, child } = await spawnBuilt({ DATA_DIR: folder, DATABASE_URL: `file:${file}` });
  const start = performance.now() - starting;
  try {
    const look = async (path: (n: number) => string, times = 40) => {
      const took: number[] = [];
      for (let n = 0; n < times; n++) took.push(await ms(async () => (await get(`${address}${path(n)}`)).text()));
      return p95(took);
    };
    // whoever looks first after a start pays for what is not in memory yet
    for (const path of ["/api/due?days=90&limit=200", "/api/review?limit=25"]) await get(address + path);
    const tag = (n: number) => `INV-${(n * 7919) % field.valves}`;
    const siteOf = (n: number) => `site-${Math.floor(((n * 7919) % field.valves) / 250) % SITES}`;
    const cells = [
      await storing(address),
      await look((n) => `/api/due?days=90&limit=200${n % 2 ? `&site=${siteOf(n)}` : ""}`),
      await look((n) => `/api/review?limit=25${n % 2 ? `&site=${siteOf(n)}` : ""}`),
      await look((n) => `/api/valves/${tag(n)}?site=${siteOf(n)}`),
      await look((n) => `/api/valves?site=${siteOf(n)}`, 5),
      await look(() => "/api/search?words=seat&limit=25", 10),
      await look(() => "/api/search?words=zirconium&limit=25", 10),
      await look(() => "/api/search?part=gasket&condition=corroded&limit=25", 10),
      await look((n) => `/api/search?words=seat&tag=${tag(n)}&limit=25`, 5),
    ];
    const status = await readFile(`/proc/${child.pid}/status`, "utf8");
    const kilobytes = Number(/VmRSS:\s+(\d+)/.exec(status)?.[1] ?? Number.NaN);
    return [
      ...[field.valves, entries, phrases, disk / 1e6, start / 1000].map((one) => figure(one as number)),
      ...cells.map(figure),
      figure(kilobytes / 1000),
    ];
  } finally {
    child.kill("SIGTERM");
    await gone(child);
  }
}

async function counts(file: string): Promise<[number, number]> {
  const client = createClient({ url: `file:${file}` });
  const count = async (table: string) =>
    Number((await client.execute(`SELECT count(*) AS n FROM ${table}`)).rows[0]?.n ?? Number.NaN);
  const both: [number, number] = [await count("phrases"), await count("entries")];
  client.close();
  return both;
}

/** One phrase a request, in a job of its own at a valve that has a history. */
async function storing(address: string): Promise<number> {
  const took: number[] = [];
  const job = { id: randomUUID(), site: "site-0", tag: "INV-0", startedAt: new Date().toISOString() };
  for (let n = 0; n < 40; n++) {
    const said = {
      id: randomUUID(),
      job: job.id,
      text: "seat worn one side",
      saidAt: new Date().toISOString(),
      how: "typed",
    };
    const body = JSON.stringify({ jobs: [job], phrases: [said] });
    const headers = { "content-type": "application/json" };
    took.push(await ms(async () => (await get(`${address}/api/phrases`, { method: "POST", headers, body })).text()));
  }
  return p95(took);
}

async function get(address: string, init?: RequestInit): Promise<Response> {
  const reply = await fetch(address, init);
  if (!reply.ok) throw new Error(`${address} was answered ${reply.status}: ${await reply.text()}`);
  return reply;
}

async function ms(work: () => Promise<unknown>): Promise<number> {
  const start = performance.now();
  await work();
  return performance.now() - start;
}

const p95 = (times: readonly number[]) =>
  [...times].sort((a, b) => a - b)[Math.min(times.length - 1, Math.floor(times.length * 0.95))] ?? Number.NaN;
