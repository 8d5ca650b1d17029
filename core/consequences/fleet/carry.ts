import { addDays, later } from "../../compute/calendar.ts";
import { poissonCovering } from "../../compute/poisson.ts";
import type { Part } from "../../shapes/codes.ts";
import type { CarryLine, CarryList } from "../../shapes/fleet.ts";
import type { Family } from "../../shapes/valve.ts";
import { isSoft } from "../parts.ts";
import type { Bench } from "../rule.ts";
import { spoken } from "../words.ts";
import { bestKit, explode, isSet, type PartCount, softGoods } from "./explode.ts";
import { findsOf } from "./finds.ts";
import { benchOf, type RecordedValve } from "./recorded.ts";
import { type SeatRecord, seatOdds, seatRecord } from "./seat-odds.ts";
import { type Stock, takeStock } from "./stock.ts";

const CONFIDENCE = 0.95;
const SOURCE =
  "open follow-ups, orders and seal replacements due count as certain; the rest is likely: Poisson, enough 19 times in 20 (common practice for spares, no source)";

interface Laid {
  from: RecordedValve;
  bench: Bench;
}
interface Line extends PartCount {
  family: Family;
  size_in: number | undefined;
  likely: number;
  tags: Set<string>;
  reasons: string[];
}

/**
 * What to take along for the work that is due within `days` of `today`, overdue work included: by part, family and
 * size, what is needed for certain, what is to be expected, and how many are enough with 95 %.
 */
export function carryList(
  valves: readonly RecordedValve[],
  {
    today,
    days,
    stock = {},
    standing = false,
    families = [],
    site,
  }: {
    today: string;
    days: number;
    stock?: Stock;
    /** the stock is the site's whole store: what of it is not needed is not told */
    standing?: boolean;
    families?: readonly Family[];
    site?: string;
  },
): CarryList {
  const until = addDays(today, days);
  const laid = valves.flatMap((from): Laid[] => {
    const bench = benchOf(from, today, families);
    return bench ? [{ from, bench }] : [];
  });
  const lines = new Map<string, Line>();
  const kits = new Map<string, CarryList["kits"][number]>();
  const records = new Map<string, { seats: SeatRecord; finds: Map<Part, number>; jobs: number }>();
  const recordOf = (family: string) => {
    const known = records.get(family);
    if (known) return known;
    const alike = laid.filter((one) => one.bench.family.family === family).map((one) => one.bench);
    const made = { seats: seatRecord(alike), ...findsOf(alike) };
    records.set(family, made);
    return made;
  };

  let visits = 0;
  for (const { from, bench } of laid) {
    const { family, valve } = bench;
    const seat = from.due.find((one) => one.task === "seat_inspection" && one.on <= until);
    const seals = from.due.find((one) => one.task === "seal_replacement" && one.on <= until);
    const owed = owedParts(from, seat !== undefined, family);
    if (!seat && !seals && owed.length === 0) continue;
    visits += 1;
    const at = (part: Part): Line => lineFor(lines, part, family, valve.size_in);

    // The same gasket for an open fault and for the seals is one gasket.
    const certain = new Map<Part, number>(owed.map(({ part, count }) => [part, count]));
    const soft = seals ? softGoods(family) : [];
    for (const { part, count } of soft) certain.set(part, Math.max(count, certain.get(part) ?? 0));
    for (const [part, count] of certain) {
      const line = at(part);
      line.count += count;
      line.tags.add(from.tag);
    }
    if (seals) countKit(kits, soft, family, valve.size_in);

    const record = recordOf(family.family);
    if (seat && !certain.has("seat") && takesSeat(bench)) {
      const odds = seatOdds(bench, record.seats, later(seat.on, today));
      const line = at("seat");
      line.likely += odds.chance;
      line.reasons.push(odds.from);
    }
    for (const [part, found] of record.finds) {
      if (certain.has(part) || part === "seat") continue;
      if (seals && isSoft(part, family)) continue;
      const line = at(part);
      line.likely += found / record.jobs;
      line.reasons.push(
        `replaced ${found === 1 ? "once" : `${found} times`} in ${record.jobs === 1 ? "1 job" : `${record.jobs} jobs`} on like valves`,
      );
    }
  }

  const made = [...lines.values()].map(told).filter((one) => one.carry > 0 || one.expected >= 0.05);
  const { unclear, given } = takeStock(stock, made, standing);
  return {
    ...(site === undefined ? {} : { site }),
    today,
    days,
    confidence: CONFIDENCE,
    visits,
    lines: made
      .map((line, index): CarryLine => {
        const onHand = given.get(index);
        return onHand === undefined ? line : { ...line, onHand, short: Math.max(0, line.carry - onHand) };
      })
      .sort((a, b) => b.certain - a.certain || b.expected - a.expected || (a.part < b.part ? -1 : 1)),
    kits: [...kits.values()],
    unclear,
    source: SOURCE,
  };
}

