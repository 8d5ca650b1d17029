/** The screens about words, fetched together when the first of them is wanted. */
export { Glossary } from "./glossary/glossary.tsx";
export { Help } from "./help/help.tsx";
export { RecordSet } from "./record-set/record-set.tsx";
export { SearchSheet } from "./search/search.tsx";
export { SiteWords } from "./words/site-words.tsx";
