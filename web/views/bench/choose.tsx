import { Plate } from "../../parts/plate.tsx";
import { sayPartsShortly } from "../../parts/say.ts";
import { Stencil } from "../../parts/stencil.tsx";
import type { Deeds } from "../../state/deeds.ts";
import { findValves, valvesHere } from "../../state/find-valves.ts";
import { openQuestion } from "../../state/questions.ts";
import { siteName } from "../../state/seen.ts";
import type { ListedValve, State } from "../../state/state.ts";
import { clockThere } from "../../state/time-words.ts";
import { Asked } from "./asked.tsx";
import { BenchMenu } from "./menu.tsx";

/** No job is open: choose the valve by typing, saying or touching its plate. `typed` is what stands in the field. */
export function Choose({ state, deeds, typed }: { state: State; deeds: Deeds; typed: string }) {
  const { closed, closedMissing, stray } = state;
  const question = openQuestion(state);
  const here = valvesHere(state);
  const asked = typed.trim() || stray || (state.offered?.beginSo && state.offered.tag) || "";
  const found = findValves(here, asked);
  return (
    <>
      <header class="bench-head">
        <h1 class="sign">
          <Stencil text="WHICH VALVE" class="head-sign" />
        </h1>
        <BenchMenu state={state} deeds={deeds} />
      </header>
      <section class="choosing" aria-label="Choose the valve">
        {question && <Asked question={question} deeds={deeds} />}
        {closed && (
          <div class="tell">
            <p>
              <b>{closed.tag ?? "The job without a tag"}</b> closed {clockThere(closed.closedAt ?? "")}.{" "}
              {sayPartsShortly(closedMissing, 6)}
            </p>
            <button type="button" class="glove" onClick={() => void deeds.reopen()}>
              Open it again
            </button>
          </div>
        )}
        <div aria-live="polite">
          {stray && !typed.trim() && found.length === 0 && (
            <div class="tell tell-unread">
              <p>
                <q>{stray}</q> names no valve. Say letters and number, such as <q>L C V two one three</q>.
              </p>
              <div class="tell-row">
                <button type="button" class="glove" onClick={() => void deeds.startWithStray()}>
                  Keep these words in a job without a tag
                </button>
                <button type="button" class="glove" onClick={() => deeds.dropStray()}>
                  Leave them
                </button>
              </div>
            </div>
          )}
          {state.notice && <p class="tell">{state.notice}</p>}
          {state.barred && <p class="tell tell-bad">{state.barred}</p>}
        </div>
        <h2 class="rule-head">{headWords(state, asked, found.length)}</h2>
        {here.length ? (
          <ul class="plates">
            {(found.length ? found : here).map((valve) => (
              <li key={`${valve.site} ${valve.tag}`}>
                <button type="button" class="plate-button" onClick={() => void deeds.start(valve.tag, valve.site)}>
                  <Plate tag={valve.tag} />
                  <span class="plate-note">{noteWords(state, here, valve)}</span>
                </button>
              </li>
            ))}
          </ul>
        ) : (
          <p class="none">This device knows no valves yet. Type or say the tag: that starts the job.</p>
        )}
      </section>
    </>
  );
}

/** Which valves these are; how many of them have what was asked for, where some have. */
function headWords(state: State, asked: string, found: number): string {
  if (asked && found) return `${found === 1 ? "One has" : `${found} have`} “${asked}”`;
  const { site } = state.settings;
  return site ? `Valves at ${siteName(state, site)}` : "Valves known here";
}

/** What is due on it, and its site where two sites have a valve of that tag. */
function noteWords(state: State, all: readonly ListedValve[], valve: ListedValve): string {
  const twice = all.some((one) => one.tag === valve.tag && one.site !== valve.site);
  return [twice && siteName(state, valve.site), valve.note].filter(Boolean).join(": ");
}
