import type { Mark } from "../../core/index.ts";

/** Colours for a terminal; without colour the words alone must say it all. */
export interface Painter {
  head(text: string): string;
  strong(text: string): string;
  faint(text: string): string;
  doubt(text: string): string;
  alarm(text: string): string;
  /** a phrase with the words marked by what they became */
  phrase(text: string, marks: readonly Mark[]): string;
}

const MARKED: Record<Mark["as"], string> = {
  part: "36",
  condition: "33",
  work: "32",
  detail: "35",
  number: "35",
  test: "34",
  valve: "36;1",
  hazard: "41;97",
  command: "34",
  plain: "2",
  unread: "31;4",
};

export function paint(colour: boolean): Painter {
  const in_ = (code: string) => (text: string) => (colour ? `\u001b[${code}m${text}\u001b[0m` : text);
  return {
    head: in_("1;4"),
    strong: in_("1"),
    faint: in_("2"),
    doubt: in_("31"),
    alarm: in_("41;97;1"),
    phrase(text, marks) {
      if (!colour) return `> ${text}`;
      let at = 0;
      let out = "";
      for (const mark of [...marks].sort((a, b) => a.at[0] - b.at[0])) {
        if (mark.at[0] < at) continue;
        out += text.slice(at, mark.at[0]) + in_(MARKED[mark.as])(text.slice(...mark.at));
        at = mark.at[1];
      }
      return `> ${out}${text.slice(at)}`;
    },
  };
}
