import { render } from "hono/jsx/dom";
import { App } from "./app.tsx";
import { registerWorker } from "./offline/register.ts";
import { ear } from "./speech/ear.ts";
import { browserRecognition } from "./speech/recognition.ts";
import { voice } from "./speech/voice.ts";
import { type Deeds, deeds } from "./state/deeds.ts";
import { doorDeeds } from "./state/door-deeds.ts";
import { readRoute } from "./state/route.ts";
import { createStore } from "./state/store.ts";
import { waits } from "./state/taught.ts";
import { instantHere } from "./state/time-words.ts";
import { openDatabase } from "./storage/database.ts";
import { enrolmentOn, noEnrolmentShelf } from "./storage/enrolment.ts";
import { noShelf } from "./storage/no-shelf.ts";
import { shelfOn } from "./storage/shelf.ts";
import { uuid7 } from "./storage/uuid7.ts";
import { ask, send as sendAny } from "./sync/ask.ts";
import { holdToken, whenBarred } from "./sync/door.ts";
import { sender } from "./sync/flush.ts";
import { postPhrases } from "./sync/post.ts";
import { knowValve, listValves } from "./sync/valves.ts";
import { wordPasser } from "./sync/words.ts";

/** Wires the rooms together; the only file that knows them all. */
async function open(): Promise<void> {
  const store = createStore(readRoute(location.hash));
  addEventListener("hashchange", () => store.happen({ is: "went", route: readRoute(location.hash) }));

  const opened = await openDatabase().then(
    (db) => ({ shelf: shelfOn(db), enrolment: enrolmentOn(db) }),
    (problem: unknown) => {
      const why = problem instanceof Error ? problem.message : String(problem);
      store.happen({
        is: "noticed",
        notice: `This browser lets the page keep nothing (${why}). Words are lost when the page closes unless the server has them.`,
      });
      return { shelf: noShelf(why), enrolment: noEnrolmentShelf };
    },
  );
  const { shelf } = opened;
  whenBarred((words) => store.happen({ is: "barred", words }));
  holdToken(await opened.enrolment.token());

  const send = sender({
    shelf,
    post: postPhrases,
    tell: store.happen,
    alone: (work) => navigator.locks.request("handsfull-outbox", work),
    later: (work, ms) => void setTimeout(work, ms),
    now: () => instantHere(new Date()),
    chance: Math.random,
  });

  const passWords = wordPasser({
    ask,
    words: () => store.state().taught,
    sites: () => [store.state().settings.site, store.state().card?.site],
    keep: shelf.keepTaught,
    tell: store.happen,
    newId: () => uuid7(),
    now: () => instantHere(new Date()),
  });

  const flush = () => {
    void send();
    if (store.state().taught.some(waits)) void passWords();
  };

  let acts: Deeds | undefined;
  let takeOver: (() => void) | undefined;
  const hearing = ear(browserRecognition(), {
    view: (view) => store.happen({ is: "ear", ear: view }),
    phrase: (text, confidence) => void acts?.say(text, "heard", confidence),
  });
  const speaking = voice(hearing);
  acts = deeds(store, {
    shelf,
    flush,
    sendWords: () => void passWords(),
    knowValve: (tag) => {
      const { card } = store.state();
      return knowValve(shelf, tag, card?.site, card?.id);
    },
    speak: speaking.say,
    quiet: speaking.quiet,
    openEar: hearing.open,
    closeEar: hearing.close,
    newId: () => uuid7(),
    now: () => new Date(),
    takeNewer: () => takeOver?.(),
  });

  store.happen({ is: "set", settings: await shelf.settings() });
  // before any job is taken up again: its words are read by them
  store.happen({ is: "taught", words: await shelf.taught() });
  const left = await shelf.openJob();
  if (left) store.happen({ is: "restored", ...left });
  store.happen({ is: "listed", ...(await shelf.listed()) });
  store.happen({ is: "outbox", outbox: await shelf.counts() });

  const passOn = async () => {
    flush();
    void passWords();
    const listed = await listValves(shelf);
    if (listed) store.happen({ is: "listed", ...listed });
  };

  const root = document.getElementById("root");
  if (!root) throw new Error("index.html has no #root to draw in");
  root.replaceChildren();
  const door = doorDeeds(store, {
    shelf: opened.enrolment,
    send: sendAny,
    holdToken,
    known: () => void passOn(),
  });
  render(<App store={store} deeds={acts} door={door} />, root);

  const catchUp = async () => {
    await door.look();
    await passOn();
  };
  addEventListener("online", () => void catchUp());
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "visible") void catchUp();
  });
  void catchUp();
  if (left) void acts.recall();
  // asks the browser not to clear the words away when the disk runs short; a refusal changes nothing else
  void navigator.storage?.persist?.();
  registerWorker((how) => {
    takeOver = how;
    store.happen({ is: "newer" });
  });
}

void open();
