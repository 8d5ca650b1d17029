import { MOST_PHOTO_PIXELS } from "../../core/shapes/keepsake-bounds.ts";
import { readJpeg } from "./jpeg.ts";
import { readPng } from "./png.ts";
import { readOgg, readWav, readWebm } from "./sound.ts";
import { readWebp } from "./webp.ts";

/** Bytes that were looked at: what they are, and what of them is kept. Whatever they were called plays no part. */
export interface Picture {
  type: "image/jpeg" | "image/png" | "image/webp";
  width: number;
  height: number;
  /** the picture alone: place, camera, times, thumbnails and whatever followed its end are gone */
  bytes: Uint8Array;
}
export interface Sound {
  type: "audio/wav" | "audio/ogg" | "audio/webm";
  bytes: Uint8Array;
}
export type Looked<T> = { ok: true; value: T } | { ok: false; problem: string };

const PICTURES = "Send a photograph as JPEG, PNG or WebP.";
const SOUNDS = "Send sound as WAV, Ogg or WebM.";

export function lookAtPicture(bytes: Uint8Array): Looked<Picture> {
  const read = readJpeg(bytes) ?? readPng(bytes) ?? readWebp(bytes);
  if (!read) return { ok: false, problem: `By its bytes this is no picture that is taken here. ${PICTURES}` };
  if (read === "broken") return { ok: false, problem: `The picture ends too soon or is damaged. ${PICTURES}` };
  const { width, height } = read;
  if (width < 1 || height < 1 || width * height > MOST_PHOTO_PIXELS) {
    return {
      ok: false,
      problem: `The picture is ${width} by ${height}: send one of at most 60 million picture elements.`,
    };
  }
  return { ok: true, value: read };
}

export function lookAtSound(bytes: Uint8Array): Looked<Sound> {
  const read = readWav(bytes) ?? readOgg(bytes) ?? readWebm(bytes);
  if (!read) return { ok: false, problem: `By its bytes this is no sound that is taken here. ${SOUNDS}` };
  if (read === "broken") return { ok: false, problem: `The sound ends too soon or is damaged. ${SOUNDS}` };
  return { ok: true, value: read };
}

/** The four letters at a place. */
export function letters(bytes: Uint8Array, at: number, count = 4): string {
  return String.fromCharCode(...bytes.subarray(at, at + count));
}

export function joined(pieces: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(pieces.reduce((sum, piece) => sum + piece.length, 0));
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}
