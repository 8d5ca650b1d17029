/** Counters and gauges in the open text format. */
export interface Metrics {
  count(name: string, labels?: Record<string, string>, by?: number): void;
  /** a request that took so many seconds */
  took(seconds: number): void;
  text(gauges: Record<string, number>): string;
}

const HELP: Record<string, string> = {
  handsfull_requests: "Requests answered, by method and status.",
  handsfull_phrases: "Phrases received, by what became of them.",
  handsfull_keepsakes: "Clips and photographs received, by kind and what became of them.",
};
const BOUNDS = [0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 5];

export function makeMetrics(): Metrics {
  const counts = new Map<string, Map<string, number>>();
  const buckets = BOUNDS.map(() => 0);
  let sum = 0;
  let total = 0;
  return {
    count(name, labels = {}, by = 1) {
      const key = Object.entries(labels)
        .map(([label, value]) => `${label}="${value.replace(/[\\"\n]/g, "_")}"`)
        .join(",");
      const of = counts.get(name) ?? new Map<string, number>();
      of.set(key, (of.get(key) ?? 0) + by);
      counts.set(name, of);
    },
    took(seconds) {
      sum += seconds;
      total++;
      BOUNDS.forEach((bound, at) => {
        if (seconds <= bound) buckets[at] = (buckets[at] ?? 0) + 1;
      });
    },
    text(gauges) {
      const lines: string[] = [];
      for (const [name, of] of counts) {
        lines.push(`# TYPE ${name} counter`, `# HELP ${name} ${HELP[name] ?? name}`);
        for (const [key, value] of of) lines.push(`${name}_total${key ? `{${key}}` : ""} ${value}`);
      }
      const seconds = "handsfull_request_seconds";
      lines.push(
        `# TYPE ${seconds} histogram`,
        `# UNIT ${seconds} seconds`,
        `# HELP ${seconds} Time to answer a request.`,
      );
      BOUNDS.forEach((bound, at) => {
        lines.push(`${seconds}_bucket{le="${bound}"} ${buckets[at]}`);
      });
      lines.push(`${seconds}_bucket{le="+Inf"} ${total}`, `${seconds}_count ${total}`, `${seconds}_sum ${sum}`);
      for (const [name, value] of Object.entries(gauges)) lines.push(`# TYPE ${name} gauge`, `${name} ${value}`);
      return `${lines.join("\n")}\n# EOF\n`;
    },
  };
}
