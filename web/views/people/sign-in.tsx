import { DeskFrame } from "../../parts/desk-frame.tsx";
import type { Deeds } from "../../state/deeds.ts";
import type { DoorDeeds } from "../../state/door-deeds.ts";
import { addressOf } from "../../state/route.ts";
import type { State } from "../../state/state.ts";
import { DoorForm, TextField, typed } from "./door-form.tsx";

/** Name and password, for leads and the office. Technicians have an enrolled device and type nothing. */
export function SignIn({ next, state, deeds, door }: { next?: string; state: State; deeds: Deeds; door: DoorDeeds }) {
  return (
    <DeskFrame sign="SIGN IN" state={state} deeds={deeds}>
      <div class="sheet sheet-one">
        <section class="paper-column narrow-column" aria-label="Sign in">
          <DoorForm
            button="Sign in"
            submit={async (form) => {
              const answer = await door.signIn(typed(form, "name"), typed(form, "password"));
              if (answer.ok) location.assign(next ?? addressOf({ screen: "desk" }));
              return answer;
            }}
          >
            <TextField label="Your name, as it was enrolled" name="name" autocomplete="username" />
            <TextField label="Password" name="password" autocomplete="current-password" secret />
          </DoorForm>
          <p class="source">
            No password, or forgotten? A lead makes you a link under People. At a valve nobody signs in: a lead enrols
            the phone once, by a code.
          </p>
        </section>
      </div>
    </DeskFrame>
  );
}
