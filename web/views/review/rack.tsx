import type { JobToSign } from "../../../core/index.ts";
import { addressOf } from "../../state/route.ts";
import { clockThere, dayWords } from "../../state/time-words.ts";
import { REASON_STAMPS } from "./reason-words.ts";
import type { Task } from "./use-review.ts";

/** What waits, one below the other, the one at hand marked. */
export function Rack({
  tasks,
  at,
  notYet,
  choose,
}: {
  tasks: readonly Task[];
  at: number;
  notYet: readonly JobToSign[];
  choose: (at: number) => void;
}) {
  return (
    <nav class="rack" aria-label="What waits">
      <ol>
        {tasks.map((task, n) => (
          <li key={task.key}>
            <button
              type="button"
              class="rack-line"
              aria-current={n === at ? "true" : undefined}
              onClick={() => choose(n)}
            >
              {task.of === "phrase" ? (
                <>
                  <span class={`stamp reason-${task.item.reasons[0]?.reason}`}>
                    {task.item.reasons[0] ? REASON_STAMPS[task.item.reasons[0].reason] : ""}
                  </span>
                  <span class="rack-words">
                    <b>{task.item.tag ?? "no tag"}</b> {task.item.text || task.item.said}
                  </span>
                </>
              ) : (
                <>
                  <span class="stamp stamp-done">Sign</span>
                  <span class="rack-words">
                    <b>{task.job.tag ?? "no tag"}</b> {dayWords(task.job.day)}, {clockThere(task.job.startedAt)}
                  </span>
                </>
              )}
            </button>
          </li>
        ))}
      </ol>
      {notYet.length > 0 && (
        <>
          <h2 class="rule-head">Not yet to be signed</h2>
          <ul>
            {notYet.map((job) => (
              <li key={job.id} class="rack-not-yet">
                <a href={addressOf({ screen: "job", id: job.id })}>{job.tag ?? "no tag"}</a> {dayWords(job.day)},{" "}
                {[job.doubtful && `${job.doubtful} to look at`, job.asked && `${job.asked} asked`]
                  .filter(Boolean)
                  .join(", ")}
              </li>
            ))}
          </ul>
        </>
      )}
    </nav>
  );
}
