/**
 * Writes DER (ITU-T X.690), as much of it as a certificate needs: a tag, a length, the bytes. It only writes, and what
 * it writes wrongly no TLS client takes; reading foreign DER, where the danger lies, is left to the platform.
 */
export type Der = Buffer;

function tagged(tag: number, ...parts: readonly Uint8Array[]): Der {
  const body = Buffer.concat(parts);
  if (body.length < 0x80) return Buffer.concat([Buffer.from([tag, body.length]), body]);
  const length = bytesOf(BigInt(body.length));
  return Buffer.concat([Buffer.from([tag, 0x80 | length.length]), length, body]);
}

function bytesOf(number: bigint): Buffer {
  const hex = number.toString(16);
  return Buffer.from(hex.length % 2 ? `0${hex}` : hex, "hex");
}

export const sequence = (...parts: readonly Der[]): Der => tagged(0x30, ...parts);
export const set = (...parts: readonly Der[]): Der => tagged(0x31, ...parts);
export const octets = (bytes: Uint8Array): Der => tagged(0x04, bytes);
export const text = (words: string): Der => tagged(0x0c, Buffer.from(words, "utf8"));
export const yes = (): Der => tagged(0x01, Buffer.from([0xff]));

/** A whole number that is not negative: a first bit that is set would make it so. */
export function integer(bytes: Uint8Array): Der {
  let from = 0;
  while (from < bytes.length - 1 && bytes[from] === 0) from++;
  const short = bytes.subarray(from);
  return (short[0] ?? 0) & 0x80 ? tagged(0x02, Buffer.from([0]), short) : tagged(0x02, short);
}

/** Bits, of which the last `unused` are none. */
export const bits = (bytes: Uint8Array, unused = 0): Der => tagged(0x03, Buffer.from([unused]), bytes);

/** "1.2.840.10045.4.3.2" */
export function objectId(dotted: string): Der {
  const [first = 0, second = 0, ...rest] = dotted.split(".").map(Number);
  const base128 = (arc: number): number[] => {
    const groups = [arc & 0x7f];
    for (let left = Math.floor(arc / 128); left > 0; left = Math.floor(left / 128))
      groups.unshift((left & 0x7f) | 0x80);
    return groups;
  };
  return tagged(0x06, Buffer.from([first * 40 + second, ...rest].flatMap(base128)));
}

/** RFC 5280: years to 2049 have two digits, later ones four. */
export function moment(at: Date): Der {
  const digits = at.toISOString().replaceAll(/[-:T]/g, "").slice(0, 14);
  return at.getUTCFullYear() < 2050
    ? tagged(0x17, Buffer.from(`${digits.slice(2)}Z`))
    : tagged(0x18, Buffer.from(`${digits}Z`));
}

/** [n] around a whole value, or [n] in place of a value's own tag. */
export const explicit = (n: number, inner: Der): Der => tagged(0xa0 | n, inner);
export const implicit = (n: number, bytes: Uint8Array): Der => tagged(0x80 | n, bytes);
