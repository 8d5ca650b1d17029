import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lookAtPicture, lookAtSound } from "../../../server/keepsakes/content.ts";
import { joined, jpegWithPlace, pngWithPlace, wav, webpWithPlace } from "./with-place.ts";

const picture = (name: string) => new Uint8Array(readFileSync(new URL(`pictures/${name}`, import.meta.url)));
const JPEG = picture("plate.jpg");
const PNG = picture("plate.png");
const WEBP = picture("plate.webp");
const text = (of: Uint8Array) => Buffer.from(of).toString("latin1");
const bytes = (words: string) => new Uint8Array(Buffer.from(words, "latin1"));

function kept(of: Uint8Array) {
  const looked = lookAtPicture(of);
  if (!looked.ok) throw new Error(looked.problem);
  return looked.value;
}

describe("a picture", () => {
  it.each([
    ["image/jpeg", JPEG, jpegWithPlace(JPEG)],
    ["image/png", PNG, pngWithPlace(PNG)],
    ["image/webp", WEBP, webpWithPlace(WEBP)],
  ] as const)("%s: the place goes in and does not come out; the picture stays as it was", (type, plain, placed) => {
    expect(text(placed)).toContain("59.123");
    const one = kept(placed);
    expect(one).toMatchObject({ type, width: 48, height: 32 });
    expect(text(one.bytes)).not.toMatch(/59\.123|GPS|Exif|EXIF|XMP|xmp|mp42|8BIM/);
    // the same bytes as of the picture that never had a place, and nothing more to take away
    expect(Buffer.compare(one.bytes, kept(plain).bytes)).toBe(0);
    expect(Buffer.compare(kept(one.bytes).bytes, one.bytes)).toBe(0);
    expect(one.bytes.length).toBeGreaterThan(plain.length * 0.7);
  });

  it.each([
    ["a page", bytes("<html><script>alert(1)</script></html>")],
    ["a drawing that may hold a script", bytes('<svg xmlns="http://www.w3.org/2000/svg" onload="alert(1)"/>')],
    ["a moving picture", bytes("GIF89a\x01\0\x01\0\0\0\0;")],
    ["a program", bytes("\x7fELF\x02\x01\x01")],
    ["sound", wav()],
    ["nothing", new Uint8Array(0)],
  ])("%s is none, whatever it is called", (_what, of) => {
    expect(lookAtPicture(of)).toMatchObject({
      ok: false,
      problem: expect.stringMatching(/no picture .* JPEG, PNG or WebP/),
    });
  });

  it.each([
    ["JPEG", JPEG],
    ["PNG", PNG],
    ["WebP", WEBP],
  ])("cut off anywhere, a %s is told to be damaged", (_name, whole) => {
    for (let length = 12; length < whole.length - 1; length += 7)
      expect(lookAtPicture(whole.subarray(0, length))).toMatchObject({ ok: false });
  });

  it("that unpacks to more than any camera has is refused", () => {
    const huge = PNG.slice();
    new DataView(huge.buffer).setUint32(16, 60_000);
    new DataView(huge.buffer).setUint32(20, 60_000);
    expect(lookAtPicture(huge)).toMatchObject({ ok: false, problem: expect.stringContaining("60000 by 60000") });
  });

  it("or sound, of any bytes at all behind a good beginning, is judged and never throws", () => {
    const heads = [
      JPEG.subarray(0, 24),
      PNG.subarray(0, 33),
      WEBP.subarray(0, 40),
      wav().subarray(0, 44),
      bytes("OggS"),
    ];
    fc.assert(
      fc.property(fc.constantFrom(...heads), fc.uint8Array({ maxLength: 300 }), (head, tail) => {
        const of = joined(head, tail);
        for (const looked of [lookAtPicture(of), lookAtSound(of)])
          if (!looked.ok) expect(looked.problem.length).toBeGreaterThan(20);
      }),
      { numRuns: 2000 },
    );
  });
});

describe("sound", () => {
  it("is kept without what programs write beside it", () => {
    const looked = lookAtSound(wav(1, "recorded at 59.123 N by somebody"));
    expect(looked).toMatchObject({ ok: true, value: { type: "audio/wav" } });
    if (looked.ok) expect(Buffer.compare(looked.value.bytes, wav())).toBe(0);
  });

  it.each([
    ["a picture", JPEG],
    ["words", bytes("seat worn one side")],
    ["a head with nothing behind it", wav().subarray(0, 44)],
    ["a film in the same wrapping", bytes("\x1a\x45\xdf\xa3\x9f\x42\x82\x84webm\x16\x54\xae\x6bV_VP8 A_OPUS")],
  ])("%s is none", (_what, of) => {
    expect(lookAtSound(of)).toMatchObject({ ok: false, problem: expect.stringContaining("WAV, Ogg or WebM") });
  });
});
