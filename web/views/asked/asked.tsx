import type { Question } from "../../../core/index.ts";
import { Waiting } from "../../parts/desk-frame.tsx";
import { useRef, useState } from "../../parts/hooks.ts";
import { Plate } from "../../parts/plate.tsx";
import { useAnswer } from "../../parts/use-answer.ts";
import type { Deeds } from "../../state/deeds.ts";
import { addressOf } from "../../state/route.ts";
import type { State } from "../../state/state.ts";
import { clockThere, dayWords } from "../../state/time-words.ts";
import { send } from "../../sync/ask.ts";

/** What a lead asks about phrases said here, and the answer, typed or said: in words of one's own. */
export function Asked({ state, deeds }: { state: State; deeds: Deeds }) {
  const [answer, again] = useAnswer<{ questions: Question[] }>("/api/questions");
  const [told, setTold] = useState("");
  const questions = answer?.ok ? answer.value.questions : [];
  return (
    <main class="asked-sheet">
      <a class="glove" href={addressOf({ screen: "bench" })}>
        Back to the bench
      </a>
      <h1 class="rule-head">Asked from the desk</h1>
      <p role="status" class={told ? "tell" : "unseen"}>
        {told}
      </p>
      {!answer?.ok ? (
        <Waiting problem={answer?.problem} again={again} />
      ) : questions.length === 0 ? (
        <p class="none">Nobody asks anything.</p>
      ) : (
        <ul>
          {questions.map((one) => (
            <OneQuestion
              key={one.id}
              one={one}
              state={state}
              deeds={deeds}
              done={() => {
                setTold("The answer is at the desk.");
                again();
              }}
            />
          ))}
        </ul>
      )}
    </main>
  );
}

function OneQuestion({ one, state, deeds, done }: { one: Question; state: State; deeds: Deeds; done: () => void }) {
  const [problem, setProblem] = useState<string | undefined>(undefined);
  const [busy, setBusy] = useState(false);
  const [listening, setListening] = useState(false);
  const how = useRef<"typed" | "heard">("typed");
  // the same answer sent again, after a link that broke, is one answer
  const sending = useRef<{ id: string; text: string } | undefined>(undefined);
  const field = useRef<HTMLTextAreaElement>(null);
  const answer = async () => {
    const text = field.current?.value.trim();
    if (!text || busy) return;
    setBusy(true);
    if (sending.current?.text !== text) sending.current = { id: crypto.randomUUID(), text };
    const sent = await send("POST", `/api/questions/${one.id}`, { ...sending.current, how: how.current });
    setBusy(false);
    if (sent.ok) done();
    else setProblem(`${sent.problem} Your words stay here.`);
  };
  const sayIt = () => {
    setListening(true);
    deeds.hearOnce((heard) => {
      setListening(false);
      how.current = "heard";
      if (field.current) field.current.value = heard;
    });
  };
  const { ear } = state;
  return (
    <li class="asked-one">
      <div class="docket-head">
        <Plate tag={one.tag} small />
        <p class="docket-when">
          {dayWords(one.saidAt)}, {clockThere(one.saidAt)}
        </p>
      </div>
      <p class="asked-said">You said: “{one.said}”</p>
      <p class="asked-question">
        {one.by ?? "The desk"} asks: <b>{one.question}</b>
      </p>
      <form
        onSubmit={(event: Event) => {
          event.preventDefault();
          void answer();
        }}
      >
        <label>
          <span>Your answer</span>
          <textarea
            ref={field}
            class="field"
            rows={2}
            maxlength={2000}
            required
            onInput={() => {
              how.current = "typed";
            }}
          />
        </label>
        {problem && (
          <p class="tell tell-bad" role="alert">
            {problem}
          </p>
        )}
        <div class="asked-acts">
          <button type="button" class="glove" aria-pressed={listening ? "true" : "false"} onClick={sayIt}>
            {listening ? ear.hearing || "Listening…" : "Say it"}
          </button>
          <button type="submit" class="glove asked-send" disabled={busy}>
            Send the answer
          </button>
        </div>
        {listening && ear.trouble && <p class="bad">{ear.trouble}</p>}
      </form>
    </li>
  );
}
