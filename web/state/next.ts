import { type Caller, type Listening, listen, type Part, startListening } from "../../core/index.ts";
import type { CardKeepsake } from "./keepsake.ts";
import { type Loop, RESTING } from "./loop.ts";
import { caughtUp } from "./order-said.ts";
import type { Route } from "./route.ts";
import { USUAL } from "./settings.ts";
import type {
  CardPhrase,
  EarView,
  JobCard,
  KnownSite,
  KnownValve,
  ListedValve,
  Offer,
  Outbox,
  Settings,
  State,
} from "./state.ts";
import { type KeptWord, wordsHere } from "./taught.ts";

/** What can happen. Every change of the screen begins as one of these. */
export type Happening =
  | { is: "went"; route: Route }
  | { is: "set"; settings: Partial<Settings> }
  | { is: "restored"; card: JobCard; phrases: CardPhrase[] }
  | { is: "started"; card: JobCard }
  | { is: "knew"; known: KnownValve }
  | { is: "listed"; valves: ListedValve[]; sites: KnownSite[] }
  | { is: "said_before"; said: State["saidBefore"] }
  | { is: "said"; phrase: CardPhrase }
  | { is: "on_device"; id: string }
  | { is: "not_on_device"; id: string; problem: string }
  | { is: "delivered"; ids: string[] }
  | { is: "refused"; id: string; problem: string }
  /** the open job as the device holds it: another tab may have written to it */
  | { is: "caught_up"; phrases: CardPhrase[] }
  | { is: "keepsake"; keepsake: CardKeepsake }
  | { is: "keepsakes"; keepsakes: CardKeepsake[] }
  /** opens the camera, tells it something, or, without one, shuts it */
  | { is: "camera"; camera?: State["camera"] }
  | { is: "alert_seen"; id: string }
  | { is: "closed"; at: string; missing: Part[] }
  | { is: "strayed"; text?: string }
  | { is: "offered"; offer?: Offer }
  | { is: "closing"; closing: boolean }
  | { is: "confirmed"; id: string }
  | { is: "told"; text?: string }
  | { is: "turned"; loop: Loop }
  | { is: "noticed"; notice?: string }
  | { is: "taught"; words: KeptWord[] }
  | { is: "known_as"; caller: Caller }
  | { is: "barred"; words: string }
  | { is: "newer" }
  | { is: "ear"; ear: Partial<EarView> }
  | { is: "outbox"; outbox: Partial<Outbox> };

export function firstState(route: Route): State {
  return {
    route,
    settings: USUAL,
    phrases: [],
    heard: startListening(),
    keepsakes: [],
    closedMissing: [],
    valves: [],
    saidBefore: [],
    sites: [],
    taught: [],
    ear: { state: "closed", hearing: "" },
    loop: RESTING,
    outbox: { waiting: 0, clips: 0, photos: 0, refused: 0 },
  };
}

