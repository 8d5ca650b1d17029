/**
 * A headset's button reaches a page through the Media Session API, and only while the page plays something: so it plays
 * silence. Devices differ in what they pass on; the key settings say so.
 */
export function headsetButton(pressed: () => void): () => void {
  if (!("mediaSession" in navigator)) return () => undefined;
  const { mediaSession } = navigator;
  const playing = new Audio(URL.createObjectURL(silence()));
  playing.loop = true;
  // refused until the page was touched once: the next touch tries again
  const play = () => {
    playing.play().then(
      () => removeEventListener("pointerdown", play),
      () => undefined,
    );
  };
  play();
  addEventListener("pointerdown", play);
  const press = () => {
    pressed();
    // whatever the button was meant to do, it must reach us the next time too
    play();
    mediaSession.playbackState = "playing";
  };
  const actions = ["play", "pause", "stop", "nexttrack", "previoustrack"] as const;
  for (const action of actions) handle(action, press);
  mediaSession.playbackState = "playing";
  return () => {
    for (const action of actions) handle(action, null);
    mediaSession.playbackState = "none";
    removeEventListener("pointerdown", play);
    playing.pause();
    URL.revokeObjectURL(playing.src);
  };
}

function handle(action: MediaSessionAction, press: MediaSessionActionHandler | null): void {
  try {
    navigator.mediaSession.setActionHandler(action, press);
  } catch (problem) {
    // an action this browser does not know is one it will not pass on either
    if (!(problem instanceof TypeError)) throw problem;
  }
}

/** Ten seconds of silence as a WAV file: players take shorter sounds for signals, and give those no buttons. */
function silence(): Blob {
  const [rate, seconds] = [8000, 10];
  const head = new DataView(new ArrayBuffer(44));
  const put = (at: number, text: string) => {
    for (const [index, letter] of [...text].entries()) head.setUint8(at + index, letter.charCodeAt(0));
  };
  put(0, "RIFF");
  head.setUint32(4, 36 + rate * seconds, true);
  put(8, "WAVEfmt ");
  head.setUint32(16, 16, true);
  head.setUint16(20, 1, true);
  head.setUint16(22, 1, true);
  head.setUint32(24, rate, true);
  head.setUint32(28, rate, true);
  head.setUint16(32, 1, true);
  head.setUint16(34, 8, true);
  put(36, "data");
  head.setUint32(40, rate * seconds, true);
  // 8-bit samples have their zero in the middle
  return new Blob([head, new Uint8Array(rate * seconds).fill(128)], { type: "audio/wav" });
}
