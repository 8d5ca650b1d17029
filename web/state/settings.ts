import { isKey, type TalkKey, USUAL_KEY } from "./talk-key.ts";

/** What the technician chose on this device, and what holds until he does. */
export interface Settings {
  theme: "system" | "day" | "dark";
  /** how much is said back: what was understood, that and what follows, or only a tone (questions are asked aloud) */
  readBack: "brief" | "full" | "tones";
  talkKey: TalkKey;
  /** listens for the call word without a touch */
  handsFree: boolean;
  callWord: string;
  /** a headset's button opens the microphone */
  headset: boolean;
  /** which ear listens: our own unless said otherwise; the browser's on this device only, or wherever it sends sound */
  ear?: "own" | "browser" | "browser_sends";
  /** false: this device keeps no sound of phrases, whatever the site does */
  keepSound?: boolean;
  site?: string;
}

export const USUAL: Settings = {
  theme: "system",
  readBack: "brief",
  talkKey: USUAL_KEY,
  handsFree: false,
  // said by nobody at a valve otherwise, and heard better than any other that was tried
  callWord: "for the log",
  headset: false,
};

/** The settings out of what the device kept: of this version or an earlier one, or spoilt. */
export function readSettings(kept: unknown): Settings {
  const had = (typeof kept === "object" && kept !== null ? kept : {}) as Record<string, unknown>;
  const oneOf = <T>(value: unknown, allowed: readonly T[], usual: T): T =>
    allowed.includes(value as T) ? (value as T) : usual;
  const word = typeof had.callWord === "string" ? had.callWord.trim() : "";
  return {
    theme: oneOf(had.theme, ["system", "day", "dark"], USUAL.theme),
    // kept as yes or no by earlier versions
    readBack: had.readBack === false ? "tones" : oneOf(had.readBack, ["brief", "full", "tones"], USUAL.readBack),
    talkKey: readKey(had.talkKey),
    handsFree: had.handsFree === true,
    callWord: word || USUAL.callWord,
    headset: had.headset === true,
    ...(had.ear === "browser" || had.ear === "browser_sends" ? { ear: had.ear } : {}),
    ...(had.keepSound === false ? { keepSound: false } : {}),
    ...(typeof had.site === "string" && had.site ? { site: had.site } : {}),
  };
}

function readKey(kept: unknown): TalkKey {
  if (typeof kept !== "object" || kept === null || !("code" in kept) || !("key" in kept)) return USUAL_KEY;
  const { code, key } = kept;
  if (typeof code !== "string" || typeof key !== "string" || (!code && !key)) return USUAL_KEY;
  return isKey(USUAL_KEY, { code, key }) ? USUAL_KEY : { code, key };
}
