import { eq } from "drizzle-orm";
import { describe, expect, it } from "vitest";
import { valveStates } from "../../../server/db/tables.ts";
import { bench, job, phrase } from "../app-under-test.ts";

const DAY = 86_400_000;
const NOW = Date.UTC(2026, 2, 4, 17);

interface Told {
  tag: string;
  site?: string;
  setUp?: { family?: string; service?: "normal" | "severe" };
  jobs: [daysAgo: number, ...said: string[]][];
}

/** The valves of some sites, each with its jobs so many days ago; gives the id of each valve's last job. */
async function field(...valves: Told[]) {
  const made = await bench();
  const last = new Map<string, string>();
  for (const { tag, site = "north", setUp = {}, jobs } of valves) {
    await made.ask("PUT", `/api/valves/${tag}`, {
      site,
      family: "balanced_dump",
      size_in: 2,
      service: "severe",
      ...setUp,
    });
    const sent = jobs.map(([ago, ...said]) => {
      const at = (second: number) => new Date(NOW - ago * DAY + second * 1000).toISOString();
      const one = job({ site, tag, startedAt: at(0) });
      last.set(tag, one.id);
      return { one, phrases: said.map((text, n) => ({ ...phrase(one, text), saidAt: at(n) })) };
    });
    await made.ask("POST", "/api/phrases", {
      jobs: sent.map(({ one }) => one),
      phrases: sent.flatMap(({ phrases }) => phrases),
    });
  }
  return { ...made, last };
}

const WORN: [string, string] = ["seat's worn on both sides", "replaced the seat"];
/** Three sides, each sound at about 115 days and worn at about 125. */
const THREE: Told["jobs"] = [
  [400, "replaced the seat"],
  [285, "seat's good"],
  [275, ...WORN],
  [161, "seat's good"],
  [150, ...WORN],
  [34, "seat's good"],
  [25, ...WORN],
];
/** A side put in lately and found sound: no life of its own has ended. */
const YOUNG: Told["jobs"] = [
  [30, "replaced the seat"],
  [10, "seat's good"],
];
const SEAT = { task: "seat_inspection" };
const like: Told[] = [
  { tag: "B-1", jobs: THREE },
  { tag: "C-1", jobs: THREE },
];

describe("the lives of like valves", () => {
  it("tell when a young seat is next looked at: on the valve, in its last job, on the due board", async () => {
    const { ask, last } = await field({ tag: "A-1", jobs: YOUNG }, ...like);
    const pattern = { ...SEAT, basis: "wear_pattern", why: expect.stringContaining("on this and like valves") };
    const board = await ask("GET", "/api/due?site=north&days=3650");
    expect(
      board.due.find((one: { tag: string; task: string }) => one.tag === "A-1" && one.task === SEAT.task),
    ).toMatchObject(pattern);
    expect((await ask("GET", "/api/valves/A-1?site=north")).due).toContainEqual(expect.objectContaining(pattern));
    const view = await ask("GET", `/api/jobs/${last.get("A-1")}`);
    expect(view.consequences.due).toContainEqual(expect.objectContaining(pattern));
  });

  const unlike: [string, Partial<Told>][] = [
    ["at another site", { site: "south" }],
    ["of another family", { setUp: { family: "globe_control" } }],
    ["in another service", { setUp: { service: "normal" } }],
  ];
  for (const [what, other] of unlike)
    it(`count for nothing ${what}`, async () => {
      const { ask } = await field({ tag: "A-1", jobs: YOUNG }, ...like.map((one) => ({ ...one, ...other })));
      await ask("GET", "/api/due?days=3650");
      const { due } = await ask("GET", "/api/valves/A-1?site=north");
      expect(due).toContainEqual(expect.objectContaining({ ...SEAT, basis: "severe_start" }));
    });

  it("are kept with the state, and only those of the service it is in now", async () => {
    const { ask, store } = await field(
      { tag: "B-1", jobs: THREE },
      {
        tag: "D-1",
        jobs: [...THREE, [20, "this valve is in normal service now"], [15, "replaced the seat"], [9, "seat's good"]],
      },
    );
    await ask("GET", "/api/due?site=north");
    const kept = async (tag: string) => {
      const [row] = await store.db.select().from(valveStates).where(eq(valveStates.tag, tag));
      return row && { ...row, lives: JSON.parse(row.lives) };
    };
    const b = await kept("B-1");
    expect(b).toMatchObject({ family: "balanced_dump", service: "severe" });
    expect(b?.lives).toHaveLength(3);
    expect(b?.lives[0].lower).toBeCloseTo(115 / 30.4375, 6);
    expect(b?.lives[0].upper).toBeCloseTo(125 / 30.4375, 6);
    const d = await kept("D-1");
    expect(d).toMatchObject({ service: "normal" });
    expect(d?.lives.map((life: object) => Object.values(life).map((months) => Math.round(months * 30.4375)))).toEqual([
      [6],
    ]);
  });
});
