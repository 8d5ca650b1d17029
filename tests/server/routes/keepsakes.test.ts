import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { eq } from "drizzle-orm";
import { describe, expect, it } from "vitest";
import { keepsakes } from "../../../server/db/tables.ts";
import { expire } from "../../../server/keepsakes/expire.ts";
import { bench, id, job, phrase } from "../app-under-test.ts";
import { jpegWithPlace, wav } from "../keepsakes/with-place.ts";

const JPEG = new Uint8Array(readFileSync(new URL("../keepsakes/pictures/plate.jpg", import.meta.url)));
const AT = "2026-03-04T10:00:05-07:00";
const DAY_MS = 86_400_000;

/** A job of two phrases at a site, and ways to send what belongs to them. */
async function field(site = "north") {
  const log = await bench();
  await log.ask("PUT", `/api/sites/${site}`, { name: "North (invented)", zone: "America/Denver" });
  const of = job({ tag: "LCV-213", site });
  const said = [phrase(of, "seat worn one side"), phrase(of, "flipped it", 1)];
  await log.ask("POST", "/api/phrases", { jobs: [of], phrases: said });
  const put = (path: string, query: Record<string, string>, bytes: Uint8Array, type = "application/octet-stream") =>
    log.app.request(`${path}?${new URLSearchParams(query)}`, {
      method: "PUT",
      headers: { "content-type": type },
      body: new Uint8Array(bytes),
    });
  const clip = (name: string, at = new Date().toISOString(), bytes = wav()) =>
    put(`/api/clips/${name}`, { phrase: said[0]?.id ?? "", at, seconds: "1" }, bytes);
  const photo = (
    name: string,
    bytes: Uint8Array = JPEG,
    more: Record<string, string> = { phrase: said[0]?.id ?? "" },
  ) => put(`/api/photos/${name}`, { job: of.id, at: AT, ...more }, bytes);
  const files = () =>
    existsSync(join(log.dir, "kept"))
      ? readdirSync(join(log.dir, "kept"), { recursive: true, encoding: "utf8" }).filter((one) => one.length > 3)
      : [];
  const view = () => log.ask("GET", `/api/jobs/${of.id}`);
  return { ...log, of, said, put, clip, photo, files, view, site };
}

const words = async (answer: Response) => (await answer.json()).detail as string;

