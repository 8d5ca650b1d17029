import { existsSync } from "node:fs";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { delimiter, join } from "node:path";
import { type BrowserContext, chromium, type Page } from "playwright-core";
import { describe } from "vitest";

/** The browser for these tests: `CHROMIUM=`, or the first `chromium` on the PATH. */
export const CHROMIUM = findChromium();

function findChromium(): string | undefined {
  if (process.env.CHROMIUM) return process.env.CHROMIUM;
  const folders = (process.env.PATH ?? "").split(delimiter);
  return folders.map((folder) => join(folder, "chromium")).find((path) => existsSync(path));
}

/** A group of tests that need a browser: skipped by name where there is none, failed where REQUIRE_BROWSER=1. */
export function inBrowser(name: string, tests: () => void): void {
  if (CHROMIUM) describe(name, tests);
  else if (process.env.REQUIRE_BROWSER === "1") {
    throw new Error("REQUIRE_BROWSER=1 and no chromium was found: apt-get install -y chromium");
  } else {
    process.stderr.write(`skipped "${name}", no chromium was found: apt-get install -y chromium\n`);
    describe.skip(name, tests);
  }
}

export interface Device {
  context: BrowserContext;
  page: Page;
  /** what the page complained of: errors, and anything the content policy blocked */
  complaints: string[];
  close(): Promise<void>;
}

const FLAGS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-background-networking",
  "--no-first-run",
  "--disable-dev-shm-usage",
  "--use-fake-ui-for-media-stream",
  "--use-fake-device-for-media-stream",
];

/** A browser of its own with a profile of its own, opened on nothing yet. */
export async function newDevice(viewport = { width: 360, height: 740 }): Promise<Device> {
  const profile = await mkdtemp(join(tmpdir(), "handsfull-profile-"));
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: CHROMIUM ?? "",
    args: FLAGS,
    viewport,
  });
  const page = context.pages()[0] ?? (await context.newPage());
  const complaints: string[] = [];
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("console", (message) => {
    if (/Content Security Policy|Refused to/i.test(message.text())) complaints.push(message.text());
  });
  return {
    context,
    page,
    complaints,
    async close() {
      await context.close();
      await rm(profile, { recursive: true, force: true });
    },
  };
}

/** Waits until the page is served by its own worker: only then does it open offline. */
export async function workerReady(page: Page): Promise<void> {
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
}

/** Says a phrase by the field and waits until the page shows it as the last one said. */
export async function say(page: Page, words: string): Promise<void> {
  await page.fill("#words", words);
  await page.press("#words", "Enter");
  await page.waitForFunction(
    (said) => document.querySelector(".understood .said")?.textContent?.includes(said.split(" ")[0] ?? said),
    words,
  );
}

/** Waits until the bench says that the server holds everything. */
export async function allKept(page: Page): Promise<void> {
  await page.waitForFunction(() =>
    /^all kept by the server/.test(document.querySelector(".outbox")?.textContent ?? ""),
  );
}
