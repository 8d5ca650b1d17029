import { MOST_CLIP_BYTES } from "../../core/index.ts";
import { type OpusPacket, oggOpus } from "./ogg-opus.ts";
import { wavOf } from "./wav.ts";

/** The sound of one phrase as it came: mono samples, from -1 to 1 or of 16 bit, and how many a second. */
export interface Sound {
  samples: Float32Array | Int16Array;
  rate: number;
}

/** How whatever hears hands over the sound of each phrase: once, before the phrase's final result. */
export type OnClip = (samples: Float32Array | Int16Array, rate: number) => void;

/** A clip as it is kept and sent. */
export interface Encoded {
  bytes: ArrayBuffer;
  type: "audio/ogg" | "audio/wav";
  seconds: number;
}

/** Speech has nothing above 8 kHz that its words need. */
const RATE = 16_000;
/** Words stay plain at this; from memory: speech in Opus is said to be transparent from about 24 kbit/s. */
const BITS_PER_SECOND = 24_000;
/** What an encoder puts before the sound unless it says otherwise: 6.5 ms (RFC 7845, 4.2, names 80 ms as the most). */
const PRE_SKIP = 312;
/** A longer phrase is somebody who left the microphone open: its last part is kept, which the words are of. */
const MOST_SECONDS = 60;

/** A phrase's sound, small enough to keep and send: Opus where the browser encodes it, else plain 16 kHz WAV. */
export async function encodeClip(sound: Sound): Promise<Encoded | undefined> {
  const whole = await at16kHz(sound);
  const samples = whole.subarray(Math.max(0, whole.length - MOST_SECONDS * RATE));
  const seconds = samples.length / RATE;
  if (seconds < 0.1) return undefined;
  const ogg = await opusOf(samples);
  const bytes = ogg ?? wavOf(samples, RATE);
  if (bytes.length > MOST_CLIP_BYTES) throw new Error(`a clip of ${seconds} s came out at ${bytes.length} bytes`);
  return { bytes: bytes.buffer, type: ogg ? "audio/ogg" : "audio/wav", seconds: Math.round(seconds * 100) / 100 };
}

/** Undefined where the browser encodes no Opus, or fails at it: plain sound is as true, only larger. */
async function opusOf(samples: Float32Array<ArrayBuffer>): Promise<Uint8Array<ArrayBuffer> | undefined> {
  if (!("AudioEncoder" in globalThis)) return undefined;
  const config = { codec: "opus", sampleRate: RATE, numberOfChannels: 1, bitrate: BITS_PER_SECOND };
  try {
    if (!(await AudioEncoder.isConfigSupported(config)).supported) return undefined;
    const packets: OpusPacket[] = [];
    let preSkip = PRE_SKIP;
    let failed: DOMException | undefined;
    const encoder = new AudioEncoder({
      output(chunk, about) {
        // the head as RFC 7845, 5.1 has it, where the encoder gives one
        const head = about?.decoderConfig?.description;
        if (head && head.byteLength >= 12) preSkip = viewOf(head).getUint16(10, true);
        const bytes = new Uint8Array(chunk.byteLength);
        chunk.copyTo(bytes);
        packets.push({ bytes, durationUs: chunk.duration ?? 20_000 });
      },
      error(problem) {
        failed = problem;
      },
    });
    encoder.configure(config);
    const data = new AudioData({
      format: "f32-planar",
      sampleRate: RATE,
      numberOfFrames: samples.length,
      numberOfChannels: 1,
      timestamp: 0,
      data: samples,
    });
    encoder.encode(data);
    data.close();
    await encoder.flush();
    encoder.close();
    if (failed || packets.length === 0) return undefined;
    return oggOpus(packets, { preSkip, samples: samples.length * 3, rate: RATE });
  } catch {
    // only probing: a browser may name the codec and still not have it
    return undefined;
  }
}

const viewOf = (data: AllowSharedBufferSource) =>
  ArrayBuffer.isView(data) ? new DataView(data.buffer, data.byteOffset, data.byteLength) : new DataView(data);

/** By the platform's own resampler. */
async function at16kHz({ samples, rate }: Sound): Promise<Float32Array<ArrayBuffer>> {
  const floats =
    samples instanceof Int16Array ? Float32Array.from(samples, (one) => one / 32_768) : new Float32Array(samples);
  if (rate === RATE || floats.length === 0) return floats;
  const length = Math.max(1, Math.round((floats.length * RATE) / rate));
  const offline = new OfflineAudioContext(1, length, RATE);
  const buffer = offline.createBuffer(1, floats.length, rate);
  buffer.copyToChannel(floats, 0);
  const source = offline.createBufferSource();
  source.buffer = buffer;
  source.connect(offline.destination);
  source.start();
  return new Float32Array((await offline.startRendering()).getChannelData(0));
}
