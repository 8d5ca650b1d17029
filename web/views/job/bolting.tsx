import { type BoltingPlan, boltingPlans, nameOf, type Share } from "../../../core/index.ts";
import { BoltCircle } from "../../parts/bolt-circle.tsx";
import { capital } from "../../parts/words.ts";

/** In what order the joints of this valve are tightened, in rounds; open where bolts were said or are owed again. */
export function Bolting({ share }: { share: Share }) {
  const plans = boltingPlans(share.valve, share.entries, share.consequences.followUps, share.family && [share.family]);
  if (!plans.length) return null;
  return (
    <>
      <h3>Tightening order</h3>
      {plans.map((plan) => (
        <Joint key={plan.part} plan={plan} />
      ))}
    </>
  );
}

function Joint({ plan }: { plan: BoltingPlan }) {
  const name = nameOf(plan.part, "part");
  const unit = plan.limit && nameOf(plan.limit.unit, "unit");
  const target = plan.limit ? `${plan.limit.min} to ${plan.limit.max} ${unit}` : "no limit is known: ask for it";
  const cross = plan.rounds[0]?.order ?? [];
  return (
    <details class="joint" open={plan.wanted}>
      <summary>
        {capital(name)}, {plan.count} bolts, {target}
        {plan.retorque && <b class="bad"> torque again</b>}
      </summary>
      <div class="joint-sheet">
        <BoltCircle order={cross} label={`Order of ${plan.count} bolts, numbered clockwise from the top`} />
        <ol class="joint-rounds">
          {plan.rounds.map((round) => (
            <li key={round.name}>
              <b>{round.name}:</b> {round.told}
              {round.torque && round.name !== "Snug" ? `, ${round.torque} ${unit}` : ""}
            </li>
          ))}
        </ol>
      </div>
      <p class="source">{capital(plan.source)}. The maker’s figures and the site’s procedure govern.</p>
    </details>
  );
}
