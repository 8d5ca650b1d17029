/** What an open camera is told by voice or key, beside the phrases of the job. */
export type CameraOrder = "take" | "timer" | "shut";

/** Everything an open camera answers to; an ear with a grammar of its own listens for these as well. */
export const CAMERA_SAYINGS: Record<CameraOrder, readonly string[]> = {
  take: ["now", "take it", "take the picture", "shoot", "snap it"],
  timer: ["timer", "in three", "in three seconds", "count down", "use the timer"],
  shut: ["shut it", "close the camera", "shut the camera", "cancel", "no picture", "never mind"],
};

/** The order that these words are as a whole. Words that only hold one are a phrase like any other. */
export function cameraOrder(text: string): CameraOrder | undefined {
  const said = text
    .toLowerCase()
    .replace(/[^a-z ]/g, " ")
    .trim()
    .replace(/\s+/g, " ");
  for (const [order, sayings] of Object.entries(CAMERA_SAYINGS))
    if (sayings.includes(said)) return order as CameraOrder;
  return undefined;
}
