import fc from "fast-check";
import { dateOfDay, dayNumber } from "../../../core/compute/calendar.ts";
import {
  ACTS,
  BOUNDS,
  COMMANDS,
  CONDITIONS,
  EXTENTS,
  HAZARDS,
  LEAK_CLASSES,
  PARTS,
  PLACES,
  QUANTITIES,
  SERVICES,
  SEVERITIES,
  STATUSES,
  TESTS,
  UNITS,
  WORKS,
} from "../../../core/shapes/codes.ts";
import type { Entry } from "../../../core/shapes/entry.ts";
import type { Life, PastJob, Valve } from "../../../core/shapes/valve.ts";

/** Any job that fits the shapes, likely or not; seat and soft goods come up more often than chance would have it. */

const part = fc.oneof(
  { weight: 2, arbitrary: fc.constantFrom("seat", "diaphragm", "seals", "bonnet_gasket", "packing", "cage") },
  { weight: 1, arbitrary: fc.constantFrom(...PARTS) },
);
const count = fc.integer({ min: 1, max: 12 });
const figure = fc.oneof(
  fc.double({ min: 0, max: 400, noNaN: true, noDefaultInfinity: true }),
  fc.double({ noNaN: true, noDefaultInfinity: true }),
);
const positive = fc.oneof(
  fc.double({ min: 0.1, max: 40, noNaN: true }),
  fc.double({ min: Number.MIN_VALUE, max: Number.MAX_VALUE, noNaN: true, noDefaultInfinity: true }),
);

export const anyEntry: fc.Arbitrary<Entry> = fc.oneof(
  fc.record(
    {
      type: fc.constant("finding" as const),
      condition: fc.oneof(fc.constantFrom("worn", "ok", "cracked"), fc.constantFrom(...CONDITIONS)),
      part,
      extent: fc.constantFrom(...EXTENTS),
      severity: fc.constantFrom(...SEVERITIES),
      place: fc.constantFrom(...PLACES),
      count,
      absent: fc.constant(true as const),
      unsure: fc.constant(true as const),
      resolved: part,
    },
    { requiredKeys: ["type", "condition"] },
  ),
  fc.record(
    {
      type: fc.constant("work" as const),
      work: fc.oneof(fc.constantFrom("replaced", "flipped", "reused"), fc.constantFrom(...WORKS)),
      status: fc.oneof(fc.constant("done" as const), fc.constantFrom(...STATUSES)),
      part,
      count,
      unsure: fc.constant(true as const),
    },
    { requiredKeys: ["type", "work", "status"] },
  ),
  fc.record(
    {
      type: fc.constant("reading" as const),
      quantity: fc.oneof(fc.constantFrom("torque", "leak_rate", "upstream_pressure"), fc.constantFrom(...QUANTITIES)),
      value: figure,
      unit: fc.constantFrom(...UNITS),
      part,
      upper: figure,
      bound: fc.constantFrom(...BOUNDS),
    },
    { requiredKeys: ["type", "quantity", "value", "unit"] },
  ),
  fc.record({
    type: fc.constant("test" as const),
    test: fc.constantFrom(...TESTS),
    result: fc.constantFrom("pass" as const, "fail" as const, null),
  }),
  fc.record(
    {
      type: fc.constant("valve" as const),
      size_in: positive,
      acts: fc.constantFrom(...ACTS),
      service: fc.constantFrom(...SERVICES),
    },
    { requiredKeys: ["type"] },
  ),
  fc.record({ type: fc.constant("need" as const), part, count }, { requiredKeys: ["type", "part"] }),
  fc.record({ type: fc.constant("hazard" as const), hazard: fc.constantFrom(...HAZARDS) }),
  fc.record({ type: fc.constant("note" as const), text: fc.string() }),
  fc.record({ type: fc.constant("command" as const), command: fc.constantFrom(...COMMANDS) }),
) as fc.Arbitrary<Entry>;

const first = dayNumber("2024-01-01");
export const anyDate = fc.oneof(
  { weight: 6, arbitrary: fc.integer({ min: first, max: first + 800 }).map(dateOfDay) },
  { weight: 1, arbitrary: fc.constantFrom("0000-01-01", "9999-12-31", "2024-02-29") },
);
export const anyEntries = fc.array(anyEntry, { maxLength: 8 });
export const anyHistory: fc.Arbitrary<PastJob[]> = fc.array(fc.record({ on: anyDate, entries: anyEntries }), {
  maxLength: 8,
});
export const anyValve: fc.Arbitrary<Valve> = fc.record(
  {
    family: fc.constantFrom("balanced_dump", "globe_control", "", "unheard_of"),
    size_in: positive,
    acts: fc.constantFrom(...ACTS),
    service: fc.constantFrom(...SERVICES),
    leak_class: fc.constantFrom(...LEAK_CLASSES),
    port_in: positive,
    rated_dp_psi: positive,
    cv: positive,
    xT: fc.double({ min: Number.MIN_VALUE, max: 1, noNaN: true }),
    interval_months: positive,
  },
  { requiredKeys: [] },
);
const months = fc.oneof(
  fc.double({ min: 0, max: 24, noNaN: true }),
  fc.double({ min: 0, noNaN: true, noDefaultInfinity: true }),
);
export const anyFleet: fc.Arbitrary<Life[]> = fc.array(
  fc.oneof(
    fc.record({ lower: months }),
    fc.tuple(months, months).map(([a, b]) => ({ lower: Math.min(a, b), upper: Math.max(a, b) || 1 })),
    fc.record({ lower: months, upper: positive }),
  ),
  { maxLength: 12 },
);
