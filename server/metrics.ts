/** Counters, gauges and one histogram in the OpenMetrics text format 1.0. Every family that is ever shown stands here. */
const FAMILIES = {
  handsfull_requests: ["counter", "Requests answered, by method, route and status."],
  handsfull_phrases: ["counter", "Phrases received, by what became of them."],
  handsfull_keepsakes: ["counter", "Clips and photographs received, by kind and what became of them."],
  handsfull_turned_away: ["counter", "Requests turned away for now, by why."],
  handsfull_request_seconds: ["histogram", "Time to answer a request, by route."],
  handsfull_requests_open: ["gauge", "Requests being answered."],
  handsfull_commits: ["counter", "Transactions committed."],
  handsfull_writes: ["counter", "Writes in them."],
  handsfull_writes_waiting: ["gauge", "Writes waiting for their transaction."],
  handsfull_outbox_waiting: ["gauge", "Reports that wait to be mailed."],
  handsfull_store_bytes: ["gauge", "Bytes of the database on the disk, with its log."],
  handsfull_uptime_seconds: ["gauge", "Time since the start."],
  handsfull_memory_bytes: ["gauge", "Memory in use."],
} as const;
type Family = keyof typeof FAMILIES;
export type Counter = "handsfull_requests" | "handsfull_phrases" | "handsfull_keepsakes" | "handsfull_turned_away";
/** What is asked for when somebody looks. */
export type Looked = Exclude<Family, Counter | "handsfull_request_seconds">;

export interface Metrics {
  count(name: Counter, labels: Record<string, string>, by?: number): void;
  /** a request at a route that took so many seconds */
  took(route: string, seconds: number): void;
  text(now: Partial<Record<Looked, number>>): string;
}

/** Half the answers come within a few milliseconds; a phrase should be stored within 0.05. */
const BOUNDS = [0.0025, 0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 5, 10];

export function makeMetrics(): Metrics {
  const counts = new Map<Counter, Map<string, number>>();
  const times = new Map<string, { within: number[]; sum: number; total: number }>();
  const metrics: Metrics = {
    count(name, labels, by = 1) {
      const of = counts.get(name) ?? new Map<string, number>();
      const key = written(labels);
      of.set(key, (of.get(key) ?? 0) + by);
      counts.set(name, of);
    },
    took(route, seconds) {
      const of = times.get(route) ?? { within: BOUNDS.map(() => 0), sum: 0, total: 0 };
      of.sum += seconds;
      of.total++;
      BOUNDS.forEach((bound, at) => {
        if (seconds <= bound) of.within[at] = (of.within[at] ?? 0) + 1;
      });
      times.set(route, of);
    },
    text(now) {
      const lines: string[] = [];
      for (const [name, [type, help]] of Object.entries(FAMILIES) as [Family, (typeof FAMILIES)[Family]][]) {
        lines.push(`# TYPE ${name} ${type}`);
        const unit = /_(seconds|bytes)$/.exec(name)?.[1];
        if (unit) lines.push(`# UNIT ${name} ${unit}`);
        lines.push(`# HELP ${name} ${help}`);
        const end = type === "counter" ? "_total" : "";
        const value = now[name as Looked];
        if (value !== undefined) lines.push(`${name}${end} ${value}`);
        for (const [key, sum] of counts.get(name as Counter) ?? []) lines.push(`${name}${end}{${key}} ${sum}`);
        if (type === "histogram")
          for (const [route, of] of times) lines.push(...histogram(name, written({ route }), of));
      }
      return `${lines.join("\n")}\n# EOF\n`;
    },
  };
  // a count that nothing was added to yet is 0 and not missing: what watches it can tell the two apart
  for (const became of ["stored", "known", "refused"]) metrics.count("handsfull_phrases", { became }, 0);
  return metrics;
}

function histogram(name: string, of: string, { within, sum, total }: { within: number[]; sum: number; total: number }) {
  return [
    ...BOUNDS.map((bound, at) => `${name}_bucket{${of},le="${asFloat(bound)}"} ${within[at]}`),
    `${name}_bucket{${of},le="+Inf"} ${total}`,
    `${name}_count{${of}} ${total}`,
    `${name}_sum{${of}} ${sum}`,
  ];
}

const asFloat = (value: number) => (Number.isInteger(value) ? `${value}.0` : String(value));

function written(labels: Record<string, string>): string {
  const escaped = (text: string) => text.replaceAll("\\", "\\\\").replaceAll('"', '\\"').replaceAll("\n", "\\n");
  return Object.entries(labels)
    .map(([label, value]) => `${label}="${escaped(value)}"`)
    .join(",");
}
