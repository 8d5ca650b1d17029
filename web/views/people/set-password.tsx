import { DeskFrame } from "../../parts/desk-frame.tsx";
import { useState } from "../../parts/hooks.ts";
import type { Deeds } from "../../state/deeds.ts";
import type { DoorDeeds } from "../../state/door-deeds.ts";
import { addressOf } from "../../state/route.ts";
import type { State } from "../../state/state.ts";
import { DoorForm, TextField, typed } from "./door-form.tsx";

/** Opened by a link that is good once: choose a password, and be signed in. */
export function SetPassword({
  code,
  state,
  deeds,
  door,
}: {
  code: string;
  state: State;
  deeds: Deeds;
  door: DoorDeeds;
}) {
  const [shown, show] = useState(false);
  return (
    <DeskFrame sign="PASSWORD" state={state} deeds={deeds}>
      <div class="sheet sheet-one">
        <section class="paper-column narrow-column" aria-label="Choose a password">
          <DoorForm
            button="Keep it and sign in"
            submit={async (form) => {
              const answer = await door.firstPassword(code, typed(form, "password"));
              // the code is spent: it does not stay in the address
              if (answer.ok) location.replace(addressOf({ screen: "desk" }));
              return answer;
            }}
          >
            <TextField
              label="A password of at least 12 characters: a few words make a good one"
              name="password"
              autocomplete="new-password"
              secret={!shown}
              least={12}
            />
            <button type="button" class="tab" aria-pressed={shown ? "true" : "false"} onClick={() => show(!shown)}>
              {shown ? "Hide what I type" : "Show what I type"}
            </button>
          </DoorForm>
          <p class="source">The link is good once and for an hour. Other sign-ins of yours end with it.</p>
        </section>
      </div>
    </DeskFrame>
  );
}
