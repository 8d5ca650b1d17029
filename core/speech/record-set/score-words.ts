import type { SetScore, SureRow } from "./score.ts";

/** The score as lines for a person. */
export function scoreWords(score: SetScore): string[] {
  const { said, sure, misses, otherTalk } = score;
  return [
    `${score.wordForWord} of ${said} phrases word for word, ${score.sameEntries} with the same entries, ${score.unheard} not heard at all`,
    ...sure.map((row, index) => `${sureWords(row, sure[index - 1])}: ${row.right} of ${row.said} word for word`),
    ...(otherTalk.said > 0
      ? [`other talk: ${otherTalk.invented.length} of ${otherTalk.said} stretches left an entry`]
      : []),
    ...misses.map(
      ({ wanted, heard, sameEntries }) =>
        `"${wanted}" came out as ${heard ? `"${heard}"` : "nothing"}${sameEntries ? ", the same entries" : ""}`,
    ),
    ...otherTalk.invented.map((text) => `out of other talk: "${text}"`),
  ];
}

/** A row of the table of confidence, in words. */
export function sureWords({ from }: SureRow, above: SureRow | undefined): string {
  const per = (share: number) => `${Math.round(share * 100)} %`;
  if (!above) return `${per(from)} sure or more`;
  return from === 0 ? `under ${per(above.from)} sure` : `${Math.round(from * 100)} to ${per(above.from)} sure`;
}
