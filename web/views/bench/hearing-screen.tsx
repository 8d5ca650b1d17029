import { readPhrase } from "../../../core/index.ts";
import { useEffect, useRef, useState } from "../../parts/hooks.ts";
import { Stencil } from "../../parts/stencil.tsx";
import type { Deeds } from "../../state/deeds.ts";
import { addressOf } from "../../state/route.ts";
import type { State } from "../../state/state.ts";
import { keyName, type TalkKey, whyNot } from "../../state/talk-key.ts";
import { HearingCheck } from "./hearing-check.tsx";
import { ReadBackChoice } from "./read-back-choice.tsx";

/** How the microphone is opened, how much is said back, and whether it can hear here. */
export function HearingScreen({ state, deeds }: { state: State; deeds: Deeds }) {
  const { settings } = state;
  return (
    <main class="hearing">
      <header class="bench-head">
        <h1 class="sign">
          <Stencil text="TALKING" class="head-sign" />
        </h1>
        <a class="glove" href={addressOf({ screen: "bench" })}>
          Bench
        </a>
      </header>
      <div class="hearing-sheet">
        <div class="hearing-checks">
          <HearingCheck />
          <a class="glove" href={addressOf({ screen: "record-set" })}>
            Measure the ear on your voice
            <small>40 phrases, some ten minutes. Nothing is sent.</small>
          </a>
        </div>
        <section aria-label="What opens the microphone">
          <h2 class="rule-head">What opens the microphone</h2>
          <KeyChoice chosen={settings.talkKey} choose={(talkKey) => deeds.set({ talkKey })} />
          <button
            type="button"
            class="glove"
            aria-pressed={settings.headset ? "true" : "false"}
            onClick={() => deeds.set({ headset: !settings.headset })}
          >
            Headset button is {settings.headset ? "on" : "off"}
            <small>Plays silence to get it. Not every headset passes it on: try yours.</small>
          </button>
          <button
            type="button"
            class="glove"
            aria-pressed={settings.handsFree ? "true" : "false"}
            onClick={() => deeds.set({ handsFree: !settings.handsFree })}
          >
            Hands-free is {settings.handsFree ? "on" : "off"}
            <small>Listens all the time, and takes down what follows “{settings.callWord}”.</small>
          </button>
          <CallWord word={settings.callWord} choose={(callWord) => deeds.set({ callWord })} />
        </section>
        <section aria-label="What is said back">
          <h2 class="rule-head">What is said back</h2>
          <ReadBackChoice settings={settings} deeds={deeds} />
        </section>
      </div>
    </main>
  );
}

function KeyChoice({ chosen, choose }: { chosen: TalkKey; choose: (key: TalkKey) => void }) {
  const [waiting, setWaiting] = useState(false);
  const [problem, setProblem] = useState("");
  const leave = useRef<(() => void) | null>(null);
  useEffect(() => () => leave.current?.(), []);

  const wait = () => {
    const down = (event: KeyboardEvent) => {
      event.preventDefault();
      event.stopPropagation();
      if (event.repeat) return;
      const no = event.key === "Escape" ? undefined : whyNot(event);
      if (no) return setProblem(no);
      if (event.key !== "Escape") choose({ code: event.code, key: event.key });
      leave.current?.();
    };
    leave.current = () => {
      removeEventListener("keydown", down, { capture: true });
      leave.current = null;
      setProblem("");
      setWaiting(false);
    };
    // before any control sees it: the key is only named here, and does nothing else
    addEventListener("keydown", down, { capture: true });
    setWaiting(true);
  };
  return (
    <>
      <button
        type="button"
        class="glove"
        aria-pressed={waiting ? "true" : "false"}
        onClick={() => (leave.current ? leave.current() : wait())}
      >
        {waiting ? "Press the key, pedal or button now" : `Key: ${keyName(chosen)}`}
        <small>Any key of a keyboard, pedal, ring or remote. Hold it, or tap it on and off.</small>
      </button>
      <p class="hearing-words" role="status">
        {problem}
      </p>
    </>
  );
}

function CallWord({ word, choose }: { word: string; choose: (word: string) => void }) {
  const [problem, setProblem] = useState("");
  const change = (event: Event) => {
    const said = (event.target as HTMLInputElement).value.trim();
    const why = whyNoCall(said);
    setProblem(why ?? "");
    if (!why) choose(said);
  };
  return (
    <label class="menu-site">
      <span>The call word, or a few words</span>
      <input class="field" value={word} maxlength={40} autocomplete="off" spellcheck={false} onChange={change} />
      <span class="bad" role="status">
        {problem}
      </span>
    </label>
  );
}

/** A word that is said anyway would call it all day. */
function whyNoCall(said: string): string | undefined {
  if (said.replaceAll(/[^\p{L}]/gu, "").length < 5) return "Too short to be told from other talk. Take a longer one.";
  const { entries, touched, marks } = readPhrase(said);
  const meant = entries.length || touched.length || marks.some((mark) => mark.as !== "plain" && mark.as !== "unread");
  return meant ? "That is a word of the trade, and would be heard all day. Take another." : undefined;
}
