import type { DecisionSent, ReviewItem } from "../../../core/index.ts";
import { DeskFrame, Waiting } from "../../parts/desk-frame.tsx";
import { useRef, useState } from "../../parts/hooks.ts";
import { SitePicker } from "../../parts/site-picker.tsx";
import type { Deeds } from "../../state/deeds.ts";
import { may } from "../../state/door.ts";
import { addressOf } from "../../state/route.ts";
import type { State } from "../../state/state.ts";
import { ItemCard, useFocus } from "./item-card.tsx";
import { type Act, useKeys } from "./keys.ts";
import { Rack } from "./rack.tsx";
import { SignCard } from "./sign-card.tsx";
import { Gone, Tally } from "./tally.tsx";
import { TeachPanel } from "./teach-panel.tsx";
import { type Task, useReview } from "./use-review.ts";
import { WordsForm } from "./words-form.tsx";

type Form = "amend" | "ask" | "strike" | "teach";

/** The lead's desk: what can hurt or mislead first, settled by a touch, a key or a phrase; then sign. */
export function ReviewDesk({ site, state, deeds }: { site: string | undefined; state: State; deeds: Deeds }) {
  const [form, setForm] = useState<{ kind: Form; begin: string } | undefined>(undefined);
  const [told, setTold] = useState<{ bad: boolean; words: string } | undefined>(undefined);
  const [chosen, setChosen] = useState<string | undefined>(undefined);
  const [place, setPlace] = useState(0);
  const [busy, setBusy] = useState(false);
  // nobody signs what he was not shown
  const [shown, setShown] = useState<string | undefined>(undefined);
  const last = useRef<{ item: ReviewItem; decided: number } | undefined>(undefined);
  const review = useReview(site, form !== undefined || busy);
  const { tasks } = review;
  // what was at hand is gone: what stood behind it takes its place
  const found = tasks.findIndex((task) => task.key === chosen);
  const at = found >= 0 ? found : Math.min(place, Math.max(0, tasks.length - 1));
  const task = tasks[at];
  const card = useFocus(task?.key ?? "", form !== undefined);

  const choose = (n: number) => {
    const to = Math.max(0, Math.min(n, tasks.length - 1));
    setForm(undefined);
    setTold(undefined);
    setPlace(to);
    setChosen(tasks[to]?.key);
  };
  const settle = async (item: ReviewItem, what: DecisionSent["what"], words?: string) => {
    if (busy) return;
    setBusy(true);
    const done = await review.decide(item, what, words);
    setBusy(false);
    setTold(done.ok ? { bad: false, words: DONE[what] } : { bad: true, words: done.problem });
    if (!done.ok) return;
    last.current = what === "returned" ? undefined : { item, decided: item.decided + 1 };
    setForm(undefined);
    setPlace(at);
    setChosen(undefined);
  };
  const sign = async (to: Task | undefined) => {
    if (to?.of !== "job" || busy || shown !== to.key) return;
    setBusy(true);
    const done = await review.sign(to.job);
    setBusy(false);
    last.current = undefined;
    setTold(
      done.ok ? { bad: false, words: `${to.job.tag ?? "The job"} is signed.` } : { bad: true, words: done.problem },
    );
    setPlace(at);
    setChosen(undefined);
  };
  const act = (what: Act) => {
    const item = task?.of === "phrase" ? task.item : undefined;
    if (what === "next" || what === "previous") choose(at + (what === "next" ? 1 : -1));
    else if (what === "sign" || (what === "accept" && task?.of === "job")) void sign(task);
    else if (what === "back" && last.current)
      void settle({ ...last.current.item, decided: last.current.decided }, "returned");
    else if (what === "hear") document.querySelector<HTMLButtonElement>(".docket .clip button")?.click();
    else if (!item) return;
    else if (what === "accept") void settle(item, "accepted");
    else if (what === "strike") void settle(item, "struck");
    else if (what === "amend") setForm({ kind: "amend", begin: item.answers.at(-1)?.text ?? (item.text || item.said) });
    else if (what === "ask") setForm({ kind: "ask", begin: questionFor(item) });
    else if (what === "teach" && may(state, "teach")) setForm({ kind: "teach", begin: sentenceFor(item) });
  };
  const keyed = useKeys(act);

  const does = form && form.kind !== "teach" ? FORM_DOES[form.kind] : "accepted";

  return (
    <DeskFrame sign="REVIEW" state={state} deeds={deeds}>
      <SitePicker
        state={state}
        site={site}
        choose={(to) => {
          location.hash = addressOf({ screen: "review", site: to });
        }}
      />
      {!review.page ? (
        <Waiting problem={review.problem} again={review.look} />
      ) : (
        <>
          <div class="review-top">
            <Tally page={review.page} tasks={tasks} />
            <p class="docket-told" role="status">
              {told && !told.bad ? told.words : ""}
            </p>
          </div>
          {review.problem && (
            <p class="tell tell-bad" role="alert">
              {review.problem}
            </p>
          )}
          <div class="review" ref={keyed}>
            <article
              ref={card}
              tabindex={-1}
              class={`docket${task?.of === "phrase" ? ` docket-${task.item.reasons[0]?.reason}` : ""}`}
              aria-label={task ? nameOf(task) : "Nothing waits"}
            >
              {told?.bad && (
                <p class="tell tell-bad" role="alert">
                  {told.words}
                </p>
              )}
              {!task ? (
                <Gone site={site} notYet={review.notYet} />
              ) : task.of === "phrase" ? (
                <ItemCard key={task.key} item={task.item} state={state} />
              ) : (
                <SignCard key={task.key} job={task.job} state={state} shown={() => setShown(task.key)} />
              )}
              {task?.of === "phrase" && form?.kind === "teach" && (
                <TeachPanel
                  key={`${task.key} teach`}
                  item={task.item}
                  begin={form.begin}
                  leave={() => setForm(undefined)}
                  taught={(words) => {
                    setForm(undefined);
                    setTold({ bad: false, words });
                    review.look();
                  }}
                />
              )}
              {task?.of === "phrase" && form && form.kind !== "teach" && (
                <WordsForm
                  key={`${task.key} ${form.kind}`}
                  kind={form.kind}
                  item={task.item}
                  begin={form.begin}
                  state={state}
                  deeds={deeds}
                  leave={() => setForm(undefined)}
                  done={(words) => void settle(task.item, does, words || undefined)}
                />
              )}
              {task && !form && <Acts task={task} act={act} back={last.current !== undefined} shown={shown} />}
            </article>
            <Rack tasks={tasks} at={at} notYet={review.notYet} choose={choose} />
          </div>
        </>
      )}
    </DeskFrame>
  );
}

