import { CORPORA, loadCases } from "../corpora/corpus.ts";

/** Every session of the corpora, as the phrases said in it. */
export const sessions: string[][] = CORPORA.flatMap((name) => loadCases(name).map((one) => one.say));
export const phrases: string[] = sessions.flat();
