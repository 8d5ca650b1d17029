import { Arriving, type Room } from "./parts/arriving.tsx";
import { useEffect } from "./parts/hooks.ts";
import { useStateOf } from "./parts/use-state-of.ts";
import type { LentEar } from "./speech/own-ear/lent-ear.ts";
import type { Deeds } from "./state/deeds.ts";
import type { DoorDeeds } from "./state/door-deeds.ts";
import { addressOf } from "./state/route.ts";
import { valveAtHand } from "./state/seen.ts";
import type { State } from "./state/state.ts";
import type { Store } from "./state/store.ts";
import { Asked } from "./views/asked/asked.tsx";
import { WithQuestions } from "./views/asked/asked-band.tsx";
import { Bench } from "./views/bench/bench.tsx";
import { HearingScreen } from "./views/bench/hearing-screen.tsx";

const DESK: Room<typeof import("./views/desk-room.ts")> = { load: () => import("./views/desk-room.ts") };
const PEOPLE: Room<typeof import("./views/people-room.ts")> = { load: () => import("./views/people-room.ts") };
const WORDS: Room<typeof import("./views/word-room.ts")> = { load: () => import("./views/word-room.ts") };

/** One screen at a time, by the address. */
export function App({
  store,
  deeds,
  door,
  ear,
}: {
  store: Store;
  deeds: Deeds;
  door: DoorDeeds;
  /** the page's own, where the browser has what it is made of */
  ear: LentEar | undefined;
}) {
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
  const all = { state, deeds };
  switch (route.screen) {
    case "bench":
      return (
        <WithQuestions state={state}>
          <Bench {...all} />
        </WithQuestions>
      );
    case "asked":
      return <Asked {...all} />;
    case "hearing":
      return <HearingScreen {...all} />;
    case "record-set":
      return <Arriving key="record-set" room={WORDS} draw={({ RecordSet }) => <RecordSet ear={ear} state={state} />} />;
    case "desk":
      return (
        <Arriving
          key="desk"
          room={DESK}
          draw={({ Desk }) => <Desk key={`${route.site} ${route.day}`} route={route} {...all} />}
        />
      );
    case "job":
      return (
        <Arriving key="job" room={DESK} draw={({ JobSheet }) => <JobSheet key={route.id} id={route.id} {...all} />} />
      );
    case "valve":
      return (
        <Arriving
          key="valve"
          room={DESK}
          draw={({ ValveSheet }) => (
            <ValveSheet key={`${route.tag} ${route.site}`} tag={route.tag} site={route.site} {...all} />
          )}
        />
      );
    case "review":
      return (
        <Arriving
          key="review"
          room={DESK}
          draw={({ ReviewDesk }) => <ReviewDesk key={route.site ?? ""} site={route.site} {...all} />}
        />
      );
    case "report":
      return (
        <Arriving
          key="report"
          room={DESK}
          draw={({ ReportSheet }) => <ReportSheet key={`${route.site} ${route.day}`} route={route} {...all} />}
        />
      );
    case "due":
      return (
        <Arriving
          key="due"
          room={DESK}
          draw={({ DueBoard }) => <DueBoard key={route.site ?? ""} site={route.site} {...all} />}
        />
      );
    case "carry":
      return (
        <Arriving
          key="carry"
          room={DESK}
          draw={({ Carry }) => <Carry key={addressOf(route)} route={route} {...all} />}
        />
      );
    case "reliability":
      return (
        <Arriving
          key="reliability"
          room={DESK}
          draw={({ ReliabilitySheet }) => <ReliabilitySheet key={route.site ?? ""} site={route.site} {...all} />}
        />
      );
    case "set-up":
      return (
        <Arriving
          key="set-up"
          room={PEOPLE}
          draw={({ SetUp }) => <SetUp key={route.site ?? ""} site={route.site} {...all} />}
        />
      );
    case "sign-in":
      return (
        <Arriving
          key="sign-in"
          room={PEOPLE}
          draw={({ SignIn }) => <SignIn next={route.next} door={door} {...all} />}
        />
      );
    case "set-password":
      return (
        <Arriving
          key="set-password"
          room={PEOPLE}
          draw={({ SetPassword }) => <SetPassword code={route.code} door={door} {...all} />}
        />
      );
    case "enrol":
      return (
        <Arriving
          key="enrol"
          room={PEOPLE}
          draw={({ EnrolDevice }) => <EnrolDevice code={route.code} door={door} {...all} />}
        />
      );
    case "me":
      return <Arriving key="me" room={PEOPLE} draw={({ Me }) => <Me door={door} {...all} />} />;
    case "people":
      return <Arriving key="people" room={PEOPLE} draw={({ People }) => <People {...all} />} />;
    case "search":
      return <Arriving key="search" room={WORDS} draw={({ SearchSheet }) => <SearchSheet {...all} />} />;
    case "help":
      return <Arriving key="help" room={WORDS} draw={({ Help }) => <Help {...all} />} />;
    case "glossary":
      return <Arriving key="glossary" room={WORDS} draw={({ Glossary }) => <Glossary {...all} />} />;
    case "words":
      return (
        <Arriving
          key="words"
          room={WORDS}
          draw={({ SiteWords }) => <SiteWords key={route.say} say={route.say} {...all} />}
        />
      );
  }
}

/** What the window is called: the valve at hand first, for whoever has many open. */
function titleOf(state: State): string {
  const { route } = state;
  const names = {
    bench: valveAtHand(state).tag ?? "Bench",
    hearing: "Talking",
    "record-set": "Measure the ear",
    review: "Review",
    asked: "Asked from the desk",
    search: "Search",
    "set-up": "Set up",
    desk: "Jobs",
    job: "Job",
    report: "Report",
    due: "Due",
    carry: "What to carry",
    reliability: "Fleet",
    help: "How to say it",
    glossary: "Glossary",
    words: "Words of this site",
    "sign-in": "Sign in",
    "set-password": "Choose a password",
    enrol: "Enrol this device",
    me: "Who this is",
    people: "People",
  };
  return `${route.screen === "valve" ? route.tag : names[route.screen]} · Handsfull`;
}
