import { helpPage } from "../../../core/pages/index.ts";
import { STANDING } from "../../parts/cautions.ts";
import { DeskFrame } from "../../parts/desk-frame.tsx";
import { findWords } from "../../parts/find-words.ts";
import { useState } from "../../parts/hooks.ts";
import { SearchField } from "../../parts/search-field.tsx";
import { WordList } from "../../parts/word-list.tsx";
import type { Deeds } from "../../state/deeds.ts";
import { addressOf } from "../../state/route.ts";
import type { State } from "../../state/state.ts";
import { keyName } from "../../state/talk-key.ts";

const PARTS = helpPage();
const WORDS = PARTS.flatMap((part) => part.words);

/** How to talk to it, which words it knows, and which keys do what. */
export function Help({ state, deeds }: { state: State; deeds: Deeds }) {
  const [asked, ask] = useState("");
  const found = findWords(WORDS, asked);
  return (
    <DeskFrame sign="SAY IT" state={state} deeds={deeds}>
      <SearchField asked={asked} ask={ask} found={found.length} />
      {asked.trim() ? (
        <section class="sheet sheet-one" aria-label="Words found">
          <WordList words={found} />
        </section>
      ) : (
        <div class="sheet">
          <section class="paper-column" aria-label="Ways to say it">
            <h2 class="rule-head">Talk the way you talk</h2>
            <p>These are examples, not the only words. What is not read is kept as said and shown as not read.</p>
            {PARTS.map((part) => (
              <section key={part.head} class="ways">
                <h3>{part.head}</h3>
                <ul>
                  {part.say.map((words) => (
                    <li key={words}>
                      <q>{words}</q>
                    </li>
                  ))}
                </ul>
                {part.words.length > 0 && (
                  <details class="ways-words">
                    <summary>
                      {part.words.length} words:{" "}
                      {part.words
                        .slice(0, 4)
                        .map((word) => word.name)
                        .join(", ")}
                      {part.words.length > 4 ? " …" : ""}
                    </summary>
                    <WordList words={part.words} />
                  </details>
                )}
              </section>
            ))}
          </section>
          <section class="paper-column" aria-label="Keys and cautions">
            <h2 class="rule-head">Words of your own</h2>
            <p>
              Your site says it another way? <a href={addressOf({ screen: "words" })}>Teach the word</a> and it is read
              at once. Every word by name: <a href={addressOf({ screen: "glossary" })}>the glossary</a>.
            </p>
            <h2 class="rule-head">Keys</h2>
            <dl class="keys">
              <div>
                <dt>Enter</dt>
                <dd>says what stands in the field</dd>
              </div>
              <div>
                <dt>{keyName(state.settings.talkKey)}</dt>
                <dd>opens and shuts the microphone; choose another under More, Talking</dd>
              </div>
              <div>
                <dt>Enter, held</dt>
                <dd>on the STOP screen: says that it was seen, and nothing more</dd>
              </div>
            </dl>
            <h2 class="rule-head">Before any job</h2>
            <ul class="cautions-list">
              {STANDING.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          </section>
        </div>
      )}
    </DeskFrame>
  );
}
