import { type FleetRate, figure, type Reliability } from "../../../core/index.ts";
import { DeskFrame, Waiting } from "../../parts/desk-frame.tsx";
import { Plate } from "../../parts/plate.tsx";
import { SitePicker } from "../../parts/site-picker.tsx";
import { useAnswer } from "../../parts/use-answer.ts";
import { capital } from "../../parts/words.ts";
import type { Deeds } from "../../state/deeds.ts";
import { addressOf } from "../../state/route.ts";
import { siteName } from "../../state/seen.ts";
import type { State } from "../../state/state.ts";
import { path } from "../../sync/ask.ts";

/** A long fleet is cut here: what comes after is not among the worst. */
const MOST = 40;

/** How often valves fail, and which of them to look at first. */
export function ReliabilitySheet({ site, state, deeds }: { site: string | undefined; state: State; deeds: Deeds }) {
  const [answer, again] = useAnswer<Reliability>(path("/api/reliability", { site }));
  return (
    <DeskFrame sign="FLEET" state={state} deeds={deeds}>
      <SitePicker
        state={state}
        site={site}
        choose={(next) => {
          location.hash = addressOf({ screen: "reliability", site: next });
        }}
      />
      {!answer?.ok ? (
        <Waiting problem={answer?.problem} again={again} />
      ) : !answer.value.valves.length ? (
        <p class="none">No valve has a job on record yet.</p>
      ) : (
        <Fleet made={answer.value} state={state} />
      )}
    </DeskFrame>
  );
}

function Fleet({ made, state }: { made: Reliability; state: State }) {
  const rows: [string, FleetRate][] = [
    ["All", made.fleet],
    ...made.families.map((one): [string, FleetRate] => [capital(one.family), one]),
  ];
  return (
    <>
      <h2 class="rule-head">Failures a valve and year</h2>
      {/* it scrolls sideways, so the keyboard must reach it */}
      <section class="fleet-scroll" tabindex={0} aria-label="The fleet, scrolls sideways">
        <table class="fleet">
          <thead>
            <tr>
              <th scope="col">Valves</th>
              <th scope="col" class="fleet-number">
                How many
              </th>
              <th scope="col" class="fleet-number">
                Failures
              </th>
              <th scope="col" class="fleet-number">
                Valve-years
              </th>
              <th scope="col" class="fleet-number">
                In a valve-year
              </th>
              <th scope="col" class="fleet-number">
                {Math.round(100 * made.confidence)} % sure it lies in
              </th>
            </tr>
          </thead>
          <tbody>
            {rows.map(([name, one]) => (
              <tr key={name}>
                <th scope="row">{name}</th>
                <td class="fleet-number">{one.valves}</td>
                <td class="fleet-number">{one.failures}</td>
                <td class="fleet-number">{figure(Number(one.years.toPrecision(3)))}</td>
                <td class="fleet-number">{one.rate === undefined ? "not known" : two(one.rate)}</td>
                <td class="fleet-number">
                  {one.lower === undefined || one.upper === undefined ? "" : `${two(one.lower)} to ${two(one.upper)}`}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <p class="why">{made.counts}</p>
      <h2 class="rule-head">Worst first</h2>
      <ul class="dues">
        {made.valves.slice(0, MOST).map((one) => (
          <li key={`${one.site} ${one.tag}`}>
            <a class="due" href={addressOf({ screen: "valve", tag: one.tag, site: one.site })}>
              <Plate tag={one.tag} small />
              <span class="due-words">
                <b>
                  {two(one.expected)} expected in a year
                  {one.trend === "faster" && <span class="bad"> and rising</span>}
                </b>
                <span class="why">
                  {[siteName(state, one.site), one.family, `${one.service} service`].filter(Boolean).join(", ")}
                </span>
                {one.evidence.map((line) => (
                  <span key={line} class="why">
                    {capital(line)}.
                  </span>
                ))}
              </span>
            </a>
          </li>
        ))}
      </ul>
      {made.valves.length > MOST && (
        <p class="none">{made.valves.length - MOST} more valves, with less trouble to expect.</p>
      )}
      <p class="source">
        {capital(made.source)}. <a href={path("/api/export", { site: made.site })}>The record with ISO 14224 codes</a>
      </p>
    </>
  );
}

const two = (value: number) => figure(Number(value.toPrecision(2)));
