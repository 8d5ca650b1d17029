import { STANDING } from "../../parts/cautions.ts";
import { DeskFrame } from "../../parts/desk-frame.tsx";
import type { Deeds } from "../../state/deeds.ts";
import type { State } from "../../state/state.ts";
import { TALK_KEY } from "../bench/controls.tsx";

const WAYS: { head: string; say: string[] }[] = [
  { head: "Name the valve", say: ["L C V two one three", "two inch, pressure to open, severe service"] },
  { head: "What you found", say: ["seat worn one side", "no cracks in the cage", "upper diaphragm's torn bad"] },
  { head: "What you did, or must be done", say: ["flipped it", "put a new seat in", "needs a new stem guide"] },
  { head: "Figures", say: ["bonnet bolts torqued to twenty eight", "three bubbles a minute at fifty pounds"] },
  { head: "Tests", say: ["no leak at sixty psi", "strokes full", "blowing by"] },
  { head: "Parts to bring", say: ["order two backup rings", "note: handwheel is painted over"] },
  { head: "Put it right", say: ["scratch that", "correction, upper", "no wait, thirty"] },
  { head: "Ask", say: ["what's left", "read it back", "stop listening", "start listening"] },
  { head: "End", say: ["close it out"] },
];

/** How to talk to it, and which keys do what. */
export function Help({ state, deeds }: { state: State; deeds: Deeds }) {
  return (
    <DeskFrame sign="SAY IT" state={state} deeds={deeds}>
      <div class="sheet">
        <section class="paper-column" aria-label="Ways to say it">
          <h2 class="rule-head">Talk the way you talk</h2>
          <p>These are examples, not the only words. What is not read is kept as said and shown as not read.</p>
          <dl class="ways">
            {WAYS.map((way) => (
              <div key={way.head}>
                <dt>{way.head}</dt>
                {way.say.map((words) => (
                  <dd key={words}>
                    <q>{words}</q>
                  </dd>
                ))}
              </div>
            ))}
          </dl>
        </section>
        <section class="paper-column" aria-label="Keys and cautions">
          <h2 class="rule-head">Keys</h2>
          <dl class="ways">
            <div>
              <dt>Enter</dt>
              <dd>says what stands in the field</dd>
            </div>
            <div>
              <dt>{TALK_KEY}</dt>
              <dd>opens and shuts the microphone</dd>
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
    </DeskFrame>
  );
}
