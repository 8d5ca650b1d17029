import { useState } from "../../parts/hooks.ts";
import { useAnswer } from "../../parts/use-answer.ts";
import { dayWords } from "../../state/time-words.ts";
import { send } from "../../sync/ask.ts";

/** The private address of a site's due dates as a calendar: made, replaced, taken back. Shown only when it is made. */
export function CalendarAddress({ site }: { site: string }) {
  const at = `/api/sites/${encodeURIComponent(site)}/calendar`;
  const [answer, again] = useAnswer<{ since?: string }>(at);
  const [made, setMade] = useState<string | undefined>(undefined);
  const [problem, setProblem] = useState<string | undefined>(undefined);
  const since = answer?.ok ? answer.value.since : undefined;

  const make = async () => {
    const done = await send<{ address: string }>("POST", at);
    setMade(done.ok ? new URL(done.value.address, location.href).href : undefined);
    setProblem(done.ok ? undefined : done.problem);
    again();
  };
  const takeBack = async () => {
    const done = await send("DELETE", at);
    setMade(undefined);
    setProblem(done.ok ? undefined : done.problem);
    again();
  };

  return (
    <section class="calendar-address" aria-label="Due dates as a calendar">
      <h2 class="rule-head">Due dates as a calendar</h2>
      <p>
        {since
          ? `A calendar address was made on ${dayWords(since)}. Whoever has it can read the site’s due dates.`
          : "A private address lets any calendar show the site’s due dates. Whoever has it can read them."}
      </p>
      {made && (
        <label>
          <span>Copy it into the calendar now: it is not shown again</span>
          <input class="field" type="text" readonly value={made} onFocus={selectAll} />
        </label>
      )}
      {problem && (
        <p class="tell tell-bad" role="alert">
          {problem}
        </p>
      )}
      <div class="tell-row">
        <button type="button" class="tab" onClick={() => void make()}>
          {since ? "Make another; this one ends" : "Make an address"}
        </button>
        {since && (
          <button type="button" class="tab" onClick={() => void takeBack()}>
            Take it back
          </button>
        )}
      </div>
    </section>
  );
}

const selectAll = (event: Event) => (event.target as HTMLInputElement).select();
