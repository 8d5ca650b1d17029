import { type DueLine, type DueList, type Site, taskName } from "../../../core/index.ts";
import { DeskFrame, Waiting } from "../../parts/desk-frame.tsx";
import { useState } from "../../parts/hooks.ts";
import { Plate } from "../../parts/plate.tsx";
import { useAnswer } from "../../parts/use-answer.ts";
import type { Deeds } from "../../state/deeds.ts";
import { everySite } from "../../state/door.ts";
import { addressOf } from "../../state/route.ts";
import { siteName } from "../../state/seen.ts";
import type { State } from "../../state/state.ts";
import { dayWords } from "../../state/time-words.ts";
import { path } from "../../sync/ask.ts";
import { StillOwed } from "./still-owed.tsx";

/** Days ahead that are shown, and the bands they fall in. */
const AHEAD = 90;
/** Lines shown at once, the most urgent of them. */
const A_PAGE = 200;
const MOST = 1000;
const BANDS: { name: string; holds: (overdue: number) => boolean }[] = [
  { name: "Overdue", holds: (overdue) => overdue > 0 },
  { name: "Within 7 days", holds: (overdue) => overdue <= 0 && overdue >= -7 },
  { name: "Within 30 days", holds: (overdue) => overdue < -7 && overdue >= -30 },
  { name: `Within ${AHEAD} days`, holds: (overdue) => overdue < -30 },
];

/** What is due, overdue first; in each band severe service first. */
export function DueBoard({ site, state, deeds }: { site: string | undefined; state: State; deeds: Deeds }) {
  const [sites] = useAnswer<{ sites: Site[] }>("/api/sites");
  const [most, setMost] = useState(A_PAGE);
  const [answer, again] = useAnswer<DueList>(path("/api/due", { site, days: String(AHEAD), limit: String(most) }));
  const known = sites?.ok ? sites.value.sites : [];
  const due = answer?.ok ? [...answer.value.due].sort(byUrgency) : [];
  return (
    <DeskFrame sign="DUE" state={state} deeds={deeds}>
      <form class="pickers" aria-label="Which valves" onSubmit={(event: Event) => event.preventDefault()}>
        <label>
          <span>Site</span>
          <select
            value={site ?? ""}
            onChange={(event: Event) => {
              location.hash = addressOf({
                screen: "due",
                site: (event.target as HTMLSelectElement).value || undefined,
              });
            }}
          >
            <option value="">{everySite(state)}</option>
            {known.map((one) => (
              <option key={one.site} value={one.site}>
                {one.name}
              </option>
            ))}
          </select>
        </label>
      </form>
      <StillOwed key={site ?? ""} site={site} state={state}>
        {!answer?.ok ? (
          <Waiting problem={answer?.problem} again={again} />
        ) : !due.length ? (
          <p class="none">Nothing falls due within {AHEAD} days.</p>
        ) : (
          <>
            {answer.value.count > due.length && (
              <p class="count">
                The {due.length} most urgent of {answer.value.count}; {answer.value.overdue} are overdue.{" "}
                {most < MOST && (
                  <button type="button" class="tab" onClick={() => setMost((before) => before + A_PAGE)}>
                    Show {A_PAGE} more
                  </button>
                )}
              </p>
            )}
            {BANDS.map((band) => {
              const lines = due.filter((one) => band.holds(one.overdue));
              if (!lines.length) return null;
              return (
                <section key={band.name} class="band" aria-label={band.name}>
                  <h2 class={`rule-head${band.name === "Overdue" ? " rule-bad" : ""}`}>
                    {band.name} ({lines.length})
                  </h2>
                  <ul class="dues">
                    {lines.map((one) => (
                      <li key={`${one.site} ${one.tag} ${one.task}`}>
                        <a class="due" href={addressOf({ screen: "valve", tag: one.tag, site: one.site })}>
                          <Plate tag={one.tag} small />
                          <span class="due-words">
                            <b>{taskName(one.task)}</b>{" "}
                            {one.service === "severe" && <span class="flag flag-severe">severe service</span>}
                            <span class={one.overdue > 0 ? "bad" : ""}>{lateWords(one)}</span>
                            <span class="why">
                              {siteName(state, one.site)}
                              {one.site ? ": " : ""}
                              {one.why}
                            </span>
                          </span>
                        </a>
                      </li>
                    ))}
                  </ul>
                </section>
              );
            })}
          </>
        )}
      </StillOwed>
    </DeskFrame>
  );
}

function byUrgency(a: DueLine, b: DueLine): number {
  return Number(b.service === "severe") - Number(a.service === "severe") || b.overdue - a.overdue;
}

function lateWords(one: DueLine): string {
  const days = Math.abs(one.overdue);
  const count = days === 1 ? "1 day" : `${days} days`;
  if (one.overdue > 0) return `${dayWords(one.on)}, ${count} late`;
  return one.overdue === 0 ? `${dayWords(one.on)}, today` : `${dayWords(one.on)}, in ${count}`;
}
