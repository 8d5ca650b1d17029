import type { WordLine } from "../../core/index.ts";

/**
 * The lines that answer a search: each word of it must begin a word of the name, of a saying, of the help line or be
 * the ISO code. Those whose name it begins come first, then those with a saying that begins so.
 */
export function findWords(lines: readonly WordLine[], asked: string): WordLine[] {
  const wanted = split(asked);
  if (!wanted.length) return [...lines];
  const hits = lines.filter((line) => {
    const words = split([line.name, ...line.says, line.help, line.iso ?? ""].join(" "));
    return wanted.every((want) => words.some((word) => word.startsWith(want)));
  });
  const begins = (said: string) => split(said).join(" ").startsWith(wanted.join(" "));
  const rank = (line: WordLine) => (begins(line.name) ? 0 : line.says.some(begins) ? 1 : 2);
  return hits.sort((a, b) => rank(a) - rank(b));
}

function split(text: string): string[] {
  return text
    .toLowerCase()
    .replace(/['’]/g, "")
    .split(/[^\p{L}\p{N}.%°/]+/u)
    .filter(Boolean);
}
