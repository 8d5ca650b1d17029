import { useEffect, useRef, useState } from "../../parts/hooks.ts";
import { meterLevel } from "../../speech/level-meter.ts";
import { judgeLoudness, type Loudness, loudnessWords } from "../../speech/loudness.ts";
import { addressOf } from "../../state/route.ts";

/** Of the last six seconds, 20 a second: long enough to hold a phrase and the noise around it. */
const KEPT = 120;

/** How loud it is here, how far the voice stands over it, and in words whether that will do. */
export function HearingCheck() {
  const [on, setOn] = useState(false);
  const [problem, setProblem] = useState("");
  const [heard, setHeard] = useState<Loudness | undefined>(undefined);
  const levels = useRef<number[]>([]);

  useEffect(() => {
    if (!on) return;
    let stop: (() => void) | undefined;
    let over = false;
    let ticks = 0;
    levels.current = [];
    void meterLevel((db) => {
      levels.current = [...(levels.current ?? []), db].slice(-KEPT);
      // four times a second is as often as anyone reads
      if (++ticks % 5 === 0) setHeard(judgeLoudness(levels.current));
    }).then((meter) => {
      if (!meter.ok) {
        setProblem(meter.problem);
        setOn(false);
      } else if (over) meter.stop();
      else stop = meter.stop;
    });
    return () => {
      over = true;
      stop?.();
    };
  }, [on]);

  return (
    <section class="hearing-check" aria-label="Can it hear you here?">
      <h2 class="rule-head">Can it hear you here?</h2>
      <button
        type="button"
        class="glove"
        aria-pressed={on ? "true" : "false"}
        onClick={() => {
          setProblem("");
          setHeard(undefined);
          setOn(!on);
        }}
      >
        {on ? "Stop" : "Check the microphone"}
      </button>
      {heard && <LevelBar heard={heard} />}
      <p class={`hearing-words${heard?.is === "too_loud" || problem ? " bad" : ""}`} role="status">
        {problem || (heard ? loudnessWords(heard) : on ? "Opening the microphone." : "")}
      </p>
      {(problem || heard?.is === "too_loud" || heard?.is === "hard") && (
        <a class="glove" href={addressOf({ screen: "bench" })}>
          Type instead
        </a>
      )}
    </section>
  );
}

/** From -80 dB of full scale at the left to 0 at the right: noise, and the voice over it. */
function LevelBar({ heard }: { heard: Loudness }) {
  const at = (db: number) => Math.max(0, Math.min(100, (db + 80) * 1.25));
  return (
    <svg class="level-bar" viewBox="0 0 100 12" preserveAspectRatio="none" role="img" aria-label="Noise and voice">
      <rect class="level-voice" x="0" y="0" width={at(heard.voice).toFixed(1)} height="12" />
      <rect class="level-noise" x="0" y="0" width={at(heard.noise).toFixed(1)} height="12" />
    </svg>
  );
}
