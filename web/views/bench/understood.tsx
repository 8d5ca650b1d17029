import { STANDING_LINE } from "../../parts/cautions.ts";
import { EntryLines } from "../../parts/entry-lines.tsx";
import { MarkedPhrase } from "../../parts/marked-phrase.tsx";
import { readBack, touchedWords } from "../../parts/say.ts";
import type { Deeds } from "../../state/deeds.ts";
import { openQuestion, questionWords } from "../../state/questions.ts";
import { addressOf } from "../../state/route.ts";
import { moodOf } from "../../state/saying-back.ts";
import { amendedNow, lastEntries, lastSaid } from "../../state/seen.ts";
import type { CardPhrase, State } from "../../state/state.ts";
import { Asked } from "./asked.tsx";

/** More lines than these are on the card: what is read at arm's length is short. */
const MOST_LINES = 3;

/** The last phrase: what it became, what is asked, what was not read, its words with their marks, where it is kept. */
export function Understood({ state, deeds }: { state: State; deeds: Deeds }) {
  const last = lastSaid(state);
  const question = openQuestion(state);
  if (!last)
    return (
      <section class="understood" aria-label="Just understood">
        {state.told ? (
          <p class="told">{state.told}</p>
        ) : (
          <p class="invite">Say or type what you find and what you do.</p>
        )}
        <p class="cautions-line">
          <b>Cautions</b> {STANDING_LINE}
        </p>
        {state.notice && <p class="tell">{state.notice}</p>}
        {question && <Asked question={question} deeds={deeds} />}
        <p class="unseen" aria-live="polite">
          {state.told ?? ""}
        </p>
      </section>
    );
  const amended = amendedNow(state);
  // a doubtful phrase stands in its question; twice it would push what is next off the screen
  const entries = question?.is === "doubt" ? [] : lastEntries(state).filter((one) => one.type !== "command");
  const unread = last.reading.unread.map((one) => one.text.trim()).join(" … ");
  const sign = question ? "doubtful" : moodOf(last.reading);
  return (
    <section class={`understood understood-${sign ?? "nothing"}`} aria-label="Just understood">
      {question && <Asked question={question} deeds={deeds} />}
      {state.told && <p class="told">{state.told}</p>}
      {last.reading.touched.length > 0 && <p class="touched">{touchedWords(last.reading)}</p>}
      <EntryLines entries={[...entries, ...(question?.is === "doubt" ? [] : amended)].slice(0, MOST_LINES)} />
      {entries.length + amended.length > MOST_LINES && (
        <p class="touched">and {entries.length + amended.length - MOST_LINES} more, on the card</p>
      )}
      {unread && question?.is !== "reader" && (
        <p class="not-read">
          {sign === "not_understood" ? (
            "Not read. It is kept as said."
          ) : (
            <>
              Not read: <b>{unread}</b>. It is kept as said.
            </>
          )}{" "}
          Say it another way, or “note” and the words.
        </p>
      )}
      <MarkedPhrase reading={last.reading} asked={question?.is === "reader"} />
      {unread && question?.is !== "reader" && (
        <a
          class="glove teach-link"
          href={addressOf({ screen: "words", say: unread.length <= 60 ? unread : undefined })}
        >
          Teach the word
        </a>
      )}
      {state.notice && <p class="tell">{state.notice}</p>}
      <Kept phrase={last.phrase} deeds={deeds} />
      <p class="unseen" aria-live="polite">
        {state.told ?? readBack(last.reading, question && questionWords(question), amended)}
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
