import { readPhrase } from "../../../core/index.ts";
import { scoreSet } from "../../../core/speech/record-set/score.ts";
import { sureWords } from "../../../core/speech/record-set/score-words.ts";
import { useState } from "../../parts/hooks.ts";
import { type Sitting, spokenTakes } from "./sitting.ts";

const per = (part: number, whole: number) => `${Math.round((100 * part) / whole)} %`;

/** What the ear was worth on this voice, in this place. */
export function ScoreSheet(props: {
  sitting: Sitting;
  wide: boolean | undefined;
  goOn: (() => void) | undefined;
  save: () => void;
  anew: () => void;
}) {
  const { sitting } = props;
  const takes = spokenTakes(sitting);
  const score = scoreSet(
    takes,
    sitting.talk.map(({ heard }) => heard),
    (text) => readPhrase(text).entries,
  );
  const repeated = takes.filter(({ times }) => times > 1).length;
  return (
    <div class="record-score">
      <section aria-label="The score">
        {score.said > 0 ? (
          <dl class="record-figures">
            <Figure name="word for word" part={score.wordForWord} whole={score.said} />
            <Figure name="with the same entries" part={score.sameEntries} whole={score.said} />
          </dl>
        ) : (
          <p class="record-hint">No phrase was said yet.</p>
        )}
        <p>
          {sitting.takes.length - takes.length} left out, {repeated} said more than once (the last time counts),{" "}
          {score.unheard} not heard at all.{" "}
          {score.otherTalk.said > 0
            ? `Other talk: ${score.otherTalk.invented.length} of ${score.otherTalk.said} stretches left an entry.`
            : "Other talk was left out."}
        </p>
        <p>
          One voice, one place, {score.said} {score.said === 1 ? "phrase" : "phrases"}: a few more or fewer right is
          chance.
          {props.wide === false ? " Heard by the narrow acoustic model: the wide one could not be had here." : ""}
        </p>
      </section>
      <section aria-label="How sure it was">
        <h2 class="rule-head">How sure it was, and how often right</h2>
        <table class="record-sure">
          <thead>
            <tr>
              <th scope="col">It was</th>
              <th scope="col">Phrases</th>
              <th scope="col">Word for word</th>
            </tr>
          </thead>
          <tbody>
            {score.sure.map((row, index) => (
              <tr key={row.from}>
                <th scope="row">{sureWords(row, score.sure[index - 1])}</th>
                <td>{row.said}</td>
                <td>{row.said ? `${row.right}, ${per(row.right, row.said)}` : "none"}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <section aria-label="Misses">
        <h2 class="rule-head">Not word for word: {score.misses.length}</h2>
        <ul class="record-misses">
          {score.misses.map((miss) => (
            <li key={miss.wanted}>
              <q>{miss.wanted}</q>
              {miss.heard ? <q class="record-other">{miss.heard}</q> : <span>nothing heard</span>}
              <small>{miss.sameEntries ? "the same entries all the same" : "other entries, or none"}</small>
            </li>
          ))}
        </ul>
        {score.otherTalk.invented.length > 0 && (
          <p>
            Out of other talk:{" "}
            {score.otherTalk.invented.map((text) => (
              <q key={text}>{text}</q>
            ))}
          </p>
        )}
      </section>
      <section aria-label="Keep it or begin anew" class="record-keep">
        {props.goOn && (
          <button type="button" class="glove" onClick={props.goOn}>
            Go on with the set
          </button>
        )}
        <button type="button" class="glove" disabled={takes.length + sitting.talk.length === 0} onClick={props.save}>
          Save the recordings
          <small>One file on this device, with sound and score. It holds your voice: give it to whom you trust.</small>
        </button>
        <Anew unsaved={sitting.unsaved} anew={props.anew} />
      </section>
    </div>
  );
}

function Figure({ name, part, whole }: { name: string; part: number; whole: number }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>
        <b>{per(part, whole)}</b> {part} of {whole}
      </dd>
    </div>
  );
}

/** Throws away what was said; asked twice where it was not saved. */
function Anew({ unsaved, anew }: { unsaved: boolean; anew: () => void }) {
  const [asked, ask] = useState(false);
  return (
    <button type="button" class="glove" onClick={() => (unsaved && !asked ? ask(true) : anew())}>
      {asked && unsaved ? "Throw away what was said?" : "Begin anew"}
      <small>{asked && unsaved ? "It was not saved. Touch again to throw it away." : "For the next person"}</small>
    </button>
  );
}
