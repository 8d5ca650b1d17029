import { spawn } from "node:child_process";
import { existsSync } from "node:fs";
import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
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
  // a browser, a server and their test on one shared core now and then miss each other: once more tells chance from fault
  if (CHROMIUM) describe(name, { retry: 2 }, tests);
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
  /** what the page complained of: errors, anything the content policy blocked, and any other host that it asked */
  complaints: string[];
  /** gives the pages of an address so much room on the disk; to be said before they write anything */
  room(address: string, bytes: number): Promise<void>;
  close(): Promise<void>;
  /** SIGKILL to every process of this browser: no chance to finish anything */
  kill(): Promise<void>;
}

const FLAGS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-background-networking",
  "--no-first-run",
  "--disable-dev-shm-usage",
];
/** the browser asks nobody whether the page may have them */
const GRANTED = "--use-fake-ui-for-media-stream";
const CAMERA_AND_MICROPHONE = "--use-fake-device-for-media-stream";

export interface Making {
  /** the folder of an earlier device, to go on with what that had kept */
  profile?: string;
  /** false: neither camera nor microphone */
  media?: boolean;
  /** further switches of the browser */
  flags?: readonly string[];
  /** what the person has set in the browser's own settings, before it is opened */
  forbids?: readonly ("storage" | "microphone")[];
  /** of its environment, what is otherwise than here */
  env?: Readonly<Record<string, string>>;
}

/** A browser of its own with a profile of its own, opened on nothing yet. */
export async function newDevice(viewport = { width: 360, height: 740 }, making: Making = {}): Promise<Device> {
  const profile = making.profile ?? (await mkdtemp(join(tmpdir(), "handsfull-profile-")));
  if (making.forbids) await forbid(profile, making.forbids);
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: CHROMIUM ?? "",
    args: [
      ...FLAGS,
      ...(making.forbids?.includes("microphone") ? [] : [GRANTED]),
      ...(making.media === false ? [] : [CAMERA_AND_MICROPHONE]),
      ...(making.flags ?? []),
    ],
    viewport,
    ...(making.env ? { env: { ...process.env, ...making.env } } : {}),
  });
  const page = context.pages()[0] ?? (await context.newPage());
  const complaints: string[] = [];
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("console", (message) => {
    if (/Content Security Policy|Refused to/i.test(message.text())) complaints.push(message.text());
  });
  // the page's and its workers' alike; what a browser asks by itself is not among them
  context.on("request", (asked) => {
    const { protocol, hostname } = new URL(asked.url());
    if (/^(https?|wss?):$/.test(protocol) && !/^(127\.0\.0\.1|localhost)$/.test(hostname))
      complaints.push(`asked another host: ${asked.url()}`);
  });
  return {
    context,
    page,
    complaints,
    async room(address, quotaSize) {
      const { origin } = new URL(address);
      await (await context.newCDPSession(page)).send("Storage.overrideQuotaForOrigin", { origin, quotaSize });
    },
    async close() {
      await context.close();
      if (!making.profile) await rm(profile, { recursive: true, force: true });
    },
    async kill() {
      for (const pid of await processesOf(profile)) process.kill(pid, "SIGKILL");
      while ((await processesOf(profile)).length) await new Promise((done) => setTimeout(done, 20));
      await context.close();
    },
  };
}

const SETTING = { storage: "cookies", microphone: "media_stream_mic" } as const;
const FORBIDDEN = 2;

/** As by the switches of its settings page: the browser itself refuses then, whatever the page asks. */
async function forbid(profile: string, what: readonly (keyof typeof SETTING)[]): Promise<void> {
  const settings = Object.fromEntries(what.map((one) => [SETTING[one], FORBIDDEN]));
  await mkdir(join(profile, "Default"), { recursive: true });
  const preferences = { profile: { default_content_setting_values: settings } };
  await writeFile(join(profile, "Default", "Preferences"), JSON.stringify(preferences));
}

/**
 * A browser whose pages go out of sight when another is brought before them. Those of `newDevice` never do: whoever drives
 * a page usually wants it to behave as the one looked at.
 */
export async function browserSeen(): Promise<{ context: BrowserContext; page: Page; close(): Promise<void> }> {
  const profile = await mkdtemp(join(tmpdir(), "handsfull-profile-"));
  const ours = ["--headless", "--remote-debugging-port=0", `--user-data-dir=${profile}`, "about:blank"];
  const child = spawn(CHROMIUM ?? "", [...FLAGS, ...ours], { stdio: ["ignore", "ignore", "pipe"] });
  const ended = new Promise<void>((done) => child.once("exit", () => done()));
  const address = await new Promise<string>((found, failed) => {
    let said = "";
    child.stderr.on("data", (chunk: Buffer) => {
      said += chunk;
      const [door] = /ws:\/\/\S+/.exec(said) ?? [];
      if (door) found(door);
    });
    child.once("exit", (code) => failed(new Error(`the browser ended with ${code}: ${said}`)));
  });
  const browser = await chromium.connectOverCDP(address, { noDefaults: true });
  const [context] = browser.contexts();
  const page = context?.pages()[0];
  if (!context || !page) throw new Error("the browser opened no page");
  return {
    context,
    page,
    async close() {
      await browser.close();
      child.kill();
      await ended;
      await rm(profile, { recursive: true, force: true });
    },
  };
}

/** The processes of the browser that has this profile: its folder stands in the command line of each. */
async function processesOf(profile: string): Promise<number[]> {
  const found: number[] = [];
  for (const pid of await readdir("/proc")) {
    if (!/^\d+$/.test(pid)) continue;
    // a process may end while it is looked at
    const command = await readFile(`/proc/${pid}/cmdline`, "utf8").catch(() => "");
    if (command.split("\0").includes(`--user-data-dir=${profile}`)) found.push(Number(pid));
  }
  return found;
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
