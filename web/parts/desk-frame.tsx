import type { Child } from "hono/jsx";
import type { Right } from "../../core/index.ts";
import type { Deeds } from "../state/deeds.ts";
import { may } from "../state/door.ts";
import { addressOf, type Route } from "../state/route.ts";
import type { State } from "../state/state.ts";
import { clockHere } from "../state/time-words.ts";
import { outboxWords } from "../sync/outbox-words.ts";
import { DoorBand } from "./door-band.tsx";
import { useEffect, useRef } from "./hooks.ts";
import { Stencil } from "./stencil.tsx";
import { ThemeChoice } from "./theme-choice.tsx";

const SCREENS: { route: Route; name: string; right?: Right }[] = [
  { route: { screen: "bench" }, name: "Bench" },
  { route: { screen: "review" }, name: "Review", right: "review" },
  { route: { screen: "desk" }, name: "Jobs" },
  { route: { screen: "report" }, name: "Report", right: "read_all" },
  { route: { screen: "due" }, name: "Due" },
  { route: { screen: "carry" }, name: "Carry" },
  { route: { screen: "search" }, name: "Search" },
  { route: { screen: "reliability" }, name: "Fleet", right: "read_all" },
  { route: { screen: "help" }, name: "Help" },
  { route: { screen: "glossary" }, name: "Glossary" },
  { route: { screen: "words" }, name: "Words" },
  { route: { screen: "set-up" }, name: "Set up", right: "set_up" },
  { route: { screen: "people" }, name: "People", right: "manage_people" },
];

/** What every screen of the desk stands in: its sign, the way to the others, the light. */
export function DeskFrame({
  sign,
  state,
  deeds,
  children,
}: {
  sign: string;
  state: State;
  deeds: Deeds;
  children?: Child;
}) {
  const here = useRef<HTMLElement>(null);
  useEffect(() => {
    // on a phone the screens stand in one row that scrolls sideways
    here.current?.querySelector("[aria-current]")?.scrollIntoView({ inline: "center", block: "nearest" });
    return undefined;
  }, [state.route.screen]);
  return (
    <>
      <header class="desk-head">
        <nav aria-label="Screens" ref={here}>
          {SCREENS.filter(({ right }) => !right || may(state, right)).map(({ route, name }) => (
            <a
              key={name}
              class="tab"
              href={addressOf(route)}
              aria-current={route.screen === state.route.screen ? "page" : undefined}
            >
              {name}
            </a>
          ))}
          <a
            class="tab"
            href={addressOf({ screen: state.barred ? "sign-in" : "me" })}
            aria-current={state.route.screen === "me" || state.route.screen === "sign-in" ? "page" : undefined}
          >
            {state.caller?.name ?? (state.barred ? "Sign in" : "Who")}
          </a>
        </nav>
        <h1 class="sign">
          <Stencil text={sign} class="head-sign" />
        </h1>
      </header>
      <DoorBand state={state} />
      <main class="desk">{children}</main>
      <footer class="desk-foot">
        <ThemeChoice settings={state.settings} deeds={deeds} />
        <p class="outbox">This device: {outboxWords(state.outbox, clockHere)}</p>
      </footer>
    </>
  );
}

/** Shown while asked and where there is no answer. */
export function Waiting({ problem, again }: { problem: string | undefined; again: () => void }) {
  if (!problem) return <p class="none">Asking the server…</p>;
  return (
    <div class="tell tell-bad" role="alert">
      <p>{problem}</p>
      <button type="button" class="tab" onClick={again}>
        Look again
      </button>
    </div>
  );
}
