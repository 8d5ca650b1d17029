import { describe, expect, it } from "vitest";
import { benchOrder } from "../../../web/state/bench-orders.ts";
import { readSettings, USUAL } from "../../../web/state/settings.ts";
import { isElsewhere, isKey, keyName, USUAL_KEY, whyNot } from "../../../web/state/talk-key.ts";

describe("settings as the device kept them", () => {
  it("are read of this version and of earlier ones", () => {
    expect(readSettings({})).toEqual(USUAL);
    expect(readSettings({ theme: "dark", readBack: true, site: "north" })).toMatchObject({
      theme: "dark",
      readBack: "brief",
      site: "north",
    });
    expect(readSettings({ readBack: false }).readBack).toBe("tones");
    const own = {
      ...USUAL,
      readBack: "full" as const,
      talkKey: { code: "", key: "MediaPlayPause" },
      callWord: "note pad",
    };
    expect(readSettings(JSON.parse(JSON.stringify(own)))).toEqual(own);
  });
  it.each([null, 3, "x", [], { theme: 4, readBack: "loud", talkKey: { code: 1 }, callWord: " ", handsFree: "yes" }])(
    "spoilt, are the usual ones: %j",
    (spoilt) => expect(readSettings(spoilt)).toEqual(USUAL),
  );
});

describe("the key to talk", () => {
  it("is told by its code where it has one, else by its name", () => {
    expect(isKey(USUAL_KEY, { code: "F2", key: "F2" })).toBe(true);
    expect(isKey({ code: "", key: "MediaPlayPause" }, { code: "", key: "MediaPlayPause" })).toBe(true);
    expect(isKey({ code: "KeyB", key: "b" }, { code: "KeyB", key: "B" })).toBe(true);
    expect(isKey({ code: "KeyB", key: "b" }, { code: "KeyN", key: "b" })).toBe(false);
  });
  it("cannot be one that moves the focus or only works with others", () => {
    for (const key of ["Tab", "Escape", "Shift", "Unidentified"]) expect(whyNot({ key, code: key })).toBeTruthy();
    for (const key of ["PageDown", "b", " ", "Enter", "MediaPlayPause", "AudioVolumeUp"])
      expect(whyNot({ key, code: "" })).toBeUndefined();
  });
  it("leaves typing to the field and pressing to the control", () => {
    const nowhere = { line: false, empty: false, control: false };
    const writing = { ...nowhere, line: true };
    const press = (key: string) => ({ key, code: "" });
    for (const key of ["b", " ", "Enter", "Backspace"]) expect(isElsewhere(press(key), writing)).toBe(true);
    for (const key of ["F2", "PageDown", "MediaPlayPause"]) expect(isElsewhere(press(key), writing)).toBe(false);
    // pedals send these, and an empty line has no use for them
    for (const key of [" ", "Enter"]) expect(isElsewhere(press(key), { ...writing, empty: true })).toBe(false);
    expect(isElsewhere(press("b"), { ...writing, empty: true })).toBe(true);
    for (const key of [" ", "Enter"]) expect(isElsewhere(press(key), { ...nowhere, control: true })).toBe(true);
    for (const key of [" ", "Enter", "b"]) expect(isElsewhere(press(key), nowhere)).toBe(false);
  });
  it("has a name a person knows", () => {
    expect([" ", "b", "PageDown", "F2"].map((key) => keyName({ key, code: "" }))).toEqual([
      "Space",
      "B",
      "Page Down",
      "F2",
    ]);
  });
});

it.each([
  ["Tones only.", { readBack: "tones" }],
  ["brief read-back", { readBack: "brief" }],
  ["full readback", { readBack: "full" }],
  ["hands free", { handsFree: true }],
  ["hands-free off", { handsFree: false }],
])("the bench is told: %s", (said, set) => expect(benchOrder(said)?.set).toEqual(set));
it.each(["seat worn", "stop listening", "hands free the stem"])("and %s is said of the valve", (said) =>
  expect(benchOrder(said)).toBeUndefined(),
);
