import type { SiteWord, WordResult } from "../../core/index.ts";
import type { Happening } from "../state/next.ts";
import { type KeptWord, waits } from "../state/taught.ts";
import type { Answer } from "./ask.ts";

/** The server takes no more words at once. */
const MOST_WORDS = 200;

interface Served {
  words: SiteWord[];
  /** one a word sent; absent where they were only asked for */
  results?: WordResult[];
}

/** Everything that passing words on touches, handed in so that it can be tried without a page. */
export interface PassingWords {
  ask(path: string, put?: object): Promise<Answer<Served>>;
  words(): readonly KeptWord[];
  /** the sites whose words this device reads; undefined: those of every site */
  sites(): readonly (string | undefined)[];
  keep(words: KeptWord[]): Promise<void>;
  tell(now: Happening): void;
  newId(): string;
  now(): string;
}

/**
 * Makes what sends the words said here and fetches those of the device's sites. Calls while it runs fold into one.
 * Where the server cannot be had the words wait; they are read here meanwhile.
 */
export function wordPasser(at: PassingWords): () => Promise<void> {
  let running = false;
  let asked = false;

  async function hold(words: KeptWord[]): Promise<void> {
    if (JSON.stringify(words) === JSON.stringify(at.words())) return;
    at.tell({ is: "taught", words });
    try {
      await at.keep(words);
    } catch (problem) {
      const why = problem instanceof Error ? problem.message : String(problem);
      at.tell({ is: "noticed", notice: `This device does not keep the site's words: ${why}` });
    }
  }

  async function passAll(): Promise<void> {
    // words from before the server took any: their id must be kept before it is used, or they would be sent as two
    await hold(at.words().map((word) => ({ ...word, id: word.id ?? at.newId(), at: word.at ?? at.now() })));
    const sites = new Set([undefined, ...at.sites(), ...at.words().map((word) => word.site)]);
    for (const site of sites) {
      const path = site ? `/api/sites/${encodeURIComponent(site)}/words` : "/api/words";
      const sending = at.words().filter((word) => word.site === site && waits(word));
      const words = sending
        .slice(0, MOST_WORDS)
        .map(({ id, say, as, at, withdrawn }) => ({ id, say, as, at, withdrawn }));
      let answer = await at.ask(path, words.length ? { words } : undefined);
      // teaching is a lead's: what was taught here waits, and what the site was taught is read all the same
      if (!answer.ok && answer.status === 403 && words.length) answer = await at.ask(path);
      if (!answer.ok && answer.status === 404 && sending.length) {
        // of a site that whoever is known here does not see: said and kept, since it is nowhere else
        const { problem } = answer;
        await hold(at.words().map((word) => (sending.includes(word) ? { ...word, problem } : word)));
      }
      if (!answer.ok) {
        // without a server the other sites fare no better
        if (answer.status === 0) return;
        continue;
      }
      // something other than the server may answer 200, such as a network's sign-in page
      if (!Array.isArray(answer.value.words)) return;
      await hold(mergeWords(at.words(), site, answer.value));
    }
  }

  return async function pass(): Promise<void> {
    asked = true;
    if (running) return;
    running = true;
    try {
      while (asked) {
        asked = false;
        await passAll();
      }
    } finally {
      running = false;
    }
  };
}

/**
 * The words as they stand after the server told those of a site: one a word by id, withdrawn wherever it was
 * withdrawn. A word that the server does not name stays and is sent again: a server set up anew gets it back.
 */
export function mergeWords(words: readonly KeptWord[], site: string | undefined, served: Served): KeptWord[] {
  const theirs = new Map(served.words.map((word) => [word.id, word]));
  const results = new Map(served.results?.map((result) => [result.id, result]));
  const merged = words.flatMap((word): KeptWord[] => {
    if (word.site !== site) return [word];
    const held = word.id === undefined ? undefined : theirs.get(word.id);
    if (held) {
      theirs.delete(held.id);
      if (held.withdrawn) return [];
      return [{ ...held, site, ...(word.withdrawn ? { withdrawn: true } : {}), sent: !word.withdrawn }];
    }
    const result = word.id === undefined ? undefined : results.get(word.id);
    if (result?.status === "refused" && !word.withdrawn)
      return [{ ...word, sent: false, problem: result.problem ?? "the server gave no reason" }];
    // known under no id of its own: withdrawn before it ever arrived, or taught there alike by somebody else
    return result ? [] : [{ ...word, sent: false }];
  });
  const come = [...theirs.values()].filter((word) => !word.withdrawn).map((word) => ({ ...word, site, sent: true }));
  return [...merged, ...come];
}
