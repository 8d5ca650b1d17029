import type { Part } from "./shapes/codes.ts";
import type { Ask, Entry } from "./shapes/entry.ts";
import { KIND_OF } from "./shapes/part-kinds.ts";
import type { PastJob } from "./shapes/valve.ts";
import { nameOfPart } from "./vocabulary/names.ts";

/**
 * Narrows a general part ("diaphragm") to one of the valve's own bill of parts. What was said stays in `part`;
 * what it is taken to be stands beside it in `resolved`, with `assumed`. Where today's talk and the record leave
 * two, one question is asked, the latest first.
 */
export function narrow(
  entries: readonly Entry[],
  bill: readonly Part[],
  history: readonly PastJob[] = [],
): { entries: Entry[]; ask: Ask[] } {
  const named = new Set<Part>();
  let ask: Ask | undefined;
  const narrowed = entries.map((entry): Entry => {
    if (entry.type !== "finding" && entry.type !== "work" && entry.type !== "need") return entry;
    const { part } = entry;
    if (!part) return entry;
    if (bill.includes(part)) {
      named.add(part);
      return entry;
    }
    const could = bill.filter((one) => KIND_OF[one] === part);
    if (could.length === 0) return entry;
    const count = "count" in entry ? (entry.count ?? 1) : 1;
    const taken = could.length === 1 ? could[0] : (onlyOne(could, named) ?? onlyOne(could, troubled(history)));
    if (taken) return { ...entry, resolved: taken, assumed: true };
    if (
      count === 1 &&
      could.length === 2 &&
      entry.phrase !== undefined &&
      !(entry.type === "finding" && (entry.condition === "ok" || entry.absent))
    ) {
      ask = { phrase: entry.phrase, question: `Which ${nameOfPart(part)}: ${could.map(nameOfPart).join(" or ")}?` };
    }
    return entry;
  });
  return { entries: narrowed, ask: ask ? [ask] : [] };
}

function onlyOne(could: readonly Part[], among: ReadonlySet<Part>): Part | undefined {
  const found = could.filter((part) => among.has(part));
  return found.length === 1 ? found[0] : undefined;
}

/** Parts that the last job left with a fault or with work owed. */
function troubled(history: readonly PastJob[]): ReadonlySet<Part> {
  const last = [...history].sort((a, b) => (a.on < b.on ? -1 : 1)).at(-1);
  const parts = new Set<Part>();
  for (const entry of last?.entries ?? []) {
    if (
      entry.type === "finding" &&
      entry.part &&
      !entry.absent &&
      entry.condition !== "ok" &&
      entry.condition !== "intact"
    )
      parts.add(entry.part);
    if (entry.type === "work" && entry.part) {
      if (entry.status === "done") parts.delete(entry.part);
      else parts.add(entry.part);
    }
  }
  return parts;
}
