import { expect, it } from "vitest";
import type { KnownValve, ListedValve } from "../../../web/state/state.ts";
import { keepSite } from "../../../web/sync/keep-site.ts";

const known = (tag: string, ...days: string[]): KnownValve => ({
  tag,
  site: "north",
  valve: { tag },
  history: days.map((on) => ({ on, entries: [] })),
  fleet: [],
});

async function fetched(listed: ListedValve[], kept: KnownValve[], site?: string) {
  const asked: string[] = [];
  let running = 0;
  let most = 0;
  const shelf = { valve: async (tag: string) => kept.find((one) => one.tag === tag), keepValve: async () => {} };
  await keepSite(shelf, listed, site, async (tag) => {
    most = Math.max(most, ++running);
    await Promise.resolve();
    running--;
    asked.push(tag);
    return undefined;
  });
  return { asked: asked.sort(), most };
}

it("fetches what the device does not know as of the last visit, and nothing else", async () => {
  const listed = [
    { tag: "LCV-1", site: "north", lastOn: "2026-03-01" },
    { tag: "LCV-2", site: "north", lastOn: "2026-03-01" },
    { tag: "LCV-3", site: "north" },
    { tag: "LCV-4", site: "north" },
    { tag: "LCV-5", site: "south" },
  ];
  const kept = [known("LCV-1", "2025-09-01", "2026-03-01"), known("LCV-2", "2025-09-01"), known("LCV-3")];
  expect((await fetched(listed, kept, "north")).asked).toEqual(["LCV-2", "LCV-4"]);
  expect((await fetched(listed, kept)).asked).toEqual(["LCV-2", "LCV-4", "LCV-5"]);
});

it("asks for two at a time and for no more than a field has", async () => {
  const many = Array.from({ length: 1000 }, (_, at) => ({ tag: `LCV-${at}`, site: "north" }));
  const { asked, most } = await fetched(many, []);
  expect(asked).toHaveLength(300);
  expect(most).toBe(2);
});
