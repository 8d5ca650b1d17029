import type { ReportState, Site } from "../../../core/index.ts";
import { DayPicker } from "../../parts/day-picker.tsx";
import { DeskFrame, Waiting } from "../../parts/desk-frame.tsx";
import { useEffect, useState } from "../../parts/hooks.ts";
import { useAnswer } from "../../parts/use-answer.ts";
import type { Deeds } from "../../state/deeds.ts";
import { may } from "../../state/door.ts";
import { addressOf } from "../../state/route.ts";
import type { State } from "../../state/state.ts";
import { dayWords, todayHere } from "../../state/time-words.ts";
import { path, send } from "../../sync/ask.ts";
import { CalendarAddress } from "./calendar-address.tsx";
import { Preview } from "./preview.tsx";
import { ReportSettingsForm } from "./settings-form.tsx";
import { Standing } from "./standing.tsx";

export interface ReportProps {
  route: { screen: "report"; site?: string; day?: string };
  state: State;
  deeds: Deeds;
}

/** While something is on its way, how often the screen looks again. */
const LOOK_AGAIN_MS = 1_500;

/** A day's report: whether it has gone, to whom, what went wrong, and who is to get it. */
export function ReportSheet({ route, state, deeds }: ReportProps) {
  const [sites] = useAnswer<{ sites: (Site & { today: string })[] }>("/api/sites");
  const known = sites?.ok ? sites.value.sites : [];
  const site = known.find((one) => one.site === route.site) ?? (known.length === 1 ? known[0] : undefined);
  const day = route.day ?? site?.today ?? todayHere();
  const at = site && `/api/sites/${encodeURIComponent(site.site)}/reports/${day}`;
  const [answer, again] = useAnswer<ReportState>(at);
  const [problem, setProblem] = useState<string | undefined>(undefined);
  const report = answer?.ok && answer.value.site === site?.site && answer.value.day === day ? answer.value : undefined;
  const moving = report?.versions.some((one) => ["waiting", "sending", "handing"].includes(one.state));
  useEffect(() => {
    if (!moving) return;
    const timer = setTimeout(again, LOOK_AGAIN_MS);
    return () => clearTimeout(timer);
  }, [answer, moving]);

  const go = (to: { site?: string; day?: string }) => {
    setProblem(undefined);
    location.hash = addressOf({ screen: "report", site: to.site ?? site?.site, day: to.day ?? route.day });
  };
  const sendIt = async (body: object) => {
    if (!at) return;
    const done = await send<ReportState>("POST", at, body);
    setProblem(done.ok ? undefined : done.problem);
    again();
  };

  return (
    <DeskFrame sign="REPORT" state={state} deeds={deeds}>
      <form class="pickers" aria-label="Which report" onSubmit={(event: Event) => event.preventDefault()}>
        <label>
          <span>Site</span>
          <select
            value={site?.site ?? ""}
            onChange={(event: Event) => go({ site: (event.target as HTMLSelectElement).value })}
          >
            {!site && <option value="">choose a site</option>}
            {known.map((one) => (
              <option key={one.site} value={one.site}>
                {one.name}
              </option>
            ))}
          </select>
        </label>
        <DayPicker day={day} go={(to) => go({ day: to })} />
      </form>
      {sites?.ok && !site ? (
        <p class="none">
          {known.length ? "Choose a site." : "No site is set up yet, so there is nobody to report to."}
        </p>
      ) : !report ? (
        <Waiting problem={answer && !answer.ok ? answer.problem : undefined} again={again} />
      ) : (
        <div class="sheet">
          <section class="paper-column" aria-label="Where it stands">
            <h2 class="rule-head">The report of {dayWords(day)}</h2>
            {problem && (
              <p class="tell tell-bad" role="alert">
                {problem}
              </p>
            )}
            <Standing report={report} send={may(state, "send_mail") ? sendIt : undefined} />
            <h2 class="rule-head">Read it</h2>
            <p class="report-links">
              <a href={path("/report", { site: report.site, day })}>as a page</a>
              <a href={path("/report", { site: report.site, day, form: "text" })}>as text</a>
              <a href={path("/report", { site: report.site, day, form: "pdf" })}>as PDF</a>
              <a href={path("/report", { site: report.site, day, form: "mail" })}>as the mail (.eml)</a>
              <a href={path("/api/entries", { site: report.site, from: day, to: day })}>its entries as CSV</a>
            </p>
            <Preview
              address={path("/report", { site: report.site, day, form: "text" })}
              turn={`${report.jobs} ${report.next} ${report.versions.length}`}
            />
          </section>
          <div class="paper-column">
            {may(state, "set_up") ? (
              <>
                <ReportSettingsForm key={report.site} report={report} kept={again} />
                <CalendarAddress key={`calendar ${report.site}`} site={report.site} />
              </>
            ) : (
              <p class="source">A lead sets up who gets the report, and when.</p>
            )}
          </div>
        </div>
      )}
    </DeskFrame>
  );
}
