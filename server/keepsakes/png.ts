import { joined, letters, type Picture } from "./content.ts";

const SIGNATURE = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];
/** What a decoder needs to draw it (PNG, third edition, 11.2 and 11.3); text, times and EXIF are not among them. */
const NEEDED = new Set(["IHDR", "PLTE", "IDAT", "IEND", "tRNS", "cHRM", "gAMA", "iCCP", "sBIT", "sRGB", "cICP"]);

/** PNG: chunks walked one by one, and only those kept that draw the picture; what follows the end is left out. */
export function readPng(bytes: Uint8Array): Picture | "broken" | undefined {
  if (!SIGNATURE.every((byte, at) => bytes[at] === byte)) return undefined;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes.length < 33 || letters(bytes, 12) !== "IHDR") return "broken";
  const width = view.getUint32(16);
  const height = view.getUint32(20);
  const kept: Uint8Array[] = [bytes.subarray(0, 8)];
  for (let at = 8; at + 12 <= bytes.length; ) {
    const end = at + 12 + view.getUint32(at);
    if (end > bytes.length) return "broken";
    const name = letters(bytes, at + 4);
    if (NEEDED.has(name)) kept.push(bytes.subarray(at, end));
    if (name === "IEND") return { type: "image/png", width, height, bytes: joined(kept) };
    at = end;
  }
  return "broken";
}
