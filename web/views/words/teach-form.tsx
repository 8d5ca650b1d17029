import { type Condition, meaningOf, type Part, type TaughtWord, type Work } from "../../../core/index.ts";
import { glossary } from "../../../core/pages/index.ts";
import { useRef, useState } from "../../parts/hooks.ts";
import type { Deeds } from "../../state/deeds.ts";

const KINDS = { part: "a part", condition: "something found", work: "something done" } as const;
type Kind = keyof typeof KINDS;
const KNOWN = glossary();

/** How a word for something found stands in a sentence: the reader must know what it may be said of. */
const FORMS = {
  is: "the seat is …",
  has: "there is a … on the seat",
  does: "the seat …",
} as const;

/** A word, and what it means: one of the log's own codes. */
export function TeachForm({ say: wanted, deeds }: { say?: string; deeds: Deeds }) {
  const [kind, setKind] = useState<Kind>("part");
  const [form, setForm] = useState<keyof typeof FORMS>("is");
  const [told, setTold] = useState<{ ok: boolean; words: string } | undefined>(undefined);
  const word = useRef<HTMLInputElement>(null);
  const code = useRef<HTMLSelectElement>(null);

  const onSubmit = async (event: Event) => {
    event.preventDefault();
    const say = word.current;
    if (!say || !code.current?.value) return;
    const as = meaning(kind, code.current.value, form);
    const answer = await deeds.teach(say.value, as);
    setTold(
      answer.ok
        ? { ok: true, words: `“${answer.value.say}” is read as ${meaningOf(as)} from now on.` }
        : { ok: false, words: answer.problem },
    );
    if (answer.ok) say.value = "";
    say.focus();
  };

  return (
    <form class="teach" onSubmit={(event: Event) => void onSubmit(event)}>
      <label>
        <span>The word, as it is said</span>
        <input
          ref={word}
          value={wanted}
          class="field"
          type="text"
          maxlength={60}
          required
          autocomplete="off"
          autocapitalize="off"
          spellcheck={false}
        />
      </label>
      <label>
        <span>It names</span>
        <select class="field" value={kind} onChange={(event: Event) => setKind(chosen(event) as Kind)}>
          {Object.entries(KINDS).map(([one, name]) => (
            <option key={one} value={one}>
              {name}
            </option>
          ))}
        </select>
      </label>
      <label>
        <span>The same as</span>
        <select ref={code} class="field" key={kind}>
          {KNOWN.filter((line) => line.kind === kind).map((line) => (
            <option key={line.code} value={line.code}>
              {line.name}
              {line.help ? `: ${line.help}` : ""}
            </option>
          ))}
        </select>
      </label>
      {kind === "condition" && (
        <label>
          <span>Said as in</span>
          <select class="field" value={form} onChange={(event: Event) => setForm(chosen(event) as keyof typeof FORMS)}>
            {Object.entries(FORMS).map(([one, name]) => (
              <option key={one} value={one}>
                {name}
              </option>
            ))}
          </select>
        </label>
      )}
      <button type="submit" class="glove">
        Teach it
      </button>
      <p role="status" class={told ? `tell${told.ok ? "" : " tell-bad"}` : "unseen"}>
        {told?.words ?? ""}
      </p>
    </form>
  );
}

/** The code is one of the list drawn from the rows of that kind, so it is one of that kind's codes. */
function meaning(kind: Kind, code: string, form: keyof typeof FORMS): TaughtWord["as"] {
  if (kind === "part") return { part: code as Part };
  return kind === "work" ? { work: code as Work } : { condition: code as Condition, form };
}

function chosen(event: Event): string {
  return (event.target as HTMLSelectElement).value;
}
