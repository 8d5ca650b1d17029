import type { Child } from "hono/jsx";
import { useState } from "../../parts/hooks.ts";
import type { Answer } from "../../sync/ask.ts";

/** A form whose answer is told below it in the server's words; shut while it is on its way. */
export function DoorForm({
  submit,
  button,
  children,
  done,
}: {
  /** undefined: there is nothing to send yet */
  submit: (form: HTMLFormElement) => Promise<Answer<unknown>> | undefined;
  button: string;
  children?: Child;
  /** what to say when it was done; without it the screen changes */
  done?: string;
}) {
  const [told, setTold] = useState<{ ok: boolean; words: string } | undefined>(undefined);
  const [sending, setSending] = useState(false);
  const onSubmit = async (event: Event) => {
    event.preventDefault();
    if (sending) return;
    const form = event.currentTarget as HTMLFormElement;
    setSending(true);
    const answer = await submit(form);
    setSending(false);
    if (!answer) return;
    setTold(answer.ok ? { ok: true, words: done ?? "" } : { ok: false, words: answer.problem });
    if (answer.ok) form.reset();
  };
  return (
    <form class="teach" onSubmit={(event: Event) => void onSubmit(event)}>
      {children}
      <button type="submit" class="glove">
        {sending ? "One moment…" : button}
      </button>
      <p role="status" class={told?.words ? `tell${told.ok ? "" : " tell-bad"}` : "unseen"}>
        {told?.words ?? ""}
      </p>
    </form>
  );
}

export function TextField(about: {
  label: string;
  name: string;
  autocomplete: string;
  secret?: boolean;
  least?: number;
  value?: string;
}) {
  return (
    <label>
      <span>{about.label}</span>
      <input
        class="field"
        name={about.name}
        type={about.secret ? "password" : "text"}
        autocomplete={about.autocomplete}
        autocapitalize="off"
        spellcheck={false}
        required
        minlength={about.least}
        maxlength={200}
        value={about.value}
      />
    </label>
  );
}

export function typed(form: HTMLFormElement, name: string): string {
  const field = form.elements.namedItem(name);
  return field instanceof HTMLInputElement || field instanceof HTMLSelectElement ? field.value : "";
}
