import { describe, expect, it } from "vitest";
import { bench, id, job, phrase } from "../app-under-test.ts";
import { client, enrolled } from "../enrolled.ts";

/** What the report says of who looked at it. */
describe("the report of a day with two jobs", () => {
  it("says which of them a lead signed, and which stand as they were said", async () => {
    const at = await bench();
    const lead = client(at.app, { token: (await enrolled(at.store, "A. Lead", ["lead"])).token });
    await lead.call("PUT", "/api/sites/north", { name: "North", zone: "America/Denver" });
    const jobs = [job({ tag: "LCV-213", site: "north" }), job({ tag: "PV-104", site: "north" })] as const;
    const phrases = jobs.map((one) => phrase(one, "seat worn one side"));
    await lead.call("POST", "/api/phrases", { jobs, phrases });
    const text = async (form = "text") =>
      (await lead.call("GET", `/report?site=north&day=2026-03-04&form=${form}`)).text();
    expect(await text()).toContain("Not yet reviewed: all 2 jobs.");
    const sign = (of: { id: string }) => lead.call("POST", `/api/jobs/${of.id}/signature`, { id: id(), phrases: 1 });
    await sign(jobs[0]);
    expect(await text()).toContain(
      "Reviewed and signed by A. Lead: 1 of 2 jobs. Not yet reviewed, and standing as it was heard or typed at the valve: PV-104 at 10:00.",
    );
    await sign(jobs[1]);
    expect(await text()).toContain("Reviewed and signed by A. Lead: all 2 jobs of this day.");
    expect(await text("mail")).toContain("Reviewed and signed by A. Lead");
    await lead.call("POST", `/api/jobs/${jobs[0].id}/reopening`, { id: id(), why: "wrong valve" });
    expect(await text()).toContain("1 of 2 jobs");
  });
});
