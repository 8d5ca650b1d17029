import type { JobToSign, ReviewPage } from "../../../core/index.ts";
import { addressOf } from "../../state/route.ts";
import { countWords } from "./reason-words.ts";
import type { Task } from "./use-review.ts";

/** How much waits, by its gravest reason. */
export function Tally({ page, tasks }: { page: ReviewPage; tasks: readonly Task[] }) {
  const jobs = tasks.filter((task) => task.of === "job").length;
  return (
    <ul class="tally" aria-label="How much waits">
      {page.waiting.map(({ reason, count }) =>
        reason === "certain" ? null : (
          <li key={reason} class={`flag tally-${reason}`}>
            {countWords(reason, count)}
          </li>
        ),
      )}
      {page.asked > 0 && <li class="flag">{page.asked} with a technician</li>}
      {jobs > 0 && (
        <li class="flag">
          {jobs} {jobs === 1 ? "job" : "jobs"} to sign
        </li>
      )}
    </ul>
  );
}

/** Nothing waits: where the report stands is the next thing to know. */
export function Gone({ site, notYet }: { site: string | undefined; notYet: readonly JobToSign[] }) {
  return (
    <div class="gone">
      <p>
        {notYet.length > 0 ? "Nothing more can be done until answers come." : "Everything is looked at and signed."}
      </p>
      <p>
        <a class="tab" href={addressOf({ screen: "report", site })}>
          Has the report gone?
        </a>
      </p>
    </div>
  );
}
