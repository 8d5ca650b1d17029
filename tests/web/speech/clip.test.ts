import { afterAll, beforeAll, expect, it } from "vitest";
import { MOST_CLIP_BYTES } from "../../../core/index.ts";
import { lookAtSound } from "../../../server/keepsakes/content.ts";
import type { Encoded, Sound } from "../../../web/speech/clip.ts";
import { type Device, inBrowser, newDevice } from "../chromium.ts";
import { inPage } from "../in-page.ts";
import { type RunningServer, runServer } from "../running-server.ts";

interface Tried {
  tried: { encodeClip(sound: Sound): Promise<Encoded | undefined> };
}

inBrowser("the sound of a phrase as a clip", () => {
  let server: RunningServer;
  let device: Device;

  beforeAll(async () => {
    server = await runServer();
    device = await newDevice();
    await device.page.goto(server.address);
    await inPage(device.page, "web/speech/clip.ts");
  });
  afterAll(async () => {
    await device?.close();
    await server?.remove();
  });

  /** A tone of 440 Hz encoded in the browser; decoded again there: how long, and which tone it is. */
  const toneThrough = (made: { rate: number; seconds: number; as: "float" | "int"; opus: boolean }) =>
    device.page.evaluate(async ({ rate, seconds, as, opus }) => {
      const { tried } = globalThis as unknown as Tried;
      const floats = Float32Array.from(
        { length: rate * seconds },
        (_, at) => Math.sin((2 * Math.PI * 440 * at) / rate) / 2,
      );
      const samples = as === "float" ? floats : Int16Array.from(floats, (one) => one * 32_767);
      const encoder = globalThis.AudioEncoder;
      if (!opus) Reflect.deleteProperty(globalThis, "AudioEncoder");
      const clip = await tried.encodeClip({ samples, rate });
      if (!opus) globalThis.AudioEncoder = encoder;
      if (!clip) return undefined;
      // as text: a list of a million numbers takes minutes to hand over
      const bytes = await new Promise<string>((done) => {
        const reader = new FileReader();
        reader.onload = () => done(String(reader.result).split(",")[1] ?? "");
        reader.readAsDataURL(new Blob([clip.bytes]));
      });
      const heard = await new OfflineAudioContext(1, 1, 48_000).decodeAudioData(clip.bytes);
      const wave = heard.getChannelData(0);
      let crossings = 0;
      // from the second half: the beginning of a stream settles
      const from = Math.floor(wave.length / 2);
      for (let at = from + 1; at < wave.length; at++) if ((wave[at - 1] ?? 0) < 0 && (wave[at] ?? 0) >= 0) crossings++;
      const hertz = crossings / ((wave.length - from) / 48_000);
      return { type: clip.type, seconds: clip.seconds, lasts: heard.duration, hertz, bytes };
    }, made);

  it.each([
    { rate: 16_000, seconds: 3, as: "float", opus: true },
    { rate: 48_000, seconds: 3, as: "float", opus: true },
    { rate: 44_100, seconds: 2, as: "int", opus: true },
    { rate: 16_000, seconds: 7, as: "int", opus: true },
    { rate: 48_000, seconds: 3, as: "float", opus: false },
    { rate: 16_000, seconds: 2, as: "int", opus: false },
  ] as const)("sounds as long and as high as what went in: %o", async (made) => {
    const clip = await toneThrough(made);
    expect(clip?.type).toBe(made.opus ? "audio/ogg" : "audio/wav");
    expect(clip?.seconds).toBe(made.seconds);
    expect(Math.abs((clip?.lasts ?? 0) - made.seconds)).toBeLessThan(0.01);
    expect(Math.abs((clip?.hertz ?? 0) - 440)).toBeLessThan(4);
    // the server looks at every byte that tells what it is, and takes it
    const bytes = new Uint8Array(Buffer.from(clip?.bytes ?? "", "base64"));
    expect(lookAtSound(bytes)).toMatchObject({ ok: true, value: { type: clip?.type } });
    if (made.opus) expect(bytes.length).toBeLessThan(made.seconds * 5000);
  });

  it("of somebody who left the microphone open is the last minute", { timeout: 60_000 }, async () => {
    const clip = await toneThrough({ rate: 16_000, seconds: 70, as: "int", opus: false });
    expect(clip?.seconds).toBe(60);
    expect(Buffer.from(clip?.bytes ?? "", "base64").length).toBeLessThan(MOST_CLIP_BYTES);
  });

  it("of next to nothing is none", async () => {
    expect(await toneThrough({ rate: 16_000, seconds: 0.05, as: "float", opus: true })).toBeUndefined();
  });
});
