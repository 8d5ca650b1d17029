import type { Example } from "./example.ts";

export const MEASURE_EXAMPLES: readonly Example[] = [
  {
    rule: "reading",
    say: "bonnet bolts torqued to twenty eight foot pounds",
    gives: [{ type: "reading", quantity: "torque", value: 28, unit: "ft_lbf", part: "bonnet_bolting" }],
  },
  {
    rule: "reading",
    say: "bonnet bolts at forty pounds",
    gives: [{ type: "reading", quantity: "torque", value: 40, unit: "ft_lbf", part: "bonnet_bolting" }],
    why: "pounds on bolts are foot pounds",
  },
  {
    rule: "reading",
    say: "holding at sixty pounds",
    gives: [{ type: "reading", quantity: "upstream_pressure", value: 60, unit: "psi" }],
    why: "pounds said with a seat's verdict are psi before the seat",
  },
  {
    rule: "reading",
    say: "signal's three to fifteen pounds",
    gives: [{ type: "reading", quantity: "signal_pressure", value: 3, upper: 15, unit: "psi" }],
  },
  {
    rule: "reading",
    say: "gap is ten thou",
    gives: [{ type: "reading", quantity: "length", value: 0.01, unit: "in" }],
  },
  {
    rule: "reading",
    say: "at least twenty five foot pounds on the bonnet bolts",
    gives: [{ type: "reading", quantity: "torque", value: 25, unit: "ft_lbf", part: "bonnet_bolting", bound: "min" }],
  },
  {
    rule: "reading",
    say: "tested it at a hundred and fifty, no leaks",
    gives: [{ type: "reading", quantity: "upstream_pressure", value: 150, unit: "psi" }],
    why: "a bare number that something was tested at is a pressure",
  },
  {
    rule: "reading",
    say: "bubble tight at sixty",
    gives: [{ type: "reading", quantity: "upstream_pressure", value: 60, unit: "psi" }],
  },
  {
    rule: "reading",
    say: "bonnet bolts were loose, tightened them to thirty",
    gives: [{ type: "reading", quantity: "torque", value: 30, unit: "ft_lbf" }],
  },
  { not: "reading", say: "tested it at noon" },
  { not: "reading", say: "the game was tied at thirty" },
  { not: "reading", say: "bonnet bolts thirty", why: "thirty what? it is asked" },
  { not: "reading", say: "a hundred and two degrees today" },
  { not: "reading", say: "two inch valve", why: "the valve's size" },
  { not: "reading", say: "I weigh two hundred pounds" },

  {
    rule: "answer",
    say: ["bonnet bolts thirty", "foot pounds"],
    gives: [{ type: "reading", quantity: "torque", value: 30, unit: "ft_lbf", part: "bonnet_bolting" }],
  },
  { not: "answer", say: ["seat's worn", "yeah"], why: "nothing was asked" },

  { rule: "test", say: "no leak at sixty psi", gives: [{ type: "test", test: "seat_leak", result: "pass" }] },
  {
    rule: "test",
    say: "three bubbles a minute at fifty pounds",
    gives: [{ type: "test", test: "seat_leak", result: null }],
    why: "a measured leak is judged later",
  },
  { rule: "test", say: "only half travel", gives: [{ type: "test", test: "stroke", result: "fail" }] },
  { rule: "test", say: "packing failed the test", gives: [{ type: "test", test: "packing", result: "fail" }] },
  { not: "test", say: "packing leaking", why: "a leak at a part with no test said is a finding" },
  { not: "test", say: "passed my driving test" },

  {
    rule: "test",
    say: "three bubbles at fifty",
    gives: [{ type: "test", test: "seat_leak", result: null }],
    why: "counted without the time, they tell of a test and of no rate yet",
  },
  {
    rule: "answer",
    say: ["got two bubbles at 50", "yes"],
    gives: [{ type: "reading", quantity: "leak_rate", value: 2, unit: "bubble/min" }],
  },
  {
    rule: "answer",
    say: ["four drops at sixty pounds", "a minute"],
    gives: [{ type: "reading", quantity: "leak_rate", value: 4, unit: "drop/min" }],
  },
  { not: "test", say: "two bubbles at the packing", why: "of that part, and not of the seat" },
  { not: "test", say: "blew two bubbles with my gum" },
  { not: "answer", say: ["three bubbles at fifty", "yeah the coffee's on"] },

  {
    rule: "answer",
    say: ["thirty five on the bonnet bolts", "yes"],
    gives: [{ type: "reading", quantity: "torque", value: 35, unit: "ft_lbf", part: "bonnet_bolting" }],
    why: "a number of bolts without its unit is asked for",
  },
  {
    rule: "answer",
    say: ["put thirty on the body studs", "foot pounds"],
    gives: [{ type: "reading", quantity: "torque", value: 30, unit: "ft_lbf", part: "body_bolting" }],
  },

  {
    rule: "reading",
    say: "tested at fifty, tight",
    gives: [{ type: "reading", quantity: "upstream_pressure", value: 50, unit: "psi" }],
    why: "the verdict that makes a seat test of it tells the side as well",
  },
  {
    rule: "reading",
    say: "put eighty psi on it and it's holding",
    gives: [{ type: "reading", quantity: "upstream_pressure", value: 80, unit: "psi" }],
  },
  {
    rule: "reading",
    say: "tested it at 60, passed",
    gives: [{ type: "reading", quantity: "upstream_pressure", value: 60, unit: "psi" }],
  },

  { not: "test", say: "did it pass" },
  { rule: "test", say: "is it leaking by? no", gives: [{ type: "test", test: "seat_leak", result: "pass" }] },
  { not: "test", say: "that new fella can't hold a wrench" },
  { not: "reading", say: "is it at sixty psi" },

  {
    rule: "reading",
    say: "stroke time open six seconds, close four seconds",
    gives: [
      { type: "reading", quantity: "duration", value: 6, unit: "s" },
      { type: "reading", quantity: "duration", value: 4, unit: "s" },
    ],
  },
  { not: "valve", say: "stem is bent about a quarter inch", why: "how far, and no valve's size" },

  {
    rule: "reading",
    say: "a hole in the upper diaphragm about a quarter inch",
    gives: [{ type: "reading", quantity: "length", value: 0.25, unit: "in", bound: "about" }],
    why: "the hole's own length, and no valve's size",
  },
  {
    rule: "reading",
    say: "she's tight now at sixty pounds",
    gives: [{ type: "reading", quantity: "upstream_pressure", value: 60, unit: "psi" }],
  },
  {
    rule: "reading",
    say: "actuator held twenty psi for ten minutes",
    gives: [
      { type: "reading", quantity: "signal_pressure", value: 20, unit: "psi" },
      { type: "reading", quantity: "duration", value: 10, unit: "min" },
    ],
  },

  {
    rule: "test",
    say: "holds at fifty but leaks at a hundred",
    gives: [{ type: "test", test: "seat_leak", result: "fail" }],
    why: "the later tells how it stands",
  },
  {
    rule: "test",
    say: "passes ten bubbles a minute",
    gives: [{ type: "test", test: "seat_leak", result: null }],
  },
  {
    rule: "reading",
    say: "it wouldn't hold a hundred",
    gives: [{ type: "reading", quantity: "upstream_pressure", value: 100, unit: "psi" }],
  },

  {
    rule: "reading",
    say: "upstream's ten, twelve psi",
    gives: [{ type: "reading", quantity: "upstream_pressure", value: 10, unit: "psi", upper: 12 }],
    why: "a guess has two ends",
  },
  {
    rule: "reading",
    say: "torqued to thirty thirty five foot pounds",
    gives: [{ type: "reading", quantity: "torque", value: 30, unit: "ft_lbf", upper: 35 }],
  },
  {
    rule: "reading",
    say: "upstream's nineteen fifty psi",
    gives: [{ type: "reading", quantity: "upstream_pressure", value: 1950, unit: "psi" }],
  },

  {
    rule: "test",
    say: "body was pressure tested to four hundred and held for ten minutes",
    gives: [{ type: "test", test: "shell", result: "pass" }],
  },
  {
    rule: "test",
    say: "packing was tested to fifty psi and held",
    gives: [{ type: "test", test: "packing", result: "pass" }],
  },
  {
    rule: "test",
    say: "the seat passed four bubbles a minute",
    gives: [{ type: "test", test: "seat_leak", result: null }],
    why: "fluid, and no test",
  },
  {
    rule: "reading",
    say: "no bubbles were seen over a three minute period",
    gives: [{ type: "reading", quantity: "duration", value: 3, unit: "min" }],
    why: "how long, and no less than that",
  },
  { not: "finding_has", say: "leakage was about five cc a minute at a hundred psi", why: "the rate says it" },
];
