/** Reads the OpenMetrics text format 1.0 as its specification has it, and says what is against it. */
export interface Exposition {
  problems: string[];
  samples: Map<string, number>;
}

const META = /^# (TYPE|UNIT|HELP) ([a-zA-Z_:][\w:]*) (.+)$/;
const SAMPLE =
  /^([a-zA-Z_:][\w:]*)(\{(?:[a-zA-Z_]\w*="(?:[^"\\\n]|\\[\\"n])*",?)*\})? (-?\d+(?:\.\d+)?(?:e[+-]?\d+)?)$/i;
const ENDS: Record<string, string[]> = {
  counter: ["_total"],
  gauge: [""],
  histogram: ["_bucket", "_count", "_sum"],
};

export function readOpenMetrics(text: string): Exposition {
  const problems: string[] = [];
  const samples = new Map<string, number>();
  const types = new Map<string, string>();
  let family = "";
  if (!text.endsWith("\n# EOF\n")) problems.push("it does not end with # EOF");
  for (const line of text.slice(0, -"# EOF\n".length).split("\n").slice(0, -1)) {
    const meta = META.exec(line);
    if (meta) {
      const [, what, name = "", said = ""] = meta;
      if (what === "TYPE") {
        if (types.has(name)) problems.push(`${name} comes twice`);
        types.set(name, said);
        family = name;
      } else if (name !== family) problems.push(`${what} of ${name} stands among ${family}`);
      if (what === "UNIT" && !name.endsWith(`_${said}`)) problems.push(`${name} does not end with its unit ${said}`);
      continue;
    }
    const [, name = "", labels = "", value] = SAMPLE.exec(line) ?? [];
    if (value === undefined) problems.push(`no sample: ${line}`);
    const ends = ENDS[types.get(family) ?? ""] ?? [];
    if (!ends.some((end) => name === family + end)) problems.push(`${name} stands among ${family}`);
    if (samples.has(name + labels)) problems.push(`${name}${labels} comes twice`);
    samples.set(name + labels, Number(value));
  }
  for (const [name, count] of samples) {
    const found = /^(\w+)_count(\{.*)\}$/.exec(name);
    if (!found) continue;
    const [, of, labels] = found;
    const buckets = [...samples].filter(([key]) => key.startsWith(`${of}_bucket${labels},le=`)).map(([, n]) => n);
    if (buckets.some((n, at) => n < (buckets[at - 1] ?? 0))) problems.push(`${name}: buckets fall`);
    if (buckets.at(-1) !== count) problems.push(`${name}: its last bucket is not its count`);
  }
  return { problems, samples };
}
