import { joined, letters, type Picture } from "./content.ts";

/**
 * JPEG, ISO/IEC 10918-1, annex B: marker segments walked one by one. Kept are those that a decoder needs; every other
 * application segment (EXIF with place and camera, XMP, maker's notes, a second picture) and comment is left out, and
 * so is whatever stands behind the end of the picture.
 */
export function readJpeg(bytes: Uint8Array): Picture | "broken" | undefined {
  if (bytes[0] !== 0xff || bytes[1] !== SOI || bytes[2] !== 0xff) return undefined;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const kept: Uint8Array[] = [bytes.subarray(0, 2)];
  let size: { width: number; height: number } | undefined;
  let scans = 0;
  for (let at = 2; at + 1 < bytes.length; ) {
    if (bytes[at] !== 0xff) return "broken";
    const marker = bytes[at + 1] ?? 0;
    // any number of fill bytes may stand before a marker
    if (marker === 0xff) {
      at++;
      continue;
    }
    if (marker === EOI) {
      kept.push(bytes.subarray(at, at + 2));
      return size && scans ? { type: "image/jpeg", ...size, bytes: joined(kept) } : "broken";
    }
    if (isBare(marker)) return "broken";
    if (at + 4 > bytes.length) return "broken";
    const length = view.getUint16(at + 2);
    let end = at + 2 + length;
    if (length < 2 || end > bytes.length) return "broken";
    if (isFrame(marker)) {
      if (length < 8) return "broken";
      size = { height: view.getUint16(at + 5), width: view.getUint16(at + 7) };
    }
    if (marker === SOS) {
      scans++;
      end = endOfScan(bytes, end);
    }
    if (isNeeded(marker, bytes, at)) kept.push(bytes.subarray(at, end));
    at = end;
  }
  return "broken";
}

const SOI = 0xd8;
const EOI = 0xd9;
const SOS = 0xda;
const COM = 0xfe;

/** Restart markers and the one for arithmetic coding have no length. */
const isBare = (marker: number) => (marker >= 0xd0 && marker <= SOI) || marker <= 0x01;
/** SOF0 to SOF15 without the tables DHT, JPG and DAC, which lie between them. */
const isFrame = (marker: number) => marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);

function isNeeded(marker: number, bytes: Uint8Array, at: number): boolean {
  if (marker === COM) return false;
  if (marker < 0xe0 || marker > 0xef) return true;
  // the colour transform of APP14 and the profile of APP2 change how it looks; JFIF (APP0) gives the density, while
  // its extension JFXX holds a thumbnail
  if (marker === 0xe0) return letters(bytes, at + 4) === "JFIF" && withoutThumbnail(bytes, at);
  // the one that gives the colour transform has twelve bytes, and none to spare for anything else
  if (marker === 0xee) return bytes[at + 2] === 0 && bytes[at + 3] === 14;
  return marker === 0xe2 && letters(bytes, at + 4, 11) === "ICC_PROFILE";
}

/** JFIF may carry a small picture of its own, its size in the two bytes at 12: then the segment is left out. */
const withoutThumbnail = (bytes: Uint8Array, at: number) => bytes[at + 16] === 0 || bytes[at + 17] === 0;

/** Coded data runs to the next marker that is neither a stuffed zero nor a restart. */
function endOfScan(bytes: Uint8Array, from: number): number {
  for (let at = from; at + 1 < bytes.length; at++) {
    if (bytes[at] !== 0xff) continue;
    const next = bytes[at + 1] ?? 0;
    if (next !== 0 && next !== 0xff && !(next >= 0xd0 && next <= 0xd7)) return at;
  }
  return bytes.length;
}
