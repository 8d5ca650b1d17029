import { addressOf } from "../state/route.ts";
import type { State } from "../state/state.ts";

export const ENROL_FIRST = 'npm run -s enrol -- --name "A. Person" --role lead';

/**
 * On top of the desk: that nobody is enrolled yet, or that the server does not know who this is. Its place is always
 * there, for a component that is drawn from nothing beside others is drawn twice.
 */
export function DoorBand({ state }: { state: State }) {
  const { caller, barred } = state;
  return (
    <div class="door" role="status">
      {barred ? (
        <p class="door-band">
          <span>{barred}</span>
          {state.route.screen !== "sign-in" && (
            <a class="tab" href={addressOf({ screen: "sign-in" })}>
              Sign in
            </a>
          )}
        </p>
      ) : caller?.open ? (
        <p class="door-band">
          <span>
            <b>Nobody is enrolled yet:</b> whoever is at this machine can read and change everything. To enrol the first
            lead, run <code>{ENROL_FIRST}</code>
          </span>
        </p>
      ) : null}
    </div>
  );
}
