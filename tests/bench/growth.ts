import { listen, readPhrase, startListening } from "../../core/index.ts";
import { phrases } from "./corpus-phrases.ts";
import { figure, medians } from "./timing.ts";

const MOST = 12;

/** Ten times the text must not take more than twelve times as long, in one long breath or in one long job. */
export function growth(): string[] {
  const words = phrases.join(" ").split(/\s+/);
  const breaths = (size: number) =>
    Array.from({ length: 20 }, (_, n) => words.slice(n * size, (n + 1) * size).join(" "));
  const alone = (texts: readonly string[]) => () => {
    for (const text of texts) readPhrase(text);
  };
  const job = (say: readonly string[], times: number) => () => {
    for (let n = 0; n < times; n++) {
      let heard = startListening();
      for (const text of say) heard = listen(heard, text);
    }
  };
  // the same words ten times over: another stretch of the corpora would be another task
  const tenfold = (texts: readonly string[]) => texts.map((text) => Array(10).fill(text).join(" "));
  const jobOf = (count: number) => phrases.slice(0, count);
  const tenJobs = (count: number) => Array(10).fill(jobOf(count)).flat();
  return [
    line("phrases of 20 and of 200 words", ...medians(5, [alone(breaths(20)), alone(tenfold(breaths(20)))])),
    line("phrases of 190 and of 1,900 words", ...medians(3, [alone(breaths(190)), alone(tenfold(breaths(190)))])),
    line("jobs of 20 and of 200 phrases", ...medians(5, [job(jobOf(20), 10), job(tenJobs(20), 10)])),
    line("jobs of 150 and of 1,500 phrases", ...medians(3, [job(jobOf(150), 2), job(tenJobs(150), 2)])),
  ];
}

function line(what: string, one = Number.NaN, ten = Number.NaN): string {
  const ratio = ten / one;
  return `${what.padEnd(38)} ${figure(ratio).padStart(5)} times as long (at most ${MOST}: ${ratio <= MOST ? "met" : "not met"})`;
}
