import { entryWords } from "../../parts/entry-words.ts";
import { useEffect, useRef, useState } from "../../parts/hooks.ts";
import { capital } from "../../parts/words.ts";
import type { KeepsakeDeeds, Picture } from "../../state/keepsake-deeds.ts";
import { valveAtHand } from "../../state/seen.ts";
import type { State } from "../../state/state.ts";
import { pictureFrom, pictureIn } from "./picture.ts";
import { type CameraView, useCamera } from "./use-camera.ts";

const TIMER_S = 3;

/** The camera, opened by voice or touch, let go by voice, by its bar, or by counting down with both hands in the valve. */
export function Camera({ state, deeds }: { state: State; deeds: KeepsakeDeeds }) {
  const view = useRef<HTMLVideoElement>(null);
  const bar = useRef<HTMLButtonElement>(null);
  const camera = useCamera(view);
  const [count, setCount] = useState<number | undefined>(undefined);
  const [problem, setProblem] = useState("");
  const busy = useRef(false);
  const order = state.camera?.order;

  async function keep(make: () => Promise<Picture>): Promise<void> {
    if (busy.current) return;
    busy.current = true;
    setCount(undefined);
    try {
      const wrong = await deeds.keepPhoto(await make());
      if (wrong) setProblem(`Not kept: ${wrong}.`);
      else deeds.shutCamera();
    } catch (cause) {
      setProblem(`Not kept: ${cause instanceof Error ? cause.message : String(cause)}.`);
    } finally {
      busy.current = false;
    }
  }
  const take = () => {
    const shown = view.current;
    if (shown) void keep(() => pictureFrom(shown));
  };

  useEffect(() => {
    bar.current?.focus();
  }, []);
  useEffect(() => {
    if (order?.is === "take") take();
    if (order?.is === "timer") setCount(TIMER_S);
  }, [order]);
  useEffect(() => {
    if (count === undefined) return;
    if (count === 0) {
      take();
      return;
    }
    const tick = setTimeout(() => setCount(count - 1), 1000);
    return () => clearTimeout(tick);
  }, [count]);

  return (
    <div
      class="camera"
      role="dialog"
      aria-modal="true"
      aria-label={`Camera: ${ofWhat(state)}`}
      onKeyDown={(event: KeyboardEvent) => {
        if (event.key === "Escape") deeds.shutCamera();
      }}
    >
      <div class="camera-view">
        <video ref={view} autoplay playsinline muted aria-label="What the camera sees" />
        {count !== undefined && (
          <p class="camera-count" role="timer">
            {count}
          </p>
        )}
      </div>
      <p class="camera-of">{ofWhat(state)}</p>
      <p class={`camera-words${problem || camera.trouble ? " camera-bad" : ""}`} role="status">
        {problem || camera.trouble || (camera.ready ? "Say “now”, or touch the bar." : "Opening the camera.")}
      </p>
      <div class="camera-row">
        <button type="button" class="glove" onClick={() => deeds.shutCamera()}>
          Shut
        </button>
        <Light camera={camera} />
        {camera.ready && (
          <button type="button" class="glove" onClick={() => setCount(count === undefined ? TIMER_S : undefined)}>
            {count === undefined ? `In ${TIMER_S} s` : "Wait"}
          </button>
        )}
      </div>
      {camera.trouble ? (
        <label class="shutter">
          From the device
          <input
            class="unseen"
            type="file"
            accept="image/*"
            capture="environment"
            onChange={(event: Event) => {
              const file = (event.target as HTMLInputElement).files?.[0];
              if (file) void keep(() => pictureIn(file));
            }}
          />
        </label>
      ) : (
        <button type="button" ref={bar} class="shutter" aria-disabled={camera.ready ? "false" : "true"} onClick={take}>
          Take it
        </button>
      )}
    </div>
  );
}

function Light({ camera }: { camera: CameraView }) {
  if (camera.light === undefined) return null;
  return (
    <button type="button" class="glove" aria-pressed={camera.light ? "true" : "false"} onClick={camera.turnLight}>
      Light
    </button>
  );
}

/** What the photograph will belong to: the finding it was opened for, else the valve. */
function ofWhat(state: State): string {
  const { tag, entries } = valveAtHand(state);
  const at = state.phrases.findIndex((phrase) => phrase.id === state.camera?.phrase);
  const finding = entries.findLast((entry) => entry.type === "finding" && entry.phrase === at);
  if (!finding) return `Photo of ${tag ?? "this job"}`;
  const { subject, told } = entryWords(finding);
  return `Photo: ${capital(`${subject} ${told}`.trim())}`;
}
