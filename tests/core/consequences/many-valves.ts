import { addDays } from "../../../core/compute/calendar.ts";
import { found, job, tested, worked } from "../../../core/consequences/example.ts";
import type { Entry } from "../../../core/shapes/entry.ts";
import type { PastJob, Valve } from "../../../core/shapes/valve.ts";

export interface Recorded {
  valve: Valve;
  history: PastJob[];
  /** the day to reckon from: that of the next job */
  on: string;
}

/** Invented valves with `jobs` inspections each: seats that wear and are flipped or replaced, now and then a scored part. */
export function manyValves(count: number, jobs = 20): Recorded[] {
  let seed = 1;
  const chance = (): number => {
    seed = (seed * 1103515245 + 12345) % 2147483648;
    return seed / 2147483648;
  };
  const others = ["stem", "plug", "cage", "upper_diaphragm", "lower_diaphragm", "bonnet_gasket", "stem_guide"] as const;
  return Array.from({ length: count }, (_, at): Recorded => {
    const history: PastJob[] = [];
    let on = "2018-01-05";
    let age = 0;
    let life = 3 + chance() * 6;
    let flipped = true;
    for (let k = 0; k < jobs; k++) {
      const entries: Entry[] = others.map((part) => found(part, chance() < 0.03 ? "scored" : "ok"));
      if (k === 0 || age > life) {
        entries.push(found("seat", "worn", { extent: "one_side" }), worked(flipped ? "replaced" : "flipped", "seat"));
        flipped = !flipped;
        age = 0;
        life = 3 + chance() * 6;
      } else entries.push(found("seat", "ok"));
      entries.push(tested("seat_leak", "pass"), tested("stroke", "pass"));
      history.push(job(on, ...entries));
      const days = 20 + Math.floor(chance() * 60);
      on = addDays(on, days);
      age += days / 30.4375;
    }
    const service = at % 2 === 0 ? "normal" : "severe";
    return { valve: { tag: `INV-${at}`, family: "balanced_dump", size_in: 2, service }, history, on };
  });
}
