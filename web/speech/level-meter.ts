import { levelDb } from "./loudness.ts";
import { troubleWords } from "./trouble.ts";

/** Tells how loud it is, 20 times a second, until stopped. */
export async function meterLevel(
  tell: (db: number) => void,
): Promise<{ ok: true; stop(): void } | { ok: false; problem: string }> {
  let stream: MediaStream;
  try {
    // as the room is, not as a telephone would make it: the meter is to hear the noise
    const audio = { echoCancellation: false, noiseSuppression: false, autoGainControl: false };
    stream = await navigator.mediaDevices.getUserMedia({ audio });
  } catch (problem) {
    const name = problem instanceof Error ? problem.name : String(problem);
    return { ok: false, problem: troubleWords(NAMES[name] ?? name) ?? name };
  }
  const context = new AudioContext();
  const analyser = new AnalyserNode(context, { fftSize: 2048 });
  new MediaStreamAudioSourceNode(context, { mediaStream: stream }).connect(analyser);
  const samples = new Float32Array(analyser.fftSize);
  const timer = setInterval(() => {
    analyser.getFloatTimeDomainData(samples);
    tell(levelDb(samples));
  }, 50);
  return {
    ok: true,
    stop() {
      clearInterval(timer);
      for (const track of stream.getTracks()) track.stop();
      void context.close();
    },
  };
}

/** What the platform calls a refusal, in the names the ear knows. */
const NAMES: Record<string, string> = {
  NotAllowedError: "not-allowed",
  NotFoundError: "audio-capture",
  NotReadableError: "audio-capture",
};
