import { describe, expect, test } from "vitest";
import { type Listening, listen, startListening } from "../../core/index.ts";
import { type Case, CORPORA, FRESH, isLookedAt, loadCases, type Scored, score, summary } from "../corpora/corpus.ts";
import { lostIn } from "./parse/kept-words.ts";

/**
 * The reader against every corpus. A part of it is looked at while the reader is made better, the other part is only
 * scored: its floors are lower, and what they are failed by is not shown, so that the figure stays a stranger's.
 */
const FLOOR = {
  lookedAt: { working: 0.97, others: 0.95, fresh: 0.8, chatter: 0 },
  onlyScored: { share: 0.9, transcripts: 0.6, chatter: 1 / 20 },
};

const SCORED = CORPORA.map((name) => ({ name, cases: loadCases(name).map(score) }));

for (const { name, cases } of SCORED)
  describe(name, () => {
    const lookedAt = cases.filter(({ one }) => isLookedAt(one));
    const onlyScored = cases.filter(({ one }) => !isLookedAt(one));

    if (lookedAt.length > 0)
      test("the looked-at part is read, and its chatter invents nothing", () => {
        const { right, chatter, invented } = summary(lookedAt);
        const floor =
          name === "working" ? FLOOR.lookedAt.working : FRESH.has(name) ? FLOOR.lookedAt.fresh : FLOOR.lookedAt.others;
        const misses = lookedAt
          .filter((one) => !one.right)
          .map(missed)
          .join("\n");
        expect(right / lookedAt.length, misses).toBeGreaterThanOrEqual(floor);
        expect(invented, `of ${chatter} chatter cases\n${misses}`).toBe(FLOOR.lookedAt.chatter);
      });

    if (onlyScored.length > 0)
      test("the only-scored part is read as well as a stranger's phrases should be", () => {
        const { right, chatter, invented } = summary(onlyScored);
        expect(right / onlyScored.length, `${right} of ${onlyScored.length}`).toBeGreaterThanOrEqual(
          name === "held-transcripts" ? FLOOR.onlyScored.transcripts : FLOOR.onlyScored.share,
        );
        expect(invented / Math.max(1, chatter), `${invented} of ${chatter}`).toBeLessThanOrEqual(
          FLOOR.onlyScored.chatter,
        );
      });

    test("where a case is wrong, no word of it is lost in silence", () => {
      const lost = cases.filter((one) => !one.right).map(({ one }) => ({ id: one.id, words: lostIn(heard(one)) }));
      expect(lost.filter(({ words }) => words.length > 0)).toEqual([]);
    });
  });

function heard(one: Case): Listening {
  return one.say.reduce(listen, startListening());
}

/** A miss as it is wanted on the screen: what was said, what is lacking and what is too much. */
function missed({ one, got, want, unread }: Scored): string {
  const lacking = want.filter((text) => !got.includes(text)).map((text) => `  - ${text}`);
  const extra = got.filter((text) => !want.includes(text)).map((text) => `  + ${text}`);
  const order = lacking.length + extra.length === 0 ? [`  order: ${got.join(" ")}`] : [];
  return [
    `${one.id} ${JSON.stringify(one.say)}`,
    ...lacking,
    ...extra,
    ...order,
    `  unread ${JSON.stringify(unread)}`,
  ].join("\n");
}
