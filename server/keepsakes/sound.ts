import { joined, letters, type Sound } from "./content.ts";

/** WAV (RIFF/WAVE): the format and the samples are kept, and nothing of what programs write beside them. */
export function readWav(bytes: Uint8Array): Sound | "broken" | undefined {
  if (letters(bytes, 0) !== "RIFF" || letters(bytes, 8) !== "WAVE") return undefined;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let format: Uint8Array | undefined;
  for (let at = 12; at + 8 <= bytes.length; ) {
    const name = letters(bytes, at);
    const length = view.getUint32(at + 4, true);
    if (at + 8 + length > bytes.length) return "broken";
    const chunk = bytes.subarray(at, at + 8 + length);
    if (name === "fmt " && length >= 16) format = chunk;
    if (name === "data") {
      if (!format || length === 0) return "broken";
      // an odd chunk is padded to an even length
      const body = joined([format, chunk, new Uint8Array(length % 2)]);
      const head = new Uint8Array(12);
      head.set(bytes.subarray(0, 12));
      new DataView(head.buffer).setUint32(4, 4 + body.length, true);
      return { type: "audio/wav", bytes: joined([head, body]) };
    }
    at += 8 + length + (length % 2);
  }
  return "broken";
}

/** Ogg (RFC 3533) with Opus (RFC 7845): the first page must open an Opus stream and there must be sound behind it. */
export function readOgg(bytes: Uint8Array): Sound | "broken" | undefined {
  if (letters(bytes, 0) !== "OggS") return undefined;
  const segments = bytes[26] ?? 0;
  if (letters(bytes, 27 + segments, 8) !== "OpusHead") return "broken";
  let pages = 0;
  let at = 0;
  while (at < bytes.length) {
    if (letters(bytes, at) !== "OggS" || at + 27 > bytes.length) return "broken";
    const count = bytes[at + 26] ?? 0;
    let length = 27 + count;
    for (let lace = 0; lace < count; lace++) length += bytes[at + 27 + lace] ?? 0;
    at += length;
    pages++;
  }
  return at === bytes.length && pages > 2 ? { type: "audio/ogg", bytes } : "broken";
}

/** WebM: an EBML file (RFC 8794) whose head names the type "webm", with an audio track and no picture. */
export function readWebm(bytes: Uint8Array): Sound | "broken" | undefined {
  if (bytes[0] !== 0x1a || bytes[1] !== 0x45 || bytes[2] !== 0xdf || bytes[3] !== 0xa3) return undefined;
  const head = letters(bytes, 0, Math.min(bytes.length, 4096));
  if (!head.includes("\x42\x82\x84webm")) return "broken";
  if (/V_[A-Z]/.test(head)) return "broken";
  return /A_(OPUS|VORBIS)/.test(head) && bytes.length > 100 ? { type: "audio/webm", bytes } : "broken";
}
