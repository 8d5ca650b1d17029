import type { JobToSign, ReviewItem, ReviewPage } from "../../../core/index.ts";
import { Waiting } from "../../parts/desk-frame.tsx";
import { EntryLines } from "../../parts/entry-lines.tsx";
import { useEffect } from "../../parts/hooks.ts";
import { Plate } from "../../parts/plate.tsx";
import { useAnswer } from "../../parts/use-answer.ts";
import { addressOf } from "../../state/route.ts";
import { siteName } from "../../state/seen.ts";
import type { State } from "../../state/state.ts";
import { clockHere, clockThere, dayWords } from "../../state/time-words.ts";
import type { Answer } from "../../sync/ask.ts";

/** A job with nothing left to doubt: what is accepted with the signature, phrase by phrase, and what was decided. */
export function SignCard({ job, state, shown }: { job: JobToSign; state: State; shown: () => void }) {
  const all = `/api/review?${new URLSearchParams({ job: job.id, limit: "100" })}`;
  const [open] = useAnswer<ReviewPage>(all);
  const [settled] = useAnswer<ReviewPage>(`${all}&state=settled`);
  const both = open?.ok && settled?.ok;
  useEffect(() => {
    if (both) shown();
  }, [both]);
  return (
    <>
      <div class="docket-head">
        <Plate tag={job.tag} small />
        <p class="docket-when">
          {dayWords(job.day)}, begun {clockThere(job.startedAt)}
          {job.by.length > 0 ? ` by ${job.by.join(" and ")}` : ""}
          {job.site ? `, ${siteName(state, job.site)}` : ""}{" "}
          <a href={addressOf({ screen: "job", id: job.id })}>whole job</a>
        </p>
      </div>
      {job.cameAfter > 0 && (
        <p class="touched">
          {job.cameAfter === 1 ? "A phrase" : `${job.cameAfter} phrases`} came after {job.signedBy ?? "somebody"} signed
          it.
        </p>
      )}
      {job.reopened && (
        <p class="touched">
          Opened again{job.reopened.by ? ` by ${job.reopened.by}` : ""} at {clockHere(job.reopened.at)}:{" "}
          {job.reopened.why}
        </p>
      )}
      {!both && <Waiting problem={problemOf(open) ?? problemOf(settled)} again={() => location.reload()} />}
      <Lines title={`Accepted with your signature (${job.certain})`} page={open?.ok ? open.value : undefined} />
      <Lines title="Decided" page={settled?.ok ? settled.value : undefined} />
    </>
  );
}

const problemOf = (answer: Answer<unknown> | undefined) => (answer && !answer.ok ? answer.problem : undefined);

function Lines({ title, page }: { title: string; page: ReviewPage | undefined }) {
  if (!page || page.items.length === 0) return null;
  const items = [...page.items].sort((a: ReviewItem, b: ReviewItem) => (a.saidAt < b.saidAt ? -1 : 1));
  return (
    <section aria-label={title}>
      <h2 class="rule-head">{title}</h2>
      <ol class="sign-lines">
        {items.map((item) => (
          <li key={item.phrase}>
            <p class="sign-said">“{item.text}”</p>
            <EntryLines entries={item.entries} />
          </li>
        ))}
      </ol>
    </section>
  );
}
