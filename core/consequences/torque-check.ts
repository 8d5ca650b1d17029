import { atLeast, atMost, convert } from "../compute/convert.ts";
import type { Check } from "../shapes/consequence.ts";
import type { Reading } from "../shapes/entry.ts";
import type { Bench } from "./rule.ts";
import { spoken } from "./words.ts";

/**
 * A torque reading against the family's limit for its part and size, judged in the unit spoken.
 * Limits are inclusive; of a range, both ends must lie within.
 */
export function judgeTorque(
  reading: Reading,
  { family, valve }: Pick<Bench, "family" | "valve">,
): Extract<Check, { check: "torque" }> {
  const { value, unit, upper, part } = reading;
  const said = {
    check: "torque",
    ...(part === undefined ? {} : { part }),
    value,
    unit,
    ...(upper === undefined ? {} : { upper }),
  } as const;
  const none = (note: string) => ({ ...said, verdict: "no_limit", source: family.source, note }) as const;
  if (part === undefined) return none("no part was said");
  const size = valve.size_in;
  const lines = family.torque.filter((line) => line.part === part || line.part === reading.resolved);
  if (lines.length === 0) return none(`no limit for ${spoken(part)} in ${family.name}`);
  if (size === undefined) return none("the valve's size is not known");
  const limit = lines.find((line) => size >= line.size_in[0] && size <= line.size_in[1]);
  if (!limit) return none(`no limit for ${spoken(part)} at ${size} inch in ${family.name}`);
  const min = convert(limit.min, limit.unit, unit);
  const max = convert(limit.max, limit.unit, unit);
  if (typeof min !== "number") return none(min.why);
  if (typeof max !== "number") return none(max.why);
  const least = Math.min(value, upper ?? value);
  const most = Math.max(value, upper ?? value);
  const verdict = !atLeast(least, min) ? "below" : !atMost(most, max) ? "above" : "within";
  return { ...said, verdict, min, max, margin: Math.min(least - min, max - most), source: limit.source };
}
