import type { Site } from "../../../core/index.ts";
import { DeskFrame, Waiting } from "../../parts/desk-frame.tsx";
import { useAnswer } from "../../parts/use-answer.ts";
import type { Deeds } from "../../state/deeds.ts";
import { may } from "../../state/door.ts";
import { addressOf } from "../../state/route.ts";
import type { State } from "../../state/state.ts";
import { send } from "../../sync/ask.ts";
import { DoorForm, TextField, typed } from "../people/door-form.tsx";
import { FamilyList } from "./family-list.tsx";
import { StockForm } from "./stock-form.tsx";
import { ValveList } from "./valve-list.tsx";

/** Sites, their valves and families, what is on the shelf: set up by a person, and not in a file. */
export function SetUp({ site, state, deeds }: { site: string | undefined; state: State; deeds: Deeds }) {
  const [answer, again] = useAnswer<{ sites: Site[] }>("/api/sites");
  const sites = answer?.ok ? answer.value.sites : [];
  const at = sites.find((one) => one.site === site) ?? (sites.length === 1 ? sites[0] : undefined);
  const adds = may(state, "every_site");
  const keep = async (form: HTMLFormElement) => {
    const key = typed(form, "key").trim();
    const kept = await send("PUT", `/api/sites/${encodeURIComponent(key)}`, {
      name: typed(form, "name").trim(),
      zone: typed(form, "zone").trim(),
    });
    if (kept.ok) again();
    return kept;
  };
  return (
    <DeskFrame sign="SET UP" state={state} deeds={deeds}>
      {!answer?.ok ? (
        <Waiting problem={answer?.problem} again={again} />
      ) : (
        <div class="sheet">
          <section class="paper-column" aria-label="Sites">
            <h2 class="rule-head">Sites ({sites.length})</h2>
            <ul class="site-lines">
              {sites.map((one) => (
                <li key={one.site}>
                  <a
                    href={addressOf({ screen: "set-up", site: one.site })}
                    aria-current={one.site === at?.site ? "true" : undefined}
                  >
                    {one.name}
                  </a>{" "}
                  <span class="source">
                    {one.site}, {one.zone}
                  </span>
                </li>
              ))}
            </ul>
            {(at || adds) && (
              <>
                <h2 class="rule-head">
                  {[at && `Name ${at.name} anew`, adds && (at ? "or add a site" : "Add a site")]
                    .filter(Boolean)
                    .join(", ")}
                </h2>
                <DoorForm button="Keep the site" done="Kept." submit={keep}>
                  <TextField label="Short key, as the devices say it" name="key" autocomplete="off" value={at?.site} />
                  <TextField label="Name" name="name" autocomplete="off" value={at?.name} />
                  <TextField
                    label="Time zone, such as America/Denver"
                    name="zone"
                    autocomplete="off"
                    value={at?.zone ?? zoneHere()}
                  />
                </DoorForm>
              </>
            )}
          </section>
          <div class="paper-column">
            {at ? (
              <>
                <ValveList key={`valves ${at.site}`} site={at} />
                <FamilyList key={`families ${at.site}`} site={at} />
                <StockForm key={`stock ${at.site}`} site={at} />
                <h2 class="rule-head">Who gets the report</h2>
                <p>
                  <a href={addressOf({ screen: "report", site: at.site })}>
                    Recipients and hour of the report of {at.name}
                  </a>
                </p>
              </>
            ) : (
              <p class="none">{sites.length > 0 ? "Choose a site." : "Add the first site; its valves come next."}</p>
            )}
          </div>
        </div>
      )}
    </DeskFrame>
  );
}

const zoneHere = () => Intl.DateTimeFormat().resolvedOptions().timeZone;
