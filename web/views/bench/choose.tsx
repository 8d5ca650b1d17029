import { Plate } from "../../parts/plate.tsx";
import { sayPartsShortly } from "../../parts/say.ts";
import { Stencil } from "../../parts/stencil.tsx";
import type { Deeds } from "../../state/deeds.ts";
import { siteName } from "../../state/seen.ts";
import type { ListedValve, State } from "../../state/state.ts";
import { clockThere } from "../../state/time-words.ts";
import { BenchMenu } from "./menu.tsx";

/** No job is open: choose the valve by typing, saying or touching its plate. */
export function Choose({ state, deeds }: { state: State; deeds: Deeds }) {
  const { closed, closedMissing, stray, valves, settings } = state;
  const here = valves.filter((valve) => !settings.site || !valve.site || valve.site === settings.site);
  return (
    <>
      <header class="bench-head">
        <h1 class="sign">
          <Stencil text="WHICH VALVE" class="head-sign" />
        </h1>
        <BenchMenu state={state} deeds={deeds} />
      </header>
      <section class="choosing" aria-label="Choose the valve">
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
          {stray && (
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
        <h2 class="rule-head">{settings.site ? `Valves at ${siteName(state, settings.site)}` : "Valves known here"}</h2>
        {here.length ? (
          <ul class="plates">
            {here.map((valve) => (
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

/** What is due on it, and its site where two sites have a valve of that tag. */
function noteWords(state: State, all: readonly ListedValve[], valve: ListedValve): string {
  const twice = all.some((one) => one.tag === valve.tag && one.site !== valve.site);
  return [twice && siteName(state, valve.site), valve.note].filter(Boolean).join(": ");
}
