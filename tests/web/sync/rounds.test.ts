import { describe, expect, it } from "vitest";
import { backoffMs, rounds, type Trouble } from "../../../web/sync/rounds.ts";

/** Rounds with a clock in the test's hand; each round ends as the next of `ends` says. */
function sending(ends: (Trouble | undefined | Error)[]) {
  let clock = 0;
  let worked = 0;
  const heard: (Trouble | undefined)[] = [];
  const timers: { at: number; work: () => void }[] = [];
  const go = rounds(
    {
      alone: (work) => work(),
      later: (work, ms) => void timers.push({ at: clock + ms, work }),
      chance: () => 1,
      ticks: () => clock,
    },
    async () => {
      const end = ends[worked++];
      if (end instanceof Error) throw end;
      return end;
    },
    async (trouble) => void heard.push(trouble),
  );
  /** lets time pass, and what was due in it happen */
  const pass = async (ms: number) => {
    clock += ms;
    for (const due of timers.splice(0)) {
      if (due.at <= clock) due.work();
      else timers.push(due);
    }
    await new Promise((done) => setTimeout(done, 0));
  };
  return { go, pass, heard, timers, worked: () => worked };
}

describe("sending in rounds", () => {
  it("comes again by itself after trouble, once, however often it was asked meanwhile", async () => {
    const { go, pass, timers, worked } = sending([{ why: "no network" }, { why: "no network" }, { why: "no network" }]);
    await go();
    await go();
    await go();
    expect(worked()).toBe(3);
    expect(timers).toHaveLength(1);
    await pass(60_000);
    expect(worked()).toBe(4);
    expect(timers).toHaveLength(0);
  });

  it("leaves the server alone for as long as it asked, whoever wants to send meanwhile", async () => {
    const { go, pass, worked } = sending([{ why: "busy", waitMs: 30_000 }]);
    await go();
    await go();
    await pass(29_000);
    await go();
    expect(worked()).toBe(1);
    await pass(1_000);
    expect(worked()).toBe(2);
    await go();
    expect(worked()).toBe(3);
  });

  it("does not believe a server that asks for a day", async () => {
    const { go, pass, worked } = sending([{ why: "busy", waitMs: 86_400_000 }]);
    await go();
    await pass(600_000);
    expect(worked()).toBe(2);
  });

  it("tells a failing store in words and goes on trying", async () => {
    const { go, pass, heard, worked } = sending([new Error("it is shut")]);
    await go();
    expect(heard).toEqual([{ why: "this device’s store cannot be read (it is shut)" }]);
    await pass(1_000);
    expect(worked()).toBe(2);
    expect(heard.at(-1)).toBeUndefined();
  });

  it("backs off to a minute and never past it", () => {
    expect(backoffMs(0, 1)).toBe(1000);
    expect(backoffMs(3, 1)).toBe(8000);
    expect(backoffMs(50, 1)).toBe(60_000);
    expect(backoffMs(50, 0)).toBe(30_000);
  });
});
