import { render } from "hono/jsx/dom";
import type { SiteWords } from "../core/speech/ear-words.ts";
import { App } from "./app.tsx";
import { registerWorker } from "./offline/register.ts";
import { chosenEar } from "./speech/chosen-ear.ts";
import { encodeClip } from "./speech/clip.ts";
import { ear } from "./speech/ear.ts";
import { oneEar } from "./speech/one-ear.ts";
import { lentEar } from "./speech/own-ear/lent-ear.ts";
import { canHearItself, type EarTells, OwnEar } from "./speech/own-ear/own-ear.ts";
import { ownRecognition } from "./speech/own-ear/own-recognition.ts";
import { phraseRecorder } from "./speech/phrase-recorder.ts";
import { browserRecognition } from "./speech/recognition.ts";
import { siteWords } from "./speech/site-words.ts";
import { markEndOfSpeech, measureToTone } from "./speech/speed.ts";
import { listenForTalkKey } from "./speech/talk-key-press.ts";
import { sounder } from "./speech/tones.ts";
import { EAR_MISSING, ELSEWHERE } from "./speech/trouble.ts";
import { voice } from "./speech/voice.ts";
import { type Deeds, deeds } from "./state/deeds.ts";
import { doorDeeds } from "./state/door-deeds.ts";
import { keepsakeDeeds } from "./state/keepsake-deeds.ts";
import { likeliestHere } from "./state/likeliest-here.ts";
import { readRoute } from "./state/route.ts";
import { MOST_SAID_BEFORE, saidAndUnderstood } from "./state/said-before.ts";
import { readSettings } from "./state/settings.ts";
import { createStore, type Store } from "./state/store.ts";
import { talk } from "./state/talk.ts";
import { waits } from "./state/taught.ts";
import { instantHere } from "./state/time-words.ts";
import { openDatabase } from "./storage/database.ts";
import { enrolmentOn, noEnrolmentShelf } from "./storage/enrolment.ts";
import { heldBeside } from "./storage/held-beside.ts";
import { keepsakesOn } from "./storage/keepsake-shelf.ts";
import { noKeepsakes, noShelf } from "./storage/no-shelf.ts";
import { otherTabs, telling } from "./storage/other-tabs.ts";
import { roomOn } from "./storage/room.ts";
import { shelfOn } from "./storage/shelf.ts";
import { uuid7 } from "./storage/uuid7.ts";
import { alone } from "./sync/alone.ts";
import { ask, send as sendAny } from "./sync/ask.ts";
import { fetchBytes } from "./sync/bytes.ts";
import { holdToken, knownAnew, whenBarred } from "./sync/door.ts";
import { sender } from "./sync/flush.ts";
import { keepSite } from "./sync/keep-site.ts";
import { keepsakeSender } from "./sync/keepsakes.ts";
import { keepToOwnSites } from "./sync/own-sites.ts";
import { postPhrases, putKeepsake } from "./sync/post.ts";
import { knowValve, listValves } from "./sync/valves.ts";
import { wordPasser } from "./sync/words.ts";

