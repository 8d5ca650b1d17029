import { describe, expect, it } from "vitest";
import { listen, startListening } from "../../core/index.ts";
import { PEOPLE, SITES, VALVES } from "../../demo/field.ts";
import { meaning } from "../../demo/meaning.ts";
import { tellStory } from "../../demo/story.ts";

const TODAY = "2026-11-25";
const { jobs, busy } = tellStory(TODAY);

describe("the demo's invented phrases", () => {
  it("are each read as they were meant, on the valve they were said at, with nothing of the trade unread", () => {
    const wrong: object[] = [];
    for (const { told, phrases } of jobs) {
      let heard = startListening();
      for (const [n, { text }] of phrases.entries()) {
        const before = heard.entries.length;
        heard = listen(heard, text);
        const meant = told.say[n];
        const reading = heard.phrases[n];
        const got = reading?.entries.map(meaning) ?? [];
        const unread = reading?.unread.map((one) => one.text) ?? [];
        const asMeant = got.join("|") === meant?.means.join("|") && unread.length > 0 === (meant.strange ?? false);
        const amended = meant?.amends === undefined || amends(heard.entries.map(meaning), before, meant.amends);
        if (!asMeant || !amended) wrong.push({ text, meant, got, unread });
      }
      const tags = new Set(heard.entries.flatMap((one) => (one.type === "valve" ? [one.tag] : [])));
      if (tags.size !== 1 || !tags.has(told.tag)) wrong.push({ tag: told.tag, heard: [...tags] });
    }
    expect(wrong).toEqual([]);
  });

  it("hold what a demo is to show: strange words, slips put right, failed tests tried again, a hazard", () => {
    const say = jobs.flatMap((one) => one.told.say);
    const means = say.flatMap((one) => one.means);
    expect(say.some((one) => one.strange)).toBe(true);
    expect(say.some((one) => one.amends)).toBe(true);
    expect(means).toContain("hazard gas");
    const fails = jobs.filter(({ told }) => told.say.some((one) => one.means.includes("seat_leak fail")));
    expect(fails.length).toBeGreaterThan(5);
    expect(fails.some(({ told }) => told.say.some((one) => one.means.includes("seat_leak pass")))).toBe(true);
  });
});

describe("the demo's field", () => {
  it("is said to be invented wherever its names are shown", () => {
    for (const { name } of [...SITES, ...PEOPLE]) expect(name).toContain("invented");
  });

  it("has three sites in zones of their own, two dozen valves of both families, eighteen months of jobs", () => {
    expect(new Set(SITES.map((one) => one.zone)).size).toBe(3);
    expect(VALVES).toHaveLength(24);
    expect(new Set(VALVES.map((one) => one.valve.family))).toEqual(new Set(["balanced_dump", "globe_control"]));
    expect(new Set(jobs.map((one) => one.told.tag)).size).toBe(24);
    expect(new Set(jobs.map((one) => one.told.person)).size).toBe(3);
    const days = jobs.map((one) => one.told.day);
    expect(Date.parse(days.at(-1) ?? "") - Date.parse(days[0] ?? "")).toBeGreaterThan(530 * 86_400_000);
    expect(jobs.filter((one) => one.told.day === busy.day && one.told.site === busy.site.site)).toHaveLength(6);
  });

  it("is told the same way twice, ids and all, and never reaches into its own future", () => {
    expect(tellStory(TODAY)).toEqual({ jobs, busy });
    const ids = jobs.flatMap((one) => [one.job.id, ...one.phrases.map((phrase) => phrase.id)]);
    expect(new Set(ids).size).toBe(ids.length);
    const last = Math.max(...jobs.flatMap((one) => one.phrases.map((phrase) => Date.parse(phrase.saidAt))));
    expect(last).toBeLessThan(Date.parse(`${TODAY}T06:00:00Z`));
  });

  it.each(["2026-11-22", "2026-11-23", "2026-11-28", "2027-03-09"])(
    "tells the same kind of story up to %s",
    (today) => {
      const other = tellStory(today);
      expect(other.jobs.length).toBeGreaterThan(120);
      expect(other.busy.day < today).toBe(true);
    },
  );
});

/** Whether the entries are as many as before and hold this one now. */
const amends = (now: string[], before: number, meant: string) => now.length === before && now.includes(meant);
