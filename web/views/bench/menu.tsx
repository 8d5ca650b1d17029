import { EarChoice } from "../../parts/ear-choice.tsx";
import { SoundChoice } from "../../parts/sound-choice.tsx";
import { ThemeChoice } from "../../parts/theme-choice.tsx";
import type { Deeds } from "../../state/deeds.ts";
import { addressOf } from "../../state/route.ts";
import type { State } from "../../state/state.ts";
import { ReadBackChoice } from "./read-back-choice.tsx";

/** What is wanted seldom: screens, light, voice, site, the state of the queue. */
export function BenchMenu({ state, deeds }: { state: State; deeds: Deeds }) {
  const { settings, outbox, sites } = state;
  return (
    <details class="menu" onKeyDown={shutOnEscape}>
      <summary class="glove">
        <span class="menu-more">More</span>
        <span class="menu-shut">Shut</span>
      </summary>
      <div class="menu-sheet">
        <nav aria-label="Screens">
          <a class="glove" href={addressOf({ screen: "desk" })}>
            The desk
          </a>
          <a class="glove" href={addressOf({ screen: "due" })}>
            What is due
          </a>
          <a class="glove" href={addressOf({ screen: "help" })}>
            How to say it
          </a>
          <a class="glove" href={addressOf({ screen: "words" })}>
            Teach a word
          </a>
          <a class="glove" href={addressOf({ screen: "hearing" })}>
            Talking
            <small>Key, call word, microphone check</small>
          </a>
          <a class="glove" href={addressOf({ screen: "me" })}>
            Who is speaking
            <small>{state.caller?.name ?? (state.barred ? "This device is not known" : "Nobody in particular")}</small>
          </a>
        </nav>
        {state.card && (
          <button type="button" class="glove" onClick={() => void deeds.close()}>
            Close this job
          </button>
        )}
        {state.newer && (
          <button type="button" class="glove" onClick={() => deeds.takeNewer()}>
            A newer version is here: load it
          </button>
        )}
        {outbox.refused > 0 && (
          <button type="button" class="glove" onClick={() => void deeds.askAgain()}>
            Send the {outbox.refused} refused again
          </button>
        )}
        <ReadBackChoice settings={settings} deeds={deeds} />
        <EarChoice settings={settings} deeds={deeds} />
        <SoundChoice state={state} deeds={deeds} />
        <ThemeChoice settings={settings} deeds={deeds} />
        {sites.length > 0 && (
          <label class="menu-site">
            <span>Site</span>
            <select
              class="field"
              value={settings.site ?? ""}
              onChange={(event: Event) => deeds.set({ site: (event.target as HTMLSelectElement).value || undefined })}
            >
              <option value="">any site</option>
              {sites.map((one) => (
                <option key={one.site} value={one.site}>
                  {one.name}
                </option>
              ))}
            </select>
          </label>
        )}
      </div>
    </details>
  );
}

function shutOnEscape(event: KeyboardEvent): void {
  const menu = event.currentTarget as HTMLDetailsElement;
  if (event.key !== "Escape" || !menu.open) return;
  menu.open = false;
  menu.querySelector("summary")?.focus();
}
