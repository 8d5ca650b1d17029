import type { Deeds } from "../../state/deeds.ts";
import { isYesOrNo, type Question, questionWords } from "../../state/questions.ts";

/** The open question, with its two answers to touch where yes or no will do. */
export function Asked({ question, deeds }: { question: Question; deeds: Deeds }) {
  const [yes, no] = ANSWERS[question.is];
  return (
    <div class="asked">
      <p class="ask">{questionWords(question)}</p>
      {isYesOrNo(question) && (
        <div class="answers">
          <button type="button" class="glove answer-yes" onClick={() => void deeds.reply(true)}>
            {yes}
          </button>
          <button type="button" class="glove" onClick={() => void deeds.reply(false)}>
            {no}
          </button>
        </div>
      )}
    </div>
  );
}

const ANSWERS: Record<Question["is"], [yes: string, no: string]> = {
  doubt: ["Right", "Scratch it"],
  start: ["Right", "No"],
  close: ["Close it", "Go on"],
  reader: ["", ""],
  follow_up: ["", ""],
};
