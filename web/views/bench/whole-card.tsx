import type { PhraseReading } from "../../../core/index.ts";
import { STANDING } from "../../parts/cautions.ts";
import { EntryLines } from "../../parts/entry-lines.tsx";
import { CheckLines, DueLines, FollowLines, PartChips } from "../../parts/follow-lines.tsx";
import { useState } from "../../parts/hooks.ts";
import { MarkedPhrase } from "../../parts/marked-phrase.tsx";
import { dayOfJob, valveAtHand, whatFollows } from "../../state/seen.ts";
import type { CardPhrase, State } from "../../state/state.ts";

/**
 * Everything the job holds and everything that follows, for who has a hand free to unfold it. Drawn only while it is
 * open: a long job has hundreds of lines, and each phrase would draw them all again.
 */
export function WholeCard({ state }: { state: State }) {
  const [open, setOpen] = useState(false);
  return (
    <details class="whole-card" onToggle={(event: Event) => setOpen((event.currentTarget as HTMLDetailsElement).open)}>
      <summary>The whole card</summary>
      {open && <Unfolded state={state} />}
    </details>
  );
}

function Unfolded({ state }: { state: State }) {
  const { heard } = state;
  const follows = whatFollows(state);
  return (
    <>
      <h2 class="rule-head">To do</h2>
      <FollowLines followUps={follows.followUps} />
      {follows.checks.length > 0 && (
        <>
          <h2 class="rule-head">Checked against limits</h2>
          <CheckLines checks={follows.checks} />
        </>
      )}
      {follows.due.length > 0 && (
        <>
          <h2 class="rule-head">Next dates</h2>
          <DueLines due={follows.due} today={dayOfJob(state)} />
        </>
      )}
      <PartChips parts={follows.missing} label="Not heard yet" />
      <PartChips parts={follows.parts.needed} label="Parts needed" />
      {heard.entries.length > 0 && (
        <>
          <h2 class="rule-head">On the card</h2>
          <EntryLines entries={valveAtHand(state).entries} />
        </>
      )}
      {state.phrases.length > 1 && <Earlier phrases={state.phrases} readings={heard.phrases} />}
      <h2 class="rule-head">Cautions</h2>
      <ul class="cautions-list">
        {STANDING.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </>
  );
}

/** Every phrase of the job, in a fold of its own. */
function Earlier({ phrases, readings }: { phrases: CardPhrase[]; readings: readonly PhraseReading[] }) {
  const [open, setOpen] = useState(false);
  return (
    <details class="earlier" onToggle={(event: Event) => setOpen((event.currentTarget as HTMLDetailsElement).open)}>
      <summary>Words said so far ({phrases.length})</summary>
      {open && (
        <ol>
          {readings.map((reading, index) => (
            <li key={phrases[index]?.id}>
              <MarkedPhrase reading={reading} />
            </li>
          ))}
        </ol>
      )}
    </details>
  );
}
