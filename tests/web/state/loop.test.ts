import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type Act,
  AWAKE_MS,
  afterCall,
  HOLD_MS,
  isListening,
  type Loop,
  RESTING,
  type Turn,
  turn,
} from "../../../web/state/loop.ts";

/** Runs what happens, one after the other; gives how it stands and all that was to be done. */
function run(...turns: Turn[]): { loop: Loop; acts: Act[]; last: Act[] } {
  let loop = RESTING;
  const acts: Act[] = [];
  let last: Act[] = [];
  for (const one of turns) {
    [loop, last] = turn(loop, one);
    acts.push(...last);
  }
  return { loop, acts, last };
}
const hear = (text: string, confidence?: number): Turn => ({ is: "heard", text, confidence, call: "handsfull" });
const tones = (acts: Act[]) => acts.flatMap((act) => (act.do === "tone" ? [act.tone] : []));
const taken = (acts: Act[]) => acts.flatMap((act) => (act.do === "take" ? [act.text] : []));
const opened: Turn = { is: "opened" };
const press = (at: number): Turn => ({ is: "pressed", at });
const letGo = (at: number): Turn => ({ is: "let_go", at });
const called: Turn[] = [{ is: "hands_free", on: true }, opened];

describe("pad and key", () => {
  it("held, listen while held; the words still on their way when let go are taken", () => {
    const held = run(press(0), opened);
    expect(held.loop.mic).toBe("held");
    expect(held.acts).toEqual([{ do: "open" }, { do: "tone", tone: "listening" }]);
    const after = run(press(0), opened, letGo(HOLD_MS + 1), hear("seat worn"));
    expect(after.loop.mic).toBe("shut");
    expect(after.acts).toContainEqual({ do: "close" });
    expect(taken(after.acts)).toEqual(["seat worn"]);
  });

  it("tapped, listen until tapped again", () => {
    const on = run(press(0), opened, letGo(100), hear("seat worn"), hear("flipped it"));
    expect(on.loop.mic).toBe("on");
    expect(taken(on.acts)).toEqual(["seat worn", "flipped it"]);
    expect(run(press(0), opened, letGo(100), press(5000), letGo(5100)).last).toEqual([{ do: "close" }]);
  });

  it("a press that has no end does the same", () => {
    expect(run({ is: "tapped" }).loop.mic).toBe("on");
    expect(run({ is: "tapped" }, opened, { is: "tapped" }).last).toEqual([{ do: "close" }]);
  });

  it("pressed again before the ear has shut, opens it again", () => {
    const again = run(press(0), opened, letGo(900), press(950));
    expect(again.last).toEqual([{ do: "open" }]);
    expect(again.loop.mic).toBe("held");
  });

  it("the tone comes when it can be spoken, not when it was pressed, and once", () => {
    expect(tones(run(press(0)).acts)).toEqual([]);
    // a browser ends a recognition at each silence, and the ear starts it again
    expect(tones(run(press(0), opened, letGo(100), opened, opened).acts)).toEqual(["listening"]);
  });

  it("pressed while the page speaks, it falls silent and listens", () => {
    const cut = run({ is: "answered", mood: "understood", say: "seat worn" }, press(0));
    expect(cut.last).toEqual([{ do: "open" }, { do: "hush" }]);
    expect(cut.loop.speaking).toBe(false);
    const on = run({ is: "tapped" }, opened, { is: "answered", say: "seat worn" }, press(0), letGo(100));
    expect(on.loop).toMatchObject({ speaking: false, mic: "shut" });
  });

  it("a microphone that does not open is told by its tone, and the next press tries again", () => {
    const lost = run(press(0), { is: "shut", trouble: true });
    expect(tones(lost.acts)).toEqual(["not_understood"]);
    expect(run(press(0), { is: "shut", trouble: true }, letGo(50), press(900)).last).toEqual([{ do: "open" }]);
  });
});

describe("hands-free", () => {
  it("takes what follows the call word, and then whole phrases for a while", () => {
    const { acts, loop } = run(...called, hear("handsfull seat worn one side"), hear("flipped it"));
    expect(taken(acts)).toEqual(["seat worn one side", "flipped it"]);
    expect(acts).toContainEqual({ do: "wait", ms: AWAKE_MS });
    expect(isListening(loop)).toBe(true);
  });

  it("the word alone is answered with the tone to speak", () => {
    const { acts } = run(...called, hear("Handsfull."), hear("seat worn"));
    expect(tones(acts)).toEqual(["listening"]);
    expect(taken(acts)).toEqual(["seat worn"]);
  });

  it("is only overheard before it was called, and again after it was quiet", () => {
    const { acts } = run(...called, hear("pass me the wrench"), hear("handsfull"), { is: "quiet" }, hear("seat worn"));
    expect(taken(acts)).toEqual([]);
    expect(acts.filter((act) => act.do === "overhear")).toHaveLength(2);
    // the ear stays open for the word
    expect(acts).not.toContainEqual({ do: "close" });
  });
});