/** Parts that open follow-ups will take: those for now, and those for the next inspection where that falls in time. */
function owedParts(from: RecordedValve, inspected: boolean, family: Family): PartCount[] {
  const most = new Map<Part, number>();
  for (const one of from.open) {
    if ((one.do !== "replace" && one.do !== "order") || one.part === undefined) continue;
    if (one.when !== "now" && !inspected) continue;
    most.set(one.part, Math.max(one.count ?? 1, most.get(one.part) ?? 0));
  }
  // A part named, and held by a set named too, is needed once.
  const sets = explode(
    [...most].filter(([part]) => isSet(part)).map(([part, count]) => ({ part, count })),
    family,
  );
  const single = new Map([...most].filter(([part]) => !isSet(part)));
  for (const { part, count } of sets) single.set(part, Math.max(count, single.get(part) ?? 0));
  return [...single].map(([part, count]) => ({ part, count }));
}

/** A worn first side is turned over; only a side after it, or a seat that does not reverse, takes a new seat. */
function takesSeat({ family, seat, visits }: Bench): boolean {
  if (!family.reversible_seat) return true;
  const before = seat.flipsBefore[visits.length - 1] ?? 0;
  const today = visits[visits.length - 1]?.entries ?? [];
  const flipped = today.some((entry) => entry.type === "work" && entry.work === "flipped" && entry.status === "done");
  const fitted = today.some((entry) => entry.type === "work" && entry.work === "replaced" && entry.part === "seat");
  return fitted ? flipped : before > 0 || flipped;
}

function lineFor(lines: Map<string, Line>, part: Part, family: Family, size_in: number | undefined): Line {
  const key = `${part}/${family.family}/${size_in ?? ""}`;
  const known = lines.get(key);
  if (known) return known;
  const made: Line = { part, family, size_in, count: 0, likely: 0, tags: new Set(), reasons: [] };
  lines.set(key, made);
  return made;
}

function countKit(
  kits: Map<string, CarryList["kits"][number]>,
  soft: readonly PartCount[],
  family: Family,
  size_in: number | undefined,
): void {
  const kit = bestKit(soft, family);
  if (!kit) return;
  const key = `${family.family}/${size_in ?? ""}`;
  const lacks = kit.lacks.map(({ part, count }) => `${count} × ${spoken(part)}`).join(", ");
  const known = kits.get(key);
  kits.set(key, {
    family: family.family,
    ...(size_in === undefined ? {} : { size_in }),
    kit: kit.name,
    count: (known?.count ?? 0) + 1,
    why: `holds the soft goods of one ${family.name}${lacks ? `, but for ${lacks} each` : ""}`,
  });
}

/** "none covers it": how many more are enough. */
function covering(extra: number): string {
  return extra === 0 ? "none more is enough" : extra === 1 ? "1 more is enough" : `${extra} more are enough`;
}

function told({ part, family, size_in, count, likely, tags, reasons }: Line): CarryLine {
  const extra = poissonCovering(likely, CONFIDENCE);
  const named = [...tags];
  const some = named.length > 4 ? `${named.slice(0, 4).join(", ")} and ${named.length - 4} more` : named.join(", ");
  const why = [
    count > 0 ? `${count} for certain (${some})` : "none for certain",
    likely > 0
      ? `${figure(likely)} more to be expected (${mostGiven(reasons)}), ${covering(extra)} 19 times in 20`
      : "",
  ];
  return {
    part,
    family: family.family,
    ...(size_in === undefined ? {} : { size_in }),
    certain: count,
    expected: count + likely,
    carry: count + extra,
    tags: named,
    why: why.filter(Boolean).join("; "),
  };
}

/** The reason that most of its valves share. */
function mostGiven(reasons: readonly string[]): string {
  const counts = new Map<string, number>();
  for (const one of reasons) counts.set(one, (counts.get(one) ?? 0) + 1);
  return [...counts].sort((a, b) => b[1] - a[1])[0]?.[0] ?? "";
}

function figure(value: number): string {
  return String(Number(value.toPrecision(2)));
}
