import { useEffect, useState } from "../../parts/hooks.ts";

export interface CameraView {
  ready: boolean;
  /** why there is no picture, in words */
  trouble: string;
  /** whether its lamp is on; undefined where it has none that a page may turn */
  light: boolean | undefined;
  turnLight(): void;
}

const TROUBLES: Record<string, string> = {
  NotAllowedError: "The camera is not allowed here. Allow it for this page in the browser, or take the device’s own.",
  NotFoundError: "No camera answers here. Take a picture from the device instead.",
  NotReadableError: "Something else has the camera. Shut that, or take a picture from the device.",
  TimeoutError: "The camera gives no picture. Take one from the device instead.",
};
/** Passing troubles: the device is just being let go of, by ourselves or by another, or wakes slowly. */
const PASSING = new Set(["NotReadableError", "AbortError", "TimeoutError"]);
const TRIES = 3;
/** How long a camera may take to give its first picture, and how long it is left alone between two tries. */
const PATIENCE_MS = 6000;
const REST_MS = 700;
const NONE = "This browser opens no camera for the page (it needs https). Take a picture from the device instead.";

/** Shows the camera behind the device in an element for as long as that is on the screen, and lets go of it after. */
export function useCamera(view: { current: HTMLVideoElement | null }): CameraView {
  const [ready, setReady] = useState(false);
  const [trouble, setTrouble] = useState("");
  const [track, setTrack] = useState<MediaStreamTrack | undefined>(undefined);
  const [light, setLight] = useState<boolean | undefined>(undefined);
  useEffect(() => {
    let current = true;
    let stream: MediaStream | undefined;
    const release = () => {
      for (const one of stream?.getTracks() ?? []) one.stop();
    };
    const show = async () => {
      const video = { facingMode: { ideal: "environment" }, width: { ideal: 1920 }, height: { ideal: 1440 } };
      const opened = await navigator.mediaDevices.getUserMedia({ video });
      stream = opened;
      if (!current || !view.current) return release();
      view.current.srcObject = opened;
      // not the asking for it before: there somebody may still be reading whether to allow it
      await within(PATIENCE_MS, view.current.play());
    };
    const open = async (tries: number): Promise<void> => {
      if (!navigator.mediaDevices?.getUserMedia) return setTrouble(NONE);
      try {
        await show();
        if (!current) return;
        const [first] = stream?.getVideoTracks() ?? [];
        // the lamp is in Image Capture (W3C), which the platform's types do not know
        const can = first?.getCapabilities?.() as { torch?: boolean } | undefined;
        setTrack(first);
        setLight(can?.torch ? false : undefined);
        setReady(true);
      } catch (problem) {
        if (!current) return;
        const name = problem instanceof Error ? problem.name : String(problem);
        if (PASSING.has(name) && tries > 1) {
          release();
          await new Promise((resolve) => setTimeout(resolve, REST_MS));
          if (current) return open(tries - 1);
          return;
        }
        setTrouble(TROUBLES[name] ?? `The camera does not open (${name}). Take a picture from the device instead.`);
      }
    };
    void open(TRIES);
    return () => {
      current = false;
      release();
    };
  }, []);
  return {
    ready,
    trouble,
    light,
    turnLight() {
      const on = !light;
      track?.applyConstraints({ advanced: [{ torch: on } as MediaTrackConstraintSet] }).then(
        () => setLight(on),
        () => setTrouble("The lamp does not turn on."),
      );
    },
  };
}

/** What comes of it, or a `TimeoutError` where it takes longer than that. */
async function within<T>(ms: number, work: Promise<T>): Promise<T> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new DOMException(`nothing within ${ms} ms`, "TimeoutError")), ms);
  });
  try {
    return await Promise.race([work, late]);
  } finally {
    clearTimeout(timer);
  }
}