describe("what the call word is heard as", () => {
  it.each([
    ["handsfull seat worn", "seat worn"],
    ["Hands full, seat worn", "seat worn"],
    ["hey handsfull", ""],
    ["handful seat worn", "seat worn"],
    ["so anyway handsfull plug scored", "plug scored"],
    ["a handful of bolts", undefined],
    ["got my hands on it, full of mud", undefined],
    ["seat worn", undefined],
  ])("%s", (text, after) => expect(afterCall(text, "handsfull")).toBe(after));

  it("may be a few words of one's own", () => {
    expect(afterCall("okay note pad seat worn", "okay note pad")).toBe("seat worn");
    expect(afterCall("okay seat worn", "okay note pad")).toBeUndefined();
    expect(afterCall("for the log seat worn", "for the log")).toBe("seat worn");
    expect(afterCall("for the job we need a seat", "for the log")).toBeUndefined();
  });
});

describe("said back, and asked", () => {
  it("what is heard while the page speaks is its own voice", () => {
    expect(taken(run({ is: "tapped" }, opened, { is: "answered", say: "seat worn" }, hear("seat worn")).acts)).toEqual(
      [],
    );
  });

  it("a question asked of who spoke opens the ear for the answer, and shuts it when none comes", () => {
    const spoken: Turn[] = [press(0), opened, letGo(900), { is: "shut" }, hear("seat worn", 0.3)];
    const asked = run(
      ...spoken,
      { is: "answered", mood: "doubtful", say: "Right?", asks: true },
      { is: "spoken" },
      opened,
    );
    expect(tones(asked.acts)).toEqual(["listening", "doubtful", "listening"]);
    expect(isListening(asked.loop)).toBe(true);
    const [quiet, acts] = turn(asked.loop, { is: "quiet" });
    expect(acts).toEqual([{ do: "close" }]);
    expect(isListening(quiet)).toBe(false);
  });

  it("a question to who types opens no microphone", () => {
    const { acts } = run({ is: "answered", mood: "doubtful", say: "Right?", asks: true }, { is: "spoken" });
    expect(acts.some((act) => act.do === "open")).toBe(false);
  });

  it("the tone comes before the words", () => {
    expect(run({ is: "answered", mood: "hazard", say: "Stop." }).acts).toEqual([
      { do: "tone", tone: "hazard" },
      { do: "say", text: "Stop." },
    ]);
  });
});

describe("whatever happens", () => {
  const anything: fc.Arbitrary<Turn> = fc.oneof(
    fc.record({ is: fc.constant("pressed" as const), at: fc.nat(10_000) }),
    fc.record({ is: fc.constant("let_go" as const), at: fc.nat(10_000) }),
    fc.record({ is: fc.constant("hands_free" as const), on: fc.boolean() }),
    fc.record({ is: fc.constant("shut" as const), trouble: fc.boolean() }),
    fc.constantFrom<Turn[]>({ is: "tapped" }, opened, { is: "garbled" }, { is: "spoken" }, { is: "quiet" }),
    fc.constantFrom(hear("seat worn"), hear("handsfull"), hear("handsfull plug scored")),
    fc.record({ is: fc.constant("answered" as const), say: fc.constantFrom("yes?", ""), asks: fc.boolean() }),
  );

  it("a phrase meant for the log is taken once or not at all, and never while the page speaks", () => {
    fc.assert(
      fc.property(fc.array(anything, { maxLength: 40 }), (turns) => {
        let loop = RESTING;
        for (const one of turns) {
          const before = loop;
          const [after, acts] = turn(loop, one);
          loop = after;
          const took = acts.filter((act) => act.do === "take" || act.do === "overhear");
          expect(took.length).toBeLessThanOrEqual(one.is === "heard" && !before.speaking ? 1 : 0);
          // with the pad held or on and nobody speaking, nothing said is let fall
          if (one.is === "heard" && before.mic !== "shut" && !before.speaking && one.text !== "handsfull")
            expect(acts.some((act) => act.do === "take")).toBe(true);
          // nothing is left open that nobody opened
          if (one.is === "quiet" && before.awake && !loop.handsFree && loop.mic === "shut")
            expect(acts).toContainEqual({ do: "close" });
        }
      }),
    );
  });
});
