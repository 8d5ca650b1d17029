import type { Mark } from "../../core/index.ts";

/** One stretch of a phrase as it is shown: its words and what they were taken for. */
export interface Stretch {
  text: string;
  as: Mark["as"];
  code?: string;
}

/**
 * The whole phrase cut along its marks, nothing left out: words outside every mark are plain, a stretch the reader
 * gave back as unread is unread whatever else is said of it. Marks that overlap or point outside are cut to fit.
 */
export function stretches(
  text: string,
  marks: readonly Mark[],
  unread: readonly { at: [number, number] }[],
): Stretch[] {
  const as: (Mark | undefined)[] = new Array(text.length).fill(undefined);
  for (const mark of marks) paint(as, mark.at, mark);
  for (const { at } of unread) paint(as, at, { at, as: "unread" });
  const cut: Stretch[] = [];
  let from = 0;
  for (let to = 1; to <= text.length; to++) {
    if (to < text.length && as[to] === as[from]) continue;
    const mark = as[from];
    cut.push({ text: text.slice(from, to), as: mark?.as ?? "plain", ...(mark?.code ? { code: mark.code } : {}) });
    from = to;
  }
  return cut;
}

function paint(as: (Mark | undefined)[], [from, to]: [number, number], mark: Mark): void {
  for (let at = Math.max(0, from); at < Math.min(as.length, to); at++) as[at] = mark;
}
