import { createHash } from "node:crypto";
import { mkdir, open, readdir, readFile, rename, rm, stat } from "node:fs/promises";
import { join } from "node:path";
import { StoreFull } from "../db/failures.ts";

/**
 * The bytes of clips and photographs as files DATA_DIR/kept/<aa>/<sha256>, and not in the database: that stays small
 * enough to be checked at every start and copied in a moment, and no blob holds up the one writer. The row comes after
 * its file and goes before it, so a backup that takes the database first and this folder second has every file that
 * its rows name; and each file can be checked against its own name.
 */
export interface KeptFiles {
  /** puts the bytes on disk, then does `then`; nobody removes the file meanwhile */
  keep<T>(bytes: Uint8Array, then: () => Promise<T>): Promise<T>;
  /** the bytes; undefined where there is no such file */
  read(sha256: string): Promise<Buffer | undefined>;
  /** removes a file, unless `wanted` says at the last moment that a row names it */
  drop(sha256: string, wanted: () => Promise<boolean>): Promise<void>;
  /** removes what a crash left half written before `ms` (since 1970) */
  clearHalves(ms: number): Promise<void>;
}

/** The name of a file: its content's SHA-256 in hex. */
export const hashOf = (bytes: Uint8Array): string => createHash("sha256").update(bytes).digest("hex");

/** Where the files lie inside DATA_DIR. */
export const keptFolder = (dataDir: string) => join(dataDir, "kept");

export function keptFiles(folder: string): KeptFiles {
  const turns = new Map<string, Promise<unknown>>();
  const pathOf = (sha256: string) => {
    // names come from rows and from our own hashing; nothing else may ever become a path
    if (!/^[0-9a-f]{64}$/.test(sha256)) throw new Error("this is no name of a kept file");
    return join(folder, sha256.slice(0, 2), sha256);
  };

  /** One at a time for each content: whoever keeps it and whoever drops it must not cross. */
  async function inTurn<T>(sha256: string, work: () => Promise<T>): Promise<T> {
    const before = turns.get(sha256) ?? Promise.resolve();
    const mine = before.then(work, work);
    turns.set(sha256, mine);
    try {
      return await mine;
    } finally {
      if (turns.get(sha256) === mine) turns.delete(sha256);
    }
  }

  return {
    async keep(bytes, then) {
      const sha256 = hashOf(bytes);
      return inTurn(sha256, async () => {
        await writeWhole(pathOf(sha256), bytes);
        return then();
      });
    },
    async read(sha256) {
      try {
        return await readFile(pathOf(sha256));
      } catch (cause) {
        if (isMissing(cause)) return undefined;
        throw cause;
      }
    },
    async drop(sha256, wanted) {
      await inTurn(sha256, async () => {
        if (!(await wanted())) await rm(pathOf(sha256), { force: true });
      });
    },
    async clearHalves(ms) {
      for (const aa of await namesIn(folder)) {
        for (const name of await namesIn(join(folder, aa))) {
          const path = join(folder, aa, name);
          if (name.endsWith(HALF) && ((await sizeAndTime(path))?.mtimeMs ?? ms) < ms) await rm(path, { force: true });
        }
      }
    },
  };
}

const HALF = ".half";
let written = 0;

/** All of it or nothing: beside its place first, onto the disk, then under its name. */
async function writeWhole(path: string, bytes: Uint8Array): Promise<void> {
  if ((await sizeAndTime(path))?.size === bytes.length) return;
  const home = join(path, "..");
  await mkdir(home, { recursive: true, mode: 0o700 });
  const half = `${path}.${process.pid}-${written++}${HALF}`;
  try {
    const file = await open(half, "wx", 0o600);
    try {
      await file.writeFile(bytes);
      await file.sync();
    } finally {
      await file.close();
    }
    await rename(half, path);
  } catch (cause) {
    await rm(half, { force: true });
    if (/^(ENOSPC|EDQUOT)$/.test(codeOf(cause))) throw new StoreFull("no room for a kept file", { cause });
    throw cause;
  }
  await syncFolder(home);
}

/** A name must outlive a power cut too; some systems cannot sync a folder, and there the rename is all there is. */
export async function syncFolder(path: string): Promise<void> {
  const folder = await open(path, "r");
  try {
    await folder.sync();
  } catch (cause) {
    if (!/^(EISDIR|EPERM|EINVAL|ENOTSUP)$/.test(codeOf(cause))) throw cause;
  } finally {
    await folder.close();
  }
}

async function sizeAndTime(path: string): Promise<{ size: number; mtimeMs: number } | undefined> {
  try {
    return await stat(path);
  } catch (cause) {
    if (isMissing(cause)) return undefined;
    throw cause;
  }
}

async function namesIn(folder: string): Promise<string[]> {
  try {
    return (await readdir(folder)).sort();
  } catch (cause) {
    if (isMissing(cause) || codeOf(cause) === "ENOTDIR") return [];
    throw cause;
  }
}

const codeOf = (cause: unknown) => String((cause as { code?: unknown }).code);
const isMissing = (cause: unknown) => codeOf(cause) === "ENOENT";
