import type { Mark, PhraseReading } from "../../core/index.ts";
import { stretches } from "./stretches.ts";
import { nameOf } from "./words.ts";

const KINDS: Record<Mark["as"], string> = {
  part: "part",
  condition: "found",
  work: "work",
  detail: "detail",
  number: "figure",
  test: "test",
  valve: "valve",
  hazard: "hazard",
  command: "order",
  plain: "",
  unread: "not read",
};

/** The words as said, each stretch underscored in paint and captioned with what it became. */
export function MarkedPhrase({ reading }: { reading: Pick<PhraseReading, "text" | "marks" | "unread"> }) {
  return (
    <p class="said">
      {stretches(reading.text, reading.marks, reading.unread).map((one, index) =>
        one.as === "plain" || !one.text.trim() ? (
          <span key={index} class="plain">
            {one.text}
          </span>
        ) : (
          <span key={index} class={`mark mark-${one.as}`}>
            <span class="mark-words">{one.text}</span>
            <span class="mark-caption">
              <span class="mark-kind">{KINDS[one.as]}</span>
              {one.code && one.as !== "unread" && nameOf(one.code).toLowerCase() !== one.text.trim().toLowerCase()
                ? ` ${nameOf(one.code)}`
                : ""}
            </span>
          </span>
        ),
      )}
    </p>
  );
}
