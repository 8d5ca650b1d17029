import tapAddress from "./tap.ts?worker&url";

/** Where the sound comes from now. */
export interface SoundSource {
  port: MessagePort;
  rate: number;
}

/** Without being listened to for so long the microphone is let go of, and the browser's sign of it goes out. */
const KEEP_MS = 30_000;

/**
 * The microphone, opened once and kept open between one recognition and the next: opening takes a noticeable while, and what
 * is said meanwhile is lost.
 */
export class Microphone {
  #stream: MediaStream | undefined;
  #context: AudioContext | undefined;
  #letGo: ReturnType<typeof setTimeout> | undefined;
  readonly #lost: () => void;

  /** `lost`: the microphone went away by itself, unplugged or taken. */
  constructor(lost: () => void) {
    this.#lost = lost;
  }

  /** A new source where the microphone had to be opened; nothing where it still is open. Throws what the platform throws. */
  async open(): Promise<SoundSource | undefined> {
    clearTimeout(this.#letGo);
    if (this.#stream?.active && this.#context && this.#context.state !== "closed") {
      await this.#context.resume();
      return undefined;
    }
    this.shut();
    // as it comes: what makes a telephone call pleasant takes away what tells one word from another
    const audio = { echoCancellation: false, noiseSuppression: false, autoGainControl: false, channelCount: 1 };
    const stream = await navigator.mediaDevices.getUserMedia({ audio });
    // after the microphone is granted, since only then may a page that nobody touched run sound
    const context = new AudioContext({ latencyHint: "interactive" });
    this.#stream = stream;
    this.#context = context;
    try {
      await context.audioWorklet.addModule(tapAddress);
      await context.resume();
    } catch (problem) {
      this.shut();
      throw problem;
    }
    const tap = new AudioWorkletNode(context, "tap", { numberOfInputs: 1, numberOfOutputs: 1 });
    const { port1, port2 } = new MessageChannel();
    tap.port.postMessage(port1, [port1]);
    // the tap puts out silence; what leads nowhere is not run by every browser
    context.createMediaStreamSource(stream).connect(tap).connect(context.destination);
    for (const track of stream.getTracks())
      track.addEventListener("ended", () => {
        if (this.#stream !== stream) return;
        this.shut();
        this.#lost();
      });
    return { port: port2, rate: context.sampleRate };
  }

  /** Nobody listens now: kept a while, then let go. */
  rest(): void {
    clearTimeout(this.#letGo);
    this.#letGo = setTimeout(() => this.shut(), KEEP_MS);
  }

  /** Let go of now; opened again it is a new source. */
  shut(): void {
    clearTimeout(this.#letGo);
    for (const track of this.#stream?.getTracks() ?? []) track.stop();
    void this.#context?.close();
    this.#stream = undefined;
    this.#context = undefined;
  }
}
