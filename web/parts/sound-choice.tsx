import type { Deeds } from "../state/deeds.ts";
import type { State } from "../state/state.ts";

/** Whether this device keeps the sound of phrases; a site that keeps none decides for it. */
export function SoundChoice({ state, deeds }: { state: State; deeds: Deeds }) {
  const kept = deeds.keepsakes.wantsSound();
  const own = state.settings.keepSound !== false;
  return (
    <button
      type="button"
      class="glove"
      aria-pressed={kept ? "true" : "false"}
      onClick={() => deeds.set({ keepSound: !own })}
    >
      Sound of phrases is {kept ? "kept" : "not kept"}
      <small>{own && !kept ? "This site keeps none." : "So that the desk can hear a word again."}</small>
    </button>
  );
}
