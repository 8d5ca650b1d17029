import type { Child } from "hono/jsx";
import type { Question } from "../../../core/index.ts";
import { useEffect } from "../../parts/hooks.ts";
import { useAnswer } from "../../parts/use-answer.ts";
import { may } from "../../state/door.ts";
import { addressOf } from "../../state/route.ts";
import type { State } from "../../state/state.ts";

/** A lead asks at the desk and waits: looked for this often, while the page is looked at. */
const LOOK_AGAIN_MS = 60_000;

/** The bench, and above it that a lead asks about something said here; nothing where nobody asks. */
export function WithQuestions({ state, children }: { state: State; children?: Child }) {
  const [answer, again] = useAnswer<{ questions: Question[] }>(may(state, "say") ? "/api/questions" : undefined);
  useEffect(() => {
    const timer = setInterval(() => {
      if (document.visibilityState === "visible") again();
    }, LOOK_AGAIN_MS);
    return () => clearInterval(timer);
  }, []);
  // without a network there is no answer, and what was asked is asked again later
  const questions = answer?.ok ? answer.value.questions : [];
  const [first] = questions;
  const more = questions.length - 1;
  // one element whether or not anybody asks: the bench must not be made anew under what is being typed
  return (
    <div class={first ? "with-questions" : "no-questions"}>
      {first && (
        <a class="asked-band" href={addressOf({ screen: "asked" })}>
          <span>
            <b>
              {first.by ?? "The desk"} asks{first.tag ? ` about ${first.tag}` : ""}:
            </b>{" "}
            {first.question}
            {more > 0 ? ` (and ${more} more)` : ""}
          </span>
          <span class="asked-go">Answer</span>
        </a>
      )}
      {children}
    </div>
  );
}
