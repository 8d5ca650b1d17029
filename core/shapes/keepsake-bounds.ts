/** Bounds of what is kept beside the words. Without zod, since the page needs them too. */

/** A minute of plain 16 kHz sound with room to spare. */
export const MOST_CLIP_BYTES = 2_097_152;
/** A photograph is sized on the device to about 400 kB; more may come from elsewhere. */
export const MOST_PHOTO_BYTES = 4_194_304;
/** More than any camera has: a picture that unpacks to more is refused before anybody looks at it. */
export const MOST_PHOTO_PIXELS = 60_000_000;
/** Of a site that says nothing else. */
export const KEEPING_UNLESS_SAID = { clips: "for_days", days: 30 } as const;
