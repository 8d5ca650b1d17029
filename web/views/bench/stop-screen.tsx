import type { Entry } from "../../../core/index.ts";
import { AT_HAZARD } from "../../parts/cautions.ts";
import { useEffect, useRef, useState } from "../../parts/hooks.ts";
import { Stencil } from "../../parts/stencil.tsx";
import { capital, hazardName, listed } from "../../parts/words.ts";
import type { Deeds } from "../../state/deeds.ts";
import type { CardPhrase } from "../../state/state.ts";

/** How long a finger must stay on it: longer than any bump of a sleeve. */
const HOLD_MS = 1500;

/**
 * A hazard was said: this stands in front of everything until someone says deliberately that it was seen, by holding
 * the bar or, from the keyboard, Enter or Space: nobody who types on without looking holds a key that long.
 * Seeing it clears nothing.
 */
export function StopScreen({ alert, deeds }: { alert: { phrase: CardPhrase; alerts: Entry[] }; deeds: Deeds }) {
  const hazards = alert.alerts.flatMap((entry) => (entry.type === "hazard" ? [entry.hazard] : []));
  const bar = useRef<HTMLButtonElement>(null);
  const timer = useRef<ReturnType<typeof setTimeout> | null>(null);
  const [holding, setHolding] = useState(false);
  const [armed, setArmed] = useState(false);

  useEffect(() => {
    bar.current?.focus();
    const onKey = (event: KeyboardEvent) => {
      if (event.key !== "Tab") return;
      // nothing else can be reached while this stands
      event.preventDefault();
      bar.current?.focus();
    };
    addEventListener("keydown", onKey);
    return () => {
      removeEventListener("keydown", onKey);
      if (timer.current) clearTimeout(timer.current);
    };
  }, []);

  const release = () => {
    if (timer.current) clearTimeout(timer.current);
    timer.current = null;
    setHolding(false);
  };
  const press = () => {
    release();
    setHolding(true);
    timer.current = setTimeout(() => void deeds.seenAlert(), HOLD_MS);
  };
  const keyDown = (event: KeyboardEvent) => {
    if (event.key !== "Enter" && event.key !== " ") return;
    // no click may come of it; a key still held from saying the phrase only repeats, and does not count
    event.preventDefault();
    if (!event.repeat) press();
  };
  const click = (event: MouseEvent) => {
    // neither finger nor key: a screen reader or a switch, which cannot hold. The first arms, the second is meant.
    if (event.detail !== 0) return;
    if (armed) void deeds.seenAlert();
    else setArmed(true);
  };

  return (
    <div class="stop" role="alertdialog" aria-modal="true" aria-labelledby="stop-sign" aria-describedby="stop-words">
      <div class="stop-head" id="stop-sign">
        <Stencil text="STOP" class="stop-sign" />
        <p class="stop-what">{capital(listed(hazards.map(hazardName)))}</p>
      </div>
      <div id="stop-words" class="stop-words">
        <ul>{hazards.flatMap((hazard) => AT_HAZARD[hazard].map((line) => <li key={hazard + line}>{line}</li>))}</ul>
        <p class="stop-rule">Only site procedure clears this.</p>
        <p class="stop-said">
          Said: <q>{alert.phrase.text}</q>
        </p>
      </div>
      <button
        ref={bar}
        type="button"
        class={`stop-seen${holding ? " stop-holding" : ""}`}
        onPointerDown={press}
        onPointerUp={release}
        onPointerLeave={release}
        onPointerCancel={release}
        onKeyDown={keyDown}
        onKeyUp={release}
        onBlur={release}
        onClick={click}
        onContextMenu={(event: Event) => event.preventDefault()}
      >
        <b>{armed ? "Once more: it was seen" : "Hold to say it was seen"}</b>
        <span>By finger, or the Enter key. That it was seen is all this says.</span>
      </button>
    </div>
  );
}
