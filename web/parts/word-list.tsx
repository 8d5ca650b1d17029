import type { WordKind, WordLine } from "../../core/index.ts";

const KINDS: Record<WordKind, string> = {
  part: "part",
  condition: "found",
  work: "work",
  test: "test",
  hazard: "hazard",
  command: "order",
  quantity: "figure",
  unit: "unit",
  bound: "figure",
  extent: "detail",
  severity: "detail",
  place: "place",
  acts: "valve",
  service: "valve",
};

/** Words of the log: what it calls them, how else they are said, what they are. */
export function WordList({ words }: { words: readonly WordLine[] }) {
  if (!words.length) return <p class="none">No word of the log answers to that.</p>;
  return (
    <dl class="words">
      {words.map((word) => (
        <div key={`${word.kind} ${word.code}`} class="word">
          <dt>
            {word.name} <span class="word-kind">{KINDS[word.kind]}</span>
            {word.iso && <span class="word-iso">ISO {word.iso}</span>}
          </dt>
          {word.help && <dd>{word.help}</dd>}
          {word.says.length > 0 && <dd class="word-says">also {word.says.map((said) => `“${said}”`).join(", ")}</dd>}
        </div>
      ))}
    </dl>
  );
}

/** What the ISO figures are, and how far they may be trusted. */
export function IsoNote() {
  return (
    <p class="source">
      “ISO” with a figure is the failure mechanism of ISO 14224:2016, table B.2, set down from memory: check it against
      the standard before reporting by it.
    </p>
  );
}
