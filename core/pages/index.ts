/** What is known of the words, as plain lists and names: whoever shows them adds the markup. */
export { glossary, type WordLine } from "./glossary.ts";
export { type HelpPart, helpPage } from "./help.ts";
export { nameOf } from "./names.ts";
export type { Code, WordKind } from "./tables.ts";
export { meaningOf, type Taught, teach } from "./teach.ts";
export { teachSaid } from "./teach-said.ts";