describe("sound and photographs", () => {
  it("are kept with their phrase, seen in the job, and handed out as what they are and nothing else", async () => {
    const { clip, photo, view, app, said } = await field();
    const [sound, picture] = [id(), id()];
    expect(await (await clip(sound)).json()).toEqual({ id: sound, status: "stored" });
    expect(await (await photo(picture)).json()).toEqual({ id: picture, status: "stored" });
    const seen = await view();
    expect(seen.phrases[0]).toMatchObject({
      id: said[0]?.id,
      clips: [{ id: sound, seconds: 1, type: "audio/wav" }],
      photos: [{ id: picture, at: "2026-03-04T10:00:05.000-07:00", type: "image/jpeg", width: 48, height: 32 }],
    });
    expect(seen.phrases[1]).toMatchObject({ clips: [], photos: [] });
    expect(seen.photos).toEqual([]);
    const answer = await app.request(`/api/photos/${picture}`);
    expect(Object.fromEntries(answer.headers)).toMatchObject({
      "content-type": "image/jpeg",
      "x-content-type-options": "nosniff",
      "content-security-policy": "sandbox; default-src 'none'; frame-ancestors 'none'",
      "content-disposition": `inline; filename="photo-${picture}.jpg"`,
      "cache-control": "private, no-cache",
    });
    expect(Buffer.compare(new Uint8Array(await answer.arrayBuffer()), JPEG)).toBe(0);
    const etag = answer.headers.get("etag") ?? "";
    expect((await app.request(`/api/photos/${picture}`, { headers: { "if-none-match": etag } })).status).toBe(304);
  });

  it("are handed out in parts where a player asks for parts", async () => {
    const { clip, app } = await field();
    const sound = id();
    await clip(sound);
    const whole = wav();
    const part = async (range: string) => {
      const answer = await app.request(`/api/clips/${sound}`, { headers: { range } });
      return [answer.status, answer.headers.get("content-range"), (await answer.arrayBuffer()).byteLength];
    };
    expect(await part("bytes=0-1")).toEqual([206, `bytes 0-1/${whole.length}`, 2]);
    expect(await part("bytes=100-")).toEqual([
      206,
      `bytes 100-${whole.length - 1}/${whole.length}`,
      whole.length - 100,
    ]);
    expect(await part("bytes=-10")).toEqual([
      206,
      `bytes ${whole.length - 10}-${whole.length - 1}/${whole.length}`,
      10,
    ]);
    expect(await part(`bytes=${whole.length}-`)).toEqual([416, `bytes */${whole.length}`, 0]);
    expect((await part("bytes=0-1,5-6"))[0]).toBe(200);
  });

  it("sent again are known; other content under the same id is refused and changes nothing", async () => {
    const { clip, photo, view } = await field();
    const [sound, picture] = [id(), id()];
    const at = new Date().toISOString();
    await clip(sound, at);
    await photo(picture);
    expect(await (await clip(sound, at)).json()).toEqual({ id: sound, status: "known" });
    expect(await (await photo(picture)).json()).toEqual({ id: picture, status: "known" });
    const other = await clip(sound, at, wav(2));
    expect(other.status).toBe(409);
    expect(await words(other)).toMatch(/already used .* new id/);
    expect((await photo(sound)).status).toBe(409);
    const seen = await view();
    expect([seen.phrases[0].clips.length, seen.phrases[0].photos.length]).toEqual([1, 1]);
  });

  it("a hundred at once, each twice, are each kept once, those with the same content in one file", async () => {
    const { clip, view, files } = await field();
    const at = new Date().toISOString();
    const names = Array.from({ length: 50 }, id);
    const sounds = [wav(0.1), wav(0.2)];
    const answers = await Promise.all(
      [...names, ...names].map(async (name, index) => (await clip(name, at, sounds[index % 2])).json()),
    );
    expect(answers.filter((one) => one.status === "stored")).toHaveLength(50);
    expect(answers.filter((one) => one.status === "known")).toHaveLength(50);
    expect((await view()).phrases[0].clips.map((one: { id: string }) => one.id).sort()).toEqual([...names].sort());
    expect(files()).toHaveLength(2);
  });

  it("a place in a photograph does not reach the disk", async () => {
    const { photo, app, files, dir } = await field();
    const picture = id();
    const placed = jpegWithPlace(JPEG);
    expect(Buffer.from(placed).toString("latin1")).toContain("59.123");
    await photo(picture, placed);
    const served = Buffer.from(await (await app.request(`/api/photos/${picture}`)).arrayBuffer());
    const [file = ""] = files();
    for (const bytes of [served, readFileSync(join(dir, "kept", file))])
      expect(bytes.toString("latin1")).not.toMatch(/59\.123|Exif|GPS/);
    // sent again as it was, it is the same photograph
    expect(await (await photo(picture, placed)).json()).toMatchObject({ status: "known" });
  });

  it("of a job with no phrase belong to the job", async () => {
    const { photo, view } = await field();
    const picture = id();
    await photo(picture, JPEG, {});
    expect((await view()).photos).toMatchObject([{ id: picture }]);
  });
});

describe("what is refused, in words", () => {
  it("what is no picture or sound by its bytes, whatever it is called", async () => {
    const { put, of, said, files } = await field();
    const page = new Uint8Array(Buffer.from("<script>alert(1)</script>"));
    const photo = await put(`/api/photos/${id()}`, { job: of.id, at: AT }, page, "image/jpeg");
    expect(photo.status).toBe(415);
    expect(await words(photo)).toMatch(/By its bytes .* JPEG, PNG or WebP/);
    const clip = await put(
      `/api/clips/${id()}`,
      { phrase: said[0]?.id ?? "", at: AT, seconds: "1" },
      JPEG,
      "audio/wav",
    );
    expect(clip.status).toBe(415);
    expect(await words(clip)).toMatch(/WAV, Ogg or WebM/);
    expect(files()).toEqual([]);
  });

  it("what is too large", async () => {
    const { clip, photo } = await field();
    const large = await clip(id(), AT, wav(70));
    expect([large.status, await words(large)]).toEqual([413, "This is over 2 MB: send it smaller."]);
    expect((await photo(id(), new Uint8Array(5_000_000))).status).toBe(413);
  });

  it("what belongs to nothing that is here, or to another job", async () => {
    const { put, photo, ask, files } = await field();
    const clip = await put(`/api/clips/${id()}`, { phrase: id(), at: AT, seconds: "1" }, wav());
    expect([clip.status, await words(clip)]).toEqual([404, expect.stringContaining("send the phrase first")]);
    const other = job({ tag: "LCV-1" });
    const there = phrase(other, "plug cracked");
    await ask("POST", "/api/phrases", { jobs: [other], phrases: [there] });
    const crossed = await photo(id(), JPEG, { phrase: there.id });
    expect([crossed.status, await words(crossed)]).toEqual([409, expect.stringContaining("another job")]);
    expect((await photo(id(), JPEG, { job: id() })).status).toBe(404);
    expect(files()).toEqual([]);
  });

  it("what has no id, no time or no length that can be read; and any way out of the folder", async () => {
    const { put, of, said, send } = await field();
    const say = said[0]?.id ?? "";
    for (const [path, query] of [
      ["/api/clips/7", { phrase: say, at: AT, seconds: "1" }],
      [`/api/clips/${id()}`, { phrase: say, at: "today", seconds: "1" }],
      [`/api/clips/${id()}`, { phrase: say, at: AT, seconds: "-1" }],
      [`/api/clips/${id()}`, { phrase: say, at: AT }],
      [`/api/photos/${id()}`, { job: "../../etc/passwd", at: AT }],
      [`/api/photos/${id()}`, { job: of.id, at: "9999-99-99T00:00:00Z" }],
    ] as const)
      expect((await put(path, query as never, JPEG)).status).toBe(400);
    for (const name of ["..%2f..%2fetc%2fpasswd", "a".repeat(64), "..%5c..%5cx"])
      expect((await send("GET", `/api/photos/${name}`)).status).toBe(400);
    expect((await send("GET", `/api/photos/${id()}`)).status).toBe(404);
    expect((await send("DELETE", `/api/photos/${id()}`)).headers.get("allow")).toBe("GET, HEAD, PUT");
  });
});

