import type { Child } from "hono/jsx";
import type { MayOwn, Owed, OwedList } from "../../../core/index.ts";
import { Waiting } from "../../parts/desk-frame.tsx";
import { whenWords } from "../../parts/follow-lines.tsx";
import { useState } from "../../parts/hooks.ts";
import { OwnerChoice } from "../../parts/owner-choice.tsx";
import { Plate } from "../../parts/plate.tsx";
import { useAnswer } from "../../parts/use-answer.ts";
import { capital } from "../../parts/words.ts";
import { may } from "../../state/door.ts";
import { addressOf } from "../../state/route.ts";
import type { State } from "../../state/state.ts";
import { dayWords } from "../../state/time-words.ts";
import { path } from "../../sync/ask.ts";

const NOBODYS = "nobody";

/**
 * What was left open at every valve, who does it, and whom to ask about it: what cannot wait before the dates, the rest
 * below them.
 */
export function StillOwed({ site, state, children }: { site: string | undefined; state: State; children?: Child }) {
  const [owner, setOwner] = useState("");
  const [answer, again] = useAnswer<OwedList>(path("/api/follow-ups", { site, owner, limit: "200" }));
  const { owed, count } = answer?.ok ? answer.value : { owed: [], count: 0 };
  const now = owed.filter((one) => one.when === "now");
  const later = owed.filter((one) => one.when !== "now");
  return (
    <>
      {answer && !answer.ok && <Waiting problem={answer.problem} again={again} />}
      {answer?.ok && (count > 0 || owner) && <WhosePicker {...{ site, state, owner }} choose={setOwner} />}
      {count > owed.length && (
        <p class="count">
          The {owed.length} most urgent of {count} left open.
        </p>
      )}
      <OwedBand name="To do now" lines={now} state={state} />
      {children}
      <OwedBand name="At the next inspection" lines={later} state={state} />
      {answer?.ok && count === 0 && (
        <p class="none">{owner ? "Nothing of it is left open." : "Nothing is left open."}</p>
      )}
    </>
  );
}

function OwedBand({ name, lines, state }: { name: string; lines: readonly Owed[]; state: State }) {
  if (lines.length === 0) return null;
  const stops = lines.some((one) => one.do === "stop");
  return (
    <section class="band" aria-label={name}>
      <h2 class={`rule-head${stops ? " rule-bad" : ""}`}>
        {name} ({lines.length})
      </h2>
      <ul class="dues">
        {lines.map((one) => (
          <li key={`${one.site} ${one.tag} ${one.key}`} class={`owed${one.do === "stop" ? " owed-stop" : ""}`}>
            <a class="due" href={addressOf({ screen: "valve", tag: one.tag, site: one.site })}>
              <Plate tag={one.tag} small />
              <span class="due-words">
                <b class={one.do === "stop" ? "bad" : ""}>{capital(one.what)}</b>{" "}
                {/^\d/.test(one.when) && <span>{whenWords(one.when)}</span>}
                <span class="why">
                  {capital(one.why)}
                  {one.since ? `, ${dayWords(one.since)}` : ""}
                  {one.loggedBy.length > 0 ? `. Logged by ${one.loggedBy.join(" and ")}` : ""}
                </span>
              </span>
            </a>
            <OwnerChoice site={one.site} tag={one.tag} owned={one} state={state} />
          </li>
        ))}
      </ul>
    </section>
  );
}

/** Everybody's, what nobody has yet, or one person's: a lead may look at anybody's, others at their own. */
function WhosePicker({
  site,
  state,
  owner,
  choose,
}: {
  site: string | undefined;
  state: State;
  owner: string;
  choose: (owner: string) => void;
}) {
  const [answer] = useAnswer<MayOwn>(may(state, "review") ? path("/api/follow-ups/people", { site }) : undefined);
  const { caller } = state;
  const self = caller?.id && caller.name ? [{ id: caller.id, name: caller.name }] : [];
  const people = answer?.ok ? answer.value.people : self;
  return (
    <form class="pickers" aria-label="Which of it" onSubmit={(event: Event) => event.preventDefault()}>
      <label>
        <span>Whose</span>
        <select value={owner} onChange={(event: Event) => choose((event.target as HTMLSelectElement).value)}>
          <option value="">everybody’s</option>
          <option value={NOBODYS}>nobody’s yet</option>
          {people.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      </label>
    </form>
  );
}
