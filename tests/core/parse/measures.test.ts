import { describe, expect, test } from "vitest";
import { reads } from "./in-short.ts";

/** A number with its unit, and what it is of. Phrases of one job are parted by " / "; what stands after them follows, a line an entry. */
const TABLE: Record<string, [phrases: string, ...stands: string[]][]> = {
  torque: [
    ["bonnet bolts torqued to twenty eight foot pounds", "reading torque 28 ft_lbf bonnet_bolting"],
    ["torqued to 28", "reading torque 28 ft_lbf"],
    ["packing nut sixty inch pounds", "reading torque 60 in_lbf packing_nut"],
    ["body bolts forty newton meters", "reading torque 40 N_m body_bolting"],
    ["torqued the bonnet bolts to thirty pounds", "reading torque 30 ft_lbf bonnet_bolting"],
    ["bonnet bolts at forty pounds", "reading torque 40 ft_lbf bonnet_bolting"],
    ["between twenty five and thirty foot pounds on the body bolts", "reading torque 25..30 ft_lbf body_bolting"],
    ["25-30 ft lbs on the body bolts", "reading torque 25..30 ft_lbf body_bolting"],
    ["at least twenty five foot pounds on the bonnet bolts", "reading torque min 25 ft_lbf bonnet_bolting"],
    [
      "tightened the packing nut to sixty inch pounds",
      "work packing_nut tightened done",
      "reading torque 60 in_lbf packing_nut",
    ],
  ],
  "pressure, by what it is said with": [
    ["put 60 psi on it", "reading pressure 60 psi"],
    ["holding at sixty pounds", "reading upstream_pressure 60 psi", "test seat_leak pass"],
    ["no leak at sixty psi", "reading upstream_pressure 60 psi", "test seat_leak pass"],
    ["signal's at nine", "reading signal_pressure 9 psi"],
    ["signal three to fifteen psi", "reading signal_pressure 3..15 psi"],
    ["supply pressure is thirty five psi", "reading supply_pressure 35 psi"],
    ["upstream pressure one twenty psi", "reading upstream_pressure 120 psi"],
    ["downstream is forty", "reading downstream_pressure 40 psi"],
    ["inlet pressure 250 kPa", "reading upstream_pressure 250 kPa"],
    ["four and a half bar upstream", "reading upstream_pressure 4.5 bar"],
    ["ten inches of water on the signal", "reading signal_pressure 10 in_H2O"],
    ["about thirty psi upstream", "reading upstream_pressure about 30 psi"],
    ["no more than sixty psi upstream", "reading upstream_pressure max 60 psi"],
    ["strokes full at fifteen pounds", "reading signal_pressure 15 psi", "test stroke pass"],
  ],
  "leak rates": [
    [
      "three bubbles a minute at fifty pounds",
      "reading leak_rate 3 bubble/min",
      "reading upstream_pressure 50 psi",
      "test seat_leak null",
    ],
    ["five drops a minute at the packing", "reading leak_rate 5 drop/min packing", "test packing null"],
    ["two cc a minute", "reading leak_rate 2 mL/min", "test seat_leak null"],
    ["three bubbles a minute", "reading leak_rate 3 bubble/min", "test seat_leak null"],
  ],
  "lengths, travel, temperature, time, opening": [
    ["travel is three quarters of an inch", "reading travel 0.75 in"],
    ["travel 19 mm", "reading travel 19 mm"],
    ["stem diameter four ninety eight thousandths", "reading length 0.498 in stem"],
    ["spring free length four and a half inches", "reading length 4.5 in spring"],
    ["spring measures six and an eighth inches long", "reading length 6.125 in spring"],
    ["gap is ten thou", "reading length 0.01 in"],
    ["fluid temp is a hundred and twenty degrees", "reading temperature 120 degF"],
    ["line temp 60 degrees c", "reading temperature 60 degC"],
    ["took eight seconds to stroke", "reading duration 8 s", "test stroke null"],
    ["fifty percent open", "reading percent_open 50 %"],
  ],
  sizes: [
    ["two inch valve", "valve 2in"],
    ['2" LCV-213', "valve LCV-213 2in"],
    ["it's an inch and a half valve", "valve 1.5in"],
  ],
  "numbers about something else": [
    ["a hundred and two degrees today"],
    ["I weigh two hundred pounds"],
    ["twenty bucks says it rains"],
    ["it's ten miles to town"],
    ["back in five minutes"],
    ["he caught a six pound bass"],
  ],
  "a number alone waits for its unit": [
    ["bonnet bolts thirty"],
    ["bonnet bolts thirty / foot pounds", "reading torque 30 ft_lbf bonnet_bolting"],
  ],
};

for (const [about, rows] of Object.entries(TABLE))
  describe(about, () => {
    for (const [phrases, ...stands] of rows) test(phrases, () => expect(reads(phrases)).toEqual(stands));
  });
