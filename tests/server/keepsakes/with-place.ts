/**
 * Pictures and sounds as devices make them, built byte by byte: a photograph that tells where it was taken, and
 * whatever else is put in its place. 59.123 N is in every place that metadata can hide.
 */

const bytes = (text: string) => Uint8Array.from(text, (letter) => letter.charCodeAt(0));
export const joined = (...pieces: Uint8Array[]) => new Uint8Array(Buffer.concat(pieces));

function numbers(littleEndian: boolean, ...fields: [size: 1 | 2 | 4, value: number][]): Uint8Array {
  const out = new Uint8Array(fields.reduce((sum, [size]) => sum + size, 0));
  const view = new DataView(out.buffer);
  let at = 0;
  for (const [size, value] of fields) {
    if (size === 1) view.setUint8(at, value);
    if (size === 2) view.setUint16(at, value, littleEndian);
    if (size === 4) view.setUint32(at, value, littleEndian);
    at += size;
  }
  return out;
}

/** A TIFF block with a GPS directory: latitude 59 deg 7 min 23 s N, as EXIF 2.32, 4.6.6 has it; and the camera's name. */
export const TIFF_WITH_PLACE = joined(
  bytes("MM\0*"),
  numbers(false, [4, 8], [2, 2]),
  numbers(false, [2, 0x010f], [2, 2], [4, 8], [4, 86]),
  numbers(false, [2, 0x8825], [2, 4], [4, 1], [4, 38]),
  numbers(false, [4, 0]),
  numbers(false, [2, 2]),
  numbers(false, [2, 1], [2, 2], [4, 2]),
  bytes("N\0\0\0"),
  numbers(false, [2, 2], [2, 5], [4, 3], [4, 68]),
  numbers(false, [4, 0]),
  bytes("59.123"),
  bytes("\0\0"),
  numbers(false, [4, 59], [4, 1], [4, 7], [4, 1], [4, 23], [4, 1]),
);

const segment = (marker: number, body: Uint8Array) =>
  joined(numbers(false, [1, 0xff], [1, marker], [2, body.length + 2]), body);

/** The JPEG with EXIF, XMP, a maker's note, a comment and, behind its end, a film as some phones put there. */
export function jpegWithPlace(jpeg: Uint8Array): Uint8Array {
  return joined(
    jpeg.subarray(0, 2),
    segment(0xe1, joined(bytes("Exif\0\0"), TIFF_WITH_PLACE)),
    segment(0xe1, bytes('http://ns.example.org/xap/1.0/\0<x:xmpmeta exif:GPSLatitude="59.123N"/>')),
    segment(0xed, bytes("8BIM place: 59.123")),
    segment(0xfe, bytes("taken at 59.123 N")),
    jpeg.subarray(2),
    bytes("\0\0\0\x18ftypmp42 59.123 the second before, with sound"),
  );
}

/** CRC-32 of a PNG chunk (PNG, annex D). */
function crc32(of: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of of) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit++) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
  }
  return (crc ^ 0xffffffff) >>> 0;
}

const chunk = (name: string, body: Uint8Array) => {
  const named = joined(bytes(name), body);
  return joined(numbers(false, [4, body.length]), named, numbers(false, [4, crc32(named)]));
};

/** The PNG with EXIF and two kinds of text behind its header. */
export function pngWithPlace(png: Uint8Array): Uint8Array {
  const afterHeader = 8 + 25;
  return joined(
    png.subarray(0, afterHeader),
    chunk("eXIf", TIFF_WITH_PLACE),
    chunk("tEXt", bytes("Comment\0taken at 59.123 N")),
    chunk("iTXt", bytes("XML:com.example.xmp\0\0\0\0\x0059.123")),
    png.subarray(afterHeader),
    bytes("59.123"),
  );
}

/** The WebP (with its extended header) with EXIF and XMP behind the picture, and the header saying so. */
export function webpWithPlace(webp: Uint8Array): Uint8Array {
  const riff = (name: string, body: Uint8Array) =>
    joined(bytes(name), numbers(true, [4, body.length]), body, new Uint8Array(body.length % 2));
  const body = joined(webp.subarray(12), riff("EXIF", TIFF_WITH_PLACE), riff("XMP ", bytes("<x>59.123</x>")));
  const flags = 8 + 12 - 12;
  body[flags] = (body[flags] ?? 0) | 0x0c;
  return joined(bytes("RIFF"), numbers(true, [4, body.length + 4]), bytes("WEBP"), body);
}

/** A second of 16-bit mono sound at 16 kHz, with a word of the program that wrote it. */
export function wav(seconds = 1, note = ""): Uint8Array {
  const samples = Math.round(16_000 * seconds);
  const data = new Uint8Array(
    new Int16Array(Array.from({ length: samples }, (_, at) => 3000 * Math.sin(at / 9))).buffer,
  );
  const list = note ? joined(bytes("LIST"), numbers(true, [4, note.length]), bytes(note)) : new Uint8Array(0);
  const format = joined(
    bytes("fmt "),
    numbers(true, [4, 16], [2, 1], [2, 1], [4, 16_000], [4, 32_000], [2, 2], [2, 16]),
  );
  const body = joined(bytes("WAVE"), format, list, bytes("data"), numbers(true, [4, data.length]), data);
  return joined(bytes("RIFF"), numbers(true, [4, body.length]), body);
}
