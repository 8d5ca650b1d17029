import type { MayOwn, OwedList } from "../../../core/index.ts";
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

/** What was left open at every valve, who does it, and whom to ask about it. */
export function StillOwed({ site, state }: { site: string | undefined; state: State }) {
  const [owner, setOwner] = useState("");
  const [answer, again] = useAnswer<OwedList>(path("/api/follow-ups", { site, owner, limit: "200" }));
  if (!answer?.ok) return <Waiting problem={answer?.problem} again={again} />;
  const { owed, count } = answer.value;
  if (owed.length === 0 && !owner) return <p class="none">Nothing is left open.</p>;
  return (
    <section class="band" aria-label="Left open">
      <h2 class="rule-head">Left open ({count})</h2>
      <WhosePicker {...{ site, state, owner }} choose={setOwner} />
      {count > owed.length && <p class="count">The {owed.length} most urgent.</p>}
      {owed.length === 0 && <p class="none">Nothing of it is left open.</p>}
      <ul class="dues">
        {owed.map((one) => (
          <li key={`${one.site} ${one.tag} ${one.key}`} class="owed">
            <a class="due" href={addressOf({ screen: "valve", tag: one.tag, site: one.site })}>
              <Plate tag={one.tag} small />
              <span class="due-words">
                <b class={one.do === "stop" ? "bad" : ""}>{capital(one.what)}</b>{" "}
                <span class={one.when === "now" ? "bad" : ""}>{whenWords(one.when)}</span>
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
    <form class="pickers" aria-label="Whose" onSubmit={(event: Event) => event.preventDefault()}>
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
