import { describe, expect, it } from "vitest";
import { glossary, helpPage, listen, nameOf, readPhrase, startListening } from "../../../core/index.ts";
import * as codes from "../../../core/shapes/codes.ts";

const ALL: Record<string, readonly string[]> = {
  part: codes.PARTS,
  condition: codes.CONDITIONS,
  work: codes.WORKS,
  test: codes.TESTS,
  hazard: codes.HAZARDS,
  command: codes.COMMANDS,
  quantity: codes.QUANTITIES,
  unit: codes.UNITS,
  bound: codes.BOUNDS,
  extent: codes.EXTENTS,
  severity: codes.SEVERITIES,
  acts: codes.ACTS,
  service: codes.SERVICES,
};

describe("names", () => {
  it("of a code are those of its row", () => {
    expect(nameOf("cage_o_ring")).toBe("cage O-ring");
    expect(nameOf("ok")).toBe("good");
    expect(nameOf("in_H2O")).toBe("in H2O");
    expect(nameOf("cross_threaded")).toBe("cross-threaded");
  });

  it("of a code in two tables go by its kind, and by the first table without one", () => {
    expect([nameOf("packing"), nameOf("packing", "test")]).toEqual(["packing", "packing test"]);
    expect([nameOf("missing"), nameOf("missing", "command")]).toEqual(["missing", "what is left"]);
    expect([nameOf("min", "unit"), nameOf("min", "bound")]).toEqual(["min", "at least"]);
    expect([nameOf("severe", "severity"), nameOf("severe", "service")]).toEqual(["severe", "severe service"]);
  });

  it("of a place that is a part have the part's row", () => expect(nameOf("body", "place")).toBe("body"));
});

describe("the glossary", () => {
  const lines = glossary();

  it.each(Object.keys(ALL))("has every %s there is, once", (kind) => {
    const listed = lines.filter((line) => line.kind === kind).map((line) => line.code);
    expect([...listed].sort()).toEqual([...(ALL[kind] ?? [])].sort());
  });

  it("goes by name and reads as words", () => {
    const names = lines.map((line) => line.name.toLowerCase());
    expect(names).toEqual([...names].sort());
    for (const line of lines) expect(line.name).not.toMatch(/_/);
  });

  it("carries the failure mechanism where the row has one and leaves the key out where not", () => {
    const worn = lines.find((line) => line.code === "worn");
    expect(worn).toMatchObject({ name: "worn", help: "material gone from use", iso: "2.4" });
    expect(lines.find((line) => line.code === "galled")).not.toHaveProperty("iso");
  });

  it("shows at most four sayings, none of the notation, none of it only misheard", () => {
    for (const { says } of lines) {
      expect(says.length).toBeLessThanOrEqual(4);
      for (const said of says) expect(said).toMatch(/^[a-zA-Z0-9%' ]+$/);
      expect(says).not.toContain("clothes it out");
    }
  });

  it("shows sayings that the reader takes for what they stand under", () => {
    const missed: string[] = [];
    for (const { kind, code, says } of lines)
      for (const said of says) {
        const entries = readPhrase(kind === "part" ? `replaced the ${said}` : said).entries;
        const ok =
          kind === "part"
            ? entries.some((entry) => "part" in entry && entry.part === code)
            : kind === "hazard"
              ? entries.some((entry) => entry.type === "hazard" && entry.hazard === code)
              : kind === "command"
                ? entries.some((entry) => entry.type === "command" && entry.command === code)
                : true;
        if (!ok) missed.push(`${kind} ${code}: ${said}`);
      }
    expect(missed).toEqual([]);
  });
});

describe("the help page", () => {
  const parts = helpPage();

  it("holds every word of the glossary under some head", () => {
    const words = parts.flatMap((part) => part.words);
    expect(words.map((word) => `${word.kind} ${word.code}`).sort()).toEqual(
      glossary()
        .map((word) => `${word.kind} ${word.code}`)
        .sort(),
    );
  });

  it.each(parts.flatMap((part) => part.say.map((say) => [part.head, say] as const)))("%s: %s", (_head, say) => {
    // an amendment needs something of its kind before it
    const readings = ["upper diaphragm torn", "torqued to twenty eight"].map((before) =>
      readPhrase(say, listen(startListening(), before)),
    );
    const whole = readings.filter(
      ({ unread, entries, touched }) => unread.length === 0 && entries.length + touched.length > 0,
    );
    expect(whole.length).toBeGreaterThan(0);
  });
});
