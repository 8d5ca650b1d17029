import type { ReviewItem, Tried } from "../../../core/index.ts";
import { EntryLines } from "../../parts/entry-lines.tsx";
import { useEffect, useRef, useState } from "../../parts/hooks.ts";
import { MarkedPhrase } from "../../parts/marked-phrase.tsx";
import type { Deeds } from "../../state/deeds.ts";
import type { State } from "../../state/state.ts";
import { type Answer, send } from "../../sync/ask.ts";

const STILL_MS = 120;

/** Words to put in place of a phrase's own, or a question to who said it: typed, or said. Enter sends, Escape leaves. */
export function WordsForm({
  kind,
  item,
  begin,
  state,
  deeds,
  done,
  leave,
}: {
  kind: "amend" | "ask" | "strike";
  item: ReviewItem;
  begin: string;
  state: State;
  deeds: Deeds;
  done: (words: string) => void;
  leave: () => void;
}) {
  const [words, setWords] = useState(begin);
  const [tried, setTried] = useState<Answer<Tried> | undefined>(undefined);
  const field = useRef<HTMLTextAreaElement>(null);
  const hush = useRef<(() => void) | undefined>(undefined);
  useEffect(() => {
    field.current?.focus();
    field.current?.select();
    return () => hush.current?.();
  }, []);
  useEffect(() => {
    if (kind !== "amend") return;
    let current = true;
    const timer = setTimeout(() => {
      void send<Tried>("POST", "/api/readings", { phrase: item.phrase, text: words }).then((got) => {
        if (current) setTried(got);
      });
    }, STILL_MS);
    return () => {
      current = false;
      clearTimeout(timer);
    };
  }, [words, kind, item.phrase]);
  const finish = () => {
    // as it stands in the field: the last letter may not have been drawn yet
    const told = (field.current?.value ?? words).trim();
    if (told || kind === "strike") done(told);
  };
  const onKey = (event: KeyboardEvent) => {
    if (event.key === "Escape") leave();
    if (event.key !== "Enter" || event.shiftKey || event.isComposing) return;
    event.preventDefault();
    finish();
  };
  const sayIt = () => {
    hush.current?.();
    hush.current = deeds.hearOnce((heard) => {
      setWords(heard);
      field.current?.focus();
    });
  };
  const { label, button } = FORMS[kind];
  const listening = state.ear.state === "open" || state.ear.state === "opening";
  return (
    <form
      class="words-form"
      onSubmit={(event: Event) => {
        event.preventDefault();
        finish();
      }}
    >
      <label>
        <span>{label}</span>
        <textarea
          ref={field}
          class="field"
          rows={2}
          maxlength={kind === "ask" ? 500 : 2000}
          value={words}
          onInput={(event: Event) => setWords((event.target as HTMLTextAreaElement).value)}
          onKeyDown={onKey}
        />
      </label>
      <div class="acts">
        <button type="submit" class="tab tab-first">
          {button} <kbd>Enter</kbd>
        </button>
        <button type="button" class="tab" aria-pressed={listening ? "true" : "false"} onClick={sayIt}>
          {listening ? (state.ear.hearing ? `“${state.ear.hearing}”` : "Listening…") : "Say it"}
        </button>
        <button type="button" class="tab" onClick={leave}>
          Leave it <kbd>Esc</kbd>
        </button>
      </div>
      {state.ear.trouble && listening && <p class="bad">{state.ear.trouble}</p>}
      {kind === "amend" && tried && (
        <div class="tried" role="status">
          {!tried.ok ? (
            <p class="bad">{tried.problem}</p>
          ) : (
            <>
              <MarkedPhrase
                reading={{ ...tried.value, unread: tried.value.unread.map((one) => ({ ...one, phrase: 0 })) }}
              />
              {tried.value.entries.length > 0 ? (
                <EntryLines entries={tried.value.entries} />
              ) : (
                <p class="none">Nothing would go into the record.</p>
              )}
            </>
          )}
        </div>
      )}
    </form>
  );
}

const FORMS = {
  amend: { label: "Read this in its place", button: "Amend" },
  ask: { label: "Ask who said it", button: "Ask" },
  strike: { label: "Why it is struck, if that wants saying", button: "Strike" },
};
