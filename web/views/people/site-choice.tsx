import type { Site } from "../../../core/index.ts";
import type { Answer } from "../../sync/ask.ts";

/** Whether a person sees every site or is kept to some. `open`: whoever chooses may let him or her see every site. */
export function SiteChoice({
  sites,
  kept,
  open,
}: {
  sites: readonly Site[];
  kept: readonly string[] | undefined;
  open: boolean;
}) {
  if (sites.length === 0) return null;
  // a site is named: then it is those that are meant; every site: then none of them is
  const onChange = (event: Event) => {
    const { form, name, checked } = event.target as HTMLInputElement;
    if (!form || !checked) return;
    if (name === "site") for (const only of inputs(form, "sees")) only.checked = only.value === "some";
    else if (inputs(form, "sees").some((one) => one.value === "every" && one.checked))
      for (const site of inputs(form, "site")) site.checked = false;
  };
  return (
    <fieldset class="roles" onChange={onChange}>
      <legend>Sees</legend>
      {open && (
        <>
          <label>
            <input type="radio" name="sees" value="every" checked={kept === undefined} />
            <span>
              <b>Every site</b>
            </span>
          </label>
          <label>
            <input type="radio" name="sees" value="some" checked={kept !== undefined} />
            <span>
              <b>Only</b> these, and nothing of any other
            </span>
          </label>
        </>
      )}
      <div class={open ? "roles-under" : ""}>
        {sites.map(({ site, name }) => (
          <label key={site}>
            <input type="checkbox" name="site" value={site} checked={kept?.includes(site) ?? false} />
            <span>{name}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}

/**
 * What the form says: a list of sites, null for every site; undefined where sites were not asked about. Or why it cannot
 * be sent: a list of none would see nothing.
 */
export function chosenSites(form: HTMLFormElement): { sites?: string[] | null } | Answer<never> {
  const boxes = inputs(form, "site");
  if (boxes.length === 0) return {};
  if (inputs(form, "sees").some((one) => one.value === "every" && one.checked)) return { sites: null };
  const sites = boxes.filter((box) => box.checked).map((box) => box.value);
  if (sites.length > 0) return { sites };
  return { ok: false, status: 0, problem: "Choose at least one site." };
}

const inputs = (form: HTMLFormElement, name: string) => [
  ...form.querySelectorAll<HTMLInputElement>(`input[name=${name}]`),
];
