import { createHash, randomBytes, timingSafeEqual } from "node:crypto";
import { hash, verify } from "@node-rs/argon2";

/** Tokens, codes and passwords: how they are made, and the only form in which they are stored. */

/** 32 random bytes. The letters in front say what it is, so that one found lying about can be told and revoked. */
export function newToken(kind: "device" | "session" | "code"): string {
  return `${{ device: "hfd", session: "hfs", code: "hfc" }[kind]}_${randomBytes(32).toString("base64url")}`;
}

/** SHA-256 as hex: enough for 256 bits of chance, which cannot be guessed from it however fast it is. */
export function sha256(text: string): string {
  return createHash("sha256").update(text).digest("hex");
}

/**
 * Whether a stored hash is that of the token. Rows are found by an index over hashes, whose timing tells at most
 * something of a hash and nothing of the token; the match itself is compared in constant time.
 */
export function isHashOf(stored: string, token: string): boolean {
  return timingSafeEqual(Buffer.from(stored, "hex"), Buffer.from(sha256(token), "hex"));
}

/** Argon2id with 19 MiB and 2 passes: the smallest of the settings recommended by the OWASP password storage sheet. */
const ARGON = { memoryCost: 19_456, timeCost: 2, parallelism: 1 };

export const hashPassword = (password: string): Promise<string> => hash(password.normalize("NFKC"), ARGON);

let nobodys: Promise<string> | undefined;

/** Whether it is the password. Without a stored one it takes as long and says no: a name's absence is not told by time. */
export async function isPassword(stored: string | null | undefined, password: string): Promise<boolean> {
  nobodys ??= hashPassword(newToken("code"));
  const right = await verify(stored ?? (await nobodys), password.normalize("NFKC"));
  return right && Boolean(stored);
}
