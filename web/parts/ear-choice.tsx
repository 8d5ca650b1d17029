import type { Deeds } from "../state/deeds.ts";
import type { Settings } from "../state/state.ts";

const EARS: [NonNullable<Settings["ear"]>, string, string][] = [
  ["own", "This page's own", "Hears without a network. Sound stays on this device."],
  ["browser", "The browser's", "Only where it hears on this device."],
  ["browser_sends", "The browser's, by network", "What is said may go to the browser's maker."],
];

/** Which ear listens on this device. */
export function EarChoice({ settings, deeds }: { settings: Settings; deeds: Deeds }) {
  return (
    <fieldset class="ears">
      <legend>Ear</legend>
      {EARS.map(([ear, name, means]) => (
        <button
          key={ear}
          type="button"
          class="glove"
          aria-pressed={(settings.ear ?? "own") === ear ? "true" : "false"}
          onClick={() => deeds.set({ ear })}
        >
          {name}
          <small>{means}</small>
        </button>
      ))}
    </fieldset>
  );
}
