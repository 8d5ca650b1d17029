/** A recording as samples of one channel within ±1. */
export interface Recording {
  samples: Float32Array;
  /** samples a second */
  rate: number;
}

export type Decoding = { ok: true; value: Recording } | { ok: false; problem: string };

const FORMATS = { pcm: 1, float: 3, extensible: 0xfffe } as const;

/**
 * Reads a RIFF/WAVE file: whole numbers of 8, 16, 24 or 32 bits, or floats of 32; several channels become their mean.
 * A file cut off in the middle gives what is there. Source: Multimedia Programming Interface and Data Specifications 1.0,
 * 1991, "WAVE"; the extensible header from memory.
 */
export function decodeWave(bytes: Uint8Array): Decoding {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const name = (at: number) => String.fromCharCode(...bytes.subarray(at, at + 4));
  if (bytes.length < 12 || name(0) !== "RIFF" || name(8) !== "WAVE")
    return { ok: false, problem: "this is no WAV file: record it as WAV (PCM) and try again" };
  let format: { code: number; channels: number; rate: number; bits: number } | undefined;
  for (let at = 12; at + 8 <= bytes.length; ) {
    const length = view.getUint32(at + 4, true);
    const start = at + 8;
    if (name(at) === "fmt " && start + 16 <= bytes.length) {
      const told = view.getUint16(start, true);
      const code =
        told === FORMATS.extensible && length >= 26 && start + 26 <= bytes.length
          ? view.getUint16(start + 24, true)
          : told;
      format = {
        code,
        channels: view.getUint16(start + 2, true),
        rate: view.getUint32(start + 4, true),
        bits: view.getUint16(start + 14, true),
      };
    } else if (name(at) === "data") {
      if (!format) return { ok: false, problem: "this WAV file does not say how its sound is written" };
      return samplesOf(view, start, Math.min(length, bytes.length - start), format);
    }
    at = start + length + (length % 2);
  }
  return { ok: false, problem: "this WAV file has no sound in it" };
}

function samplesOf(
  view: DataView,
  start: number,
  length: number,
  { code, channels, rate, bits }: { code: number; channels: number; rate: number; bits: number },
): Decoding {
  const read = readerOf(view, code, bits);
  if (!read || channels < 1)
    return {
      ok: false,
      problem: `this WAV file is written in a way not read here (format ${code}, ${bits} bits): use PCM of 16 bits`,
    };
  if (rate < 4_000 || rate > 400_000)
    return { ok: false, problem: `this WAV file claims ${rate} samples a second: record it at 8,000 to 96,000` };
  const width = bits / 8;
  const count = Math.floor(length / (width * channels));
  const samples = new Float32Array(count);
  for (let i = 0; i < count; i++) {
    let sum = 0;
    for (let channel = 0; channel < channels; channel++) sum += read(start + (i * channels + channel) * width);
    const mean = sum / channels;
    samples[i] = Number.isFinite(mean) ? mean : 0;
  }
  return { ok: true, value: { samples, rate } };
}

function readerOf(view: DataView, code: number, bits: number): ((at: number) => number) | undefined {
  if (code === FORMATS.float && bits === 32) return (at) => view.getFloat32(at, true);
  if (code !== FORMATS.pcm) return undefined;
  if (bits === 8) return (at) => (view.getUint8(at) - 128) / 128;
  if (bits === 16) return (at) => view.getInt16(at, true) / 32_768;
  if (bits === 24) return (at) => ((view.getInt8(at + 2) << 16) | view.getUint16(at, true)) / 8_388_608;
  if (bits === 32) return (at) => view.getInt32(at, true) / 2_147_483_648;
  return undefined;
}
