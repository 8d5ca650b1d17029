import type { Device, OneTimeCode, Person, Site } from "../../../core/index.ts";
import { useState } from "../../parts/hooks.ts";
import type { Answer } from "../../sync/ask.ts";
import { DoorForm, typed } from "./door-form.tsx";
import { chosenRoles, RoleBoxes } from "./new-person.tsx";
import { keptToWords, momentWords, rolesWords, untilWords } from "./people-words.ts";
import { chosenSites, SiteChoice } from "./site-choice.tsx";

type Act = (method: string, path: string, body?: object) => Promise<Answer<unknown>>;
const HOUR_MS = 3_600_000;
const ENDS: [hours: string, words: string][] = [
  ["", "until it is revoked"],
  ["8", "for a shift of 8 hours"],
  ["12", "for a shift of 12 hours"],
  ["168", "for a week"],
];

/** One person: roles, sites, devices, and what a lead does about them. */
export function PersonCard({
  person,
  sites,
  open,
  act,
  makeCode,
}: {
  person: Person;
  sites: readonly Site[];
  /** whoever looks sees every site, and may let others */
  open: boolean;
  act: Act;
  makeCode: (person: Person, wish: { for: OneTimeCode["for"]; until?: string }) => Promise<void>;
}) {
  const { id, name, roles, leftAt } = person;
  const signsIn = roles.some((role) => role !== "technician");
  const enrolDevice = async (form: HTMLFormElement) => {
    const hours = Number(typed(form, "end"));
    const until = hours ? new Date(Date.now() + hours * HOUR_MS).toISOString() : undefined;
    await makeCode(person, { for: "device", ...(until ? { until } : {}) });
    return undefined;
  };
  const change = async (form: HTMLFormElement) => {
    const chosen = chosenSites(form);
    return "ok" in chosen ? chosen : act("PUT", `/api/people/${id}`, { roles: chosenRoles(form), ...chosen });
  };
  return (
    <li class="person">
      <h3>
        {name}{" "}
        <span class="person-roles">
          {rolesWords(roles)}
          {person.sites && `, ${keptToWords(person.sites, sites)}`}
        </span>
      </h3>
      {leftAt ? (
        <p class="none">Left {momentWords(leftAt)}</p>
      ) : (
        <>
          {person.devices.length > 0 && (
            <ul class="devices">
              {person.devices.map((device) => (
                <DeviceLine key={device.id} device={device} owner={name} act={act} />
              ))}
            </ul>
          )}
          <DoorFormInline submit={enrolDevice} name={name} />
          {signsIn && (
            <button type="button" class="tab" onClick={() => void makeCode(person, { for: "password" })}>
              {person.password ? `Link for a new password of ${name}` : `Link for ${name} to choose a password`}
            </button>
          )}
          <details class="more">
            <summary>{sites.length > 0 ? "Change roles or sites, or let go" : "Change roles, or let go"}</summary>
            {/* drawn anew once it is kept: what the form falls back to is what it began with */}
            <DoorForm key={`${roles} ${person.sites}`} button="Keep this" submit={change}>
              <RoleBoxes roles={roles} />
              <SiteChoice sites={sites} kept={person.sites} open={open} />
            </DoorForm>
            <Twice
              first={`${name} has left`}
              second={`Yes, end every device and sign-in of ${name}`}
              sure={() => act("DELETE", `/api/people/${id}`)}
            />
          </details>
        </>
      )}
    </li>
  );
}

function DoorFormInline({ submit, name }: { submit: (form: HTMLFormElement) => Promise<undefined>; name: string }) {
  return (
    <form
      class="enrol-form"
      onSubmit={(event: Event) => {
        event.preventDefault();
        void submit(event.currentTarget as HTMLFormElement);
      }}
    >
      <button type="submit" class="tab">
        Enrol a device
      </button>
      <select name="end" class="tab" aria-label={`How long a device of ${name} is enrolled`}>
        {ENDS.map(([hours, words]) => (
          <option key={hours} value={hours}>
            {words}
          </option>
        ))}
      </select>
    </form>
  );
}

function DeviceLine({ device, owner, act }: { device: Device; owner: string; act: Act }) {
  const over = device.revokedAt !== undefined || (device.until !== undefined && Date.parse(device.until) <= Date.now());
  const state = device.revokedAt
    ? `revoked ${momentWords(device.revokedAt)}`
    : over
      ? "its time is over"
      : device.until
        ? untilWords(device.until)
        : `since ${momentWords(device.enrolledAt)}`;
  return (
    <li class={over ? "device device-over" : "device"}>
      <span>
        <b>{device.name}</b> {state}
      </span>
      {!over && (
        <Twice
          first="Revoke"
          label={`Revoke ${device.name} of ${owner}`}
          second="Yes, revoke it"
          sure={() => act("DELETE", `/api/devices/${device.id}`)}
        />
      )}
    </li>
  );
}

/** What ends something is asked for twice. */
function Twice(about: { first: string; label?: string; second: string; sure: () => Promise<unknown> }) {
  const [asked, setAsked] = useState(false);
  const click = () => {
    if (asked) void about.sure();
    setAsked(!asked);
  };
  return (
    <button
      type="button"
      class={asked ? "tab tab-bad" : "tab"}
      aria-label={asked ? about.second : about.label}
      onClick={click}
      onBlur={() => setAsked(false)}
    >
      {asked ? about.second : about.first}
    </button>
  );
}
