import { useEffect, useRef } from "hono/jsx/dom";
import { followUpWords } from "../../../core/index.ts";
import { whenWords } from "../../parts/follow-lines.tsx";
import { Stencil } from "../../parts/stencil.tsx";
import type { Deeds } from "../../state/deeds.ts";
import { whatFollows } from "../../state/seen.ts";
import type { EarView, State } from "../../state/state.ts";

/** Held longer than this, the pad listens only while held; touched shorter, it stays on until the next touch. */
const HOLD_MS = 500;
/** Opens and shuts the ear from the keyboard, wherever the focus is. */
export const TALK_KEY = "F2";

/** The lower part of the bench: the field, the talk pad, and undo. */
export function Controls({ state, deeds }: { state: State; deeds: Deeds }) {
  const field = useRef<HTMLInputElement>(null);
  const open = state.ear.state !== "closed";

  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.key !== TALK_KEY || event.repeat) return;
      event.preventDefault();
      deeds.talk(!open);
    };
    addEventListener("keydown", onKey);
    return () => removeEventListener("keydown", onKey);
  }, [open, deeds]);

  const job = state.card?.id;
  useEffect(() => {
    // with a mouse there are keys as well: ready to type. On a phone this would raise its keyboard over the card.
    if (job !== undefined && matchMedia("(pointer: fine)").matches) field.current?.focus();
  }, [job]);

  const onSubmit = (event: Event) => {
    event.preventDefault();
    const input = field.current;
    if (!input?.value.trim()) return;
    const words = input.value;
    input.value = "";
    void deeds.say(words, "typed");
    input.focus();
  };

  return (
    <section class="controls" aria-label="Say it">
      {state.card && <NextStrip state={state} />}
      <form class="field-row" onSubmit={onSubmit}>
        <label class="unseen" for="words">
          {state.card ? "What did you find, what did you do?" : "Which valve?"}
        </label>
        <input
          id="words"
          ref={field}
          class="field"
          type="text"
          autocomplete="off"
          autocapitalize="off"
          spellcheck={false}
          enterkeyhint="send"
          placeholder={state.card ? "type it here" : "tag: LCV-213"}
        />
        <button class="say" type="submit">
          Say
        </button>
      </form>
      <div class="pad-row">
        <TalkPad ear={state.ear} deeds={deeds} />
        {state.card && (
          <button class="undo" type="button" disabled={!state.phrases.length} onClick={() => void deeds.undo()}>
            <b>Scratch</b>
            <span>the last</span>
          </button>
        )}
      </div>
    </section>
  );
}

/** On a narrow screen the most urgent thing to do stands above the field; wider ones have room for all of it. */
function NextStrip({ state }: { state: State }) {
  const [first, ...more] = whatFollows(state).followUps;
  if (!first) return null;
  return (
    <p class="next-strip">
      <span class={`when when-${first.when === "now" ? "now" : "later"}`}>{whenWords(first.when)}</span>
      <b>{followUpWords(first)}</b>
      {more.length > 0 && <span>+{more.length}</span>}
    </p>
  );
}

function TalkPad({ ear, deeds }: { ear: EarView; deeds: Deeds }) {
  const pressed = useRef<{ at: number; wasOpen: boolean } | null>(null);
  const open = ear.state !== "closed";
  const down = (event: PointerEvent) => {
    // a finger that slides off the pad still lets go of it
    (event.currentTarget as HTMLElement).setPointerCapture(event.pointerId);
    pressed.current = { at: event.timeStamp, wasOpen: open };
    if (!open) deeds.talk(true);
  };
  const up = (event: PointerEvent) => {
    const press = pressed.current;
    pressed.current = null;
    if (press && (press.wasOpen || event.timeStamp - press.at > HOLD_MS)) deeds.talk(false);
  };
  // a key or a screen reader presses without a pointer: `detail` is 0 then
  const click = (event: MouseEvent) => {
    if (event.detail === 0) deeds.talk(!open);
  };
  return (
    <button
      type="button"
      class={`pad pad-${ear.state}${ear.trouble ? " pad-deaf" : ""}`}
      aria-pressed={open ? "true" : "false"}
      aria-describedby="pad-words"
      onPointerDown={down}
      onPointerUp={up}
      onPointerCancel={up}
      onClick={click}
    >
      <Stencil text={padSign(ear)} class="pad-sign" />
      <span id="pad-words" class="pad-words">
        {padWords(ear)}
      </span>
    </button>
  );
}

function padSign(ear: EarView): string {
  if (ear.trouble) return "TYPE IT";
  return { closed: "TALK", opening: "WAIT", open: "GO ON", hushed: "HEAR" }[ear.state];
}

function padWords(ear: EarView): string {
  if (ear.trouble) return ear.trouble;
  if (ear.hearing) return ear.hearing;
  const words = {
    closed: `Touch to talk, or hold. Key ${TALK_KEY}.`,
    opening: "Opening the microphone.",
    open: "Listening. Touch to stop.",
    hushed: "Reading back.",
  };
  return words[ear.state];
}
