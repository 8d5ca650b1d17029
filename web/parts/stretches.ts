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
  return oneFigure(cut);
}

/** "three" and "bubbles a minute" are a number and its unit, and one figure to whoever reads it. */
function oneFigure(cut: readonly Stretch[]): Stretch[] {
  const joined: Stretch[] = [];
  for (const one of cut) {
    const [number, gap] = joined.slice(-2);
    if (one.as === "number" && gap?.as === "plain" && !gap.text.trim() && number?.as === "number") {
      joined.splice(-2, 2, { as: "number", text: number.text + gap.text + one.text });
    } else joined.push(one);
  }
  return joined;
}

function paint(as: (Mark | undefined)[], [from, to]: [number, number], mark: Mark): void {
  for (let at = Math.max(0, from); at < Math.min(as.length, to); at++) as[at] = mark;
}
