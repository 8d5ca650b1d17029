import { useEffect, useRef } from "../../parts/hooks.ts";
import { Stencil } from "../../parts/stencil.tsx";
import { isKey, keyName, type TalkKey } from "../../state/talk-key.ts";
import type { Listening, Listens } from "./use-listening.ts";

const LOOKS: Record<Listens, string> = { shut: "closed", opening: "opening", open: "open", hearing: "opening" };

/** The pad of the bench for one phrase at a time: touched it listens, and shuts by itself once the phrase is over. */
export function RecordPad({
  listening,
  again,
  talkKey,
  words,
}: {
  listening: Listening;
  again: boolean;
  talkKey: TalkKey;
  /** what is written under the sign while it listens */
  words: string;
}) {
  const { is, trouble, silent } = listening;
  const touch = () => (is === "shut" ? listening.open() : listening.shut());
  const touched = useRef(touch);
  touched.current = touch;
  useEffect(() => {
    const down = (event: KeyboardEvent) => {
      if (event.repeat || event.ctrlKey || event.altKey || event.metaKey || !isKey(talkKey, event)) return;
      event.preventDefault();
      touched.current?.();
    };
    addEventListener("keydown", down);
    return () => removeEventListener("keydown", down);
  }, [talkKey]);
  const signs: Record<Listens, string> = {
    shut: again ? "AGAIN" : "TALK",
    opening: "WAIT",
    open: "GO ON",
    hearing: "WAIT",
  };
  const under: Record<Listens, string> = {
    shut: trouble ?? (silent ? "Nobody was heard. Touch and say it." : `Touch, or key ${keyName(talkKey)}.`),
    opening: "Opening the microphone.",
    open: words,
    hearing: "Hearing it.",
  };
  return (
    <button
      type="button"
      class={`pad pad-${LOOKS[is]}`}
      aria-pressed={is === "shut" ? "false" : "true"}
      aria-describedby="record-pad-words"
      onClick={touch}
    >
      <Stencil text={signs[is]} class="pad-sign" />
      <span id="record-pad-words" class="pad-words">
        {under[is]}
      </span>
    </button>
  );
}
