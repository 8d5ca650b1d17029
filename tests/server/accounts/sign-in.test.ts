import { eq } from "drizzle-orm";
import { describe, expect, it } from "vitest";
import { momentIn, SESSION_IDLE_MS, SESSION_MOST_MS } from "../../../server/accounts/lifetimes.ts";
import { isHashOf, isPassword, newToken, sha256 } from "../../../server/accounts/secrets.ts";
import { makeApp } from "../../../server/app.ts";
import { sessions, signInTries } from "../../../server/db/people-tables.ts";
import { bench, DOOR } from "../app-under-test.ts";
import { client, codeFor, enrolled } from "../enrolled.ts";

const PASSWORD = "three valves in a row";

/** A lead who has chosen a password by the link of a code, and the page he did it on. */
async function withLead() {
  const all = await bench();
  const lead = await enrolled(all.store, "A. Person", ["lead"]);
  const page = client(all.app);
  const { code } = await codeFor(all.store, lead.person, "password");
  const chosen = await page.call("POST", "/api/first-password", { code, password: PASSWORD });
  expect(chosen.status).toBe(200);
  return { ...all, lead, page, code, chosen };
}
const signIn = (page: ReturnType<typeof client>, password = PASSWORD, name = "A. Person") =>
  page.call("POST", "/api/sign-in", { name, password });
const me = async (page: ReturnType<typeof client>) => (await page.call("GET", "/api/me")).status;

describe("a password", () => {
  it("is chosen by a code that is taken once, and signs in from then on", async () => {
    const { app, page, code, lead } = await withLead();
    expect(await (await page.call("GET", "/api/me")).json()).toMatchObject({
      id: lead.person,
      name: "A. Person",
      roles: ["lead"],
      by: "session",
      password: true,
    });
    const again = await client(app).call("POST", "/api/first-password", { code, password: "another long one" });
    expect(again.status).toBe(403);
    const other = client(app);
    // as it is typed on a phone: other case, a space too many
    expect((await signIn(other, PASSWORD, " a.  PERSON")).status).toBe(200);
    expect(await me(other)).toBe(200);
  });

  it("has twelve characters at least", async () => {
    const { app, store, lead } = await withLead();
    const { code } = await codeFor(store, lead.person, "password");
    const short = await client(app).call("POST", "/api/first-password", { code, password: "short" });
    expect(short.status).toBe(400);
    expect(((await short.json()) as { detail: string }).detail).toMatch(/at least 12/);
    // and the code is still good
    expect((await client(app).call("POST", "/api/first-password", { code, password: PASSWORD })).status).toBe(200);
  });

  it("changed, it ends every other session and leaves one's own", async () => {
    const { app, page } = await withLead();
    const other = client(app);
    await signIn(other);
    const wrong = await page.call("PUT", "/api/password", { was: "not this one at all", password: "some new words" });
    expect(wrong.status).toBe(403);
    expect((await page.call("PUT", "/api/password", { was: PASSWORD, password: "some new words" })).status).toBe(200);
    expect(await me(page)).toBe(200);
    expect(await me(other)).toBe(401);
    expect((await signIn(other)).status).toBe(401);
    expect((await signIn(other, "some new words")).status).toBe(200);
  });

  it("is compared in as long a time where nobody bears the name", async () => {
    const started = performance.now();
    expect(await isPassword(undefined, "whatever it is")).toBe(false);
    // a look-up that found nobody would be answered within a millisecond; an Argon2id hash takes ten or more
    expect(performance.now() - started).toBeGreaterThan(3);
    expect(isHashOf(sha256("one"), "one")).toBe(true);
    expect(isHashOf(sha256("one"), "two")).toBe(false);
  });
});

