import type { Entry, Part } from "../../../core/index.ts";

/** A valve's past as points to draw. Pure. */

export type Kind = "inspected" | "worn" | "flipped" | "replaced" | "failed" | "hazard";
export type Lane = "seat" | "seals" | "other";
export interface Point {
  on: string;
  job: string;
  lane: Lane;
  kind: Kind;
  /** how many entries of that day it stands for */
  count: number;
}

const SEAT: ReadonlySet<string> = new Set<Part>(["seat", "seat_area"]);
const SEALS = /diaphragm$|gasket$|o_ring$|^seals$|^kit$|^packing$|^backup_ring$/;
/** What is drawn where a lane has several kinds on one day: the one that changes most. */
const WEIGHT: Kind[] = ["inspected", "worn", "flipped", "replaced", "failed", "hazard"];

/** One point a lane and job: the weightiest thing that happened there. */
export function timelinePoints(history: readonly { job: string; on: string; entries: readonly Entry[] }[]): Point[] {
  const points: Point[] = [];
  for (const job of history) {
    for (const lane of ["seat", "seals", "other"] as const) {
      const kinds = job.entries.flatMap((entry) => (laneOf(entry) === lane ? (kindOf(entry) ?? []) : []));
      if (!kinds.length) continue;
      const kind = kinds.reduce((a, b) => (WEIGHT.indexOf(b) > WEIGHT.indexOf(a) ? b : a));
      points.push({ on: job.on, job: job.job, lane, kind, count: kinds.length });
    }
  }
  return points;
}

function laneOf(entry: Entry): Lane {
  if (entry.type === "test") return entry.test === "seat_leak" ? "seat" : "other";
  const part = "part" in entry ? entry.part : undefined;
  if (!part) return "other";
  return SEAT.has(part) ? "seat" : SEALS.test(part) ? "seals" : "other";
}

function kindOf(entry: Entry): Kind | undefined {
  switch (entry.type) {
    case "hazard":
      return "hazard";
    case "test":
      return entry.result === "fail" ? "failed" : entry.result === "pass" ? "inspected" : undefined;
    case "finding":
      return entry.absent || entry.condition === "ok" || entry.condition === "intact" ? "inspected" : "worn";
    case "work":
      if (entry.status !== "done") return undefined;
      if (entry.work === "flipped") return "flipped";
      return entry.work === "replaced" || entry.work === "installed" ? "replaced" : "inspected";
    default:
      return undefined;
  }
}

/** Days since 1970-01-01, to place a date on a line. */
export function dayNumber(date: string): number {
  return Math.floor(Date.parse(`${date}T00:00:00Z`) / 86_400_000);
}

/** First days of months between two days, thinned so that at most `most` remain. */
export function monthTicks(from: number, to: number, most: number): { day: number; label: string }[] {
  const months = Math.max(1, Math.ceil((to - from) / 30.4375 / most));
  const step = [1, 2, 3, 6, 12, 24, 60].find((one) => one >= months) ?? 120;
  const start = new Date(from * 86_400_000);
  const ticks: { day: number; label: string }[] = [];
  let month = start.getUTCFullYear() * 12 + start.getUTCMonth();
  month += (step - (month % step)) % step;
  for (; ; month += step) {
    const day = Math.floor(Date.UTC(Math.floor(month / 12), month % 12, 1) / 86_400_000);
    if (day > to) return ticks;
    if (day >= from) ticks.push({ day, label: `${NAMES[month % 12]} ${String(Math.floor(month / 12)).slice(2)}` });
  }
}
const NAMES = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];
