import { afterAll, beforeAll, expect, it } from "vitest";
import type { ReviewPage } from "../../../core/index.ts";
import { type Device, inBrowser, newDevice } from "../chromium.ts";
import { type RunningServer, runServer } from "../running-server.ts";

const id = () => crypto.randomUUID();
const HACK = "<img src=x onerror=\"window.hacked=1\"><script>window.hacked=1</script><b id='bold'>";
const WORDS = [
  `note ${HACK} &amp; "quoted"`,
  "note '); DROP TABLE phrases; --",
  'note =HYPERLINK("http://example.com";"x")',
  "note line one\r\nBcc: all@example.com",
  "note \u202egnol\u202c \u200fright to left\u2066 שלום",
  "note 😀👩‍🔧 ≥ 35 µm, żółw, 中文",
  `the frobnitz ${HACK} squeals`,
  `the frobnitz ${"a".repeat(10_000)}`,
  `note ${"word ".repeat(2_000)}`,
];
const SITE = "=north\u202e<i>";
const TAG = `<B>'";--`;

/** Whatever people say or write, the pages show it as words and as nothing else. */
inBrowser("words made of markup, formulas, marks and ten thousand letters", () => {
  let server: RunningServer;
  let desk: Device;
  let job: string;
  const post = async (path: string, body: object) => {
    const reply = await fetch(new URL(path, server.address), {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: JSON.stringify(body),
    });
    expect(reply.status, `${path} ${await reply.clone().text()}`).toBe(200);
  };

  beforeAll(async () => {
    server = await runServer();
    desk = await newDevice({ width: 360, height: 740 });
    await server.put(`/api/sites/${encodeURIComponent(SITE)}`, {
      name: `North ${HACK} \u202e😀`,
      zone: "America/Denver",
    });
    await server.put(`/api/valves/${encodeURIComponent(TAG)}`, { site: SITE, size_in: 2 });
    job = id();
    const startedAt = "2026-03-04T17:00:00Z";
    const phrases = ["seat worn one side", ...WORDS].map((text, n) => {
      const saidAt = new Date(Date.parse(startedAt) + n * 1000).toISOString();
      return { id: id(), job, text, saidAt, how: "typed" };
    });
    await post("/api/phrases", { jobs: [{ id: job, site: SITE, tag: TAG, startedAt }], phrases });
    const { items } = await server.get<ReviewPage>("/api/review?limit=100");
    const decide = (said: RegExp, what: string, words: string) => {
      const item = items.find((one) => said.test(one.said));
      return post(`/api/review/${item?.phrase}`, { id: id(), what, words, seen: 0 });
    };
    await decide(/seat worn/, "amended", `note ${HACK} ${"b".repeat(5_000)}`);
    await decide(/frobnitz <img/, "asked", `What ${HACK} \u202e is that? ${"c".repeat(2_000)}`);
  });
  afterAll(async () => {
    await desk?.close();
    await server?.remove();
  });

  const screens = [
    "#/review",
    "#/asked",
    "#/bench",
    `#/job/JOB`,
    `#/valve/${encodeURIComponent(TAG)}?site=${encodeURIComponent(SITE)}`,
    "#/desk?day=2026-03-04",
    "#/due",
    "#/search",
    `#/set-up?site=${encodeURIComponent(SITE)}`,
    `#/report?site=${encodeURIComponent(SITE)}&day=2026-03-04`,
    `report?site=${encodeURIComponent(SITE)}&day=2026-03-04`,
  ];
  it.each(screens)("%s shows them as words", { timeout: 60_000 }, async (screen) => {
    const { page } = desk;
    await page.goto("about:blank");
    await page.goto(`${server.address}${screen.replace("JOB", job)}`);
    if (screen === "#/search") {
      await page.getByLabel("Words said").fill("note");
      await page.getByRole("button", { name: "Look", exact: true }).click();
    }
    await page.waitForFunction(() => /frobnitz|note|North|<B>/i.test(document.body.textContent ?? ""));
    await page.waitForLoadState("networkidle");
    // what came last is drawn a moment later
    await page.waitForTimeout(300);
    const seen = await page.evaluate(() => ({
      hacked: "hacked" in window,
      planted: document.querySelectorAll("#bold, img[src='x']").length,
      beyond: document.documentElement.scrollWidth - innerWidth,
    }));
    expect(seen).toEqual({ hacked: false, planted: 0, beyond: expect.any(Number) });
    expect(seen.beyond).toBeLessThanOrEqual(0);
  });

  it("keeps them letter for letter", async () => {
    const view = await server.get<{ phrases: { text: string }[] }>(`/api/jobs/${job}`);
    expect(view.phrases.map((one) => one.text)).toEqual(["seat worn one side", ...WORDS]);
  });

  it("complained of nothing on the way", () => {
    expect(desk.complaints).toEqual([]);
  });
});
