import { useEffect, useRef, useState } from "hono/jsx/dom";
import type { PhraseReading } from "../../../core/index.ts";
import { STANDING, STANDING_LINE } from "../../parts/cautions.ts";
import { EntryLines } from "../../parts/entry-lines.tsx";
import { CheckLines, DueLines, FollowLines, PartChips } from "../../parts/follow-lines.tsx";
import { MarkedPhrase } from "../../parts/marked-phrase.tsx";
import { Plate } from "../../parts/plate.tsx";
import { hazardName } from "../../parts/words.ts";
import type { Deeds } from "../../state/deeds.ts";
import { dayOfJob, hazardsSaid, lastSaid, questionNow, valveAtHand, whatFollows } from "../../state/seen.ts";
import type { CardPhrase, State } from "../../state/state.ts";
import { clockHere } from "../../state/time-words.ts";
import { outboxWords } from "../../sync/outbox-words.ts";
import { PhotoStrip } from "../camera/photo-strip.tsx";
import { BenchMenu } from "./menu.tsx";
import { Understood } from "./understood.tsx";

/** A job under way: its plate, what was just understood, what is next, and the card so far. */
export function JobOnBench({ state, deeds }: { state: State; deeds: Deeds }) {
  const { outbox, heard } = state;
  const hand = valveAtHand(state);
  const follows = whatFollows(state);
  const last = lastSaid(state);
  const question = questionNow(state);
  const hazards = [
    ...new Set(hazardsSaid(state).flatMap((one) => (one.type === "hazard" ? [hazardName(one.hazard)] : []))),
  ];
  const trouble = outbox.trouble || outbox.refused ? " outbox-trouble" : "";
  const paper = useRef<HTMLDivElement>(null);
  const said = state.phrases.length;
  useEffect(() => {
    // whatever was being looked up below, a new phrase shows what became of it
    if (said && paper.current) paper.current.scrollTop = 0;
  }, [said]);
  return (
    <>
      <header class="bench-head">
        <h1 class="sign">
          <Plate tag={hand.tag} />
        </h1>
        <BenchMenu state={state} deeds={deeds} />
        <p class={`outbox${trouble}`} role="status">
          {outboxWords(outbox, clockHere)}
        </p>
      </header>
      {hazards.length > 0 && (
        <p class="hazard-band">
          <b>HAZARD SAID: {hazards.join(", ")}.</b> Only site procedure clears this.
        </p>
      )}
      {heard.muted && <p class="muted-band">Muted: nothing heard is taken down but hazards. Say “start listening”.</p>}
      <div class="paper" ref={paper}>
        <div class="paper-column">
          <Understood state={state} deeds={deeds} />
          <PhotoStrip state={state} deeds={deeds.keepsakes} />
          <details class={`cautions${last ? " cautions-short" : ""}`}>
            <summary>
              <b>Cautions</b> {STANDING_LINE}
            </summary>
            <ul>
              {STANDING.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          </details>
          {state.notice && <p class="tell">{state.notice}</p>}
        </div>
        <section class="next paper-column" aria-label="What is next">
          {hand.ask && !question && <p class="ask">Still open: {hand.ask.question}</p>}
          <h2 class="rule-head">Next</h2>
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
              <EntryLines entries={hand.entries} />
            </>
          )}
          {state.phrases.length > 1 && <Earlier phrases={state.phrases} readings={heard.phrases} />}
        </section>
      </div>
    </>
  );
}

/** Every phrase of the job. Drawn only while it is open: a long job has hundreds, and each change would draw them again. */
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
