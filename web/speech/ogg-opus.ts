/** Packets of Opus sound as an Ogg file: RFC 3533 (pages), RFC 7845 (Opus in them). One stream, mono. */

export interface OpusPacket {
  bytes: Uint8Array;
  /** how long it sounds, in microseconds */
  durationUs: number;
}

/** Opus counts time in samples of 48 kHz, whatever the sound was made with (RFC 7845, 4). */
const RATE = 48_000;
/** A page takes 255 segments of at most 255 bytes; a second's worth keeps them far below. */
const PACKETS_A_PAGE = 50;

/**
 * `preSkip`: samples at 48 kHz that the encoder put before the sound. `samples`: how many at 48 kHz the sound has; what
 * the last packet holds beyond them is not played. `rate`: of the sound before, for information. `serial`: of the
 * stream; any number does in a file of one stream.
 */
export function oggOpus(
  packets: readonly OpusPacket[],
  about: { preSkip: number; samples: number; rate: number; serial?: number },
): Uint8Array<ArrayBuffer> {
  const { preSkip, samples, rate, serial = 1 } = about;
  const pages: Uint8Array[] = [];
  const page = (flags: number, granule: number, bodies: readonly Uint8Array[]) =>
    pages.push(oggPage(flags, granule, serial, pages.length, bodies));
  page(FIRST, 0, [opusHead(preSkip, rate)]);
  page(0, 0, [opusTags()]);
  let played = 0;
  for (let from = 0; from < packets.length; from += PACKETS_A_PAGE) {
    const some = packets.slice(from, from + PACKETS_A_PAGE);
    for (const one of some) played += Math.round((one.durationUs * RATE) / 1_000_000);
    const last = from + PACKETS_A_PAGE >= packets.length;
    page(
      last ? LAST : 0,
      last ? Math.min(played, preSkip + samples) : played,
      some.map((one) => one.bytes),
    );
  }
  return joined(pages);
}

const FIRST = 2;
const LAST = 4;

function opusHead(preSkip: number, rate: number): Uint8Array {
  const head = new Uint8Array(19);
  const view = new DataView(head.buffer);
  head.set(letters("OpusHead"));
  head[8] = 1;
  head[9] = 1;
  view.setUint16(10, preSkip, true);
  view.setUint32(12, rate, true);
  return head;
}

/** The tags a stream must have, saying nothing of who, where or with what. */
function opusTags(): Uint8Array {
  const maker = letters("none");
  const tags = new Uint8Array(8 + 4 + maker.length + 4);
  tags.set(letters("OpusTags"));
  new DataView(tags.buffer).setUint32(8, maker.length, true);
  tags.set(maker, 12);
  return tags;
}

function oggPage(
  flags: number,
  granule: number,
  serial: number,
  number: number,
  bodies: readonly Uint8Array[],
): Uint8Array {
  const laces: number[] = [];
  for (const body of bodies) {
    let left = body.length;
    for (; left >= 255; left -= 255) laces.push(255);
    laces.push(left);
  }
  const page = joined([new Uint8Array(27), Uint8Array.from(laces), ...bodies]);
  const view = new DataView(page.buffer);
  page.set(letters("OggS"));
  page[5] = flags;
  view.setBigUint64(6, BigInt(granule), true);
  view.setUint32(14, serial, true);
  view.setUint32(18, number, true);
  page[26] = laces.length;
  view.setUint32(22, checksum(page), true);
  return page;
}

/** RFC 3533, 6: CRC with the polynomial 0x04c11db7, not mirrored, from 0. */
const TABLE = Uint32Array.from({ length: 256 }, (_, index) => {
  let crc = index << 24;
  for (let bit = 0; bit < 8; bit++) crc = crc & 0x8000_0000 ? (crc << 1) ^ 0x04c1_1db7 : crc << 1;
  return crc >>> 0;
});
function checksum(bytes: Uint8Array): number {
  let crc = 0;
  for (const byte of bytes) crc = ((crc << 8) ^ (TABLE[((crc >>> 24) ^ byte) & 0xff] ?? 0)) >>> 0;
  return crc;
}

const letters = (text: string) => Uint8Array.from(text, (letter) => letter.charCodeAt(0));

function joined(pieces: readonly Uint8Array[]): Uint8Array<ArrayBuffer> {
  const whole = new Uint8Array(pieces.reduce((sum, piece) => sum + piece.length, 0));
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}
