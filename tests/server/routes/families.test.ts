import { describe, expect, it } from "vitest";
import { type Family, familyOf, type JobView, type ValveSummary, type ValveView } from "../../../core/index.ts";
import { bench, job, phrase } from "../app-under-test.ts";

/** The site's own choke: a globe valve with a torque limit of its own, invented. */
const choke: Family = {
  ...familyOf("globe_control"),
  family: "site_choke",
  name: "choke valve of the site",
  source: "the site's drawing, invented",
  torque: [
    {
      part: "bonnet_bolting",
      size_in: [2, 4],
      min: 40,
      max: 50,
      unit: "ft_lbf",
      source: "the site's drawing, invented",
    },
  ],
  intervals: { seat_inspection_months: 2, seal_replacement_months: 9, source: "site setting" },
};

async function siteWithChoke() {
  const log = await bench();
  await log.ask("PUT", "/api/sites/north", { name: "North", zone: "America/Denver" });
  await log.ask("PUT", "/api/valves/CH-1", { site: "north", family: "site_choke", size_in: 2 });
  const one = job({ tag: "CH-1", site: "north" });
  const said = [phrase(one, "bonnet bolts torqued to thirty five foot pounds", 1), phrase(one, "seat looks good", 2)];
  await log.ask("POST", "/api/phrases", { jobs: [one], phrases: said });
  const view = async (): Promise<ValveView> => log.ask("GET", "/api/valves/CH-1?site=north");
  const torque = async () => (await view()).checks.find((check) => check.check === "torque");
  return { ...log, one, view, torque };
}

const PATH = "/api/sites/north/families";

describe("a valve family that a site sets up for itself", () => {
  it("gives its limits and intervals to what follows, everywhere; taken back, no longer", {
    timeout: 30_000,
  }, async () => {
    const { ask, one, view, torque } = await siteWithChoke();
    const dueOn = async () => (await view()).due.find((due) => due.task === "seat_inspection")?.on;
    expect(await torque()).toMatchObject({ verdict: "no_limit" });
    expect(await dueOn()).toBe("2026-09-04");
    expect(await ask("GET", PATH)).toEqual({ site: "north", families: [] });

    await ask("PUT", PATH, { family: choke });
    expect((await ask("GET", PATH)).families).toMatchObject([
      { family: "site_choke", name: "choke valve of the site" },
    ]);
    expect(await torque()).toMatchObject({ verdict: "below", min: 40, max: 50 });
    expect(await dueOn()).toBe("2026-05-04");
    expect((await view()).ownFamily).toMatchObject({ number: 1, data: { family: "site_choke" } });
    const seen = (await ask("GET", `/api/jobs/${one.id}`)) as JobView;
    expect(seen.valves[0]?.family?.family).toBe("site_choke");
    expect(seen.consequences.followUps).toContainEqual(expect.objectContaining({ do: "retorque" }));
    const due = await ask("GET", "/api/due?site=north&days=3650");
    expect(due.due.map((line: { on: string }) => line.on)).toContain("2026-05-04");
    const { valves } = (await ask("GET", "/api/valves")) as { valves: ValveSummary[] };
    expect(valves[0]?.ownFamily).toBe(1);
    expect((await ask("GET", "/api/carry?site=north&days=3650")).lines.length).toBeGreaterThan(0);
    const report = await ask("GET", "/api/jobs?site=north&day=2026-03-04");
    expect(report.jobs[0]).toMatchObject({ now: 1 });

    await ask("PUT", PATH, { withdraw: "site_choke" });
    expect(await torque()).toMatchObject({ verdict: "no_limit" });
    expect((await view()).ownFamily).toBeUndefined();
    const { records } = await ask("GET", "/api/audit");
    const acts = records.map((record: { act: string }) => record.act).filter((act: string) => act.startsWith("family"));
    expect(acts.sort()).toEqual(["family_set_up", "family_taken_back"]);
  });

  it("is known to lists of valves, at its own site alone", async () => {
    const { ask } = await siteWithChoke();
    await ask("PUT", "/api/sites/south", { name: "South", zone: "Etc/UTC" });
    await ask("PUT", PATH, { family: choke });
    const list = { csv: "tag,family\nCH-2,site_choke\n" };
    expect((await ask("POST", "/api/sites/north/valve-list", list)).rows).toMatchObject([{ becomes: "new" }]);
    expect((await ask("POST", "/api/sites/south/valve-list", list)).rows).toMatchObject([{ becomes: "refused" }]);
  });

  it.each([
    ["a part twice", { bill: [...choke.bill, choke.bill[0]] }, /stands in it twice/],
    ["a limit upside down", { torque: [{ ...choke.torque[0], min: 60 }] }, /the lower limit first/],
    ["a figure from nowhere", { torque: [{ ...choke.torque[0], source: " " }] }, /where the figure is from/],
    ["an inspection of what it has not", { bill: choke.bill.slice(0, 1), inspection: ["seat"] }, /not in the bill/],
    ["no months", { intervals: { ...choke.intervals, seat_inspection_months: 0 } }, /seat_inspection_months/],
    ["a code with spaces", { family: "Our Choke" }, /small letters/],
  ])("is refused with %s, in words, and nothing is kept", async (_what, wrong, words) => {
    const { send, ask } = await siteWithChoke();
    const answer = await send("PUT", PATH, { family: { ...choke, ...wrong } });
    expect(answer.status).toBe(400);
    expect(await answer.text()).toMatch(words);
    expect((await ask("GET", PATH)).families).toEqual([]);
  });

  it("that is not there cannot be taken back", async () => {
    const { send } = await siteWithChoke();
    expect((await send("PUT", PATH, { withdraw: "globe_control" })).status).toBe(404);
  });
});