/** The state after something happened. Pure. */
export function next(state: State, now: Happening): State {
  switch (now.is) {
    case "went":
      return { ...state, route: now.route };
    case "set":
      return { ...state, settings: { ...state.settings, ...now.settings } };
    case "restored":
      return heardAgain({ ...bare(state), card: { ...now.card, closedAt: undefined }, phrases: now.phrases });
    case "started":
      return heardAgain({ ...bare(state), card: now.card });
    case "knew":
      return { ...state, known: now.known };
    case "listed":
      return { ...state, valves: now.valves, sites: now.sites };
    case "said_before":
      return { ...state, saidBefore: now.said };
    case "said":
      return {
        ...state,
        notice: undefined,
        closing: undefined,
        told: undefined,
        phrases: [...state.phrases, now.phrase],
        heard: listen(state.heard, now.phrase.text),
        // from this moment not everything is kept, long before the next count
        outbox: { ...state.outbox, waiting: state.outbox.waiting + 1 },
      };
    case "on_device":
      // the server may have answered before the device's own store did: never step back from "kept"
      return each(state, [now.id], (one) =>
        one.delivery === "keeping" || one.delivery === "not_kept"
          ? { ...one, delivery: "waiting", problem: undefined }
          : one,
      );
    case "not_on_device":
      return each(state, [now.id], (one) => ({ ...one, delivery: "not_kept", problem: now.problem }));
    case "delivered":
      return each(state, now.ids, (one) => ({ ...one, delivery: "kept", problem: undefined }));
    case "refused":
      return each(state, [now.id], (one) => ({ ...one, delivery: "refused", problem: now.problem }));
    case "caught_up": {
      const phrases = caughtUp(state.phrases, now.phrases);
      const same = phrases.length === state.phrases.length;
      return same ? { ...state, phrases } : heardAgain({ ...state, phrases, told: undefined });
    }
    case "keepsake": {
      const { keepsake } = now;
      if (keepsake.job !== state.card?.id) return state;
      const others = state.keepsakes.filter((one) => one.id !== keepsake.id);
      return { ...state, keepsakes: [...others, keepsake].sort((a, b) => (a.id < b.id ? -1 : 1)) };
    }
    case "keepsakes":
      return { ...state, keepsakes: now.keepsakes };
    case "camera":
      return { ...state, camera: now.camera };
    case "alert_seen":
      return each(state, [now.id], (one) => ({ ...one, alertSeen: true }));
    case "closed":
      if (!state.card) return state;
      return { ...bare(state), closed: { ...state.card, closedAt: now.at }, closedMissing: now.missing };
    case "strayed":
      return { ...state, stray: now.text, offered: undefined };
    case "offered":
      return { ...state, offered: now.offer, stray: undefined };
    case "closing":
      return { ...state, closing: now.closing || undefined };
    case "confirmed":
      // who said it says that it was heard right: no recogniser can know better
      return {
        ...each(state, [now.id], (one) => ({ ...one, confidence: 1, delivery: "keeping" })),
        outbox: { ...state.outbox, waiting: state.outbox.waiting + 1 },
      };
    case "told":
      return { ...state, told: now.text };
    case "turned":
      return { ...state, loop: now.loop };
    case "noticed":
      return { ...state, notice: now.notice };
    case "taught":
      // what was said before the word was taught is read with it too
      return heardAgain({ ...state, taught: now.words });
    case "known_as":
      return { ...state, caller: now.caller, barred: undefined };
    case "barred":
      return { ...state, caller: undefined, barred: now.words };
    case "newer":
      return { ...state, newer: true };
    case "ear":
      return { ...state, ear: { ...state.ear, ...now.ear } };
    case "outbox":
      return { ...state, outbox: notFewer({ ...state.outbox, ...now.outbox }, state.phrases) };
  }
}

/** The same state with every phrase of the job read afresh, by the words of its site. */
function heardAgain(state: State): State {
  let heard: Listening = startListening(wordsHere(state));
  for (const phrase of state.phrases) heard = listen(heard, phrase.text);
  return { ...state, heard };
}

/** The same state with no job on the bench. */
function bare(state: State): State {
  return {
    ...state,
    card: undefined,
    phrases: [],
    heard: startListening(),
    keepsakes: [],
    camera: undefined,
    known: undefined,
    closed: undefined,
    closedMissing: [],
    stray: undefined,
    offered: undefined,
    closing: undefined,
    told: undefined,
    notice: undefined,
  };
}

/** A count that was begun before the last words were on the device has missed them. */
function notFewer(outbox: Outbox, phrases: readonly CardPhrase[]): Outbox {
  const keeping = phrases.filter((one) => one.delivery === "keeping").length;
  return { ...outbox, waiting: Math.max(outbox.waiting, keeping) };
}

function each(state: State, ids: string[], change: (one: CardPhrase) => CardPhrase): State {
  return { ...state, phrases: state.phrases.map((one) => (ids.includes(one.id) ? change(one) : one)) };
}
