import { joined, letters, type Picture } from "./content.ts";

/** Kept of a WebP file (RFC 9649): picture, alpha and colour profile. EXIF, XMP, animation and the unknown are not. */
const NEEDED = new Set(["VP8 ", "VP8L", "VP8X", "ALPH", "ICCP"]);
/** Bits of VP8X that say what else is in the file. */
const EXIF = 0x08;
const XMP = 0x04;
const ANIMATION = 0x02;

/** WebP: RIFF chunks walked one by one. A moving picture is no photograph and counts as broken. */
export function readWebp(bytes: Uint8Array): Picture | "broken" | undefined {
  if (letters(bytes, 0) !== "RIFF" || letters(bytes, 8) !== "WEBP") return undefined;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const whole = 8 + view.getUint32(4, true);
  if (whole > bytes.length) return "broken";
  const kept: Uint8Array[] = [];
  let size: { width: number; height: number } | undefined;
  for (let at = 12; at + 8 <= whole; ) {
    const name = letters(bytes, at);
    const length = view.getUint32(at + 4, true);
    const end = at + 8 + length + (length % 2);
    if (at + 8 + length > whole) return "broken";
    const chunk = bytes.slice(at, Math.min(end, whole));
    if (name === "VP8X") {
      const flags = chunk[8] ?? 0;
      if (flags & ANIMATION) return "broken";
      chunk[8] = flags & ~(EXIF | XMP);
    }
    // the extended header comes first and counts; a still without one has its size in its own header
    size ??= sizeIn(name, chunk);
    if (NEEDED.has(name)) kept.push(chunk);
    at = end;
  }
  if (!size) return "broken";
  const body = joined(kept);
  const head = new Uint8Array(12);
  head.set(bytes.subarray(0, 12));
  new DataView(head.buffer).setUint32(4, 4 + body.length, true);
  return { type: "image/webp", ...size, bytes: joined([head, body]) };
}

function sizeIn(name: string, chunk: Uint8Array): { width: number; height: number } | undefined {
  if (chunk.length < 18) return undefined;
  const view = new DataView(chunk.buffer, chunk.byteOffset);
  const three = (at: number) => view.getUint16(at, true) | ((chunk[at + 2] ?? 0) << 16);
  if (name === "VP8X") return { width: 1 + three(12), height: 1 + three(15) };
  if (name === "VP8 ") return { width: view.getUint16(14, true) & 0x3fff, height: view.getUint16(16, true) & 0x3fff };
  if (name !== "VP8L") return undefined;
  const bits = view.getUint32(9, true);
  return { width: 1 + (bits & 0x3fff), height: 1 + ((bits >> 14) & 0x3fff) };
}
