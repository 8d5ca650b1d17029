import type { MayOwn, Owned } from "../../core/index.ts";
import { may } from "../state/door.ts";
import { addressOf } from "../state/route.ts";
import { dayAtSite } from "../state/seen.ts";
import type { State } from "../state/state.ts";
import { dayWords } from "../state/time-words.ts";
import { uuid7 } from "../storage/uuid7.ts";
import { path, send } from "../sync/ask.ts";
import { useEffect, useRef, useState } from "./hooks.ts";
import { useAnswer } from "./use-answer.ts";

interface Whose {
  site: string | undefined;
  tag: string;
  owned: Owned;
  state: State;
}

/** Whose a follow-up is. A lead gives it to somebody and takes it away here; others read it. */
export function OwnerChoice({ site, tag, owned, state }: Whose) {
  const [isOpen, setOpen] = useState(false);
  const [newest, setNewest] = useState(owned);
  const button = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    // what had the keyboard is gone with the list: it goes back to where it came from
    if (newest !== owned) button.current?.focus();
    return undefined;
  }, [newest]);
  // what this page did is newer than what it was told before
  const { owner, given, key } = newest.given > owned.given ? newest : owned;
  const name = owner ? `Owner: ${owner.name}` : "No owner yet";
  const since = owner && dayWords(dayAtSite(state, site, owner.since));
  return (
    <div class="owner">
      <b class={may(state, "review") ? "owner-on-paper" : ""}>{name}</b>
      {may(state, "review") && (
        <button
          type="button"
          ref={button}
          class={`tab owner-is${owner && !owner.left ? "" : " owner-none"}`}
          aria-expanded={isOpen ? "true" : "false"}
          onClick={() => setOpen((before) => !before)}
        >
          {name}
        </button>
      )}
      {owner && (
        <span class="owner-since">
          {owner.left && <b class="bad">has left </b>}
          since {since}
          {owner.by ? `, given by ${owner.by}` : ""}
        </span>
      )}
      {isOpen && (
        <OwnerList
          {...{ site, tag, state }}
          owned={{ key, owner, given }}
          done={(now) => {
            setNewest(now);
            setOpen(false);
          }}
        />
      )}
    </div>
  );
}

/** Everybody who can have it. */
function OwnerList({ site, tag, owned, done }: Whose & { done: (now: Owned) => void }) {
  const [answer, again] = useAnswer<MayOwn>(path("/api/follow-ups/people", { site }));
  const [problem, setProblem] = useState("");
  const { key, owner, given } = owned;
  const give = async (to: string | null) => {
    const sent = { id: uuid7(), ...(site ? { site } : {}), tag, key, owner: to, seen: given };
    const got = await send<Owned>("PUT", "/api/follow-ups/owner", sent);
    if (got.ok) done(got.value);
    else setProblem(got.problem);
  };
  if (!answer) return <p class="owner-list">Asking the server…</p>;
  if (!answer.ok)
    return (
      <p class="owner-list bad" role="alert">
        {answer.problem}{" "}
        <button type="button" class="tab" onClick={again}>
          Look again
        </button>
      </p>
    );
  const { people } = answer.value;
  return (
    <div class="owner-list">
      {people.length === 0 && (
        <p>
          Nobody is enrolled yet. <a href={addressOf({ screen: "people" })}>Enrol people</a>
        </p>
      )}
      <ul aria-label="Who does it">
        {people.map((one) => (
          <li key={one.id}>
            <button
              type="button"
              class="tab"
              aria-pressed={one.id === owner?.id ? "true" : "false"}
              onClick={() => void give(one.id)}
            >
              {one.name}
            </button>
          </li>
        ))}
        {owner && (
          <li>
            <button type="button" class="tab owner-none" onClick={() => void give(null)}>
              Nobody
            </button>
          </li>
        )}
      </ul>
      <p role="status" class="bad">
        {problem}
      </p>
    </div>
  );
}
