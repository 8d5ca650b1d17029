import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { sql } from "drizzle-orm";
import fc from "fast-check";
import { makeApp } from "../../server/app.ts";
import { systemClock } from "../../server/clock.ts";
import { openStore, type Store } from "../../server/db/open.ts";
import { keptFiles } from "../../server/keepsakes/files.ts";
import { makeLog } from "../../server/log.ts";
import { makeMetrics } from "../../server/metrics.ts";
import { RecentJobs } from "../../server/reading/keep-reading.ts";
import { tablesThatGo } from "../../server/transfer/what-goes.ts";
import { fromSchema, KNOWN_IDS, type Schema } from "./from-schema.ts";

interface Parameter {
  name: string;
  in: "path" | "query";
  required?: boolean;
  schema: Schema;
}
interface Operation {
  parameters?: Parameter[];
  requestBody?: { content: Record<string, { schema: Schema }> };
}
interface Document {
  paths: Record<string, Record<string, Operation>>;
  components: { schemas: Record<string, Schema> };
}

/** Acts of security are written down when they are refused as well. */
const WRITES_REFUSALS = new Set(["audit"]);
/** a second of a core: wall time on a shared machine says nothing */
const LONGEST_CPU_MS = 1_000;

/**
 * Asks every call of the OpenAPI document with what its own schema takes, mostly, and says which promise was broken:
 * no failure of ours, no answer later than a second, a refusal in words, and nothing kept of what was refused.
 */
export async function fuzzBodies({ runs, seed }: { runs: number; seed: number }): Promise<string[]> {
  const dir = await mkdtemp(join(tmpdir(), "handsfull-fuzz-"));
  const store = await openStore(`file:${join(dir, "log.db")}`);
  const failures: string[] = [];
  const log = makeLog("error", (line) => failures.push(line));
  const post = { server: undefined, folder: join(dir, "mail") };
  const mail = { clock: systemClock, from: "log@example.com", post, wake: () => {} };
  const door = { loopback: true, tls: false };
  const kept = keptFiles(join(dir, "kept"));
  const app = makeApp({ store, kept, log, metrics: makeMetrics(), recent: new RecentJobs(), mail, door });
  const ask = async (path: string, init: RequestInit = {}) =>
    app.request(path, init, { incoming: { socket: { remoteAddress: "127.0.0.1" } } });
  const broken: string[] = [];
  try {
    await ask("/api/sites/north", put({ name: "North", zone: "Etc/UTC" }));
    await ask("/api/phrases", { ...put(KNOWN), method: "POST" });
    const document = (await (await ask("/api/openapi.json")).json()) as Document;
    const calls = callsOf(document);
    await fc.assert(
      fc.asyncProperty(fc.oneof(...calls), async ({ method, path, body }) => {
        const before = await rowsOf(store);
        const init = body === undefined ? { method } : { ...put(body), method };
        const cpu = process.cpuUsage();
        const answer = await ask(path, init);
        const text = await answer.text();
        const { user, system } = process.cpuUsage(cpu);
        const what = `${method} ${path} ${JSON.stringify(body)?.slice(0, 2_000)}: ${answer.status}`;
        if ((user + system) / 1000 > LONGEST_CPU_MS)
          broken.push(`${what}, after ${(user + system) / 1000} ms of a core`);
        if (answer.status >= 500) broken.push(`${what} ${failures.at(-1)}`);
        if (answer.status >= 400 && !detailOf(text)) broken.push(`${what}, and does not say what to do`);
        // a question may reckon what follows from what was kept before
        if (answer.status >= 400 && method !== "GET" && before !== (await rowsOf(store)))
          broken.push(`${what}, and kept something`);
        const results = answer.status === 200 && path === "/api/phrases" ? JSON.parse(text).results : [];
        for (const { id, status } of results) {
          const kept = await store.db.all(sql`SELECT id FROM phrases WHERE id = ${id}`);
          if (kept.length !== (status === "refused" ? Math.min(kept.length, 1) : 1))
            broken.push(`${what}: ${id} was told ${status}, and stands ${kept.length} times`);
        }
        return broken.length === 0;
      }),
      { numRuns: runs, seed, endOnFailure: runs > 10_000 },
    );
    return broken;
  } catch (cause) {
    if (broken.length > 0) return [...new Set(broken)].slice(0, 20);
    throw cause;
  } finally {
    await store.close();
    await rm(dir, { recursive: true, force: true });
  }
}

