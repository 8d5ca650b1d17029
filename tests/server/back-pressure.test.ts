import { describe, expect, it } from "vitest";
import { NOBODY } from "../../server/access.ts";
import { makeBackPressure } from "../../server/back-pressure.ts";
import { Refusal } from "../../server/errors.ts";
import { RATES } from "../../server/limits.ts";
import { makeMetrics } from "../../server/metrics.ts";
import { retryAfterMs } from "../../web/sync/retry-after.ts";
import { bench, job, phrase } from "./app-under-test.ts";
import { client, enrolled } from "./enrolled.ts";

const device = (name: string) => ({ ...NOBODY, by: `device:${name}` });

function refusalOf(work: () => unknown): Refusal {
  try {
    work();
  } catch (cause) {
    if (cause instanceof Refusal) return cause;
    throw cause;
  }
  throw new Error("it was let in");
}

describe("how much one caller may ask", () => {
  it("is a burst, then so much a second; the others do not notice", () => {
    let ms = 0;
    const pressure = makeBackPressure(makeMetrics(), () => ms);
    for (let n = 0; n < RATES.known.burst; n++) pressure.enter(device("wild"))();
    const refusal = refusalOf(() => pressure.enter(device("wild")));
    expect(refusal.status).toBe(429);
    const waitMs = retryAfterMs(refusal.more.headers?.["retry-after"] ?? null, 0);
    pressure.enter(device("calm"))();
    // whoever does as he is told is let in, and then a second's worth and no more
    ms += waitMs ?? Number.NaN;
    for (let n = 0; n < RATES.known.perSecond; n++) pressure.enter(device("wild"))();
    expect(refusalOf(() => pressure.enter(device("wild"))).status).toBe(429);
  });

  it("is so many at once, to each and to all, and as many again when they are answered", () => {
    const pressure = makeBackPressure(makeMetrics(), () => 0);
    const mine = Array.from({ length: RATES.openEach }, () => pressure.enter(device("a")));
    expect(refusalOf(() => pressure.enter(device("a"))).status).toBe(429);
    const others = Array.from({ length: RATES.openAtAll - mine.length }, (_, n) => pressure.enter(device(`b${n}`)));
    const refusal = refusalOf(() => pressure.enter(device("c")));
    expect([refusal.status, refusal.more.headers]).toEqual([503, { "retry-after": "2" }]);
    for (const leave of [...mine, ...others]) leave();
    expect(pressure.open()).toBe(0);
    pressure.enter(device("a"))();
  });

  it("is less for those whom nobody knows, counted by where they come from; a device there is not in it", async () => {
    const { app, store } = await bench();
    const { token } = await enrolled(store, "A. Person", ["lead"]);
    const from = (address: string, of?: string) => client(app, { address, token: of }).call("GET", "/api/jobs");
    let answer = await from("203.0.113.7", "hfd_guess");
    for (let n = 0; answer.status === 401 && n < RATES.unknown.burst * 2; n++)
      answer = await from("203.0.113.7", "hfd_guess");
    expect(answer.status).toBe(429);
    expect(Number(answer.headers.get("retry-after"))).toBeGreaterThan(0);
    expect(((await answer.json()) as { detail: string }).detail).toMatch(/Wait \d+ s/);
    expect((await from("203.0.113.7", token)).status).toBe(200);
    expect((await from("203.0.113.8", "hfd_guess")).status).toBe(401);
  });
});

describe("what is turned away", () => {
  it("was not kept, and is taken when it comes again", async () => {
    const { app, store } = await bench();
    const { token } = await enrolled(store, "A. Person", ["lead"]);
    const { call } = client(app, { token });
    const one = job();
    const body = { jobs: [one], phrases: [phrase(one, "seat worn")] };
    const answers = await Promise.all(
      Array.from({ length: RATES.openEach + 20 }, () => call("POST", "/api/phrases", body)),
    );
    const statuses = answers.map((answer) => answer.status);
    expect(new Set(statuses)).toEqual(new Set([200, 429]));
    expect(await (await call("POST", "/api/phrases", body)).json()).toMatchObject({ results: [{ status: "known" }] });
    expect((await (await call("GET", `/api/jobs/${one.id}`)).json()).phrases).toHaveLength(1);
  });
});
