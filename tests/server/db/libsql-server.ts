import { randomUUID } from "node:crypto";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { type Client, createClient, type InArgs, type InValue, type ResultSet, type Transaction } from "@libsql/client";

/**
 * What a libSQL server answers to `POST /v2/pipeline` (Hrana 2, as JSON), over a file and the same engine. It shows that
 * the log runs by such an address. It is no such server: of replicas, of time limits and of a network it shows nothing.
 */

interface Value {
  type: "null" | "integer" | "float" | "text" | "blob";
  value?: string | number;
  base64?: string;
}
interface Stmt {
  sql?: string;
  sql_id?: number;
  args?: Value[];
  named_args?: { name: string; value: Value }[];
}
interface Cond {
  type: "ok" | "error" | "not" | "and" | "or" | "is_autocommit";
  step?: number;
  cond?: Cond;
  conds?: Cond[];
}
interface Request {
  type: string;
  stmt?: Stmt;
  batch?: { steps: { stmt: Stmt; condition?: Cond }[] };
  sql?: string;
  sql_id?: number;
}
/** One connection of a client, from its first request to the one that closes it. */
interface Stream {
  client: Client;
  open: boolean;
  transaction?: Transaction | undefined;
  sqls: Map<number, string>;
}

export async function libsqlServer(path: string): Promise<{ url: string; close(): Promise<void> }> {
  const streams = new Map<string, Stream>();
  const first = createClient({ url: `file:${path}` });
  await first.execute("PRAGMA journal_mode = WAL");
  first.close();
  const server = createServer(async (asked, answer) => {
    let text = "";
    for await (const part of asked) text += part;
    const { baton, requests } = JSON.parse(text) as { baton?: string; requests: Request[] };
    const begun = { client: createClient({ url: `file:${path}`, timeout: 2_000 }), open: true, sqls: new Map() };
    const stream = (baton && streams.get(baton)) || begun;
    if (stream !== begun) begun.client.close();
    if (baton) streams.delete(baton);
    const results: unknown[] = [];
    for (const request of requests) results.push(await answerOf(stream, request));
    const next = stream.open ? randomUUID() : null;
    if (next) streams.set(next, stream);
    answer.setHeader("content-type", "application/json");
    answer.end(JSON.stringify({ baton: next, base_url: null, results }));
  });
  await new Promise<void>((ready) => server.listen(0, "127.0.0.1", ready));
  return {
    url: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    async close() {
      for (const { client } of streams.values()) client.close();
      server.closeAllConnections();
      await new Promise((done) => server.close(done));
    },
  };
}

async function answerOf(stream: Stream, request: Request): Promise<unknown> {
  const { type, sql, sql_id: id = 0 } = request;
  try {
    const response: Record<string, unknown> = { type };
    if (type === "execute") response.result = await execute(stream, request.stmt as Stmt);
    if (type === "batch") response.result = await batch(stream, request.batch?.steps ?? []);
    if (type === "sequence") await stream.client.executeMultiple(sql ?? stream.sqls.get(id) ?? "");
    if (type === "store_sql") stream.sqls.set(id, sql ?? "");
    if (type === "close_sql") stream.sqls.delete(id);
    if (type === "close") {
      stream.transaction?.close();
      stream.client.close();
      stream.open = false;
    }
    return { type: "ok", response };
  } catch (cause) {
    return { type: "error", error: errorOf(cause) };
  }
}

async function execute(stream: Stream, stmt: Stmt): Promise<unknown> {
  const args = stmt.args?.length
    ? stmt.args.map(valueIn)
    : Object.fromEntries((stmt.named_args ?? []).map(({ name, value }) => [name, valueIn(value)]));
  return resultOf(await run(stream, stmt.sql ?? stream.sqls.get(stmt.sql_id ?? 0) ?? "", args));
}

const NOTHING = { columns: [], columnTypes: [], rows: [], rowsAffected: 0 };

/** What begins and ends a transaction goes by the engine's own calls: between two others it may change its connection. */
async function run(stream: Stream, sql: string, args: InArgs): Promise<Pick<ResultSet, keyof typeof NOTHING>> {
  const [, begin, end] = /^\s*(?:(BEGIN)\b|(COMMIT|ROLLBACK)\s*;?\s*$)/i.exec(sql) ?? [];
  if (begin) {
    stream.transaction = await stream.client.transaction(/immediate/i.test(sql) ? "write" : "deferred");
    return NOTHING;
  }
  if (!end || !stream.transaction) return (stream.transaction ?? stream.client).execute({ sql, args });
  const { transaction } = stream;
  stream.transaction = undefined;
  await (/commit/i.test(end) ? transaction.commit() : transaction.rollback());
  return NOTHING;
}

async function batch(stream: Stream, steps: { stmt: Stmt; condition?: Cond }[]): Promise<unknown> {
  const results: unknown[] = [];
  const errors: unknown[] = [];
  const holds = (cond: Cond): boolean => {
    if (cond.type === "ok") return Boolean(results[cond.step ?? 0]);
    if (cond.type === "error") return Boolean(errors[cond.step ?? 0]);
    if (cond.type === "not") return !holds(cond.cond as Cond);
    if (cond.type === "and") return (cond.conds ?? []).every(holds);
    if (cond.type === "or") return (cond.conds ?? []).some(holds);
    throw new Error(`${cond.type} is not known here`);
  };
  for (const [n, { stmt, condition }] of steps.entries()) {
    results[n] = errors[n] = null;
    if (condition && !holds(condition)) continue;
    try {
      results[n] = await execute(stream, stmt);
    } catch (cause) {
      errors[n] = errorOf(cause);
    }
  }
  return { step_results: results, step_errors: errors };
}

function resultOf({ columns, columnTypes, rows, rowsAffected }: Pick<ResultSet, keyof typeof NOTHING>): unknown {
  return {
    cols: columns.map((name, n) => ({ name, decltype: columnTypes[n] ?? null })),
    rows: rows.map((row) => columns.map((_, n) => valueOut(row[n]))),
    affected_row_count: rowsAffected,
    last_insert_rowid: null,
  };
}

function valueIn({ type, value, base64 }: Value): InValue {
  if (type === "null") return null;
  if (type === "blob") return Buffer.from(base64 ?? "", "base64");
  if (type === "integer") return BigInt(value ?? 0);
  return value as string | number;
}

function valueOut(held: unknown): Value {
  if (held === null || held === undefined) return { type: "null" };
  if (held instanceof ArrayBuffer) return { type: "blob", base64: Buffer.from(held).toString("base64") };
  if (typeof held === "string") return { type: "text", value: held };
  return Number.isInteger(held) ? { type: "integer", value: String(held) } : { type: "float", value: Number(held) };
}

const errorOf = (cause: unknown) => ({
  message: cause instanceof Error ? cause.message : String(cause),
  code: (cause as { code?: string }).code ?? null,
});
