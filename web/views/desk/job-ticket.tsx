import { type Hazard, type JobSummary, nameOf, type Test } from "../../../core/index.ts";
import { Plate } from "../../parts/plate.tsx";
import { hazardName, listed } from "../../parts/words.ts";
import { addressOf } from "../../state/route.ts";
import { clockThere } from "../../state/time-words.ts";

/** One job of the day as the ticket on the rack: its plate, and what a lead must know before opening it. */
export function JobTicket({ job, site }: { job: JobSummary; site: string }) {
  // a summary carries codes as text: they are the entries' own
  const hazards = job.hazards as Hazard[];
  const failed = job.failedTests as Test[];
  const others = job.tags.filter((tag) => tag !== job.tag);
  return (
    <li>
      <a class={`ticket${job.hazards.length ? " ticket-hazard" : ""}`} href={addressOf({ screen: "job", id: job.id })}>
        <Plate tag={job.tag ?? job.tags[0]} small />
        <span class="ticket-when">
          {clockThere(job.startedAt)}
          {site && ` ${site}`}
        </span>
        <span class="ticket-words">
          {job.hazards.length > 0 && <b class="flag flag-bad">Hazard said: {listed(hazards.map(hazardName))}</b>}
          {job.failedTests.length > 0 && (
            <b class="flag flag-bad">Failed: {listed(failed.map((test) => nameOf(test, "test")))}</b>
          )}
          {job.now > 0 && <b class="flag flag-now">{job.now} to do now</b>}
          {job.unread > 0 && <b class="flag flag-unread">{job.unread} with words not read</b>}
          {others.length > 0 && job.tag && <span>also {others.join(", ")}</span>}
          <span>
            {job.phrases} {job.phrases === 1 ? "phrase" : "phrases"}, {job.entries}{" "}
            {job.entries === 1 ? "entry" : "entries"}, {job.finished ? "closed" : "open"}
          </span>
        </span>
      </a>
    </li>
  );
}
