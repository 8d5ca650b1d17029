/** Where a phrase turns: an undo, an amendment, a note. */
export interface Turn {
  kind: "undo" | "amend" | "note";
  from: number;
  to: number;
}
