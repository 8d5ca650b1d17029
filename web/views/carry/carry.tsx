import { type CarryLine, type CarryList, figure, nameOf } from "../../../core/index.ts";
import { DeskFrame, Waiting } from "../../parts/desk-frame.tsx";
import { SitePicker } from "../../parts/site-picker.tsx";
import { useAnswer } from "../../parts/use-answer.ts";
import { capital, plainWords } from "../../parts/words.ts";
import type { Deeds } from "../../state/deeds.ts";
import { addressOf, type Route } from "../../state/route.ts";
import type { State } from "../../state/state.ts";
import { path } from "../../sync/ask.ts";

const AHEAD = [7, 14, 30];
const USUAL = 14;

/** What to load on the truck for the work that is due: certain, likely, and how many are enough. */
export function Carry({
  route,
  state,
  deeds,
}: {
  route: Extract<Route, { screen: "carry" }>;
  state: State;
  deeds: Deeds;
}) {
  const days = route.days ?? USUAL;
  const [answer, again] = useAnswer<CarryList>(
    path("/api/carry", { site: route.site, days: String(days), stock: route.stock }),
  );
  const go = (next: Partial<typeof route>) => {
    location.hash = addressOf({ ...route, ...next });
  };
  return (
    <DeskFrame sign="CARRY" state={state} deeds={deeds}>
      <SitePicker state={state} site={route.site} choose={(site) => go({ site })}>
        <label>
          <span>For the next</span>
          <select
            value={String(days)}
            onChange={(event: Event) => go({ days: Number((event.target as HTMLSelectElement).value) })}
          >
            {AHEAD.map((one) => (
              <option key={one} value={String(one)}>
                {one} days
              </option>
            ))}
          </select>
        </label>
        <label>
          <span>On hand, as part:count</span>
          <input
            value={route.stock ?? ""}
            placeholder="packing:4, seat:1"
            onChange={(event: Event) => go({ stock: (event.target as HTMLInputElement).value.trim() || undefined })}
          />
        </label>
      </SitePicker>
      {!answer?.ok ? (
        <Waiting problem={answer?.problem} again={again} />
      ) : !answer.value.lines.length ? (
        <p class="none">Nothing to carry for the next {days} days.</p>
      ) : (
        <Lines list={answer.value} />
      )}
    </DeskFrame>
  );
}

function Lines({ list }: { list: CarryList }) {
  const stocked = list.lines.some((line) => line.onHand !== undefined);
  return (
    <>
      <h2 class="rule-head">For the truck</h2>
      <p class="count">
        {list.visits} {list.visits === 1 ? "valve" : "valves"} with work due in the next {list.days} days
      </p>
      {list.unclear.map((one) => (
        <p key={one} class="tell tell-bad" role="alert">
          On hand, {one}.
        </p>
      ))}
      {/* it scrolls sideways, so the keyboard must reach it */}
      <section class="fleet-scroll" tabindex={0} aria-label="What to carry, scrolls sideways">
        <table class="fleet">
          <thead>
            <tr>
              <th scope="col" class="fleet-number">
                Carry
              </th>
              <th scope="col">Part</th>
              <th scope="col">For</th>
              <th scope="col" class="fleet-number">
                Certain
              </th>
              <th scope="col" class="fleet-number">
                Expected
              </th>
              {stocked && (
                <th scope="col" class="fleet-number">
                  On hand
                </th>
              )}
              {stocked && (
                <th scope="col" class="fleet-number">
                  Short
                </th>
              )}
              <th scope="col">Why</th>
            </tr>
          </thead>
          <tbody>
            {list.lines.map((line) => (
              <tr key={`${line.part} ${line.family} ${line.size_in}`}>
                <td class="fleet-number">
                  <b>{line.carry}</b>
                </td>
                <th scope="row">{capital(nameOf(line.part, "part"))}</th>
                <td>{forWhat(line)}</td>
                <td class="fleet-number">{line.certain}</td>
                <td class="fleet-number">{figure(Number(line.expected.toPrecision(2)))}</td>
                {stocked && <td class="fleet-number">{line.onHand ?? ""}</td>}
                {stocked && <td class={`fleet-number${line.short ? " bad" : ""}`}>{line.short ?? ""}</td>}
                <td class="why">{line.why}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {list.kits.map((kit) => (
        <p key={`${kit.family} ${kit.size_in}`}>
          <b>
            Or as kits: {kit.count} × {kit.kit}
            {kit.size_in ? `, ${kit.size_in} inch` : ""}
          </b>{" "}
          <span class="why">{kit.why}</span>
        </p>
      ))}
      <p class="source">{capital(list.source)}. What a valve needs once it is open may still be more.</p>
    </>
  );
}

function forWhat(line: CarryLine): string {
  return [line.size_in !== undefined && `${line.size_in} inch`, plainWords(line.family)].filter(Boolean).join(" ");
}
