import { describe, expect, it } from "vitest";
import { firstState, type Happening, next } from "../../../web/state/next.ts";
import { hazardsSaid, lastSaid, standingAlert, valveAtHand } from "../../../web/state/seen.ts";
import type { CardPhrase, State } from "../../../web/state/state.ts";

const card = { id: "job", tag: "LCV-213", startedAt: "2026-03-04T09:00:00.000-07:00" };
const phrase = (id: string, text: string): CardPhrase => ({
  id,
  job: "job",
  text,
  saidAt: "2026-03-04T09:01:00.000-07:00",
  how: "typed",
  delivery: "keeping",
});
const run = (...all: Happening[]): State => all.reduce(next, firstState({ screen: "bench" }));
const delivery = (state: State) => state.phrases.map((one) => one.delivery);

describe("the store", () => {
  it("reads each phrase as it is said, in the context of those before", () => {
    const state = run(
      { is: "started", card },
      { is: "said", phrase: phrase("a", "seat worn one side") },
      { is: "said", phrase: phrase("b", "flipped it") },
    );
    expect(state.heard.phrases).toHaveLength(2);
    expect(state.heard.entries).toMatchObject([
      { type: "finding", condition: "worn", part: "seat", extent: "one_side" },
      { type: "work", work: "flipped", status: "done", part: "seat" },
    ]);
    expect(lastSaid(state)?.phrase.id).toBe("b");
  });

  it("never says that all is kept while a phrase is still being kept, whatever was counted before it", () => {
    const counted = { waiting: 0, clips: 0, photos: 0, refused: 0 };
    const said: Happening[] = [
      { is: "started", card },
      { is: "said", phrase: phrase("a", "seat worn") },
    ];
    expect(run(...said, { is: "outbox", outbox: counted }).outbox.waiting).toBe(1);
    const sent: Happening[] = [
      { is: "on_device", id: "a" },
      { is: "delivered", ids: ["a"] },
    ];
    expect(run(...said, ...sent, { is: "outbox", outbox: counted }).outbox.waiting).toBe(0);
  });

  it("shows a phrase as kept on the device only after the device said so", () => {
    const said: Happening[] = [
      { is: "started", card },
      { is: "said", phrase: phrase("a", "seat worn") },
    ];
    expect(delivery(run(...said))).toEqual(["keeping"]);
    expect(delivery(run(...said, { is: "on_device", id: "a" }))).toEqual(["waiting"]);
    expect(delivery(run(...said, { is: "not_on_device", id: "a", problem: "full" }))).toEqual(["not_kept"]);
  });

  it("never steps back from kept when the device answers later than the server", () => {
    const state = run(
      { is: "started", card },
      { is: "said", phrase: phrase("a", "seat worn") },
      { is: "delivered", ids: ["a"] },
      { is: "on_device", id: "a" },
    );
    expect(delivery(state)).toEqual(["kept"]);
  });

  it("takes a job up again with the same reading", () => {
    const phrases = [phrase("a", "seat worn one side"), phrase("b", "flipped it")];
    const said = run({ is: "started", card }, ...phrases.map((one): Happening => ({ is: "said", phrase: one })));
    const restored = run({ is: "restored", card: { ...card, closedAt: "2026-03-04T10:00:00Z" }, phrases });
    expect(restored.heard).toEqual(said.heard);
    expect(restored.card?.closedAt).toBeUndefined();
  });

  it("holds an alert until it was seen, and the hazard for as long as the job", () => {
    const before: Happening[] = [
      { is: "started", card },
      { is: "said", phrase: phrase("a", "I smell gas") },
    ];
    expect(standingAlert(run(...before))?.phrase.id).toBe("a");
    const seen = run(...before, { is: "alert_seen", id: "a" }, { is: "said", phrase: phrase("b", "scratch that") });
    expect(standingAlert(seen)).toBeUndefined();
    expect(hazardsSaid(seen)).toMatchObject([{ type: "hazard", hazard: "gas" }]);
  });

  it("closes a job and remembers it for reopening", () => {
    const state = run({ is: "started", card }, { is: "closed", at: "2026-03-04T10:00:00Z", missing: ["plug"] });
    expect(state.card).toBeUndefined();
    expect(state.closedMissing).toEqual(["plug"]);
    expect(state.closed).toMatchObject({ id: "job", closedAt: "2026-03-04T10:00:00Z" });
  });

  it("changes nothing of the state before", () => {
    const before = run({ is: "started", card }, { is: "said", phrase: phrase("a", "seat worn") });
    const copy = JSON.stringify(before);
    next(before, { is: "delivered", ids: ["a"] });
    next(before, { is: "said", phrase: phrase("b", "flipped it") });
    expect(JSON.stringify(before)).toBe(copy);
  });

  it("takes the valve named last as the one at hand", () => {
    const state = run({ is: "started", card }, { is: "said", phrase: phrase("a", "now on LCV-214, seat worn") });
    expect(valveAtHand(state).tag).toBe("LCV-214");
  });
});
