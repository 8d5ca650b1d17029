import { randomUUID } from "node:crypto";
import { createClient } from "@libsql/client";
import { AT_COMMAND } from "../../server/commands/at-command.ts";
import { openStore } from "../../server/db/open.ts";
import { RecentJobs } from "../../server/reading/keep-reading.ts";
import { refreshStates } from "../../server/reading/valve-states.ts";
import { weighChanged } from "../../server/review/weigh-changed.ts";
import { makeDeliver } from "../../server/routes/phrases/deliver.ts";
import { phrases } from "./corpus-phrases.ts";

/** A store as after years: so many valves, and so many jobs at each. */
export interface Field {
  valves: number;
  jobsEach: number;
}

export const SITES = 20;
const A_JOB = 12;
const READ = 250;
const COPIES_A_COMMIT = 20;
/** Phrases that no lead has looked at yet: a busy field's, whatever lies behind it. */
const OPEN_COPIES = 4;

/**
 * Makes it in an empty file: 250 jobs of 12 phrases are said, read, reckoned and weighed by the server's own code, then
 * their rows are copied, each copy with its own ids, tags, site and times. Rows are as many and as long as if each had
 * been said; a valve's state and dates are those after its first job.
 */
export async function makeField(file: string, { valves, jobsEach }: Field): Promise<void> {
  const block = Math.min(valves, READ);
  await sayOnce(file, block);
  const client = createClient({ url: `file:${file}` });
  try {
    await client.execute("PRAGMA foreign_keys = OFF");
    await client.execute("PRAGMA synchronous = OFF");
    const copying = await copiers(client);
    const blocks = Math.ceil(valves / block);
    const copies = blocks * jobsEach;
    for (let from = 1; from < copies; from += COPIES_A_COMMIT) {
      const some = Array.from({ length: Math.min(COPIES_A_COMMIT, copies - from) }, (_, n) => from + n);
      const statements = some.flatMap((copy) => {
        const visit = Math.floor(copy / blocks);
        const at = { copy, base: (copy % blocks) * block, site: `site-${(copy % blocks) % SITES}` };
        const args = { ...at, minutes: copy * 45, open: copy < OPEN_COPIES ? 1 : 0, days: ((copy * 37) % 420) - 60 };
        return copying.filter((one) => visit === 0 || !one.once).map((one) => ({ sql: one.sql, args: one.args(args) }));
      });
      await client.batch(statements, "write");
    }
    await client.execute("PRAGMA wal_checkpoint(TRUNCATE)");
  } finally {
    client.close();
  }
}

async function sayOnce(file: string, jobs: number): Promise<void> {
  const store = await openStore(`file:${file}`);
  const deliver = makeDeliver({ store, recent: new RecentJobs() });
  for (let n = 0; n < jobs; n++) {
    const startedAt = new Date(Date.UTC(2026, 9, 1, 0, n * 10)).toISOString();
    const job = { id: randomUUID(), site: "site-0", tag: `INV-${n}`, startedAt };
    const said = Array.from({ length: A_JOB }, (_, at) => ({
      id: randomUUID(),
      job: job.id,
      text: phrases[(n * A_JOB + at) % phrases.length] ?? "seat ok",
      saidAt: new Date(Date.parse(startedAt) + at * 1000).toISOString(),
      how: "typed",
    }));
    await deliver({ jobs: [job], phrases: said }, AT_COMMAND);
  }
  await refreshStates(store);
  await weighChanged(store);
  await store.close();
}

type Args = Record<"copy" | "base" | "minutes" | "open" | "days", number> & { site: string };
type Given = keyof Args;

const TABLES = ["jobs", "phrases", "readings", "entries", "review_items", "words_said"];
/** A day that is moved by hours falls on two others: both are listed, which a search allows for. */
const DAY_EDGES = ["00:00:00", "23:59:59"];
/** Of a valve, not of a job: copied with its first. */
const ONCE = ["valve_tags", "valve_states", "due"];

/** One statement a table: the rows that were said, as rows of another copy. */
async function copiers(client: ReturnType<typeof createClient>) {
  const made = [];
  for (const table of [...TABLES, ...ONCE, "word_days"]) {
    const columns = (await client.execute(`PRAGMA table_info(${table})`)).rows.map((row) => String(row.name));
    const own = `said_${table}`;
    await client.execute(`CREATE TABLE ${own} AS SELECT * FROM ${table}`);
    const values = (edge?: string) => columns.map((column) => changed(table, column, edge)).join(", ");
    const from = table === "word_days" ? DAY_EDGES.map(values) : [values()];
    const selects = from.map((one) => `SELECT ${one} FROM ${own}`).join(" UNION ");
    const sql = `INSERT OR IGNORE INTO ${table} (${columns.join(", ")}) ${selects}`;
    const used = (["copy", "base", "minutes", "open", "days", "site"] as const).filter((name) =>
      sql.includes(`:${name}`),
    );
    const args = (all: Args) =>
      Object.fromEntries(used.map((name): [Given, string | number] => [name, all[name]])) as Record<
        string,
        string | number
      >;
    made.push({ once: ONCE.includes(table), sql, args });
  }
  return made;
}

function changed(table: string, column: string, edge = ""): string {
  if (column === "id" || column === "job" || column === "phrase")
    return `printf('%08x', :copy) || substr(${column}, 9)`;
  if (column === "site") return ":site";
  if (column === "tag")
    return "CASE WHEN tag LIKE 'INV-%' THEN 'INV-' || (CAST(substr(tag, 5) AS INTEGER) + CAST(:base AS INTEGER)) ELSE tag END";
  if (/^(started|said|received)_at$/.test(column))
    return `strftime('%Y-%m-%dT%H:%M:%S', substr(${column}, 1, 19), '-' || CAST(:minutes AS INTEGER) || ' minutes') || substr(${column}, 20)`;
  if (column === "day") return `date(day || ' ${edge}', '-' || CAST(:minutes AS INTEGER) || ' minutes')`;
  if (column === "state" && table === "review_items") return "CASE WHEN :open THEN state ELSE 'settled' END";
  if (column === "signed") return "CASE WHEN :open THEN 0 ELSE 1 END";
  const moved = "date(due_on, CAST(:days AS INTEGER) || ' days')";
  if (column === "due_on") return moved;
  if (column === "body" && table === "due") return `replace(body, due_on, ${moved})`;
  return column;
}
