import { describe, expect, test } from "vitest";
import { reads } from "./in-short.ts";

/** Tests of the assembled valve, and how they went. Phrases of one job are parted by " / "; what stands after them follows, a line an entry. */
const TABLE: Record<string, [phrases: string, ...stands: string[]][]> = {
  "the seat, by its outcome": [
    ["no leak at sixty psi", "reading upstream_pressure 60 psi", "test seat_leak pass"],
    ["holding", "test seat_leak pass"],
    ["bubble tight", "test seat_leak pass"],
    ["dead tight at eighty psi", "reading upstream_pressure 80 psi", "test seat_leak pass"],
    ["leaking by", "test seat_leak fail"],
    ["blowing by at fifty pounds", "reading upstream_pressure 50 psi", "test seat_leak fail"],
    ["passing", "test seat_leak fail"],
    ["won't hold", "test seat_leak fail"],
  ],
  "the stroke, by its outcome": [
    ["strokes full", "test stroke pass"],
    ["opens and closes fine", "test stroke pass"],
    ["full travel", "test stroke pass"],
    ["won't open", "test stroke fail"],
    ["only half travel", "test stroke fail"],
    ["not stroking", "test stroke fail"],
  ],
  "what it would not do, and what it could not be brought to": [
    ["seat leak test wouldn't pass", "test seat_leak fail"],
    ["couldn't pass the shell test", "test shell fail"],
    ["passes the packing test", "test packing pass"],
    ["she passed her stroke test", "test stroke pass"],
    ["can't get it to hold sixty psi", "reading upstream_pressure 60 psi", "test seat_leak fail"],
    ["can't get it to open", "test stroke fail"],
    ["won't come off the seat", "test stroke fail"],
    ["no movement on the signal", "test stroke fail"],
    ["she passed her driving test"],
  ],
  "how far and how long, and no verdict": [
    ["full travel is half an inch", "reading travel 0.5 in"],
    ["full stroke took eight seconds", "reading duration 8 s", "test stroke null"],
    ["eight seconds to open", "reading duration 8 s", "test stroke null"],
  ],
  "air on the actuator": [
    [
      "thirty pounds on the actuator for five minutes, no drop",
      "reading signal_pressure 30 psi",
      "reading duration 5 min",
      "test actuator pass",
    ],
    ["put twenty psi on the diaphragm, no leaks", "reading signal_pressure 20 psi", "test actuator pass"],
    ["actuator's losing air at twenty psi", "reading signal_pressure 20 psi", "test actuator fail"],
    ["put sixty psi on the seat, tight", "reading upstream_pressure 60 psi", "test seat_leak pass"],
  ],
  "named tests and their verdicts": [
    ["packing test passed", "test packing pass"],
    ["packing failed the test", "test packing fail"],
    ["actuator test no leaks", "test actuator pass"],
    ["shell test passed", "test shell pass"],
    ["hydro test failed", "test shell fail"],
    ["body test at three hundred psi no leaks", "reading pressure 300 psi", "test shell pass"],
    ["stroke test", "test stroke null"],
    ["seat leak test", "test seat_leak null"],
    ["seat leak test failed", "test seat_leak fail"],
    ["seat test passed at ninety pounds", "reading upstream_pressure 90 psi", "test seat_leak pass"],
    [
      "seat leak test at sixty psi, three bubbles a minute",
      "reading upstream_pressure 60 psi",
      "reading leak_rate 3 bubble/min",
      "test seat_leak null",
    ],
    ["no bubbles at sixty psi", "reading upstream_pressure 60 psi", "test seat_leak pass"],
    ["stroke test at fifteen pounds, full travel", "reading signal_pressure 15 psi", "test stroke pass"],
    ["took five seconds to stroke", "reading duration 5 s", "test stroke null"],
    ["leak test on the packing, no leaks", "test packing pass"],
    ["didn't pass the stroke test", "test stroke fail"],
    ["stroke test passed and seat leak test failed", "test stroke pass", "test seat_leak fail"],
  ],
  "a leak at a part is a finding, not a test": [
    ["packing leaking", "finding packing leaking"],
    ["bonnet gasket leaking", "finding bonnet_gasket leaking"],
    ["no leak at the packing", "finding packing leaking absent"],
    ["air coming out of the breather", "finding breather leaking"],
    ["seat's leaking", "finding seat leaking"],
  ],
  "the verdict of the phrase before": [
    [
      "seat leak test at sixty psi / passed",
      "reading upstream_pressure 60 psi",
      "test seat_leak null",
      "test seat_leak pass",
    ],
    ["stroke test / passed", "test stroke null", "test stroke pass"],
    [
      "holding at sixty psi / still holding",
      "reading upstream_pressure 60 psi",
      "test seat_leak pass",
      "test seat_leak pass",
    ],
  ],
  "talk of other tests": [["passed my driving test"], ["the kid failed his math test"], ["hold my beer"]],
};

for (const [about, rows] of Object.entries(TABLE))
  describe(about, () => {
    for (const [phrases, ...stands] of rows) test(phrases, () => expect(reads(phrases)).toEqual(stands));
  });
