import type { Turn } from "../state/loop.ts";
import { standingAlert } from "../state/seen.ts";
import type { Store } from "../state/store.ts";
import { type Focus, isElsewhere, isKey } from "../state/talk-key.ts";

/**
 * The chosen key opens the microphone like the pad, held or tapped, wherever the focus is on the bench. Listened for
 * from the start of the page on, not by a screen once it is drawn: a pedal is pressed when it is pressed.
 */
export function listenForTalkKey(store: Store, turned: (now: Turn) => void): void {
  addEventListener("keydown", (event) => {
    const state = store.state();
    if (state.route.screen !== "bench" || standingAlert(state) || !isKey(state.settings.talkKey, event)) return;
    if (event.ctrlKey || event.altKey || event.metaKey || isElsewhere(event, focused(event.target))) return;
    event.preventDefault();
    if (!event.repeat) turned({ is: "pressed", at: event.timeStamp });
  });
  const letGo = (event: Event) => {
    if (store.state().loop.pressed) turned({ is: "let_go", at: event.timeStamp });
  };
  addEventListener("keyup", (event) => {
    if (isKey(store.state().settings.talkKey, event)) letGo(event);
  });
  // a window that loses the focus hears no key go up
  addEventListener("blur", letGo);
}

function focused(target: EventTarget | null): Focus {
  const line = target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement ? target : undefined;
  const control = target instanceof Element && target.closest("button, a, summary, select") !== null;
  return { line: line !== undefined, empty: line?.value === "", control };
}
