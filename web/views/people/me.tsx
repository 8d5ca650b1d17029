import type { Caller } from "../../../core/index.ts";
import { DeskFrame } from "../../parts/desk-frame.tsx";
import type { Deeds } from "../../state/deeds.ts";
import type { DoorDeeds } from "../../state/door-deeds.ts";
import { addressOf } from "../../state/route.ts";
import type { KnownSite, State } from "../../state/state.ts";
import { clockHere } from "../../state/time-words.ts";
import { outboxWords } from "../../sync/outbox-words.ts";
import { DoorForm, TextField, typed } from "./door-form.tsx";
import { keptToWords, rolesWords, untilWords } from "./people-words.ts";

/** Who this page speaks for, and how to change that. */
export function Me({ state, deeds, door }: { state: State; deeds: Deeds; door: DoorDeeds }) {
  const { caller, barred, outbox } = state;
  return (
    <DeskFrame sign="WHO" state={state} deeds={deeds}>
      <div class="sheet">
        <section class="paper-column" aria-label="Who this device speaks for">
          <h2 class="rule-head">Who</h2>
          {caller?.name ? (
            <Known caller={caller} sites={state.sites} door={door} />
          ) : barred ? (
            <p>Nobody: the server does not know this device.</p>
          ) : caller?.open ? (
            <p>Nobody in particular: nobody is enrolled yet.</p>
          ) : (
            <p class="none">Not known: the server cannot be reached.</p>
          )}
          <h2 class="rule-head">What was said here</h2>
          <p>{outboxWords(outbox, clockHere)}. What is not sent stays on this device, whoever it speaks for.</p>
          <p>
            <a class="glove" href={addressOf({ screen: "bench" })}>
              To the bench
            </a>
          </p>
        </section>
        {caller?.password && (
          <section class="paper-column" aria-label="Change the password">
            <h2 class="rule-head">Change the password</h2>
            <DoorForm
              button="Change it"
              done="It is changed. Other sign-ins of yours have ended."
              submit={(form) => door.changePassword(typed(form, "was"), typed(form, "password"))}
            >
              <TextField label="The password so far" name="was" autocomplete="current-password" secret />
              <TextField
                label="The new one, at least 12 characters"
                name="password"
                autocomplete="new-password"
                secret
                least={12}
              />
            </DoorForm>
          </section>
        )}
      </div>
    </DeskFrame>
  );
}

function Known({ caller, sites, door }: { caller: Caller; sites: readonly KnownSite[]; door: DoorDeeds }) {
  const byDevice = caller.by === "device";
  return (
    <>
      <p class="who-name">
        <b>{caller.name}</b>, {rolesWords(caller.roles)}
        {caller.sites && `, ${keptToWords(caller.sites, sites)}`}
      </p>
      <p>
        {byDevice
          ? `This device is enrolled for ${caller.name}${caller.until ? `, ${untilWords(caller.until)}` : ""}.`
          : "Signed in at this browser."}
      </p>
      <DoorForm button={byDevice ? "Give this device back" : "Sign out"} submit={() => door.leave()} />
    </>
  );
}
