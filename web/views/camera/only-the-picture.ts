/**
 * A JPEG without what is not the picture: EXIF and XMP (APP1), makers' notes (APP3 to APP15 but Adobe's), comments. A
 * canvas writes none of where and when; some browsers write an EXIF block all the same, so it is cut here and not hoped
 * for. Segments as in ITU-T T.81, annex B. Throws where the bytes are no JPEG.
 */
export function onlyThePicture(jpeg: Uint8Array<ArrayBuffer>): Uint8Array<ArrayBuffer> {
  if (jpeg[0] !== 0xff || jpeg[1] !== 0xd8) throw new Error("the picture did not come out as JPEG");
  const view = new DataView(jpeg.buffer, jpeg.byteOffset, jpeg.byteLength);
  const kept: Uint8Array[] = [jpeg.subarray(0, 2)];
  let at = 2;
  while (at + 4 <= jpeg.length && jpeg[at] === 0xff) {
    const marker = jpeg[at + 1] ?? 0;
    // from here on the picture itself, to the end
    if (marker === START_OF_SCAN) break;
    const end = at + 2 + view.getUint16(at + 2);
    if (!tells(marker)) kept.push(jpeg.subarray(at, end));
    at = end;
  }
  if (jpeg[at + 1] !== START_OF_SCAN) throw new Error("the picture ends before it begins");
  kept.push(jpeg.subarray(at));
  const whole = new Uint8Array(kept.reduce((sum, piece) => sum + piece.length, 0));
  let to = 0;
  for (const piece of kept) {
    whole.set(piece, to);
    to += piece.length;
  }
  return whole;
}

const START_OF_SCAN = 0xda;
/** APP0 is JFIF, APP2 the colour profile, APP14 how colours are coded: those are of the picture. */
const tells = (marker: number) =>
  marker === 0xfe || (marker >= 0xe1 && marker <= 0xef && marker !== 0xe2 && marker !== 0xee);
