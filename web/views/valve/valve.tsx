import { type Entry, familyOf, nameOf, type ValveView } from "../../../core/index.ts";
import { DeskFrame, Waiting } from "../../parts/desk-frame.tsx";
import { EntryLines } from "../../parts/entry-lines.tsx";
import { CheckLines, DueLines, FollowLines } from "../../parts/follow-lines.tsx";
import { OwnerChoice } from "../../parts/owner-choice.tsx";
import { Plate } from "../../parts/plate.tsx";
import { useAnswer } from "../../parts/use-answer.ts";
import type { Deeds } from "../../state/deeds.ts";
import { addressOf } from "../../state/route.ts";
import { dayAtSite, siteName } from "../../state/seen.ts";
import type { State } from "../../state/state.ts";
import { dayWords, instantHere } from "../../state/time-words.ts";
import { path } from "../../sync/ask.ts";
import { Timeline } from "./timeline.tsx";
import { timelinePoints } from "./timeline-points.ts";

/** One valve: what it is, what is due and open, and everything that was ever said of it. */
export function ValveSheet({ tag, site, state, deeds }: { tag: string; site?: string; state: State; deeds: Deeds }) {
  const [answer, again] = useAnswer<ValveView>(path(`/api/valves/${encodeURIComponent(tag)}`, { site }));
  if (!answer?.ok)
    return (
      <DeskFrame sign="VALVE" state={state} deeds={deeds}>
        <Waiting problem={answer?.problem} again={again} />
      </DeskFrame>
    );
  const view = answer.value;
  const today = dayAtSite(state, view.site, instantHere(new Date()));
  return (
    <DeskFrame sign="VALVE" state={state} deeds={deeds}>
      <div class="job-head">
        <Plate tag={view.tag} />
        <p>
          {[siteName(state, view.site), ...factWords(view)].filter(Boolean).join(", ") ||
            "Nothing is set down about it."}
        </p>
        <button type="button" class="tab print-it" onClick={() => print()}>
          Print
        </button>
      </div>
      {view.history.length > 0 && <Timeline points={timelinePoints(view.history)} due={view.due} today={today} />}
      <div class="sheet">
        <section class="paper-column" aria-label="What is open">
          <h2 class="rule-head">Open</h2>
          <FollowLines
            followUps={view.open}
            full
            beside={(at) =>
              view.owned[at] && <OwnerChoice site={view.site} tag={view.tag} owned={view.owned[at]} state={state} />
            }
          />
          <h2 class="rule-head">Next dates</h2>
          <DueLines due={view.due} today={today} />
          {view.checks.length > 0 && (
            <>
              <h2 class="rule-head">Last checked against limits</h2>
              <CheckLines checks={view.checks} />
            </>
          )}
        </section>
        <section class="paper-column" aria-label="History">
          <h2 class="rule-head">History, newest first</h2>
          {view.history.length ? (
            <ol class="phrases">
              {[...view.history].reverse().map((job) => (
                <li key={job.job} class="phrase">
                  <p class="phrase-when">
                    <a href={addressOf({ screen: "job", id: job.job })}>{dayWords(job.on)}</a>
                  </p>
                  <EntryLines entries={job.entries.filter(saysMore)} />
                </li>
              ))}
            </ol>
          ) : (
            <p class="none">Nothing was said of it yet.</p>
          )}
        </section>
      </div>
    </DeskFrame>
  );
}

/** That it was this valve is what the page is about. */
function saysMore(entry: Entry): boolean {
  if (entry.type === "command") return false;
  return entry.type !== "valve" || [entry.size_in, entry.acts, entry.service].some((said) => said !== undefined);
}

function factWords({ valve, ownFamily }: ValveView): string[] {
  const facts = [
    valve.family && familyOf(valve.family, ownFamily && [ownFamily.data]).name,
    valve.size_in && `${valve.size_in} inch`,
    valve.acts && nameOf(valve.acts, "acts"),
    valve.service && nameOf(valve.service, "service"),
    valve.leak_class && `seat class ${valve.leak_class}`,
    valve.port_in && `port ${valve.port_in} in`,
    valve.rated_dp_psi && `rated for ${valve.rated_dp_psi} psi across`,
    valve.cv && `Cv ${valve.cv}`,
    valve.interval_months && `seat every ${valve.interval_months} months by the site`,
  ];
  return facts.filter((fact): fact is string => Boolean(fact));
}
