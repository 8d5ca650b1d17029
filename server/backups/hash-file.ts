import { createHash } from "node:crypto";
import { createReadStream } from "node:fs";

/** A file's SHA-256 in hex and its size, however large it is. */
export async function hashFile(path: string): Promise<{ sha256: string; bytes: number }> {
  const hash = createHash("sha256");
  let bytes = 0;
  for await (const part of createReadStream(path)) {
    hash.update(part as Buffer);
    bytes += (part as Buffer).length;
  }
  return { sha256: hash.digest("hex"), bytes };
}
