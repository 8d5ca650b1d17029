import { useEffect } from "hono/jsx/dom";
import { useStateOf } from "./parts/use-state-of.ts";
import type { Deeds } from "./state/deeds.ts";
import { valveAtHand } from "./state/seen.ts";
import type { State } from "./state/state.ts";
import type { Store } from "./state/store.ts";
import { Bench } from "./views/bench/bench.tsx";
import { Desk } from "./views/desk/desk.tsx";
import { DueBoard } from "./views/due/due.tsx";
import { Help } from "./views/help/help.tsx";
import { JobSheet } from "./views/job/job.tsx";
import { ValveSheet } from "./views/valve/valve.tsx";

/** One screen at a time, by the address. */
export function App({ store, deeds }: { store: Store; deeds: Deeds }) {
  const state = useStateOf(store);
  const { route, settings } = state;
  useEffect(() => {
    if (settings.theme === "system") delete document.documentElement.dataset.theme;
    else document.documentElement.dataset.theme = settings.theme;
  }, [settings.theme]);
  const title = titleOf(state);
  useEffect(() => {
    document.title = title;
  }, [title]);
  switch (route.screen) {
    case "bench":
      return <Bench state={state} deeds={deeds} />;
    case "desk":
      return <Desk key={`${route.site} ${route.day}`} route={route} state={state} deeds={deeds} />;
    case "job":
      return <JobSheet key={route.id} id={route.id} state={state} deeds={deeds} />;
    case "valve":
      return (
        <ValveSheet key={`${route.tag} ${route.site}`} tag={route.tag} site={route.site} state={state} deeds={deeds} />
      );
    case "due":
      return <DueBoard key={route.site ?? ""} site={route.site} state={state} deeds={deeds} />;
    case "help":
      return <Help state={state} deeds={deeds} />;
  }
}

/** What the window is called: the valve at hand first, for whoever has many open. */
function titleOf(state: State): string {
  const { route } = state;
  const names = {
    bench: valveAtHand(state).tag ?? "Bench",
    desk: "Jobs",
    job: "Job",
    due: "Due",
    help: "How to say it",
  };
  return `${route.screen === "valve" ? route.tag : names[route.screen]} · Handsfull`;
}
