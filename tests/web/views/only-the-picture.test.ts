import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { onlyThePicture } from "../../../web/views/camera/only-the-picture.ts";
import { jpegWithPlace } from "../../server/keepsakes/with-place.ts";

const JPEG = new Uint8Array(readFileSync(new URL("../../server/keepsakes/pictures/plate.jpg", import.meta.url)));

it("of a photograph that tells where it was taken leaves the picture alone", () => {
  const told = new Uint8Array(jpegWithPlace(JPEG));
  // without what stands behind the picture's end: a canvas puts nothing there
  const inFront = told.subarray(0, told.lastIndexOf(0xd9) + 1);
  expect(Buffer.from(told).toString("latin1")).toMatch(/Exif.*59\.123/s);
  const left = Buffer.from(onlyThePicture(inFront)).toString("latin1");
  expect(left).not.toMatch(/Exif|GPS|59\.123|8BIM/);
  expect(left.length).toBeGreaterThan(JPEG.length - 64);
});

it("changes nothing of one that tells nothing", () => {
  expect(Buffer.compare(onlyThePicture(new Uint8Array(JPEG)), JPEG)).toBe(0);
});

it.each([
  ["nothing", new Uint8Array()],
  ["text", new TextEncoder().encode("not a picture")],
  ["half a picture", new Uint8Array(JPEG.subarray(0, 100))],
])("refuses %s", (_what, bytes) => {
  expect(() => onlyThePicture(bytes as Uint8Array<ArrayBuffer>)).toThrow();
});
