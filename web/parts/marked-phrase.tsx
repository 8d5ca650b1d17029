import { type Code, type Mark, nameOf, type PhraseReading, type WordKind } from "../../core/index.ts";
import { type Stretch, stretches } from "./stretches.ts";

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

/**
 * The words as said, each stretch underscored in paint and captioned with what it became. `asked`: what was not read
 * of it is being asked about, and is not lost yet.
 */
export function MarkedPhrase({
  reading,
  asked,
}: {
  reading: Pick<PhraseReading, "text" | "marks" | "unread">;
  asked?: boolean;
}) {
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
              <span class="mark-kind">{asked && one.as === "unread" ? "asked" : KINDS[one.as]}</span>
              {captionOf(one)}
            </span>
          </span>
        ),
      )}
    </p>
  );
}

const ROWS: Partial<Record<Mark["as"], WordKind>> = {
  part: "part",
  condition: "condition",
  work: "work",
  test: "test",
  hazard: "hazard",
  command: "command",
};

/** Turns of talk: the reader marks them, and they have no row. */
const TURNS = new Set(["undo", "amend", "note", "answer"]);

/** What the words were taken for, where that is not what they say already. */
function captionOf({ as, code, text }: Stretch): string {
  const kind = ROWS[as];
  // a tag is its own name
  const name = !code || TURNS.has(code) ? "" : kind ? nameOf(code as Code, kind) : as === "valve" ? code : "";
  return name.toLowerCase() === text.trim().toLowerCase() ? "" : ` ${name}`;
}
