import { Stencil } from "../../parts/stencil.tsx";
import type { Deeds } from "../../state/deeds.ts";
import { isListening, type Loop } from "../../state/loop.ts";
import { openQuestion } from "../../state/questions.ts";
import type { EarView, State } from "../../state/state.ts";
import { keyName } from "../../state/talk-key.ts";

/** The pad: held it listens while held; touched it listens until touched again. */
export function TalkPad({ state, deeds }: { state: State; deeds: Deeds }) {
  const { ear, loop } = state;
  const down = (event: PointerEvent) => {
    // a finger that slides off the pad still lets go of it
    (event.currentTarget as HTMLElement).setPointerCapture(event.pointerId);
    deeds.turned({ is: "pressed", at: event.timeStamp });
  };
  const up = (event: PointerEvent) => deeds.turned({ is: "let_go", at: event.timeStamp });
  // a key or a screen reader presses without a pointer: `detail` is 0 then
  const click = (event: MouseEvent) => {
    if (event.detail === 0) deeds.turned({ is: "tapped" });
  };
  const stands = standing(state);
  return (
    <button
      type="button"
      class={`pad pad-${stands}${stands === "answer" ? " pad-open" : ""}`}
      aria-pressed={loop.mic === "shut" ? "false" : "true"}
      aria-describedby="pad-words"
      onPointerDown={down}
      onPointerUp={up}
      onPointerCancel={up}
      onClick={click}
      onContextMenu={(event: Event) => event.preventDefault()}
    >
      <Stencil text={SIGNS[stands]} class="pad-sign" />
      <span id="pad-words" class="pad-words">
        {ear.hearing && isListening(loop) ? ear.hearing : padWords(stands, state)}
      </span>
    </button>
  );
}

type Stands = "deaf" | "closed" | "opening" | "open" | "answer" | "word" | "speaking";

const SIGNS: Record<Stands, string> = {
  deaf: "TYPE IT",
  closed: "TALK",
  opening: "WAIT",
  open: "GO ON",
  answer: "ANSWER",
  word: "CALL ME",
  speaking: "HEAR",
};

function standing(state: State): Stands {
  const { ear, loop } = state;
  if (ear.trouble) return "deaf";
  if (loop.speaking) return "speaking";
  if (isListening(loop)) return isOpening(ear, loop) ? "opening" : openQuestion(state) ? "answer" : "open";
  return loop.handsFree && loop.open ? "word" : "closed";
}

const isOpening = (ear: EarView, loop: Loop): boolean => !loop.open && ear.state !== "closed";

function padWords(stands: Stands, { ear, settings, loop }: State): string {
  switch (stands) {
    case "deaf":
      return ear.trouble ?? "";
    case "closed":
      return `Touch to talk, or hold. Key ${keyName(settings.talkKey)}.`;
    case "opening":
      return "Opening the microphone.";
    case "open":
      return loop.mic === "held"
        ? "Listening while you hold."
        : loop.mic === "on"
          ? "Listening. Touch to stop."
          : "Listening.";
    case "answer":
      return "Say yes, no, or what is right.";
    case "word":
      return `Say “${settings.callWord}”, then what you have to say. Or touch.`;
    case "speaking":
      return "Touch to cut it short and talk.";
  }
}
