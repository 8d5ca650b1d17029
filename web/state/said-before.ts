import { isDoubtful, readPhrase } from "../../core/index.ts";
import type { CardPhrase } from "./state.ts";

/** More of them tell the ear little, and take it longer to get ready. */
export const MOST_SAID_BEFORE = 400;

/**
 * Phrases that people here really say: typed or heard without doubt, and understood to the last word. Numbers written as
 * figures are left out: they say nothing of how they were said.
 */
export const saidAndUnderstood = ({ text, confidence }: Pick<CardPhrase, "text" | "confidence">): boolean => {
  if (isDoubtful(confidence) || /\d/.test(text)) return false;
  const { entries, unread } = readPhrase(text);
  return entries.length > 0 && unread.length === 0;
};