describe("how long a site keeps sound", () => {
  it("is thirty days where nobody said; older sound is removed by itself, photographs are not", async () => {
    const { clip, photo, view, store, kept, files, send, ask } = await field();
    expect((await ask("GET", "/api/sites")).sites[0].keeping).toEqual({ clips: "for_days", days: 30 });
    const [sound, picture] = [id(), id()];
    const at = new Date().toISOString();
    await clip(sound, at);
    await photo(picture);
    const later = (days: number) => new Date(Date.now() + days * DAY_MS);
    expect(await expire(store, kept, later(29))).toBe(0);
    expect(await expire(store, kept, later(31))).toBe(1);
    expect((await view()).phrases[0]).toMatchObject({ clips: [], photos: [{ id: picture }] });
    expect(files()).toHaveLength(1);
    const gone = await send("GET", `/api/clips/${sound}`);
    expect([gone.status, await words(gone)]).toEqual([404, expect.stringContaining("was removed")]);
    // a device that never got the answer sends it again: it is known, and does not come back
    expect(await (await clip(sound, at)).json()).toMatchObject({ status: "known" });
    expect(files()).toHaveLength(1);
  });

  it("a file shared with a clip that is still kept stays", async () => {
    const { clip, store, kept, files } = await field();
    const [old, young] = [id(), id()];
    await clip(old);
    await clip(young);
    await store.write((tx) =>
      tx.update(keepsakes).set({ takenAt: "2020-01-01T00:00:00.000000000Z" }).where(eq(keepsakes.id, old)),
    );
    expect(await expire(store, kept)).toBe(1);
    expect(files()).toHaveLength(1);
    expect(await expire(store, kept, new Date(Date.now() + 40 * DAY_MS))).toBe(1);
    expect(files()).toHaveLength(0);
  });

  it("what a crash left between marking and removing is removed the next time; what no row ever named is not touched", async () => {
    const { clip, store, kept, files } = await field();
    const sound = id();
    await clip(sound);
    await kept.keep(new Uint8Array([1, 2, 3]), async () => {});
    await store.write((tx) =>
      tx.update(keepsakes).set({ removedAt: `${new Date().toISOString().slice(0, 23)}000000Z` }),
    );
    expect(files()).toHaveLength(2);
    await expire(store, kept);
    expect(files()).toHaveLength(1);
  });

  it("is said by the site: none, some days, or for good", async () => {
    const { clip, ask, store, kept, files, site, send } = await field();
    await ask("PUT", `/api/sites/${site}/keeping`, { clips: "none", days: 30 });
    expect(await (await clip(id())).json()).toMatchObject({ status: "not_kept", why: "this site keeps no sound" });
    expect(files()).toEqual([]);
    await ask("PUT", `/api/sites/${site}/keeping`, { clips: "for_days", days: 7 });
    const old = new Date(Date.now() - 8 * DAY_MS).toISOString();
    expect(await (await clip(id(), old)).json()).toMatchObject({ status: "not_kept" });
    await ask("PUT", `/api/sites/${site}/keeping`, { clips: "for_good", days: 7 });
    expect(await (await clip(id(), old)).json()).toMatchObject({ status: "stored" });
    expect(await expire(store, kept, new Date(Date.now() + 4000 * DAY_MS))).toBe(0);
    expect((await send("PUT", "/api/sites/nowhere/keeping", { clips: "none", days: 1 })).status).toBe(404);
    expect((await send("PUT", `/api/sites/${site}/keeping`, { clips: "some", days: 0 })).status).toBe(400);
  });
});
