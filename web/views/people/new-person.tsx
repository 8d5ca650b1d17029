import type { Role, Site } from "../../../core/index.ts";
import type { Answer } from "../../sync/ask.ts";
import { DoorForm, TextField, typed } from "./door-form.tsx";
import { chosenSites, SiteChoice } from "./site-choice.tsx";

const ROLES: { role: Role; name: string; may: string }[] = [
  { role: "technician", name: "Technician", may: "says phrases, reads jobs and valves" },
  { role: "lead", name: "Lead", may: "all of it: sets up, teaches, corrects, manages people" },
  { role: "office", name: "Office", may: "reads everything" },
];

/** Enrols a person: a name, what he or she may do, and at which sites. */
export function NewPerson({
  sites,
  open,
  add,
}: {
  sites: readonly Site[];
  /** whoever enrols sees every site, and may let others */
  open: boolean;
  add: (person: { name: string; roles: Role[]; sites?: string[] }) => Promise<Answer<unknown>>;
}) {
  const submit = async (form: HTMLFormElement) => {
    const chosen = chosenSites(form);
    if ("ok" in chosen) return chosen;
    return add({
      name: typed(form, "name"),
      roles: chosenRoles(form),
      ...(chosen.sites ? { sites: chosen.sites } : {}),
    });
  };
  return (
    <>
      <h2 class="rule-head">Enrol a person</h2>
      <DoorForm
        button="Enrol"
        done="Enrolled. A code for a phone, or a link for a password, is made beside the name."
        submit={submit}
      >
        <TextField label="Name" name="name" autocomplete="off" />
        <RoleBoxes roles={["technician"]} />
        <SiteChoice sites={sites} kept={open ? undefined : []} open={open} />
      </DoorForm>
    </>
  );
}

export function RoleBoxes({ roles }: { roles: readonly Role[] }) {
  return (
    <fieldset class="roles">
      <legend>May</legend>
      {ROLES.map(({ role, name, may }) => (
        <label key={role}>
          <input type="checkbox" name="roles" value={role} checked={roles.includes(role)} />
          <span>
            <b>{name}</b> {may}
          </span>
        </label>
      ))}
    </fieldset>
  );
}

export function chosenRoles(form: HTMLFormElement): Role[] {
  return [...form.querySelectorAll<HTMLInputElement>("input[name=roles]:checked")].map((box) => box.value as Role);
}
