import type { OwedList } from "../../../core/index.ts";
import { Waiting } from "../../parts/desk-frame.tsx";
import { Plate } from "../../parts/plate.tsx";
import { useAnswer } from "../../parts/use-answer.ts";
import { capital } from "../../parts/words.ts";
import { addressOf } from "../../state/route.ts";
import { dayWords } from "../../state/time-words.ts";
import { path } from "../../sync/ask.ts";

/** What was left open at every valve, and whom to ask about it. */
export function StillOwed({ site }: { site: string | undefined }) {
  const [answer, again] = useAnswer<OwedList>(path("/api/follow-ups", { site, limit: "200" }));
  if (!answer?.ok) return <Waiting problem={answer?.problem} again={again} />;
  const { owed, count } = answer.value;
  if (owed.length === 0) return <p class="none">Nothing is left open.</p>;
  return (
    <section class="band" aria-label="Left open">
      <h2 class="rule-head">Left open ({count})</h2>
      {count > owed.length && <p class="count">The {owed.length} most urgent.</p>}
      <ul class="dues">
        {owed.map((one) => (
          <li key={`${one.site} ${one.tag} ${one.what} ${one.why}`}>
            <a class="due" href={addressOf({ screen: "valve", tag: one.tag, site: one.site })}>
              <Plate tag={one.tag} small />
              <span class="due-words">
                <b class={one.do === "stop" ? "bad" : ""}>{capital(one.what)}</b>{" "}
                <span class={one.when === "now" ? "bad" : ""}>{whenWords(one.when)}</span>
                <span class="why">
                  {capital(one.why)}
                  {one.since ? `, ${dayWords(one.since)}` : ""}
                  {one.owners.length > 0 ? `. Logged by ${one.owners.join(" and ")}` : ""}
                </span>
              </span>
            </a>
          </li>
        ))}
      </ul>
    </section>
  );
}

function whenWords(when: OwedList["owed"][number]["when"]): string {
  if (when === "now") return "now";
  return when === "next_inspection" ? "at the next inspection" : dayWords(when);
}
