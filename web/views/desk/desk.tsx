import type { JobSummary, Keeping, Site } from "../../../core/index.ts";
import { DayPicker } from "../../parts/day-picker.tsx";
import { DeskFrame, Waiting } from "../../parts/desk-frame.tsx";
import { useAnswer } from "../../parts/use-answer.ts";
import type { Deeds } from "../../state/deeds.ts";
import { everySite, may } from "../../state/door.ts";
import { addressOf } from "../../state/route.ts";
import { siteName } from "../../state/seen.ts";
import type { State } from "../../state/state.ts";
import { dayWords, todayHere } from "../../state/time-words.ts";
import { path } from "../../sync/ask.ts";
import { JobTicket } from "./job-ticket.tsx";
import { KeepingForm } from "./keeping-form.tsx";

export interface DeskProps {
  route: { screen: "desk"; site?: string; day?: string };
  state: State;
  deeds: Deeds;
}

/** The jobs of one day at one site, what can hurt first. */
export function Desk({ route, state, deeds }: DeskProps) {
  const [sites, againSites] = useAnswer<{ sites: (Site & { today: string; keeping: Keeping })[] }>("/api/sites");
  const known = sites?.ok ? sites.value.sites : [];
  const site = route.site ?? "";
  const day = route.day ?? todayAt(known.filter((one) => !site || one.site === site));
  // not before the sites have answered: only they say which day it is there
  const [answer, again] = useAnswer<{ jobs: JobSummary[] }>(sites && path("/api/jobs", { site, day }));
  const go = (to: { site?: string; day?: string }) => {
    location.hash = addressOf({ screen: "desk", site: to.site ?? site, day: to.day ?? route.day });
  };
  const jobs = answer?.ok ? [...answer.value.jobs].sort(byWeight) : [];
  return (
    <DeskFrame sign="JOBS" state={state} deeds={deeds}>
      <form class="pickers" aria-label="Which jobs" onSubmit={(event: Event) => event.preventDefault()}>
        <label>
          <span>Site</span>
          <select value={site} onChange={(event: Event) => go({ site: (event.target as HTMLSelectElement).value })}>
            <option value="">{everySite(state)}</option>
            {known.map((one) => (
              <option key={one.site} value={one.site}>
                {one.name}
              </option>
            ))}
            {site && !known.some((one) => one.site === site) && <option value={site}>{site}</option>}
          </select>
        </label>
        <DayPicker day={day} go={(to) => go({ day: to })} />
        {site && may(state, "read_all") && (
          <a class="tab" href={addressOf({ screen: "report", site, day })}>
            The day’s report
          </a>
        )}
      </form>
      {!answer?.ok ? (
        <Waiting problem={answer?.problem} again={again} />
      ) : jobs.length ? (
        <>
          <p class="count">
            {jobs.length} {jobs.length === 1 ? "job" : "jobs"}, {dayWords(day)}
          </p>
          <ul class="tickets">
            {jobs.map((job) => (
              <JobTicket key={job.id} job={job} site={site ? "" : siteName(state, job.site)} />
            ))}
          </ul>
        </>
      ) : (
        <p class="none">No jobs on {dayWords(day)}.</p>
      )}
      <div>
        {may(state, "set_up") &&
          known
            .filter((one) => one.site === site)
            .map((one) => <KeepingForm key={one.site} site={one} kept={againSites} />)}
      </div>
    </DeskFrame>
  );
}

/** Today at these sites where they agree, else here. */
function todayAt(sites: { today: string }[]): string {
  const days = new Set(sites.map((one) => one.today));
  const [only] = days;
  return only && days.size === 1 ? only : todayHere();
}

/** Hazards, then failed tests, then what is owed now, then words not read; else the latest first. */
function byWeight(a: JobSummary, b: JobSummary): number {
  return (
    b.hazards.length - a.hazards.length ||
    b.failedTests.length - a.failedTests.length ||
    Number(b.now > 0) - Number(a.now > 0) ||
    Number(b.unread > 0) - Number(a.unread > 0) ||
    Date.parse(b.startedAt) - Date.parse(a.startedAt)
  );
}
