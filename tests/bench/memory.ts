import { readFile } from "node:fs/promises";
import createModule from "soundswallower";
import { readDictionary, soundsFrom } from "../../core/speech/dictionary.ts";
import { earWords, NO_SITE, type SiteWords } from "../../core/speech/ear-words.ts";
import type { EngineModule } from "../../core/speech/engine.ts";
import { Hearing } from "../../core/speech/hearing.ts";
import { hearRecording } from "../../core/speech/recorded.ts";
import { OWN_SOUNDS } from "../../core/speech/sounds.ts";
import { decodeWave } from "../../core/speech/wave.ts";
import { DICTIONARY_FILE, readModel } from "../../server/ear/model-files.ts";
import { MODEL_FOLDER } from "../../server/ear/open-ear.ts";
import { bestModel } from "../../server/ear/wide-model.ts";
import { CAN_SPEAK, saidAloud } from "../server/ear/said-aloud.ts";
import { allKept, CHROMIUM, type Device, newDevice, say, workerReady } from "../web/chromium.ts";
import { runServer } from "../web/running-server.ts";

const MOST = 500;
const EARLY = 50;
const SAID = [
  "seat worn on one side",
  "flipped it",
  "cleaned the cage",
  "packing is leaking",
  "bonnet bolts at 28 foot pounds",
];
const MB = 2 ** 20;
const mb = (bytes: number) => `${(bytes / MB).toFixed(1)} MB`;

/** What a job of five hundred phrases leaves in memory: typed, through all of the page, its store and the server. */
export async function benchMemory(): Promise<string[]> {
  if (!CHROMIUM) return ["not run: apt-get install -y chromium"];
  const server = await runServer();
  const device = await newDevice();
  try {
    const { page } = device;
    await page.addInitScript("globalThis.__name = (one) => one; delete globalThis.speechSynthesis;");
    await page.goto(server.address);
    await workerReady(page);
    await page.locator(".ear-coming").waitFor({ state: "detached" });
    await page.fill("#words", "LCV-213");
    await page.press("#words", "Enter");
    await page.locator(".bench-head .plate").waitFor();
    const lines: string[] = [];
    for (let n = 0; n <= MOST; n++) {
      if (n === EARLY || n === MOST)
        lines.push(`after ${String(n).padStart(3)} typed phrases: ${await pageMemory(device)}`);
      if (n < MOST) await say(page, SAID[n % SAID.length] as string);
    }
    await allKept(page);
    return lines;
  } finally {
    await device.close();
    await server.remove();
  }
}

/** The page's own objects once rubbish is collected, and all that its process takes, the ear's worker with it. */
async function pageMemory({ page, context }: Device): Promise<string> {
  const cdp = await context.newCDPSession(page);
  await cdp.send("Performance.enable");
  await cdp.send("HeapProfiler.collectGarbage");
  const { metrics } = await cdp.send("Performance.getMetrics");
  const of = (name: string) => metrics.find((one) => one.name === name)?.value ?? Number.NaN;
  await cdp.detach();
  return `heap ${mb(of("JSHeapUsedSize"))}, ${of("Nodes")} nodes, process ${mb(await largestRenderer(context))}`;
}

async function largestRenderer(context: Device["context"]): Promise<number> {
  const cdp = await context.browser()?.newBrowserCDPSession();
  const { processInfo = [] } = (await cdp?.send("SystemInfo.getProcessInfo")) ?? {};
  const sizes = processInfo
    .filter(({ type }) => type === "renderer")
    .map(
      async ({ id }) => 1024 * Number(/VmRSS:\s+(\d+)/.exec(await readFile(`/proc/${id}/status`, "utf8"))?.[1] ?? 0),
    );
  return Math.max(0, ...(await Promise.all(sizes)));
}

/** The same spoken, through engine, words and phones, one listener for all; and its words changed as a site's are. */
export async function earMemory(): Promise<string[]> {
  if (!CAN_SPEAK) return ["not run: apt-get install -y flite sox"];
  const place = await bestModel(MODEL_FOLDER, () => {});
  const model = readModel(place);
  const soundsOf = soundsFrom(readDictionary(await readFile(DICTIONARY_FILE, "utf8")), OWN_SOUNDS);
  const quiet = { print() {}, printErr() {}, modelBase: "none/" };
  const module = (await createModule(quiet)) as unknown as EngineModule;
  const hearingOf = (site: SiteWords) => new Hearing(module, model, earWords(soundsOf, site));
  let hearing = hearingOf(NO_SITE);
  const sounds = SAID.slice(0, 4).map((text) => saidAloud(text));
  const recordings = await Promise.all(
    sounds.map(async (file) => {
      const read = decodeWave(new Uint8Array(await readFile(file)));
      if (!read.ok) throw new Error(read.problem);
      return read.value;
    }),
  );
  const lines: string[] = [];
  const note = (what: string) =>
    lines.push(`${what}: engine ${mb(module.HEAPU8.length)}, process ${mb(process.memoryUsage().rss)}`);
  for (let n = 1; n <= MOST; n++) {
    const recording = recordings[n % recordings.length];
    if (recording) hearRecording(hearing, recording);
    if (n === EARLY || n % 100 === 0) note(`after ${String(n).padStart(3)} spoken phrases`);
  }
  for (let n = 1; n <= 10; n++) {
    hearing.free();
    hearing = hearingOf({ ...NO_SITE, tags: [`LCV-${200 + n}`] });
    if (n === 1 || n === 10) note(`after ${String(n).padStart(2)} changes of the site's words`);
  }
  hearing.free();
  return lines;
}
