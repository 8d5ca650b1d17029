import { useEffect, useRef } from "../../parts/hooks.ts";
import { Plate } from "../../parts/plate.tsx";
import { hazardName } from "../../parts/words.ts";
import type { Deeds } from "../../state/deeds.ts";
import { hazardsSaid, valveAtHand } from "../../state/seen.ts";
import type { State } from "../../state/state.ts";
import { clockHere } from "../../state/time-words.ts";
import { outboxWords } from "../../sync/outbox-words.ts";
import { PhotoStrip } from "../camera/photo-strip.tsx";
import { BenchMenu } from "./menu.tsx";
import { NextUp } from "./next-up.tsx";
import { Understood } from "./understood.tsx";
import { WholeCard } from "./whole-card.tsx";

/** A job under way, three things at a glance: its plate, what was just understood, what is next. All else is folded. */
export function JobOnBench({ state, deeds }: { state: State; deeds: Deeds }) {
  const { outbox, heard } = state;
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
          <Plate tag={valveAtHand(state).tag} />
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
        <Understood state={state} deeds={deeds} />
        <PhotoStrip state={state} deeds={deeds.keepsakes} />
        <WholeCard state={state} />
      </div>
      <section class="next" aria-label="What is next">
        <NextUp state={state} />
      </section>
    </>
  );
}