const [JOB = "", ...SAID] = KNOWN_IDS;
const KNOWN = {
  jobs: [{ id: JOB, tag: "LCV-213", site: "north", startedAt: "2026-03-04T10:00:00Z" }],
  phrases: SAID.map((id, n) => ({ id, job: JOB, text: "seat worn", saidAt: `2026-03-04T10:00:0${n}Z`, how: "typed" })),
};
/** Where a path names a site or a valve, often one that is there. */
const THERE: Record<string, string> = { site: "north", tag: "LCV-213" };

const put = (body: unknown): RequestInit => ({
  method: "PUT",
  body: JSON.stringify(body),
  headers: { "content-type": "application/json" },
});

/** How many rows each table holds, as one text. */
async function rowsOf(store: Store): Promise<string> {
  const counts: string[] = [];
  for (const { name, table } of tablesThatGo())
    if (!WRITES_REFUSALS.has(name)) counts.push(`${name} ${await store.db.$count(table)}`);
  return counts.join();
}

function detailOf(text: string): string | undefined {
  const told = JSON.parse(text) as { detail?: unknown };
  return typeof told.detail === "string" && told.detail.length > 10 ? told.detail : undefined;
}

interface Call {
  method: string;
  path: string;
  body?: unknown;
}

function callsOf({ paths, components: { schemas } }: Document): fc.Arbitrary<Call>[] {
  return Object.entries(paths).flatMap(([path, methods]) =>
    Object.entries(methods)
      // clips and photographs are bytes: tests/fuzz/files.ts
      .filter(([, one]) => !one.requestBody || "application/json" in one.requestBody.content)
      .map(([method, one]) => {
        const sent = one.requestBody?.content["application/json"]?.schema;
        // the route judges each job and phrase by itself, so that its own schema says nothing of them
        const body = path === "/api/phrases" ? deliveryOf(schemas) : sent && fromSchema(sent, schemas);
        return fc
          .record({ address: addressOf(path, one.parameters ?? [], schemas), body: body ?? fc.constant(undefined) })
          .map(({ address, body }) => ({ method: method.toUpperCase(), path: address, body }));
      }),
  );
}

function deliveryOf(schemas: Record<string, Schema>): fc.Arbitrary<unknown> {
  const [job, phrase] = [schemas.Job ?? {}, schemas.Phrase ?? {}];
  const linked = fc
    .tuple(fromSchema(job, schemas), fc.array(fromSchema(phrase, schemas), { maxLength: 4 }))
    .map(([one, phrases]) => ({ jobs: [one], phrases: phrases.map((said) => linkedTo(said, one)) }));
  return linked;
}

/** Most phrases are of the job beside them, or nothing of what is sent would be kept. */
function linkedTo(said: unknown, job: unknown): unknown {
  const isObject = (one: unknown): one is Record<string, unknown> =>
    typeof one === "object" && one !== null && !Array.isArray(one);
  return isObject(said) && isObject(job) && "job" in said ? { ...said, job: job.id } : said;
}

/** A value as an address holds it; an object may have a toString of its own making, and none that works. */
const written = (value: unknown): string =>
  typeof value === "object" && value !== null ? (JSON.stringify(value) ?? "") : String(value);

function addressOf(path: string, parameters: Parameter[], schemas: Record<string, Schema>): fc.Arbitrary<string> {
  const values = parameters.map((one) => {
    const any = fromSchema(one.schema, schemas).map(written);
    const there = THERE[one.name];
    const value = (there ? fc.oneof(any, fc.constant(there)) : any).map((held) => ({ ...one, held }));
    return one.required ? value : fc.oneof(value, fc.constant({ ...one, held: undefined }));
  });
  return fc.tuple(...values).map((all) => {
    const encoded = (held: string) => encodeURIComponent(held.replace(/\p{Surrogate}/gu, "\ufffd"));
    const inPath = all.filter((one) => one.in === "path");
    const base = inPath.reduce((so, { name, held }) => so.replace(`{${name}}`, encoded(held ?? "north") || "x"), path);
    const query = all
      .filter((one) => one.in === "query" && one.held !== undefined)
      .map(({ name, held }) => `${name}=${encoded(held ?? "")}`);
    return query.length > 0 ? `${base}?${query.join("&")}` : base;
  });
}
