import { mkdir, open, rename } from "node:fs/promises";
import { join } from "node:path";
import type { VersionKey } from "./outbox-store.ts";

/** Writes a message where a mail program opens it; the same version written twice is one file. Answers its path. */
export async function putInFolder(
  folder: string,
  letter: VersionKey & { messageId: string; message: Buffer },
): Promise<string> {
  await mkdir(folder, { recursive: true });
  const path = join(folder, fileName(letter));
  const half = `${path}.part`;
  const file = await open(half, "w");
  try {
    await file.writeFile(letter.message);
    await file.sync();
  } finally {
    await file.close();
  }
  await rename(half, path);
  return path;
}

/** A site may be called anything: its readable letters, then what its Message-ID tells it apart by. */
function fileName({ site, day, version, messageId }: VersionKey & { messageId: string }): string {
  const readable = site
    .replace(/[^\p{L}\p{N}]+/gu, "-")
    .replace(/^-+|-+$/g, "")
    .slice(0, 40);
  const apart = /report\.([0-9a-f]{8})/.exec(messageId)?.[1] ?? "";
  return [readable, apart, day, `v${version}`].filter(Boolean).join("-").concat(".eml");
}
