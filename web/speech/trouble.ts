export const EAR_MISSING =
  "The ear is not on this device yet, or failed. Open this page once where there is a network, then touch to try again. Typing works meanwhile.";

/** Why the ear cannot hear, in words a person can act on. Error names are the Web Speech API's. */
const TROUBLES: Record<string, string> = {
  network: "This browser sends speech to a service it cannot reach now. Type instead; the words count the same.",
  "not-allowed": "The microphone is not allowed here. Allow it for this page in the browser, or type.",
  "service-not-allowed": "This browser does not allow speech to be recognised here. Type instead.",
  "audio-capture": "No microphone answers. Plug one in or free it, or type.",
  "language-not-supported": "This browser cannot recognise English speech. Type instead.",
  "ear-missing": EAR_MISSING,
  "sends-away":
    "This browser can hear only by sending sound to a service. Nothing was sent. Choose the ear of this page under More, or type.",
};

/** Words for an error that ends listening; undefined for one that only means a pause ("no-speech", "aborted"). */
export function troubleWords(error: string): string | undefined {
  if (error === "no-speech" || error === "aborted") return undefined;
  return TROUBLES[error] ?? `Listening failed (${error}). Type instead, or touch to try again.`;
}

export const ELSEWHERE = "Another tab of this device listens now. Touch to listen in this one.";

export const NO_EAR = "This browser cannot recognise speech. Type in the field; the words count the same.";
