/**
 * The shape of a word row. Everything the reader, the help, the glossary and the ear know of a word is in its row.
 *
 * `say` lines use a small notation: `(a|b)` either, `[x]` may be left out, `..` up to three other words between.
 * Apostrophes and hyphens are not written: the words are matched as they stand after splitting ("o ring", "wont").
 */
export interface Row<Code extends string> {
  code: Code;
  /** what the log calls it */
  name: string;
  say: string[];
  /** one plain line for help and glossary */
  help: string;
  /** failure mechanism of ISO 14224:2016 table B.2, where the standard has one (from memory) */
  iso?: string;
}
