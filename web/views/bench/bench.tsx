import { useState } from "../../parts/hooks.ts";
import type { Deeds } from "../../state/deeds.ts";
import { standingAlert } from "../../state/seen.ts";
import type { State } from "../../state/state.ts";
import { Camera } from "../camera/camera.tsx";
import { Choose } from "./choose.tsx";
import { Controls } from "./controls.tsx";
import { JobOnBench } from "./job-on-bench.tsx";
import { StopScreen } from "./stop-screen.tsx";
import { useAwake } from "./use-awake.ts";
import { useHeadset } from "./use-headset.ts";

/** The bench: which valve, what was just understood, what is next; a field and the pad below; STOP in front of it all. */
export function Bench({ state, deeds }: { state: State; deeds: Deeds }) {
  const alert = standingAlert(state);
  /** what stands in the field, while a valve is chosen: the plates are those that have it */
  const [typed, setTyped] = useState("");
  useHeadset(state.settings.headset && !alert, deeds);
  useAwake(state.card !== undefined);
  return (
    <>
      <main class={`bench${state.card ? "" : " bench-choosing"}`} inert={alert || state.camera ? true : undefined}>
        {state.card ? (
          <JobOnBench key={state.card.id} state={state} deeds={deeds} />
        ) : (
          <Choose state={state} deeds={deeds} typed={typed} />
        )}
        <Controls state={state} deeds={deeds} typing={setTyped} />
      </main>
      {/* a place that is always there: what is drawn from nothing beside others is drawn twice, and opens twice */}
      <div>{state.camera && <Camera state={state} deeds={deeds.keepsakes} />}</div>
      {alert && <StopScreen key={alert.phrase.id} alert={alert} deeds={deeds} />}
    </>
  );
}
