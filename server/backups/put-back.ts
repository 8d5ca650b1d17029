import { constants, existsSync } from "node:fs";
import { chmod, copyFile, mkdir, open, readdir, rename, rm } from "node:fs/promises";
import { basename, dirname, join } from "node:path";
import { verifyTrail } from "../audit/read.ts";
import { checkFile, connectFile, only } from "../db/database-file.ts";
import { openStore } from "../db/open.ts";
import { refuseNewer, shapeName } from "../db/shape.ts";
import { hashOf, keptFiles, keptFolder, syncFolder } from "../keepsakes/files.ts";
import { hashFile } from "./hash-file.ts";
import { BackupRefused, countRows, DATABASE, type Manifest, namedFiles, readManifest } from "./manifest.ts";

/** What may lie in a folder of data that holds no log: certificates are made before the first start. */
const NO_LOG = new Set(["tls"]);

/**
 * Puts a backup back where there is no log, and proves first that it is one: its bytes are those that were written, the
 * database is whole, of a known shape, with the rows counted then, the audit trail unbroken, every file what its name
 * says. The database gets its name last: what was cut short is no log.
 */
export async function putBack(folder: string, to: { path: string; dataDir: string }): Promise<Manifest> {
  const manifest = await readManifest(folder);
  await refuseFilled(to);
  const kept = keptFolder(to.dataDir);
  const half = `${to.path}.half`;
  await mkdir(dirname(to.path), { recursive: true });
  await mkdir(to.dataDir, { recursive: true });
  try {
    await copyDatabase(join(folder, DATABASE), half, manifest);
    await proveDatabase(half, manifest);
    await copyFiles(folder, kept, half, manifest);
    await bringToNow(half);
    await rename(half, to.path);
    await syncFolder(dirname(to.path));
    return manifest;
  } catch (cause) {
    for (const end of ["", "-wal", "-shm"]) await rm(half + end, { force: true });
    await rm(kept, { recursive: true, force: true });
    throw cause;
  }
}

async function refuseFilled({ path, dataDir }: { path: string; dataDir: string }): Promise<void> {
  const names = existsSync(dataDir) ? (await readdir(dataDir)).filter((name) => !NO_LOG.has(name)) : [];
  const beside = existsSync(dirname(path)) ? await readdir(dirname(path)) : [];
  const database = beside.find((name) => name.startsWith(basename(path)));
  const found = names[0] ?? database;
  if (found === undefined) return;
  throw new BackupRefused(
    `${dataDir} is not empty (${found} is there): set DATA_DIR to a new folder, or move what is there away. Nothing was changed.`,
  );
}

async function copyDatabase(from: string, to: string, { database }: Manifest): Promise<void> {
  if (!existsSync(from)) throw new BackupRefused(`the backup has no ${DATABASE}: use another one`);
  await copyFile(from, to, constants.COPYFILE_EXCL);
  await chmod(to, 0o600);
  const file = await open(to, "r+");
  try {
    await file.sync();
  } finally {
    await file.close();
  }
  const found = await hashFile(to);
  if (found.sha256 !== database.sha256)
    throw new BackupRefused(
      `${from} is not as it was written (${found.bytes} bytes, ${database.bytes} then): it was damaged or changed. Use another backup.`,
    );
}

async function proveDatabase(path: string, manifest: Manifest): Promise<void> {
  const client = connectFile(path);
  try {
    await checkFile(client, path);
    await refuseNewer(client, path);
    const verdict = String(await only(client, "PRAGMA integrity_check(1)"));
    if (verdict !== "ok") throw new BackupRefused(`the database in it is damaged (${verdict}). Use another backup.`);
    const schema = await shapeName(client);
    if (schema !== manifest.schema)
      throw new BackupRefused(`the database in it has the shape ${schema}, and says ${manifest.schema}`);
    const rows = await countRows(client);
    const tables = new Set([...Object.keys(rows), ...Object.keys(manifest.rows)]);
    for (const table of tables)
      if (rows[table] !== manifest.rows[table])
        throw new BackupRefused(
          `${table} has ${rows[table] ?? "no"} rows, and had ${manifest.rows[table] ?? "none"} when it was copied`,
        );
  } finally {
    client.close();
  }
}

async function copyFiles(folder: string, to: string, database: string, { files }: Manifest): Promise<void> {
  const from = keptFiles(keptFolder(folder));
  const target = keptFiles(to);
  const lost = new Set(files.lost);
  const client = connectFile(database);
  let count = 0;
  try {
    for (const sha256 of await namedFiles(client)) {
      const bytes = await from.read(sha256);
      if (bytes && hashOf(bytes) !== sha256)
        throw new BackupRefused(`the kept file ${sha256} in it is not as it was written. Use another backup.`);
      if (bytes) {
        await target.keep(bytes, async () => undefined);
        count++;
      }
    }
  } finally {
    client.close();
  }
  // fewer than the rows name where sound grew too old while it was copied, never fewer than were copied
  if (count < files.count)
    throw new BackupRefused(
      `${files.count - count} clips or photographs are gone from it (${lost.size} were lost before). Use another backup.`,
    );
}

/** To this version's shape, as starting would; what people did must still hang together. */
async function bringToNow(path: string): Promise<void> {
  const store = await openStore(`file:${path}`);
  try {
    const trail = await verifyTrail(store);
    if (!trail.ok) throw new BackupRefused(`its audit trail is broken at record ${trail.n}: ${trail.problem}`);
  } finally {
    await store.close();
  }
  for (const end of ["-wal", "-shm"]) await rm(path + end, { force: true });
}
