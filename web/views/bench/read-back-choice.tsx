import type { Deeds } from "../../state/deeds.ts";
import type { Settings } from "../../state/state.ts";

const KINDS: [Settings["readBack"], string, string][] = [
  ["brief", "Brief", "what was understood"],
  ["full", "Full", "and what is next"],
  ["tones", "Tones only", "questions are asked"],
];

/** How much is said back; the same can be said: "tones only", "brief read-back", "full read-back". */
export function ReadBackChoice({ settings, deeds }: { settings: Settings; deeds: Deeds }) {
  return (
    <fieldset class="themes">
      <legend>Read-back. Hazards are spoken whichever it is.</legend>
      {KINDS.map(([kind, name, what]) => (
        <button
          key={kind}
          type="button"
          class="glove"
          aria-pressed={settings.readBack === kind ? "true" : "false"}
          onClick={() => deeds.set({ readBack: kind })}
        >
          {name}
          <small>{what}</small>
        </button>
      ))}
    </fieldset>
  );
}
