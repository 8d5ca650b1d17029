import type { Picture } from "../../state/keepsake-deeds.ts";
import { onlyThePicture } from "./only-the-picture.ts";

/** Enough to see a scratch across a seat, and no more to send over a weak link. */
const LONGEST_EDGE = 1600;
const ENOUGH_BYTES = 400_000;
const QUALITIES = [0.85, 0.75, 0.65, 0.5];

/** What the camera shows now, sized down. */
export function pictureFrom(video: HTMLVideoElement): Promise<Picture> {
  return sizedDown(video, video.videoWidth, video.videoHeight);
}

/** A photograph out of a file, upright as its own note of how the camera was held says, sized down. */
export async function pictureIn(file: Blob): Promise<Picture> {
  let image: ImageBitmap;
  try {
    image = await createImageBitmap(file);
  } catch (cause) {
    throw new Error("this file is no picture that the browser can read", { cause });
  }
  try {
    return await sizedDown(image, image.width, image.height);
  } finally {
    image.close();
  }
}

async function sizedDown(source: CanvasImageSource, width: number, height: number): Promise<Picture> {
  if (!width || !height) throw new Error("the camera shows nothing yet");
  const scale = Math.min(1, LONGEST_EDGE / Math.max(width, height));
  const canvas = document.createElement("canvas");
  canvas.width = Math.max(1, Math.round(width * scale));
  canvas.height = Math.max(1, Math.round(height * scale));
  const paper = canvas.getContext("2d");
  if (!paper) throw new Error("this browser has no memory left for a picture");
  paper.imageSmoothingQuality = "high";
  paper.drawImage(source, 0, 0, canvas.width, canvas.height);
  let blob: Blob | null = null;
  for (const quality of QUALITIES) {
    blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, "image/jpeg", quality));
    if (blob && blob.size <= ENOUGH_BYTES) break;
  }
  if (blob?.type !== "image/jpeg") throw new Error("this browser writes no JPEG");
  const bytes = onlyThePicture(new Uint8Array(await blob.arrayBuffer()));
  return { bytes: bytes.buffer, type: "image/jpeg", width: canvas.width, height: canvas.height };
}
