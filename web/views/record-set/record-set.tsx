import { RECORD_SET } from "../../../core/speech/record-set/phrases.ts";
import { EarComing } from "../../parts/ear-coming.tsx";
import { useEffect, useState } from "../../parts/hooks.ts";
import { Stencil } from "../../parts/stencil.tsx";
import type { LentEar } from "../../speech/own-ear/lent-ear.ts";
import { addressOf } from "../../state/route.ts";
import type { State } from "../../state/state.ts";
import { OnePhrase } from "./one-phrase.tsx";
import { OtherTalk } from "./other-talk.tsx";
import { saveSet } from "./save-set.ts";
import { ScoreSheet } from "./score-sheet.tsx";
import {
  type Caught,
  NEW_SITTING,
  type Place,
  placeAfter,
  placeBefore,
  placeLeft,
  type Sitting,
  withTake,
  withTalk,
} from "./sitting.ts";

/** Left for another screen and come back to, it goes on where it was. */
const kept = { sitting: NEW_SITTING };

/** Walks a person through the set of phrases and scores the page's own ear on them. Nothing said here reaches the log. */
export function RecordSet({ ear, state }: { ear: LentEar | undefined; state: State }) {
  const [sitting, setSitting] = useState(kept.sitting);
  const [problem, setProblem] = useState("");
  const change = (how: (before: Sitting) => Sitting) => {
    kept.sitting = how(kept.sitting);
    setSitting(kept.sitting);
  };
  const go = (place: Place) => change((before) => ({ ...before, place }));
  useEffect(() => {
    ear?.load();
    const leaving = (event: BeforeUnloadEvent) => {
      if (kept.sitting.unsaved) event.preventDefault();
    };
    addEventListener("beforeunload", leaving);
    return () => {
      removeEventListener("beforeunload", leaving);
      ear?.giveBack();
    };
  }, []);
  const { place } = sitting;
  const ways = { back: () => go(placeBefore(place)), next: () => go(placeAfter(place)) };
  const talkKey = state.settings.talkKey;
  const save = () => {
    setProblem("");
    saveSet(kept.sitting, ear?.wide()).then(
      () => change((before) => ({ ...before, unsaved: false })),
      (cause: unknown) => setProblem(`The recordings could not be saved: ${String(cause)}`),
    );
  };
  const walking = typeof place === "number" || place === "talk";
  return (
    <main class={walking ? "record record-walking" : "record"}>
      <header class="bench-head record-head">
        <h1 class="sign">
          <Stencil text="MEASURE" class="head-sign" />
        </h1>
        {walking && (
          <button type="button" class="glove" onClick={() => go("score")}>
            {typeof place === "number" ? `${place + 1} of ${RECORD_SET.length}` : "Other talk"}
            <small>The score</small>
          </button>
        )}
        {!walking && (
          <a class="glove" href={addressOf({ screen: "bench" })}>
            Bench
          </a>
        )}
      </header>
      <div class="record-place" key={`${place}`}>
        {!ear ? (
          <p class="tell tell-bad">
            This browser cannot hear by itself. The ear needs https or this machine's own address, and a browser of the
            last few years.
          </p>
        ) : place === "start" ? (
          <Intro begin={() => go(placeLeft(sitting))} coming={state.ear.coming} />
        ) : place === "talk" ? (
          <OtherTalk
            ear={ear}
            talkKey={talkKey}
            talk={sitting.talk}
            caught={(what: Caught) => change((before) => withTalk(before, what))}
            {...ways}
          />
        ) : place === "score" ? (
          <ScoreSheet
            sitting={sitting}
            wide={ear.wide()}
            goOn={sitting.takes.includes(undefined) ? () => go(placeLeft(sitting)) : undefined}
            save={save}
            anew={() => change(() => NEW_SITTING)}
          />
        ) : (
          <OnePhrase
            ear={ear}
            talkKey={talkKey}
            phrase={RECORD_SET[place] ?? ""}
            take={sitting.takes[place]}
            caught={(what: Caught) => change((before) => withTake(before, place, what))}
            {...ways}
          />
        )}
      </div>
      <p class="record-problem bad" role="alert">
        {problem}
      </p>
    </main>
  );
}

function Intro({ begin, coming }: { begin: () => void; coming: State["ear"]["coming"] }) {
  return (
    <div class="record-intro">
      <p class="record-lead">
        How well does it hear you, here? Say {RECORD_SET.length} phrases, one at a time, as you would at the valve. Some
        ten minutes.
      </p>
      <ul class="record-rules">
        <li>
          <b>Nothing is sent anywhere.</b> This page hears by itself. What you say stays in it until you save it to a
          file or shut the page.
        </li>
        <li>
          <b>Nothing is written down.</b> The phrases are invented and get into no job. A real hazard is for the bench,
          and for whoever stands beside you.
        </li>
        <li>Misspoke? Say it again. Misheard? Leave it: that is what is measured.</li>
      </ul>
      <EarComing coming={coming} meanwhile="The first phrase waits for it." />
      <button type="button" class="glove record-begin" onClick={begin}>
        Begin
      </button>
    </div>
  );
}