/** The buttons below the card, each with its key. */
function Acts({
  task,
  act,
  back,
  shown,
}: {
  task: Task;
  act: (what: Act) => void;
  back: boolean;
  shown: string | undefined;
}) {
  const unread = task.of === "phrase" && task.item.unread.length > 0;
  const answered = task.of === "phrase" && task.item.answers.length > 0;
  const all: [what: Act, words: string, key: string, shown: boolean][] =
    task.of === "job"
      ? [
          ["sign", task.job.certain > 0 ? `Accept ${task.job.certain} and sign` : "Sign", "S", true],
          ["next", "Later", "J", true],
          ["back", "Take the last back", "U", back],
        ]
      : [
          ["accept", "Accept", "A", true],
          ["amend", answered ? "Read the answer in its place" : "Amend", "E", true],
          ["strike", "Strike", "X", true],
          ["ask", "Ask who said it", "Q", true],
          ["teach", "Teach the word", "T", unread],
          ["next", "Later", "J", true],
          ["back", "Take the last back", "U", back],
        ];
  return (
    <div class="acts">
      {all
        .filter(([, , , shown]) => shown)
        .map(([what, words, key], n) => (
          <button
            key={what}
            type="button"
            class={`tab${n === 0 ? " tab-first" : ""}`}
            disabled={what === "sign" && shown !== task.key}
            onClick={() => act(what)}
          >
            {words} <kbd>{key}</kbd>
          </button>
        ))}
    </div>
  );
}

const FORM_DOES: Record<Exclude<Form, "teach">, DecisionSent["what"]> = {
  amend: "amended",
  ask: "asked",
  strike: "struck",
};
const DONE: Record<DecisionSent["what"], string> = {
  accepted: "Accepted.",
  amended: "Amended.",
  struck: "Struck from the record; the words stay.",
  asked: "Asked. It comes back with the answer.",
  returned: "Put back.",
};

function nameOf(task: Task): string {
  if (task.of === "job") return `Sign ${task.job.tag ?? "the job without a tag"}`;
  return `${task.item.tag ?? "No tag"}: ${task.item.text || task.item.said}. ${task.item.reasons[0]?.why ?? ""}`;
}

/** The sentence that teaches what was not read, up to what it means. */
function sentenceFor(item: ReviewItem): string {
  const word = item.unread[0]?.text.trim().replace(/^(?:the|an?|my|our) /i, "") ?? "";
  return `${word} is the `;
}

/** The question that suggests itself. */
function questionFor(item: ReviewItem): string {
  const open = item.reasons.find((one) => one.reason === "question")?.why;
  const unread = item.unread[0]?.text.trim();
  return open ?? (unread ? `What did you mean by “${unread}”?` : "");
}
