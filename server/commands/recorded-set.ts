import {
  type RecordedHead,
  type RecordedPhrase,
  type RecordedTalk,
  recordedLineSchema,
} from "../../core/shapes/record-set.ts";

export interface RecordedSet {
  head: RecordedHead;
  phrases: RecordedPhrase[];
  talk: RecordedTalk[];
}

/** Reads a file of recordings as the page saved it; a wrong line is named with what it should be. */
export function readRecordedSet(text: string): { ok: true; value: RecordedSet } | { ok: false; problem: string } {
  const set: { head?: RecordedHead; phrases: RecordedPhrase[]; talk: RecordedTalk[] } = { phrases: [], talk: [] };
  for (const [index, line] of text.split("\n").entries()) {
    if (line.trim() === "") continue;
    const read = recordedLineSchema.safeParse(jsonOf(line));
    if (!read.success) {
      const [wrong] = read.error.issues;
      const where = wrong?.path.length ? `${wrong.path.join(".")}: ` : "";
      return { ok: false, problem: `line ${index + 1} is none that the page saves (${where}${wrong?.message})` };
    }
    if (read.data.is === "record_set") set.head = read.data;
    else if (!set.head) break;
    else if (read.data.is === "phrase") set.phrases.push(read.data);
    else set.talk.push(read.data);
  }
  const { head, ...rest } = set;
  if (!head) return { ok: false, problem: "its first line does not say that it is recordings of the set" };
  return { ok: true, value: { head, ...rest } };
}

function jsonOf(line: string): unknown {
  try {
    return JSON.parse(line);
  } catch {
    // the schema then says that it is nothing of ours
    return undefined;
  }
}
