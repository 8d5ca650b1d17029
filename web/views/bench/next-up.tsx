import { followUpWords } from "../../../core/index.ts";
import { whenWords } from "../../parts/follow-lines.tsx";
import { capital } from "../../parts/words.ts";
import { openQuestion } from "../../state/questions.ts";
import { valveAtHand, whatFollows } from "../../state/seen.ts";
import type { State } from "../../state/state.ts";

/** The most urgent thing to do, large; and how many more there are. A question that stands open comes first. */
export function NextUp({ state }: { state: State }) {
  const { ask } = valveAtHand(state);
  const [first, ...more] = whatFollows(state).followUps;
  return (
    <>
      {ask && !openQuestion(state) && <p class="ask">Still open: {ask.question}</p>}
      {first ? (
        <div class={`next-up${first.do === "stop" ? " follow-stop" : ""}`}>
          <p class="next-head">
            <span class={`when when-${first.when === "now" ? "now" : "later"}`}>{whenWords(first.when)}</span>
            <b>{first.do === "ask" ? capital(first.why) : followUpWords(first)}</b>
            {more.length > 0 && <span class="next-more">+{more.length}</span>}
          </p>
          {first.do !== "ask" && <p class="why">{capital(first.why)}</p>}
        </div>
      ) : (
        <p class="none next-none">Nothing to do follows so far.</p>
      )}
    </>
  );
}
