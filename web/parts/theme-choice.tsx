import type { Deeds } from "../state/deeds.ts";
import type { Settings } from "../state/state.ts";

const THEMES: [Settings["theme"], string][] = [
  ["system", "As the device"],
  ["day", "Day"],
  ["dark", "Dark"],
];

/** Day, dark, or as the device has it. */
export function ThemeChoice({ settings, deeds }: { settings: Settings; deeds: Deeds }) {
  return (
    <fieldset class="themes">
      <legend>Light</legend>
      {THEMES.map(([theme, name]) => (
        <button
          key={theme}
          type="button"
          class="glove"
          aria-pressed={settings.theme === theme ? "true" : "false"}
          onClick={() => deeds.set({ theme })}
        >
          {name}
        </button>
      ))}
    </fieldset>
  );
}
