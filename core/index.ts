/** The public surface: words in, entries and what follows from them out. Pure; the same in browser and server. */

export { type BoltPass, boltPasses, PASSES_SOURCE } from "./compute/bolt-passes.ts";
export { boltSequence } from "./compute/bolt-sequence.ts";
export { spokenDate } from "./compute/calendar.ts";
export { convert, type DoesNotConvert } from "./compute/convert.ts";
export { type LeakageAsk, type SeatLeakageLimit, seatLeakageLimit } from "./compute/leakage-limit.ts";
export { fitWeibull, type NoEstimate, type WeibullFit } from "./compute/weibull.ts";
export { type BoltingPlan, boltingPlans } from "./consequences/bolting.ts";
export { type Contradiction, contradictions } from "./consequences/contradictions.ts";
export { DOUBT_BELOW, doubtfulPhrases, isDoubtful, markDoubtful } from "./consequences/doubt.ts";
export { carryList } from "./consequences/fleet/carry.ts";
export { exportLines } from "./consequences/fleet/export.ts";
export type { RecordedValve } from "./consequences/fleet/recorded.ts";
export { fleetReliability } from "./consequences/fleet/reliability.ts";
export type { Stock } from "./consequences/fleet/stock.ts";
export { followUpKey } from "./consequences/follow-ups.ts";
export { consequences } from "./consequences/index.ts";
export { seatLives } from "./consequences/seat-lives.ts";
export { FAMILIES, familyOf } from "./families/index.ts";
export { hear } from "./hear.ts";
export { mostSensible, type Way } from "./most-sensible.ts";
export { narrow } from "./narrow.ts";
export {
  type Code,
  glossary,
  type HelpPart,
  helpPage,
  meaningOf,
  nameOf,
  type Taught,
  teach,
  teachSaid,
  type WordKind,
  type WordLine,
} from "./pages/index.ts";
export {
  byValve,
  type Listening,
  listen,
  type Mark,
  type PhraseReading,
  readPhrase,
  startListening,
} from "./parse/index.ts";
export type * from "./shapes/codes.ts";
export type { Check, Consequences, Due, FollowUp } from "./shapes/consequence.ts";
export type { Ask, Entry, Unread } from "./shapes/entry.ts";
export type { CarryLine, CarryList, ExportLine, FleetRate, Reliability, TroubledValve } from "./shapes/fleet.ts";
export type {
  ClipSent,
  ClipView,
  Keeping,
  KeepsakeResult,
  PhotoSent,
  PhotoView,
} from "./shapes/keepsake.ts";
export { KEEPING_UNLESS_SAID, MOST_CLIP_BYTES, MOST_PHOTO_BYTES } from "./shapes/keepsake-bounds.ts";
export type * from "./shapes/owner.ts";
export type * from "./shapes/people.ts";
export type * from "./shapes/review.ts";
export { CERTAIN, REASONS, type ReasonCode } from "./shapes/review-reasons.ts";
export type * from "./shapes/roles.ts";
export type * from "./shapes/search.ts";
export type { ReportSettings, ReportState, SentVersion } from "./shapes/sending.ts";
export type * from "./shapes/served.ts";
export type { Session, SessionResult } from "./shapes/session.ts";
export type * from "./shapes/site-family.ts";
export type { SiteWord, TaughtWord, WordResult, WordTried } from "./shapes/taught-word.ts";
export type { Family, Life, PastJob, Valve } from "./shapes/valve.ts";
export type { ValveListRead } from "./shapes/valve-list.ts";
export type { Job, Phrase, PhraseResult } from "./shapes/wire.ts";
export {
  checkSentence,
  countedPart,
  dueSentence,
  figure,
  followUpWords,
  isGood,
  taskName,
  whenWords,
} from "./wording/follows.ts";
export { openedKits } from "./wording/kits.ts";