/** Wires the rooms together; the only file that knows them all. */
async function open(): Promise<void> {
  const store = createStore(readRoute(location.hash));
  addEventListener("hashchange", () => store.happen({ is: "went", route: readRoute(location.hash) }));

  let catchUpJob = async () => {};
  const opened = await openDatabase().then(
    (db) => {
      const keepsakes = keepsakesOn(db);
      const room = roomOn({
        estimate: navigator.storage?.estimate?.bind(navigator.storage),
        letGo: keepsakes.letGo,
        setReserve: keepsakes.setReserve,
        giveUpReserve: keepsakes.giveUpReserve,
        tell: (full) => store.happen({ is: "outbox", outbox: { full } }),
      });
      const shelf = telling(
        heldBeside(shelfOn(db, room.writeWords)),
        otherTabs(() => catchUpJob()),
      );
      return { shelf, keepsakes, room, enrolment: enrolmentOn(db) };
    },
    (problem: unknown) => {
      const why = problem instanceof Error ? problem.message : String(problem);
      store.happen({
        is: "noticed",
        notice: `This browser lets the page keep nothing (${why}). Words are lost when the page closes unless the server has them.`,
      });
      const keepsakes = noKeepsakes(why);
      const room = roomOn({ ...keepsakes, tell: () => {} });
      return { shelf: noShelf(why), keepsakes, room, enrolment: noEnrolmentShelf };
    },
  );
  const { shelf } = opened;
  whenBarred((words) => store.happen({ is: "barred", words }));
  holdToken(await opened.enrolment.token());

  const sending = {
    tell: store.happen,
    later: (work: () => void, ms: number) => void setTimeout(work, ms),
    now: () => instantHere(new Date()),
    chance: Math.random,
    ticks: () => performance.now(),
  };
  const countKeepsakes = async () => {
    // the count of words is told by who sends words: theirs may have grown since this one was begun
    const { waiting: _, ...others } = await shelf.counts();
    return others;
  };
  const sendKeepsakes = keepsakeSender({
    ...sending,
    shelf: opened.keepsakes,
    counts: countKeepsakes,
    put: putKeepsake,
    setLastKeptAt: shelf.setLastKeptAt,
    // a lock of their own: a photograph on a weak link must not hold up words
    alone: (work) => alone("handsfull-keepsakes", work),
  });
  const send = sender({
    ...sending,
    shelf,
    post: postPhrases,
    delivered() {
      void sendKeepsakes();
      // what words had to take of it while there was no network
      void opened.keepsakes.setReserve();
    },
    alone: (work) => alone("handsfull-outbox", work),
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

  let acts: Deeds;
  let takeOver: (() => void) | undefined;
  const ownEar = canHearItself() ? new OwnEar(preparing(store)) : undefined;
  const recognition = chosenEar(
    { own: ownEar && ownRecognition(ownEar), browser: browserRecognition() },
    () => store.state().settings.ear,
    () => siteWords(store.state()),
  );
  const recorder = phraseRecorder();
  const hearing = ear(recognition, {
    view(view) {
      store.happen({ is: "ear", ear: view });
      // not while the page speaks: a clip is what was said to it
      if (view.state === "open" && keepsakes.wantsSound() && !recognition?.givesClips) recorder?.open();
      else if (view.state === "closed" || view.state === "hushed") recorder?.close();
      if (view.state === "open") turned({ is: "opened" });
      if (view.state === "closed") turned({ is: "shut", trouble: store.state().ear.trouble !== undefined });
    },
    phrase(ways, sound) {
      const { callWord: call } = store.state().settings;
      const { text, confidence } = likeliestHere(ways, store.state());
      turned({ is: "heard", text, confidence, call, sound: sound ? Promise.resolve(sound) : recorder?.cut() });
    },
    ended: () => markEndOfSpeech(),
    garbled: () => turned({ is: "garbled" }),
  });
  const ears = oneEar(() => {
    if (store.state().ear.state === "closed") return;
    store.happen({ is: "ear", ear: { trouble: ELSEWHERE } });
    hearing.close();
  });
  const speaking = voice(hearing);
  const sounds = sounder();
  const turned = talk(store, {
    ear: {
      open() {
        ears.claim();
        hearing.open();
      },
      close: hearing.close,
    },
    voice: speaking,
    sound(tone) {
      sounds.sound(tone);
      measureToTone();
    },
    deeds: () => acts,
    later: (work, ms) => void setTimeout(work, ms),
  });
  const keepsakes = keepsakeDeeds(store, {
    shelf: opened.keepsakes,
    room: opened.room,
    encode: encodeClip,
    fetchPhoto: (id) => fetchBytes(`/api/photos/${encodeURIComponent(id)}`),
    counts: countKeepsakes,
    flush: () => void sendKeepsakes(),
    speak: (say) => turned({ is: "answered", mood: "understood", say }),
    newId: () => uuid7(),
    now: () => new Date(),
  });
  acts = deeds(store, {
    shelf,
    flush,
    keepsakes,
    sendWords: () => void passWords(),
    knowValve: (tag) => {
      const { card } = store.state();
      return knowValve(shelf, tag, card?.site, card?.id);
    },
    keptValve: shelf.valve,
    turned,
    quiet() {
      speaking.quiet();
      turned({ is: "spoken" });
    },
    newId: () => uuid7(),
    now: () => new Date(),
    takeNewer: () => takeOver?.(),
  });

  catchUpJob = async () => {
    await acts.catchUp();
    store.happen({ is: "outbox", outbox: await shelf.counts() });
  };
  store.happen({ is: "set", settings: readSettings(await shelf.settings()) });
  // before any job is taken up again: its words are read by them
  store.happen({ is: "taught", words: await shelf.taught() });
  const left = await shelf.openJob();
  if (left) store.happen({ is: "restored", ...left });
  store.happen({ is: "listed", ...(await shelf.listed()) });
  store.happen({ is: "outbox", outbox: await shelf.counts() });

  const recallSaid = async () => {
    const said = (await shelf.saidBefore(MOST_SAID_BEFORE)).filter(({ phrase }) => saidAndUnderstood(phrase));
    store.happen({ is: "said_before", said: said.map(({ site, phrase }) => ({ site, text: phrase.text })) });
  };

  const passOn = async () => {
    flush();
    await keepToOwnSites({ shelf, state: store.state, tell: store.happen, set: acts.set });
    void passWords();
    const listed = await listValves(shelf);
    if (!listed) return;
    store.happen({ is: "listed", ...listed });
    await keepSite(shelf, listed.valves, store.state().settings.site);
  };

  const root = document.getElementById("root");
  if (!root) throw new Error("index.html has no #root to draw in");
  root.replaceChildren();
  const door = doorDeeds(store, {
    shelf: opened.enrolment,
    send: sendAny,
    holdToken,
    known() {
      knownAnew();
      void passOn();
    },
  });
  const lent = ownEar && lentEar(ownEar, hearing);
  render(<App store={store} deeds={acts} door={door} ear={lent} />, root);

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
  void recallSaid();
  listenForTalkKey(store, turned);
  if (store.state().settings.handsFree) turned({ is: "hands_free", on: true });
  // asks the browser not to clear the words away when the disk runs short; a refusal changes nothing else
  void navigator.storage?.persist?.();
  void opened.keepsakes.setReserve();
  if (ownEar) readyEar(ownEar, store);
  registerWorker((how) => {
    takeOver = how;
    store.happen({ is: "newer" });
  });
}

/** Says how the ear gets on before anybody wants to be heard by it. */
const preparing = (store: Store): EarTells => ({
  coming: (coming) => store.happen({ is: "ear", ear: { coming } }),
  ready() {
    if (store.state().ear.trouble === EAR_MISSING) store.happen({ is: "ear", ear: { trouble: undefined } });
  },
  missing: () => store.happen({ is: "ear", ear: { trouble: EAR_MISSING } }),
});

/** Behind the page's own loading: it must open and take what is typed before the ear's megabytes come. */
const EAR_AFTER_MS = 2000;

/** Gets the ear ready ahead of the first phrase, and has it know the words of the site at hand. */
function readyEar(own: OwnEar, store: Store): void {
  const wanted = () => (store.state().settings.ear ?? "own") === "own";
  let told: SiteWords | undefined;
  const tellWords = () => {
    const words = siteWords(store.state());
    if (words === told) return;
    told = words;
    own.words(words);
  };
  tellWords();
  store.watch(tellWords);
  const load = () => {
    if (wanted()) own.load();
  };
  setTimeout(load, EAR_AFTER_MS);
  addEventListener("online", load);
}

void open();
