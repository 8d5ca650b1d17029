import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { readDictionary, soundsFrom } from "../../../core/speech/dictionary.ts";
import { SoundAlikes } from "../../../core/speech/find-sound-alikes.ts";
import { OWN_SOUNDS } from "../../../core/speech/sounds.ts";
import { lexicon } from "../../../core/vocabulary/lexicon.ts";
import { DICTIONARY_FILE } from "../../../server/ear/model-files.ts";

const soundsOf = soundsFrom(readDictionary(readFileSync(DICTIONARY_FILE, "utf8")), OWN_SOUNDS);
const everyday = "how sing song house strain or ice a late act you waiter warn seed sea wrench gas kit".split(" ");
const alikes = new SoundAlikes(everyday, soundsOf);
const heardFor = (word: string) => alikes.of(soundsOf(word)).map(({ heard }) => heard);

test("one word of the very same sound, and one whose last consonant is voiced", () => {
  expect(alikes.of(soundsOf("worn"))).toEqual([{ heard: "warn", far: 0 }]);
  expect(heardFor("seat")).toEqual(["seed"]);
});

test("a word split in two or three, with a vowel that is weak and an H that is swallowed", () => {
  expect(heardFor("housing")).toEqual(["how sing"]);
  expect(heardFor("strainer")).toEqual(["strain or"]);
  expect(heardFor("isolate")).toEqual(["ice a late"]);
  expect(heardFor("actuator")).toEqual(["act you waiter"]);
  expect(heardFor("gasket")).toEqual(["gas kit"]);
});

test("nothing for a word that only begins alike", () => {
  expect(heardFor("wrenches")).toEqual([]);
  expect(heardFor("bonnet")).toEqual([]);
});

test("what was found and written down is the nearest that the finder finds, and no word that means something itself", () => {
  const { soundAlikes, longest } = lexicon();
  const rows = [...soundAlikes.values()].flat();
  const meant = (heard: string) => rows.filter((one) => one.heard.join(" ") === heard).map((one) => one.mean);
  expect(meant("how sing")).toEqual(["housing"]);
  expect(meant("ice a late")).toEqual(["isolate"]);
  expect(meant("strain or")).toEqual(["strainer"]);
  const single = rows.filter(({ heard }) => heard.length === 1).map(({ heard }) => heard);
  expect(single.length).toBeGreaterThan(200);
  const parts = single.filter((heard) => longest(heard, 0)?.senses.part !== undefined);
  expect(parts).toEqual([]);
});
