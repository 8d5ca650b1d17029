import { fetchBytes } from "../sync/bytes.ts";
import { useEffect, useRef, useState } from "./hooks.ts";

/** One voice at a time: whatever sounds is stopped when another begins. */
let stopOther: (() => void) | undefined;

/** The sound of a phrase, to be heard beside its words. `of`: the words, for who cannot see which it belongs to. */
export function Clip({ id, seconds, of }: { id: string; seconds: number; of?: string }) {
  const [doing, setDoing] = useState<"still" | "fetching" | "sounding">("still");
  const [problem, setProblem] = useState("");
  const stop = useRef<(() => void) | null>(null);
  useEffect(() => () => stop.current?.(), []);

  async function hear(): Promise<void> {
    stopOther?.();
    let sound: HTMLAudioElement | undefined;
    let url: string | undefined;
    let over = false;
    const end = () => {
      if (over) return;
      over = true;
      sound?.pause();
      if (url) URL.revokeObjectURL(url);
      stop.current = null;
      if (stopOther === end) stopOther = undefined;
      setDoing("still");
    };
    stop.current = end;
    stopOther = end;
    setDoing("fetching");
    setProblem("");
    const got = await fetchBytes(`/api/clips/${encodeURIComponent(id)}`);
    if (over) return;
    if (!got.ok) {
      end();
      setProblem(got.problem);
      return;
    }
    url = URL.createObjectURL(got.value);
    sound = new Audio(url);
    sound.onended = end;
    try {
      await sound.play();
      setDoing("sounding");
    } catch (cause) {
      // stopped before it began is no trouble
      if (over) return;
      end();
      setProblem(`This browser cannot play it (${cause instanceof Error ? cause.message : String(cause)}).`);
    }
  }

  return (
    <span class="clip">
      <button
        type="button"
        class={`tab clip-${doing}`}
        onClick={() => (doing === "still" ? void hear() : stop.current?.())}
      >
        {doing === "still" ? `Hear it, ${Math.max(1, Math.round(seconds))} s` : "Stop"}
        {of && <span class="unseen">: “{of}”</span>}
      </button>
      <span class="bad" role="status">
        {problem}
      </span>
    </span>
  );
}
