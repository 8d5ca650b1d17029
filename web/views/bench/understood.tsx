import { EntryLines } from "../../parts/entry-lines.tsx";
import { MarkedPhrase } from "../../parts/marked-phrase.tsx";
import { readBack, touchedWords } from "../../parts/say.ts";
import type { Deeds } from "../../state/deeds.ts";
import { addressOf } from "../../state/route.ts";
import { amendedNow, lastEntries, lastSaid, questionNow } from "../../state/seen.ts";
import type { CardPhrase, State } from "../../state/state.ts";

/** The last phrase: its words and their marks, what it became, what was not read, what is asked, where it is kept. */
export function Understood({ state, deeds }: { state: State; deeds: Deeds }) {
  const last = lastSaid(state);
  const question = questionNow(state);
  const amended = amendedNow(state);
  const unread = last?.reading.unread.map((one) => one.text.trim()).join(" … ");
  return (
    <section class="understood" aria-label="Just understood">
      {last ? (
        <>
          <MarkedPhrase reading={last.reading} asked={question !== undefined} />
          <EntryLines entries={lastEntries(state)} />
          {last.reading.touched.length > 0 && <p class="touched">{touchedWords(last.reading)}</p>}
          <EntryLines entries={amended} />
          {question && <p class="ask">{question}</p>}
          {unread && !question && (
            <div class="not-read">
              <p>
                Not read: <b>{unread}</b>. It is kept as said. Say it another way, or say “note” and the words.
              </p>
              <a class="glove" href={addressOf({ screen: "words", say: unread.length <= 60 ? unread : undefined })}>
                Teach the word
              </a>
            </div>
          )}
          <Kept phrase={last.phrase} deeds={deeds} />
        </>
      ) : (
        <p class="invite">Say or type what you find and what you do.</p>
      )}
      <p class="unseen" aria-live="polite">
        {last ? readBack(last.reading, question, amended) : ""}
      </p>
    </section>
  );
}

function Kept({ phrase, deeds }: { phrase: CardPhrase; deeds: Deeds }) {
  if (phrase.delivery === "not_kept")
    return (
      <div class="tell tell-bad" role="alert">
        <p>
          <b>Not kept.</b> This device could not write it down: {phrase.problem}
        </p>
        <button type="button" class="glove" onClick={() => void deeds.keepAgain(phrase.id)}>
          Keep it again
        </button>
      </div>
    );
  if (phrase.delivery === "refused")
    return (
      <p class="tell tell-bad" role="alert">
        <b>The server refused this phrase.</b> {phrase.problem} It stays on this device.
      </p>
    );
  const words = { keeping: "being kept", waiting: "kept on this device", kept: "kept by the server" };
  return <p class={`kept kept-${phrase.delivery}`}>{words[phrase.delivery]}</p>;
}
