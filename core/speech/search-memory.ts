import type { GraphWord, WordGraph } from "./word-graph.ts";

/**
 * The engine keeps a table of all words that its search came past, and hands out the best row of them alone. The table is
 * read here where it lies in the engine's memory. The places are those of soundswallower 0.6.3, whose version is pinned:
 * `fsg_search_t`, `fsg_history_t`, `fsg_hist_entry_t`, `fsg_link_t`, `fsg_model_t` and `blkarray_list_t` in its sources, each
 * member four bytes. `tests/server/ear/ways-heard.test.ts` finds the engine's own best row in what is read, or fails.
 */
const DECODER = { search: 8 } as const;
const SEARCH = { network: 16, table: 18 } as const;
const NETWORK = { vocabulary: 4 } as const;
const TABLE = { rows: 1 } as const;
const ROWS = { start: 0, length: 2, entries: 3 } as const;
const ENTRY = { link: 0, score: 1, before: 2, lastFrame: 3 } as const;
const LINK = { likelihood: 2, word: 3 } as const;
/** Likelihoods are kept finer than scores. */
const FINER = 10;

/** The words in a search's table, in the order of their first frames; of the same word in the same frames the best. */
export function graphIn(memory: Uint8Array, decoder: number): WordGraph {
  const view = new DataView(memory.buffer, memory.byteOffset, memory.byteLength);
  const member = (of: number, at: number) => view.getInt32(of + 4 * at, true);
  const search = member(decoder, DECODER.search);
  const vocabulary = member(member(search, SEARCH.network), NETWORK.vocabulary);
  const rows = member(member(search, SEARCH.table), TABLE.rows);
  const start = member(rows, ROWS.start);
  const length = member(rows, ROWS.length);
  const entry = (i: number) => member(member(start, Math.floor(i / length)), i % length);

  const spelt = new Map<number, string>();
  const word = (number: number): string => {
    const known = spelt.get(number) ?? textAt(memory, member(vocabulary, number)).replace(/\(\d+\)$/, "");
    spelt.set(number, known);
    return known;
  };

  const words = new Map<string, GraphWord>();
  let frames = 0;
  for (let i = 1; i < member(rows, ROWS.entries); i++) {
    const one = entry(i);
    const link = member(one, ENTRY.link);
    const number = link === 0 ? -1 : member(link, LINK.word);
    // a step to a shorter history says no word
    if (number < 0) continue;
    const before = entry(member(one, ENTRY.before));
    const found = {
      word: word(number),
      from: member(before, ENTRY.lastFrame) + 1,
      to: member(one, ENTRY.lastFrame) + 1,
      fits: member(one, ENTRY.score) - member(before, ENTRY.score) - (member(link, LINK.likelihood) >> FINER),
    };
    frames = Math.max(frames, found.to);
    const key = `${found.word} ${found.from} ${found.to}`;
    if ((words.get(key)?.fits ?? Number.NEGATIVE_INFINITY) < found.fits) words.set(key, found);
  }
  return { frames, words: [...words.values()].sort((a, b) => a.from - b.from) };
}

/** What stands in memory from a place to the next zero: the engine writes plain ASCII. */
export function textAt(memory: Uint8Array, at: number): string {
  const end = memory.indexOf(0, at);
  let text = "";
  for (let i = at; i < end; i++) text += String.fromCharCode(memory[i] as number);
  return text;
}
