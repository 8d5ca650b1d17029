import type { Caller, Keeping, Life, Listening, OwnFamily, Part, PastJob, Valve } from "../../core/index.ts";
import type { CameraOrder } from "../speech/camera-words.ts";
import type { CardKeepsake } from "./keepsake.ts";
import type { Loop } from "./loop.ts";
import type { Route } from "./route.ts";
import type { Settings } from "./settings.ts";
import type { KeptWord } from "./taught.ts";

/** Everything the screens show. A value: next.ts makes the next one, nothing edits it in place. */

/**
 * How far a phrase has come: being written to the device, on the device and waiting, kept by the server,
 * refused by the server, or not even on the device.
 */
export type Delivery = "keeping" | "waiting" | "kept" | "refused" | "not_kept";

export interface CardPhrase {
  id: string;
  job: string;
  text: string;
  /** ISO 8601 with the offset of the place where it was said */
  saidAt: string;
  how: "typed" | "heard";
  confidence?: number;
  delivery: Delivery;
  /** why it was refused or not kept, in words */
  problem?: string;
  /** the alert it raised was seen by someone; says nothing about the hazard itself */
  alertSeen?: true;
}

/** One job as the bench holds it. */
export interface JobCard {
  id: string;
  tag?: string;
  site?: string;
  startedAt: string;
  closedAt?: string;
}

/** What the device knows of a valve before the job begins. */
export interface KnownValve {
  tag: string;
  site?: string;
  valve: Valve;
  history: PastJob[];
  fleet: Life[];
  /** its family, where that is one of the site's own */
  ownFamily?: OwnFamily;
}

/** A site, and the zone its days go by. */
export interface KnownSite {
  site: string;
  name: string;
  zone: string;
  /** what it does with the sound of phrases */
  keeping?: Keeping;
}

/** A valve as the list to choose from shows it. */
export interface ListedValve {
  tag: string;
  site?: string;
  note?: string;
  /** the day of its last job, as the server knows it */
  lastOn?: string;
  /** how often its family was set up, where that is one of the site's own */
  ownFamily?: number;
}

export interface Offer {
  tag: string;
  text: string;
  /** how many known valves have a tag that begins with this one, which is new */
  beginSo?: number;
}

export type EarState = "closed" | "opening" | "open" | "hushed";
export interface EarView {
  state: EarState;
  /** what is being heard and is not settled yet */
  hearing: string;
  /** how loud it is, 0 to 1, where the recogniser says so */
  level?: number;
  /** why it cannot listen, in words */
  trouble?: string;
  /** the first load of our own ear, in bytes, while it lasts */
  coming?: { got: number; of: number };
}

export interface Outbox {
  /** phrases that the server does not hold yet */
  waiting: number;
  clips: number;
  photos: number;
  refused: number;
  /** when the server last said that it holds something, ISO 8601 */
  lastKeptAt?: string;
  /** why it is not getting through, in words */
  trouble?: string;
  /** the same of sound and photographs, which go by themselves */
  keepsakeTrouble?: string;
  /** the device's store has no room for sound and photographs */
  full?: boolean;
  /** how far this device's clock is ahead of the server's, in milliseconds; below 0 it is behind */
  aheadMs?: number;
}

export type { Settings } from "./settings.ts";

export interface State {
  route: Route;
  settings: Settings;
  /** the open job, or none */
  card?: JobCard;
  phrases: CardPhrase[];
  /** the reading of `phrases`, one for one */
  heard: Listening;
  /** sound and photographs of the open job that lie on this device */
  keepsakes: CardKeepsake[];
  /** the camera stands open: for which phrase, and what it was told last */
  camera?: { phrase?: string; order?: { is: CameraOrder } };
  known?: KnownValve;
  /** the job closed last, so that a closing said by mistake can be taken back */
  closed?: JobCard;
  /** what of the inspection list nobody had mentioned when it was closed */
  closedMissing: Part[];
  /** words that came while no job was open and named no valve */
  stray?: string;
  /** a tag heard doubtfully: the job starts by it once somebody says that it was heard right */
  offered?: Offer;
  /** the job was to be closed, and it is asked whether it may with what was not heard */
  closing?: true;
  /** what was asked for aloud, as it was said: what is missing, what stands, what is known of the valve */
  told?: string;
  /** where the loop of speaking and being understood stands */
  loop: Loop;
  /** one thing to say on the screen that is about no phrase */
  notice?: string;
  /** a newer page has been fetched and waits to be taken */
  newer?: true;
  valves: ListedValve[];
  sites: KnownSite[];
  /** words this device was taught beside those that ship */
  taught: KeptWord[];
  /** what was said on it in jobs that are closed, and understood whole */
  saidBefore: readonly { site?: string; text: string }[];
  ear: EarView;
  outbox: Outbox;
  /** who the server takes this page for, as it last said */
  caller?: Caller;
  /** why the server lets this page do nothing, in its words; what is said here is kept meanwhile */
  barred?: string;
}
