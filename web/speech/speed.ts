/**
 * How long it takes from the end of speech to the tone that answers it, kept where a browser's own tools and our tests
 * look for it. The target is 0.7 s: longer, and a person begins to say it again.
 */
const END = "end of speech";
export const END_TO_TONE = "end of speech to tone";

export function markEndOfSpeech(): void {
  performance.mark(END);
}

export function measureToTone(): void {
  if (!performance.getEntriesByName(END, "mark").length) return;
  performance.measure(END_TO_TONE, END);
  // only the first tone after it answers it
  performance.clearMarks(END);
}
