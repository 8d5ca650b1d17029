import { readFile } from "node:fs/promises";
import { join } from "node:path";
import type { Client } from "@libsql/client";
import { z } from "zod";

/** What a backup says of itself, in the folder beside what it holds. Written last: a backup cut short has none. */
export const MANIFEST = "backup.json";
export const DATABASE = "handsfull.db";

export const manifestSchema = z.object({
  handsfull: z.string(),
  /** the form of this file */
  backup: z.literal(1),
  at: z.string(),
  /** the shape of the database */
  schema: z.string(),
  database: z.object({ sha256: z.string().regex(/^[0-9a-f]{64}$/), bytes: z.number().int().nonnegative() }),
  /** rows of each table */
  rows: z.record(z.string(), z.number().int().nonnegative()),
  /** clips and photographs, and those that rows name and the log itself had lost when it was made */
  files: z.object({ count: z.number().int(), bytes: z.number().int(), lost: z.array(z.string()) }),
});
export type Manifest = z.infer<typeof manifestSchema>;

/** Why there is no backup or none can be put back, in words that say what to do. */
export class BackupRefused extends Error {}

export async function readManifest(folder: string): Promise<Manifest> {
  let text: string;
  try {
    text = await readFile(join(folder, MANIFEST), "utf8");
  } catch (cause) {
    const code = (cause as NodeJS.ErrnoException).code;
    throw new BackupRefused(
      code === "ENOENT"
        ? `${folder} is no whole backup: it has no ${MANIFEST}, which is written last. Take another one.`
        : `${join(folder, MANIFEST)} cannot be read (${code})`,
      { cause },
    );
  }
  const read = manifestSchema.safeParse(parsed(text));
  if (!read.success) throw new BackupRefused(`${join(folder, MANIFEST)} is not what a backup wrote. Take another one.`);
  return read.data;
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    // refused below in the same words as any other shape
    return undefined;
  }
}

/** How many rows each table of the database has, whatever its version. */
export async function countRows(client: Client): Promise<Record<string, number>> {
  const named = await client.execute(
    "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite\\_%' ESCAPE '\\' ORDER BY name",
  );
  const rows: Record<string, number> = {};
  for (const { name } of named.rows) {
    const counted = await client.execute(`SELECT count(*) AS n FROM "${String(name).replaceAll('"', '""')}"`);
    rows[String(name)] = Number(counted.rows[0]?.n);
  }
  return rows;
}

/** The kept files that its rows name; none where it is older than clips and photographs. */
export async function namedFiles(client: Client): Promise<string[]> {
  const known = await client.execute("SELECT 1 FROM sqlite_master WHERE name = 'keepsakes'");
  if (known.rows.length === 0) return [];
  const rows = await client.execute("SELECT DISTINCT sha256 FROM keepsakes WHERE removed_at IS NULL ORDER BY sha256");
  return rows.rows.map((row) => String(row.sha256));
}

/** What it holds, for a person. */
export function toldOf({ schema, rows, files, database }: Manifest): string {
  const of = (table: string) => (rows[table] ?? 0).toLocaleString("en-US");
  return [
    `  ${of("jobs")} jobs, ${of("phrases")} phrases, ${of("corrections")} corrections, ${of("signatures")} signatures`,
    `  ${of("people")} people, ${of("devices")} devices, ${of("audit")} acts in the audit trail`,
    `  ${files.count.toLocaleString("en-US")} clips and photographs (${megabytes(files.bytes)}); database ${megabytes(database.bytes)}, shape ${schema}`,
  ].join("\n");
}

const megabytes = (bytes: number) => `${(bytes / 1_000_000).toFixed(1)} MB`;
