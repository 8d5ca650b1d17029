import { existsSync } from "node:fs";
import { chmod, mkdir, open, readFile, rename, rm, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import type { Client } from "@libsql/client";
import { checkFile, connectFile, lookAtFile, only } from "../db/database-file.ts";
import { refuseNewer, shapeName } from "../db/shape.ts";
import { hashOf, type KeptFiles, keptFiles, keptFolder, syncFolder } from "../keepsakes/files.ts";
import { now } from "../moments.ts";
import { ROOT } from "../places.ts";
import { hashFile } from "./hash-file.ts";
import { BackupRefused, countRows, DATABASE, MANIFEST, type Manifest, namedFiles } from "./manifest.ts";

/**
 * Copies database and kept files into a new folder, as they stood at one moment, whoever writes meanwhile. The database
 * goes first: a row comes after its file, so every file that a copied row names is there. It is made under another name
 * and gets its own when all of it is on the disk: a backup cut short is never taken for one.
 */
export async function takeBackup(path: string, kept: KeptFiles, folder: string): Promise<Manifest> {
  if (existsSync(folder)) throw new BackupRefused(`${folder} is there already, and is not overwritten: name another`);
  if (!existsSync(path)) throw new BackupRefused(`there is no database ${path} yet: nothing to copy`);
  lookAtFile(path);
  const half = `${folder}.half-${process.pid}`;
  await mkdir(dirname(folder), { recursive: true });
  await mkdir(half, { mode: 0o700 });
  try {
    const client = connectFile(path);
    try {
      await checkFile(client, path);
      await refuseNewer(client, path);
      const manifest = await copyAll(client, kept, half);
      if (existsSync(folder)) throw new BackupRefused(`${folder} came to be meanwhile, and is not overwritten`);
      await rename(half, folder);
      await syncFolder(dirname(folder));
      return manifest;
    } finally {
      client.close();
    }
  } catch (cause) {
    await rm(half, { recursive: true, force: true });
    if (/^(ENOSPC|EDQUOT)$/.test(String((cause as NodeJS.ErrnoException).code)) || /SQLITE_FULL/.test(String(cause)))
      throw new BackupRefused(`there is no room for a copy at ${folder}: nothing was left there`, { cause });
    throw cause;
  }
}

async function copyAll(client: Client, kept: KeptFiles, half: string): Promise<Manifest> {
  const database = join(half, DATABASE);
  const at = now().utc;
  await client.execute({ sql: "VACUUM INTO ?", args: [database] });
  await chmod(database, 0o600);
  await toDisk(database);
  const copy = connectFile(database);
  try {
    const verdict = String(await only(copy, "PRAGMA integrity_check(1)"));
    if (verdict !== "ok") throw new BackupRefused(`the copy of the database is not whole (${verdict})`);
    const manifest: Manifest = {
      handsfull: JSON.parse(await readFile(join(ROOT, "package.json"), "utf8")).version,
      backup: 1,
      at,
      schema: (await shapeName(copy)) ?? "none",
      database: await hashFile(database),
      rows: await countRows(copy),
      files: await copyFiles(client, kept, keptFiles(keptFolder(half)), await namedFiles(copy)),
    };
    const file = join(half, MANIFEST);
    await writeFile(file, `${JSON.stringify(manifest, null, 2)}\n`, { mode: 0o600, flag: "wx" });
    await toDisk(file);
    await syncFolder(half);
    return manifest;
  } finally {
    copy.close();
  }
}

async function copyFiles(client: Client, from: KeptFiles, to: KeptFiles, named: string[]): Promise<Manifest["files"]> {
  const files: Manifest["files"] = { count: 0, bytes: 0, lost: [] };
  for (const sha256 of named) {
    const bytes = await from.read(sha256);
    if (bytes && hashOf(bytes) === sha256) {
      await to.keep(bytes, async () => undefined);
      files.count++;
      files.bytes += bytes.length;
    } else files.lost.push(sha256);
  }
  if (files.lost.length === 0) return files;
  // sound grows too old while it is being copied: its row says so by now
  const still = new Set(await namedFiles(client));
  return { ...files, lost: files.lost.filter((sha256) => still.has(sha256)) };
}

async function toDisk(path: string): Promise<void> {
  const file = await open(path, "r+");
  try {
    await file.sync();
  } finally {
    await file.close();
  }
}
