import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Entry, hear } from "../../../core/index.ts";
import { type DayData, makeReport } from "../../../server/reports/day-report.ts";
import { reportPage } from "../../../server/reports/page.tsx";
import { reportText } from "../../../server/reports/text.ts";

const nothing = { checks: [], followUps: [], due: [], missing: [], parts: { used: [], needed: [] } };

function day(entries: Entry[], about: Partial<DayData["jobs"][number]["shares"][number]> = {}): DayData {
  const alerts = entries.filter((one) => one.type === "hazard");
  return {
    site: { key: "north", name: "North Pad", zone: "America/Denver" },
    day: "2026-03-04",
    jobs: [
      {
        time: "10:00",
        by: [],
        shares: [{ tag: "LCV-213", valve: {}, entries, consequences: nothing, ...about }],
        phrases: [{ time: "10:00", text: "what was said", unread: [], alerts }],
      },
    ],
    due: [],
    dueDays: 30,
  };
}

describe("the day's report", () => {
  it.each<[string, Entry[]]>([
    [
      "The seat was found badly worn on one side.",
      [{ type: "finding", condition: "worn", part: "seat", severity: "severe", extent: "one_side" }],
    ],
    [
      "The seat was found worn and was flipped to its other side.",
      [
        { type: "finding", condition: "worn", part: "seat" },
        { type: "work", work: "flipped", status: "done", part: "seat" },
      ],
    ],
    ["The seals were replaced.", [{ type: "work", work: "replaced", status: "done", part: "seals" }]],
    [
      "The cage was looked at and not found cracked.",
      [{ type: "finding", condition: "cracked", part: "cage", absent: true }],
    ],
    ["The cage may be cracked.", [{ type: "finding", condition: "cracked", part: "cage", unsure: true }]],
    ["The plug needs to be replaced.", [{ type: "work", work: "replaced", status: "needed", part: "plug" }]],
    ["The plug was not replaced.", [{ type: "work", work: "replaced", status: "declined", part: "plug" }]],
    [
      "The cage O-ring was found cut and flattened.",
      [
        { type: "finding", condition: "cut", part: "cage_o_ring" },
        { type: "finding", condition: "flattened", part: "cage_o_ring" },
      ],
    ],
    ["The bolting was found broken (2).", [{ type: "finding", condition: "broken", part: "bolting", count: 2 }]],
    ["A part that was not named was found worn.", [{ type: "finding", condition: "worn" }]],
    [
      "Bonnet bolting torqued to 25 to 30 ft-lbf.",
      [{ type: "reading", quantity: "torque", value: 25, upper: 30, unit: "ft_lbf", part: "bonnet_bolting" }],
    ],
    [
      "Upstream pressure about 60 psi.",
      [{ type: "reading", quantity: "upstream_pressure", value: 60, unit: "psi", bound: "about" }],
    ],
    ["To order or bring: 2 × seat gasket.", [{ type: "need", part: "seat_gasket", count: 2 }]],
    ["Note: check the drain", [{ type: "note", text: "check the drain" }]],
  ])("says: %s", (sentence, entries) => {
    expect(makeReport(day(entries)).valves[0]?.done).toEqual([sentence]);
  });

  it("puts hazards and failed tests first, and only the last word on a test counts", () => {
    const report = makeReport(
      day([
        { type: "test", test: "seat_leak", result: "fail" },
        { type: "test", test: "stroke", result: "fail" },
        { type: "test", test: "seat_leak", result: "pass" },
        { type: "hazard", hazard: "trapped_pressure" },
      ]),
    );
    expect(report.hazards).toEqual([
      { valve: "LCV-213", time: "10:00", what: "trapped pressure", words: "what was said" },
    ]);
    expect(report.failed).toEqual([{ valve: "LCV-213", what: "Stroke test: FAILED." }]);
  });

  it("counts a measured leak over its limit as failed, and does not call it without result", () => {
    const check = {
      check: "seat_leakage",
      verdict: "fail",
      measured: 9,
      allowed: 3,
      unit: "bubble/min",
      class: "VI",
      source: "s",
    } as const;
    const report = makeReport(
      day([{ type: "test", test: "seat_leak", result: null }], { consequences: { ...nothing, checks: [check] } }),
    );
    expect(report.failed[0]?.what).toBe("Seat leakage 9 bubbles/min, allowed 3 (class VI): FAILED.");
    expect(report.valves[0]?.tests).toEqual([]);
  });

  it("puts what stops the job before what is due now before what can wait, with its date", () => {
    const why = { why: "because", rule: "r", source: "s" };
    const report = makeReport(
      day([], {
        consequences: {
          ...nothing,
          followUps: [
            { do: "replace", part: "seat", when: "next_inspection", ...why },
            { do: "clean", part: "cage", when: "now", ...why },
            { do: "stop", when: "now", ...why },
          ],
          due: [{ task: "seat_inspection", on: "2026-09-04", months: 6, basis: "interval", why: "w" }],
        },
      }),
    );
    expect(report.followUps.map((one) => `${one.what}, ${one.when}`)).toEqual([
      "STOP: follow the site's procedure, now",
      "Clean the cage, now",
      "Replace the seat, at the next inspection, due 2026-09-04",
    ]);
  });

  it("adds up parts over valves, and what was asked for", () => {
    const order = {
      do: "order",
      part: "seat",
      count: 2,
      when: "now",
      why: "w",
      rule: "part_owed",
      source: "s",
    } as const;
    const one = day([], {
      consequences: {
        ...nothing,
        parts: { used: [{ part: "seat", count: 1 }], needed: [{ part: "seat", count: 1 }] },
        followUps: [order],
      },
    });
    const other = day([], {
      tag: "PV-1",
      consequences: { ...nothing, parts: { used: [{ part: "seat", count: 2 }], needed: [] } },
    });
    const { parts } = makeReport({ ...one, jobs: [...one.jobs, ...other.jobs] });
    expect(parts).toEqual({
      used: [{ part: "seat", count: 3, valves: "LCV-213, PV-1" }],
      needed: [{ part: "seat", count: 2, valves: "LCV-213" }],
    });
  });

  it("never lets words out of their place, whatever they are", () => {
    const nasty = fc.oneof(
      fc.string({ unit: "binary", maxLength: 40 }),
      fc.constantFrom(
        "<script>alert(1)</script>",
        '"><img src=x onerror=y>',
        "\r\nBcc: x",
        "</q></li>",
        "\u202eevil",
        "&lt;b&gt;",
      ),
    );
    fc.assert(
      fc.property(nasty, nasty, nasty, (name, tag, words) => {
        const data = day(
          [
            { type: "note", text: words },
            { type: "hazard", hazard: "gas" },
          ],
          { tag },
        );
        data.site.name = name;
        for (const job of data.jobs)
          for (const phrase of job.phrases) Object.assign(phrase, { text: words, unread: [words] });
        const report = makeReport(data);
        const html = reportPage(report, { href: "/x.css" });
        const tags = new Set(
          (html.match(/<\/?([a-z0-9!]+)/gi) ?? []).map((one) => one.replace(/[</]/g, "").toLowerCase()),
        );
        for (const one of tags) expect(KNOWN).toContain(one);
        expect(html).not.toMatch(/onerror=y>/);
        const text = reportText(report);
        expect(text).not.toMatch(/\r|\u202e|^Bcc/m);
      }),
    );
  });

  it("holds for whatever the core makes of a job", () => {
    const said = [
      "smell gas",
      "seat worn on one side",
      "flipped it",
      "three bubbles a minute at fifty pounds",
      "order two seat gaskets",
      "upper diaphragm torn",
    ];
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...said), { maxLength: 8 }), (say) => {
        const heard = hear({ id: "x", say, on: "2026-03-04" });
        const report = makeReport(day(heard.entries, { consequences: heard }));
        expect(reportText(report)).toContain("safe to operate");
        expect(JSON.stringify(report)).not.toMatch(/undefined|NaN|_(?=[a-z])(?<=[a-z]_)(?!lbf)/);
      }),
    );
  });
});

const KNOWN =
  "!doctype html head meta title link body main h1 h2 h3 bdi span section ul li strong q p article table tbody tr th td footer".split(
    " ",
  );
