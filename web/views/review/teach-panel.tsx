import { meaningOf, type ReviewItem, teachSaid, type WordResult, type WordTried } from "../../../core/index.ts";
import { EntryLines } from "../../parts/entry-lines.tsx";
import { useEffect, useRef, useState } from "../../parts/hooks.ts";
import { dayWords, instantHere } from "../../state/time-words.ts";
import { type Answer, ask, send } from "../../sync/ask.ts";

const STILL_MS = 250;

/** A word taught where it was not read, in a sentence; before it is taught, what would read otherwise is shown. */
export function TeachPanel({
  item,
  begin,
  leave,
  taught,
}: {
  item: ReviewItem;
  begin: string;
  leave: () => void;
  taught: (words: string) => void;
}) {
  const [sentence, setSentence] = useState(begin);
  const [tried, setTried] = useState<{ of: string; answer: Answer<WordTried> } | undefined>(undefined);
  const [problem, setProblem] = useState<string | undefined>(undefined);
  const field = useRef<HTMLInputElement>(null);
  useEffect(() => {
    field.current?.focus();
    field.current?.setSelectionRange(begin.length, begin.length);
  }, []);
  const read = teachSaid(sentence);
  const key = read.ok ? JSON.stringify(read.value) : "";
  useEffect(() => {
    if (!read.ok) return;
    let current = true;
    const timer = setTimeout(() => {
      void send<WordTried>("POST", "/api/words/trial", { site: item.site, ...read.value }).then((answer) => {
        if (current) setTried({ of: key, answer });
      });
    }, STILL_MS);
    return () => {
      current = false;
      clearTimeout(timer);
    };
  }, [key]);
  const shown = tried?.of === key ? tried.answer : undefined;
  const keep = async () => {
    // what it changes is seen first: Enter too early shows it, and the next teaches
    if (!read.ok || !shown?.ok) return;
    const word = { id: crypto.randomUUID(), at: instantHere(new Date()), ...read.value };
    const path = item.site ? `/api/sites/${encodeURIComponent(item.site)}/words` : "/api/words";
    const kept = await ask<{ results: WordResult[] }>(path, { words: [word] });
    const refused = kept.ok ? kept.value.results.find((one) => one.status === "refused")?.problem : kept.problem;
    if (refused) setProblem(refused);
    else taught(`“${word.say}” is read as ${meaningOf(word.as)} from now on, on every device at its next contact.`);
  };
  return (
    <form
      class="words-form"
      onSubmit={(event: Event) => {
        event.preventDefault();
        void keep();
      }}
    >
      <label>
        <span>Say what it means, {item.site ? "at this site" : "everywhere"}: “donut is the cage O-ring”</span>
        <input
          ref={field}
          class="field"
          type="text"
          maxlength={200}
          autocomplete="off"
          spellcheck={false}
          value={sentence}
          onInput={(event: Event) => {
            setProblem(undefined);
            setSentence((event.target as HTMLInputElement).value);
          }}
          onKeyDown={(event: KeyboardEvent) => event.key === "Escape" && leave()}
        />
      </label>
      <div class="tried" role="status">
        {problem ? (
          <p class="bad">{problem}</p>
        ) : !read.ok ? (
          <p class="none">{read.problem}</p>
        ) : !shown ? (
          <p class="none">Looking at what was said before…</p>
        ) : !shown.ok ? (
          <p class="bad">{shown.problem}</p>
        ) : (
          <Changes tried={shown.value} word={read.value.say} as={meaningOf(read.value.as)} />
        )}
      </div>
      <div class="acts">
        <button type="submit" class="tab tab-first" disabled={!read.ok || !shown?.ok}>
          Teach it <kbd>Enter</kbd>
        </button>
        <button type="button" class="tab" onClick={leave}>
          Leave it <kbd>Esc</kbd>
        </button>
      </div>
    </form>
  );
}

/** Earlier phrases that would read otherwise, as they read now and as they would. */
function Changes({ tried, word, as }: { tried: WordTried; word: string; as: string }) {
  const { phrases, count, jobs } = tried;
  const signed = phrases.filter((one) => one.signed).length;
  return (
    <>
      <p>
        <b>
          “{word}” would mean {as}.
        </b>{" "}
        {count === 0
          ? `No phrase of the ${jobs} jobs looked at would read otherwise.`
          : `${count} earlier ${count === 1 ? "phrase" : "phrases"} would read otherwise${
              signed ? `; signed jobs stay as they were signed (${signed} of these)` : ""
            }:`}
      </p>
      <ol class="changes">
        {phrases.map((one) => (
          <li key={one.phrase}>
            <p class="sign-said">
              {one.tag ?? "no tag"}, {dayWords(one.day)}: “{one.text}”{one.signed ? " (signed)" : ""}
            </p>
            <div class="change">
              <div>
                <p class="source">now</p>
                {one.before.length > 0 ? <EntryLines entries={one.before} /> : <p class="none">nothing</p>}
              </div>
              <div>
                <p class="source">then</p>
                {one.after.length > 0 ? <EntryLines entries={one.after} /> : <p class="none">nothing</p>}
              </div>
            </div>
          </li>
        ))}
      </ol>
      {count > phrases.length && <p class="none">and {count - phrases.length} more.</p>}
    </>
  );
}
