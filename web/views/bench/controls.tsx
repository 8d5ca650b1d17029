import { EarComing } from "../../parts/ear-coming.tsx";
import { useEffect, useRef } from "../../parts/hooks.ts";
import type { Deeds } from "../../state/deeds.ts";
import type { State } from "../../state/state.ts";
import { TalkPad } from "./talk-pad.tsx";

/** The lower half of the bench: the pad to talk, and above it a field for whoever types, with undo beside it. */
export function Controls({ state, deeds, typing }: { state: State; deeds: Deeds; typing: (words: string) => void }) {
  const field = useRef<HTMLInputElement>(null);
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
    typing("");
    void deeds.say(words, "typed");
    input.focus();
  };

  return (
    <section class="controls" aria-label="Say it">
      <EarComing coming={state.ear.coming} />
      <form class="field-row" onSubmit={onSubmit}>
        <label class="unseen" for="words">
          {state.card ? "What did you find, what did you do?" : "Which valve?"}
        </label>
        <input
          id="words"
          ref={field}
          class="field"
          onInput={(event: Event) => {
            if (!state.card) typing((event.target as HTMLInputElement).value);
          }}
          type="text"
          autocomplete="off"
          autocapitalize="off"
          spellcheck={false}
          enterkeyhint="send"
          placeholder={state.card ? "type it here" : "tag: LCV-213"}
        />
        {/* whichever of the two is of use stands beside the field: see bench.css */}
        <button class="say" type="submit">
          Say
        </button>
        {state.card && (
          <button class="undo" type="button" disabled={!state.phrases.length} onClick={() => void deeds.undo()}>
            <b>Scratch</b>
            <span>the last</span>
          </button>
        )}
      </form>
      <TalkPad state={state} deeds={deeds} />
    </section>
  );
}
