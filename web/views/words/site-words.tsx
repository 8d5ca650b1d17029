import { meaningOf, readPhrase, startListening } from "../../../core/index.ts";
import { DeskFrame } from "../../parts/desk-frame.tsx";
import { EntryLines } from "../../parts/entry-lines.tsx";
import { useState } from "../../parts/hooks.ts";
import { MarkedPhrase } from "../../parts/marked-phrase.tsx";
import type { Deeds } from "../../state/deeds.ts";
import { siteName } from "../../state/seen.ts";
import type { State } from "../../state/state.ts";
import { waits, wordsHere } from "../../state/taught.ts";
import { TeachForm } from "./teach-form.tsx";

/** Words that this site says and the log did not know: taught here, read at once. `say`: the word come for. */
export function SiteWords({ say, state, deeds }: { say?: string; state: State; deeds: Deeds }) {
  const { settings } = state;
  const taught = state.taught.filter((word) => !word.withdrawn);
  const waiting = state.taught.filter(waits).length;
  const site = settings.site ? siteName(state, settings.site) : "every site";
  // what holds at every site is not for whoever is kept to some
  const needsSite = !settings.site && state.caller?.sites !== undefined;
  return (
    <DeskFrame sign="SITE WORDS" state={state} deeds={deeds}>
      <div class="sheet">
        <section class="paper-column" aria-label="Teach a word">
          <h2 class="rule-head">Teach a word{needsSite ? "" : `, for ${site}`}</h2>
          {needsSite ? (
            <p>Choose which of your sites says it: on the bench, under More, Site.</p>
          ) : (
            <TeachForm say={say} deeds={deeds} />
          )}
          {state.notice && <p class="tell">{state.notice}</p>}
        </section>
        <section class="paper-column" aria-label="Words taught">
          <h2 class="rule-head">Words taught ({taught.length})</h2>
          {taught.length ? (
            <ul class="taught">
              {taught.map((word) => (
                <li key={word.id ?? `${word.site} ${word.say}`}>
                  <span>
                    <b>{word.say}</b> is {meaningOf(word.as)}
                    {word.site && word.site !== settings.site ? `, at ${siteName(state, word.site)}` : ""}
                    {word.problem && `. Not read, for the server refused it: ${word.problem}`}
                  </span>
                  <button
                    type="button"
                    class="glove"
                    aria-label={`Forget ${word.say}`}
                    onClick={() => void deeds.unteach(word)}
                  >
                    Forget
                  </button>
                </li>
              ))}
            </ul>
          ) : (
            <p class="none">None yet.</p>
          )}
          <p class="source">
            Kept on this device and read on its bench at once, without a network too. Sent to the server, which reads
            with them what was said lately at the site, and to every device there.
            {waiting > 0 && ` Waiting to be sent: ${waiting}.`}
          </p>
          <h2 class="rule-head">Try a phrase</h2>
          <TryPhrase state={state} />
        </section>
      </div>
    </DeskFrame>
  );
}

/** Reads a phrase as the bench would, and keeps nothing. */
function TryPhrase({ state }: { state: State }) {
  const [text, setText] = useState("");
  const reading = text.trim() ? readPhrase(text, startListening(wordsHere(state))) : undefined;
  return (
    <div class="try">
      <label>
        <span>It is read as the bench would read it, and not kept.</span>
        <input
          class="field"
          type="text"
          autocomplete="off"
          autocapitalize="off"
          spellcheck={false}
          onInput={(event: Event) => setText((event.target as HTMLInputElement).value)}
        />
      </label>
      <div aria-live="polite">
        {reading && (
          <>
            <MarkedPhrase reading={reading} />
            <EntryLines entries={reading.entries} />
          </>
        )}
      </div>
    </div>
  );
}