describe("a session's cookie", () => {
  it("is hidden from scripts, bound to this host, and Secure where the page is https", async () => {
    const { chosen, app, given } = await withLead();
    const plain = chosen.headers.get("set-cookie") ?? "";
    expect(plain).toMatch(/^handsfull=hfs_[\w-]{43};/);
    expect(plain).toMatch(/HttpOnly/);
    expect(plain).toMatch(/SameSite=Lax/);
    expect(plain).toMatch(/Path=\//);
    expect(plain).not.toMatch(/Domain|Secure/);
    // TLS ended by a proxy: the page says itself that it is https
    const behind = client(app, { origin: "https://localhost" });
    const byProxy = (await signIn(behind)).headers.get("set-cookie") ?? "";
    expect(byProxy).toMatch(/^__Host-handsfull=.*HttpOnly.*Secure/);
    expect(await me(behind)).toBe(200);
    const tls = makeApp({ ...given, door: { ...DOOR, tls: true } });
    const secured = client(tls, { origin: "https://localhost" });
    expect((await signIn(secured)).headers.get("set-cookie")).toMatch(/^__Host-handsfull=.*Secure/);
    expect(await me(secured)).toBe(200);
    // there the name without the prefix, which a neighbouring host could plant, is not looked at
    secured.bring(secured.cookie()?.replace("__Host-", ""));
    expect(await me(secured)).toBe(401);
  });

  it("is a new one at every sign-in: one planted beforehand is worth nothing, one held before is ended", async () => {
    const { app, page } = await withLead();
    const victim = client(app);
    const planted = `handsfull=${newToken("session")}`;
    victim.bring(planted);
    await signIn(victim);
    expect(victim.cookie()).not.toBe(planted);
    const attacker = client(app);
    attacker.bring(planted);
    expect(await me(attacker)).toBe(401);
    const before = page.cookie();
    await signIn(page);
    expect(page.cookie()).not.toBe(before);
    attacker.bring(before);
    expect(await me(attacker)).toBe(401);
  });

  it("is of no use after signing out, a shift without use, or three days", async () => {
    const { app, store, page } = await withLead();
    const kept = page.cookie();
    const out = await page.call("POST", "/api/sign-out");
    expect(out.headers.get("set-cookie")).toMatch(/Max-Age=0/);
    page.bring(kept);
    expect(await me(page)).toBe(401);

    const set = async (how: Partial<typeof sessions.$inferInsert>) => {
      const other = client(app);
      await signIn(other);
      const hash = sha256(other.cookie()?.split("=")[1] ?? "");
      await store.write(async (tx) => {
        await tx.update(sessions).set(how).where(eq(sessions.tokenHash, hash));
      });
      return me(other);
    };
    expect(await set({ usedAt: momentIn(-SESSION_IDLE_MS + 60_000) })).toBe(200);
    expect(await set({ usedAt: momentIn(-SESSION_IDLE_MS - 1000) })).toBe(401);
    expect(await set({ beganAt: momentIn(-SESSION_MOST_MS - 1000) })).toBe(401);
  });

  it("does nothing for a page of another site", async () => {
    const { page } = await withLead();
    const site = { name: "N", zone: "Etc/UTC" };
    const put = (headers: Record<string, string>) => page.call("PUT", "/api/sites/north", site, headers);
    expect((await put({ origin: "https://evil.example" })).status).toBe(403);
    expect((await put({ origin: "http://localhost:9999" })).status).toBe(403);
    expect((await put({ origin: "null" })).status).toBe(403);
    expect((await put({})).status).toBe(200);
    const foreign = await page.call(
      "POST",
      "/api/sign-in",
      { name: "x", password: "y" },
      { origin: "https://e.example" },
    );
    expect(foreign.status).toBe(403);
  });

  it("goes before the token of the device, which stands again once it is over", async () => {
    const { app, store, page, lead } = await withLead();
    const { token } = await enrolled(store, "B. Tech", ["technician"]);
    const phone = client(app, { token });
    phone.bring(page.cookie());
    const who = async () => (await (await phone.call("GET", "/api/me")).json()) as { id: string; by: string };
    expect(await who()).toMatchObject({ id: lead.person, by: "session" });
    await page.call("POST", "/api/sign-out");
    expect(await who()).toMatchObject({ name: "B. Tech", by: "device" });
  });

  it("without any word of where the call comes from changes nothing either", async () => {
    const { app, page } = await withLead();
    const answer = await app.request("/api/sign-out", { method: "POST", headers: { cookie: page.cookie() ?? "" } });
    expect(answer.status).toBe(403);
    expect(await me(page)).toBe(200);
  });
});

describe("guessing", () => {
  it("is made to wait after five wrong ones, though the sixth were right, and be told for how long", async () => {
    const { app, store } = await withLead();
    const guesser = client(app);
    for (let n = 0; n < 5; n++) expect((await signIn(guesser, `wrong guess ${n}`)).status).toBe(401);
    const locked = await signIn(guesser);
    expect(locked.status).toBe(429);
    const wait = Number(locked.headers.get("retry-after"));
    expect(wait).toBeGreaterThan(30);
    expect(wait).toBeLessThanOrEqual(60);
    expect(((await locked.json()) as { detail: string }).detail).toMatch(/Wait 1 minute/);
    // from elsewhere too: it is the name that waits
    expect((await signIn(client(app, { address: "198.51.100.9" }))).status).toBe(429);
    // the wait over, one more wrong guess waits twice as long
    const over = () => store.write((tx) => tx.update(signInTries).set({ lockedUntil: momentIn(-1) }));
    await over();
    expect((await signIn(guesser, "wrong again, sorry")).status).toBe(401);
    expect(Number((await signIn(guesser)).headers.get("retry-after"))).toBeGreaterThan(90);
    await over();
    expect((await signIn(guesser)).status).toBe(200);
    expect((await signIn(guesser, "wrong once more")).status).toBe(401);
    expect((await signIn(guesser)).status).toBe(200);
  });

  it("many at once is no way round", async () => {
    const { app } = await withLead();
    const answers = await Promise.all(Array.from({ length: 20 }, (_, n) => signIn(client(app), `wrong guess ${n}`)));
    expect(answers.filter((one) => one.status === 401)).toHaveLength(5);
    expect(answers.filter((one) => one.status === 429)).toHaveLength(15);
  });

  it("at many names from one address is made to wait, and waits nobody elsewhere", { timeout: 40_000 }, async () => {
    const { app } = await withLead();
    const guesser = client(app, { address: "198.51.100.1" });
    let last = 0;
    for (let n = 0; n < 32; n++) last = (await signIn(guesser, PASSWORD, `Nobody ${n}`)).status;
    expect(last).toBe(429);
    expect((await signIn(client(app, { address: "198.51.100.2" }))).status).toBe(200);
  });

  it("a name that nobody bears is answered and locked like one that somebody does", async () => {
    const { app } = await withLead();
    const [real, none] = [client(app, { address: "198.51.100.1" }), client(app, { address: "198.51.100.2" })];
    for (let n = 0; n < 7; n++) {
      const [a, b] = [await signIn(real, "wrong words here"), await signIn(none, "wrong words here", "Nobody")];
      expect(a.status).toBe(b.status);
      expect(await a.json()).toEqual(await b.json());
    }
  });
});
