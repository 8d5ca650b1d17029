import { FAMILIES, type Family, type Site, type SiteFamilies } from "../../../core/index.ts";
import { useState } from "../../parts/hooks.ts";
import { useAnswer } from "../../parts/use-answer.ts";
import { send } from "../../sync/ask.ts";
import { FamilyForm } from "./family-form.tsx";

/** The valve families of a site: those that ship, and its own in their place or beside them. */
export function FamilyList({ site }: { site: Site }) {
  const at = `/api/sites/${encodeURIComponent(site.site)}/families`;
  const [answer, again] = useAnswer<SiteFamilies>(at);
  const [from, setFrom] = useState<Family | undefined>(undefined);
  const [problem, setProblem] = useState("");
  const own = answer?.ok ? answer.value.families : [];
  const ours = FAMILIES.filter((one) => !own.some((other) => other.family === one.family));
  const takeBack = async (family: string) => {
    const done = await send("PUT", at, { withdraw: family });
    setProblem(done.ok ? "" : done.problem);
    again();
  };
  const kept = () => {
    setFrom(undefined);
    again();
  };
  return (
    <>
      <h2 class="rule-head">Valve families</h2>
      {answer && !answer.ok && <p class="bad">{answer.problem}</p>}
      <ul class="site-lines">
        {own.map((one) => (
          <li key={one.family}>
            <FamilyWords family={one} />
            <span class="family-acts">
              <button type="button" class="tab" onClick={() => setFrom(one)}>
                Change {one.family}
              </button>
              <button type="button" class="tab" onClick={() => void takeBack(one.family)}>
                Take back {one.family}
              </button>
            </span>
          </li>
        ))}
        {ours.map((one) => (
          <li key={one.family}>
            <FamilyWords family={one} />
            <span class="family-acts">
              <button type="button" class="tab" onClick={() => setFrom(one)}>
                Set up one like {one.family}
              </button>
            </span>
          </li>
        ))}
      </ul>
      <p role="status" class="bad">
        {problem}
      </p>
      {from && (
        <>
          <h2 class="rule-head">A family at {site.name}</h2>
          <p class="why">
            By another code it is one more; by the same it takes the place of that one here. What follows from what was
            said so far is reckoned anew with it.
          </p>
          <FamilyForm key={from.family} site={site.site} from={from} kept={kept} />
          <button type="button" class="tab" onClick={() => setFrom(undefined)}>
            Leave it
          </button>
        </>
      )}
    </>
  );
}

function FamilyWords({ family }: { family: Family }) {
  const { seat_inspection_months: seat, seal_replacement_months: seals, source } = family.intervals;
  return (
    <>
      <b>{family.family}</b>: {family.name}. Seat every {seat} months, seals every {seals}; {source}.
    </>
  );
}
