import type { Condition, FoundList, Part } from "../../../core/index.ts";
import { glossary } from "../../../core/pages/index.ts";
import { DeskFrame, Waiting } from "../../parts/desk-frame.tsx";
import { EntryLines } from "../../parts/entry-lines.tsx";
import { useState } from "../../parts/hooks.ts";
import { Plate } from "../../parts/plate.tsx";
import { SitePicker } from "../../parts/site-picker.tsx";
import { useAnswer } from "../../parts/use-answer.ts";
import type { Deeds } from "../../state/deeds.ts";
import { addressOf } from "../../state/route.ts";
import type { State } from "../../state/state.ts";
import { clockThere, dayWords } from "../../state/time-words.ts";
import { path } from "../../sync/ask.ts";

interface Asked {
  tag?: string;
  words?: string;
  part?: Part;
  condition?: Condition;
  from?: string;
  to?: string;
}
const WORDS = glossary();
const A_PAGE = 50;

/** What was said, looked for by tag, words, part, condition and day. */
export function SearchSheet({ state, deeds }: { state: State; deeds: Deeds }) {
  const [asked, setAsked] = useState<Asked>({});
  const [site, setSite] = useState<string | undefined>(undefined);
  const any = Object.values(asked).some(Boolean);
  const query = { ...asked, site };
  const onSubmit = (event: Event) => {
    event.preventDefault();
    const form = new FormData(event.target as HTMLFormElement);
    const said = (name: string) => String(form.get(name) ?? "").trim() || undefined;
    setAsked({
      tag: said("tag"),
      words: said("words"),
      part: said("part") as Part | undefined,
      condition: said("condition") as Condition | undefined,
      from: said("from"),
      to: said("to"),
    });
  };
  return (
    <DeskFrame sign="SEARCH" state={state} deeds={deeds}>
      <SitePicker state={state} site={site} choose={setSite} />
      <search>
        <form class="pickers" aria-label="What to look for" onSubmit={onSubmit}>
          <Field name="tag" label="Valve" />
          <Field name="words" label="Words said" />
          <Choice name="part" label="Part" kind="part" />
          <Choice name="condition" label="Found" kind="condition" />
          <Field name="from" label="From" type="date" />
          <Field name="to" label="To" type="date" />
          <button type="submit" class="tab tab-first">
            Look
          </button>
        </form>
      </search>
      {any ? (
        <FoundPage key={JSON.stringify(query)} query={query} />
      ) : (
        <p class="none">Everything that was said can be found here.</p>
      )}
    </DeskFrame>
  );
}

/** A page of what was found, and behind it the next, once that is asked for. */
function FoundPage({ query, after }: { query: Record<string, string | undefined>; after?: string }) {
  const [goesOn, setGoesOn] = useState(false);
  const [answer, again] = useAnswer<FoundList>(path("/api/search", { ...query, after, limit: String(A_PAGE) }));
  if (!answer?.ok) return <Waiting problem={answer?.problem} again={again} />;
  const { found, next, lookedTo } = answer.value;
  return (
    <>
      <p class="count" role="status">
        {countWords(answer.value, after !== undefined)}
      </p>
      <ol class="sheet found">
        {found.map((one) => (
          <li key={one.phrase} class="phrase">
            <p class="phrase-when">
              <Plate tag={one.tag} small /> {dayWords(one.day)}, {clockThere(one.saidAt)}
              {one.by ? ` by ${one.by}` : ""} <a href={addressOf({ screen: "job", id: one.job })}>the job</a>
            </p>
            <p class="found-said">“{one.text}”</p>
            <EntryLines entries={one.entries} />
          </li>
        ))}
      </ol>
      {next && goesOn && <FoundPage key={next} query={query} after={next} />}
      {next && !goesOn && (
        <button type="button" class="tab" onClick={() => setGoesOn(true)}>
          {lookedTo ? "Look further back" : "Show more"}
        </button>
      )}
    </>
  );
}

/** How many, and how far back was looked where that was not all the way. */
function countWords({ found, next, lookedTo }: FoundList, isMore: boolean): string {
  const phrases = `${found.length}${isMore ? " more" : ""} ${found.length === 1 ? "phrase" : "phrases"}`;
  if (lookedTo)
    return `${found.length ? phrases : `Nothing${isMore ? " more" : ""} of the kind`} back to ${dayWords(lookedTo)}`;
  if (found.length === 0) return isMore ? "Nothing more of the kind was said." : "Nothing of the kind was said.";
  return next && !isMore ? `The latest ${phrases}` : phrases;
}

function Field({ name, label, type = "text" }: { name: string; label: string; type?: string }) {
  return (
    <label>
      <span>{label}</span>
      <input name={name} type={type} maxlength={200} autocomplete="off" spellcheck={false} />
    </label>
  );
}

function Choice({ name, label, kind }: { name: string; label: string; kind: "part" | "condition" }) {
  return (
    <label>
      <span>{label}</span>
      <select name={name}>
        <option value="">any</option>
        {WORDS.filter((line) => line.kind === kind).map((line) => (
          <option key={line.code} value={line.code}>
            {line.name}
          </option>
        ))}
      </select>
    </label>
  );
}
