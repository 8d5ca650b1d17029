import { readFileSync } from "node:fs";
import { rm } from "node:fs/promises";
import { dirname } from "node:path";
import { CHROMIUM, newDevice, workerReady } from "../web/chromium.ts";
import { runServer } from "../web/running-server.ts";
import { spokenFile } from "../web/speech/spoken-file.ts";
import { figure } from "./timing.ts";

const SET: { phrases: string[] } = JSON.parse(readFileSync(new URL("hearing-set.json", import.meta.url), "utf8"));
const PHRASES = 20;
/** From the last sound of a phrase to its being understood on the screen, ms. */
const TARGET = 700;

/** When each phrase ended, was known to have ended, was heard, and stood on the screen; ms of the page's clock. */
interface Row {
  loud: number;
  ended: number;
  heard?: number;
  shown?: number;
}

/** The page's own ear in a browser whose microphone plays phrases: how long each is waited for, and what for. */
export async function byEar(): Promise<string[]> {
  if (!CHROMIUM) return ["not run: apt-get install -y chromium"];
  const said = SET.phrases.filter((_, n) => n % Math.floor(SET.phrases.length / PHRASES) === 0).slice(0, PHRASES);
  const [server, file] = await Promise.all([runServer(), spokenFile(...said)]);
  const device = await newDevice(undefined, { flags: [`--use-file-for-fake-audio-capture=${file}`] });
  try {
    const { page } = device;
    // how the runner of these figures marks functions; and a voice would speak over a recording that does not wait
    await page.addInitScript("globalThis.__name = (one) => one; delete globalThis.speechSynthesis;");
    await page.addInitScript(clockPhrases);
    await page.goto(server.address);
    await workerReady(page);
    await page.locator(".ear-coming").waitFor({ state: "detached" });
    await page.fill("#words", "LCV-213");
    await page.press("#words", "Enter");
    await page.locator(".bench-head .plate").waitFor();
    await page.locator(".pad").click();
    const rows = () => page.evaluate(() => (globalThis as unknown as { rows: Row[] }).rows);
    const last = said.length;
    for (let waited = 0; (await rows()).length < last && waited < 180; waited++) await page.waitForTimeout(1000);
    await page.waitForTimeout(1500);
    const whole = (await rows()).slice(0, last).filter((row) => row.heard && row.shown) as Required<Row>[];
    const line = (what: string, ms: (row: Required<Row>) => number) => {
      const sorted = whole.map(ms).sort((a, b) => a - b);
      const at = (share: number) =>
        sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
      return `${what.padEnd(44)} median ${figure(at(0.5))} ms, p95 ${figure(at(0.95))} ms`;
    };
    const inTime = whole.filter((row) => row.shown - row.loud < TARGET).length;
    return [
      `${whole.length} of ${said.length} phrases heard`,
      `${line("end of speech to understood on the screen", (row) => row.shown - row.loud)}; ${inTime} within ${TARGET} ms`,
      line("  of it waiting for silence", (row) => row.ended - row.loud),
      line("  finding the words", (row) => row.heard - row.ended),
      line("  reading, keeping, drawing", (row) => row.shown - row.heard),
    ];
  } finally {
    await device.close();
    await server.remove();
    await rm(dirname(file), { recursive: true, force: true });
  }
}

/** In the page: notes what comes from microphone, ear and screen. */
function clockPhrases(): void {
  const rows: Row[] = [];
  let loud = 0;
  Object.assign(globalThis, { rows });
  const devices = navigator.mediaDevices;
  const open = devices.getUserMedia.bind(devices);
  devices.getUserMedia = async (wanted) => {
    const stream = await open(wanted);
    const context = new AudioContext();
    const meter = context.createAnalyser();
    meter.fftSize = 512;
    context.createMediaStreamSource(stream).connect(meter);
    const samples = new Float32Array(meter.fftSize);
    setInterval(() => {
      meter.getFloatTimeDomainData(samples);
      if (samples.some((sample) => Math.abs(sample) > 0.03)) loud = performance.now();
    }, 10);
    return stream;
  };
  const RealWorker = Worker;
  globalThis.Worker = class extends RealWorker {
    constructor(...given: ConstructorParameters<typeof Worker>) {
      super(...given);
      this.addEventListener("message", ({ data }: MessageEvent<{ is?: string }>) => {
        if (data.is === "speechend") rows.push({ loud, ended: performance.now() });
        const row = rows.at(-1);
        if (data.is === "heard" && row) row.heard = performance.now();
      });
    }
  };
  let shown = "";
  const look = () => {
    const text = document.querySelector(".understood .said")?.textContent ?? "";
    const row = rows.at(-1);
    if (text === shown || !row?.heard) return;
    shown = text;
    row.shown ??= performance.now();
  };
  addEventListener("DOMContentLoaded", () =>
    new MutationObserver(look).observe(document.body, { subtree: true, childList: true, characterData: true }),
  );
}
