import type { SiteWords } from "../../../core/speech/ear-words.ts";
import type { Heard } from "../../../core/speech/hearing.ts";

/** What the page and the ear's worker say to each other. `turn` numbers the recognitions: what is late belongs to an old one. */

export type ToEar =
  /** fetch what is not here yet, and be ready */
  | { to: "load" }
  | { to: "words"; site: SiteWords }
  /** sound comes by this port from now on, as blocks of Float32Array */
  | { to: "sound"; port: MessagePort; rate: number }
  | { to: "listen"; turn: number; interim: boolean }
  /** no more sound; what was heard until now still comes */
  | { to: "stop" }
  | { to: "abort" };

/** How much of the first load is here, in bytes. */
export interface Coming {
  got: number;
  of: number;
}

export type FromEar =
  | ({ is: "coming" } & Coming)
  | { is: "ready"; wide: boolean }
  /** it cannot hear now, and why, in words */
  | { is: "missing"; why: string }
  | ({ turn: number } & TurnTells);

export type TurnTells =
  /** sound arrives and is listened to */
  | { is: "listening" }
  | { is: "speechstart" }
  | { is: "speechend" }
  | { is: "partial"; text: string }
  | ({ is: "heard"; words: HeardWords; samples: Float32Array } & Pick<Heard, "text" | "confidence" | "others">)
  /** speech, and no words of ours in it */
  | { is: "nothing"; samples: Float32Array }
  /** dB below full scale, some times a second */
  | { is: "level"; room: number; now: number }
  | { is: "stopped" };

export type HeardWords = readonly { word: string; at: number; lasts: number; confidence: number }[];
