import { existsSync, mkdirSync, statSync } from "node:fs";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { delimiter, join } from "node:path";
import { fileURLToPath } from "node:url";
import { type BrowserContext, chromium, type Page } from "playwright-core";
import type { JobSummary } from "../core/index.ts";
import { readSettings } from "../server/env.ts";
import { serve } from "../server/serve.ts";
import { fill } from "./fill.ts";
import { tellStory } from "./story.ts";

/** Makes the README's pictures from the demo, told afresh into a temporary folder. Needs `npm run build` before it. */
const OUT = fileURLToPath(new URL("./screens", import.meta.url));
const PHONE = { width: 390, height: 844 };
const DESKTOP = { width: 1280, height: 860 };
const MOST_BYTES = 200_000;
const FLAGS = ["--no-sandbox", "--disable-gpu", "--disable-background-networking", "--no-first-run"];

const browser = findChromium();
if (!browser) {
  process.stderr.write("screens: no chromium was found; apt-get install -y chromium, or set CHROMIUM to its path\n");
  process.exit(1);
}
const folder = await mkdtemp(join(tmpdir(), "handsfull-screens-"));
const settings = readSettings({ PORT: "0", DATA_DIR: folder, LOG_LEVEL: "error" }, folder);
if (!settings.ok) throw new Error(settings.problem);
const served = await serve(settings.value);
try {
  const story = tellStory(new Date().toISOString().slice(0, 10));
  await fill(served.address, story.jobs);
  mkdirSync(OUT, { recursive: true });
  await withBrowser(PHONE, async (page) => {
    await bench(page);
    await hazard(page);
  });
  await withBrowser(DESKTOP, (page) => desk(page, story.busy.site.site, story.busy.day));
} finally {
  await served.stop();
  await rm(folder, { recursive: true, force: true });
}

/** A job under way on a phone. */
async function bench(page: Page): Promise<void> {
  await page.goto(served.address);
  // by its plate, once the list of valves is there: typed sooner, the tag would stand on the card as a phrase
  await page.getByRole("button", { name: "LCV-402" }).click();
  // what is known of the valve takes the place of the invitation, soon or at once
  await page.locator(".invite, .told").first().waitFor();
  await say(page, "breather's plugged with mud, rodded it out");
  await say(page, "bonnet bolts torqued to thirty five foot pounds");
  await say(page, "seat's wore on one side, flipped it over");
  await page.waitForFunction(() => /^all kept/.test(document.querySelector(".outbox")?.textContent ?? ""));
  await page.locator(".ear-coming").waitFor({ state: "detached" });
  await shoot(page, "bench");
}

async function hazard(page: Page): Promise<void> {
  await page.fill("#words", "hold on I smell gas");
  await page.press("#words", "Enter");
  await page.getByRole("alertdialog").waitFor();
  await shoot(page, "hazard");
}

/** A job, a valve and the day's report on a desktop. */
async function desk(page: Page, site: string, day: string): Promise<void> {
  const reply = await fetch(new URL(`api/jobs?site=${site}&day=${day}`, served.address));
  const { jobs } = (await reply.json()) as { jobs: JobSummary[] };
  const shown = jobs.find((one) => one.tag === "LCV-213");
  await page.goto(`${served.address}#/job/${shown?.id}`);
  await page.locator(".phrases").first().waitFor();
  await shoot(page, "job");
  await page.goto(`${served.address}#/valve/LCV-213?site=${site}`);
  await page.locator(".phrases").first().waitFor();
  await shoot(page, "valve");
  await page.goto(`${served.address}report?site=${site}&day=${day}`);
  await shoot(page, "report");
}

async function say(page: Page, words: string): Promise<void> {
  await page.fill("#words", words);
  await page.press("#words", "Enter");
  await page.waitForFunction(
    (first) => document.querySelector(".understood .said")?.textContent?.includes(first),
    words.split(" ")[0] ?? words,
  );
}

async function shoot(page: Page, name: string): Promise<void> {
  const path = join(OUT, `${name}.png`);
  await page.screenshot({ path, animations: "disabled" });
  const { size } = statSync(path);
  process.stdout.write(`demo/screens/${name}.png ${Math.round(size / 1000)} kB\n`);
  if (size > MOST_BYTES) process.exitCode = 1;
}

async function withBrowser(viewport: { width: number; height: number }, work: (page: Page) => Promise<void>) {
  const profile = await mkdtemp(join(tmpdir(), "handsfull-profile-"));
  let context: BrowserContext | undefined;
  try {
    context = await chromium.launchPersistentContext(profile, {
      executablePath: browser ?? "",
      args: FLAGS,
      viewport,
      colorScheme: "light",
    });
    await work(context.pages()[0] ?? (await context.newPage()));
  } finally {
    await context?.close();
    await rm(profile, { recursive: true, force: true });
  }
}

function findChromium(): string | undefined {
  if (process.env.CHROMIUM) return process.env.CHROMIUM;
  const folders = (process.env.PATH ?? "").split(delimiter);
  return folders.map((one) => join(one, "chromium")).find((path) => existsSync(path));
}
