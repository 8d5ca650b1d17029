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
};
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
    const open = async () => {
      if (!navigator.mediaDevices?.getUserMedia) return setTrouble(NONE);
      try {
        const video = { facingMode: { ideal: "environment" }, width: { ideal: 1920 }, height: { ideal: 1440 } };
        stream = await navigator.mediaDevices.getUserMedia({ video });
        if (!current || !view.current) return release();
        view.current.srcObject = stream;
        await view.current.play();
        const [first] = stream.getVideoTracks();
        // the lamp is in Image Capture (W3C), which the platform's types do not know
        const can = first?.getCapabilities?.() as { torch?: boolean } | undefined;
        setTrack(first);
        setLight(can?.torch ? false : undefined);
        setReady(true);
      } catch (problem) {
        if (!current) return;
        const name = problem instanceof Error ? problem.name : String(problem);
        setTrouble(TROUBLES[name] ?? `The camera does not open (${name}). Take a picture from the device instead.`);
      }
    };
    void open();
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
