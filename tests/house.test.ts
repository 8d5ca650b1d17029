import { execFileSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { dirname, join, normalize } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { RULE_ORDER } from "../core/consequences/rule.ts";
import { EXAMPLES } from "../core/consequences/rules/examples.ts";
import * as codes from "../core/shapes/codes.ts";
import { COMMAND_ROWS, HAZARD_ROWS } from "../core/vocabulary/alarms.ts";
import { CONDITION_ROWS } from "../core/vocabulary/conditions.ts";
import { ACTS_ROWS, EXTENT_ROWS, PLACE_ROWS, SERVICE_ROWS, SEVERITY_ROWS } from "../core/vocabulary/details.ts";
import { BOUND_ROWS, QUANTITY_ROWS, UNIT_ROWS } from "../core/vocabulary/measures.ts";
import { PART_ROWS } from "../core/vocabulary/parts.ts";
import { TEST_ROWS } from "../core/vocabulary/tests.ts";
import { WORK_ROWS } from "../core/vocabulary/work.ts";

/** What a machine can hold of how the house is built. */

const ROOT = fileURLToPath(new URL("..", import.meta.url));
const read = (path: string) => readFileSync(join(ROOT, path), "utf8");

/** Every file that is kept or is about to be: the working tree without what is ignored. */
const files = execFileSync("git", ["ls-files", "--cached", "--others", "--exclude-standard"], {
  cwd: ROOT,
  encoding: "utf8",
})
  .split("\n")
  .filter((path) => path && existsSync(join(ROOT, path)));
const sources = files.filter((path) => /\.(ts|tsx|mjs)$/.test(path));

interface Import {
  file: string;
  /** a room's file ("core/index.ts"), or a package's name ("zod", "node:fs") */
  of: string;
}

const IMPORT = /^(?:import|export)\s+(?:type\s+)?(?:[\w*{][^;"']*?\sfrom\s+)?"([^"\n]+)"|\bimport\("([^"\n]+)"\)/gm;
const imports: Import[] = sources.flatMap((file) =>
  [...read(file).matchAll(IMPORT)].map((found) => {
    const of = found[1] ?? found[2] ?? "";
    return { file, of: of.startsWith(".") ? normalize(join(dirname(file), of)) : of };
  }),
);

const room = (path: string) => path.split("/")[0] ?? "";
const between = (from: RegExp, to: RegExp, except: RegExp = /^$/) =>
  imports
    .filter(({ file, of }) => from.test(file) && to.test(of) && !except.test(file))
    .map(({ file, of }) => `${file} -> ${of}`);

describe("imports run one way", () => {
  it("are seen at all", () => {
    expect(imports.length).toBeGreaterThan(300);
    expect(between(/^server\//, /^core\//).length).toBeGreaterThan(20);
  });

  it("core imports itself, zod inside core/shapes, and one list of plain words", () => {
    const outside = imports.filter(({ file, of }) => room(file) === "core" && room(of) !== "core");
    const allowed = ({ file, of }: Import) =>
      (of === "zod" && file.startsWith("core/shapes/")) ||
      (of === "dale-chall" && file === "core/vocabulary/english.ts");
    expect(outside.filter((one) => !allowed(one))).toEqual([]);
  });

  it("core outside its shapes takes types alone from what brings zod along", () => {
    const wrong = sources
      .filter((file) => /^core\/(?!shapes\/)/.test(file))
      .flatMap((file) =>
        [
          ...read(file).matchAll(
            /^(?:import|export) (?!type\b)[^;]*?from "([^"]*shapes\/(?!codes\.ts|part-kinds\.ts|keepsake-bounds\.ts|review-reasons\.ts)[^"]+)"/gm,
          ),
        ]
          .filter(([line]) => !/\{\s*(type \w+,?\s*)+\}/.test(line))
          .map((found) => `${file} -> ${found[1]}`),
      );
    expect(wrong).toEqual([]);
  });

  it("in core they run from shapes over vocabulary and parse to the surface, never back", () => {
    expect(between(/^core\/shapes\//, /^core\/(?!shapes\/)/)).toEqual([]);
    expect(between(/^core\/vocabulary\//, /^core\/(parse|consequences|families|compute)\//)).toEqual([]);
    expect(between(/^core\/parse\//, /^core\/(consequences|families|compute)\//)).toEqual([]);
    expect(between(/^core\/(consequences|families|compute)\//, /^core\/(parse|vocabulary)\//)).toEqual([]);
    expect(between(/^core\/(compute|families)\//, /^core\/consequences\//)).toEqual([]);
  });

  it("server and web import core, never each other", () => {
    expect(between(/^server\//, /^web\//)).toEqual([]);
    expect(between(/^web\//, /^(server\/|node:)/, /^web\/vite\.config\.ts$/)).toEqual([]);
  });

  it("a component takes its hooks from the page's own, not from the library's", () => {
    const takers = imports.filter(({ file, of }) => room(file) === "web" && of === "hono/jsx/dom");
    expect(takers.map(({ file }) => file).sort()).toEqual(["web/main.tsx", "web/parts/hooks.ts"]);
  });

  it("nothing imports web, demo or tests but tests themselves, and demo itself", () => {
    expect(between(/^(core|server|demo)\//, /^web\//)).toEqual([]);
    expect(between(/^(core|server|web)\//, /^(demo|tests)\//)).toEqual([]);
    expect(between(/^demo\//, /^tests\//)).toEqual([]);
  });
});

describe("every rule has examples", () => {
  it.each(RULE_ORDER)("%s: one that it takes and one that it leaves alone", (rule) => {
    const own = EXAMPLES.filter((one) => one.rule === rule);
    expect(own.some((one) => one.gives.length > 0)).toBe(true);
    expect(own.some((one) => one.gives.length === 0)).toBe(true);
  });
});

describe("every code has a row of words", () => {
  const tables: [name: string, codes: readonly string[], rows: readonly { code: string }[]][] = [
    ["conditions", codes.CONDITIONS, CONDITION_ROWS],
    ["works", codes.WORKS, WORK_ROWS],
    ["parts", codes.PARTS, PART_ROWS],
    // "on the body" is read from the part's row: said behind another part it is a place
    ["places", codes.PLACES.filter((code) => code !== "body"), PLACE_ROWS],
    ["extents", codes.EXTENTS, EXTENT_ROWS],
    ["severities", codes.SEVERITIES, SEVERITY_ROWS],
    ["quantities", codes.QUANTITIES, QUANTITY_ROWS],
    ["units", codes.UNITS, UNIT_ROWS],
    ["bounds", codes.BOUNDS, BOUND_ROWS],
    ["tests", codes.TESTS, TEST_ROWS],
    ["hazards", codes.HAZARDS, HAZARD_ROWS],
    ["commands", codes.COMMANDS, COMMAND_ROWS],
    ["acts", codes.ACTS, ACTS_ROWS],
    ["services", codes.SERVICES, SERVICE_ROWS],
  ];

  it.each(tables)("%s", (_, wanted, rows) => {
    const given = rows.map((one) => one.code);
    expect(wanted.filter((code) => !given.includes(code))).toEqual([]);
    expect([...new Set(given)]).toEqual(given);
  });

  it("and no catalogue of codes is forgotten here", () => {
    // rules, grammar or nobody says these: statuses and entry types are made, leakage classes are set up
    const unsaid = [...codes.STATUSES, ...codes.ENTRY_TYPES, ...codes.LEAK_CLASSES];
    const covered = new Set<string>([...tables.flatMap(([, wanted]) => wanted), ...unsaid]);
    const catalogues = Object.values(codes).flat() as string[];
    expect(catalogues.length).toBeGreaterThan(200);
    expect(catalogues.filter((code) => !covered.has(code))).toEqual([]);
  });
});

describe("what is written down", () => {
  it("names every dependency in DEVELOPERS.md, pinned to one version", () => {
    const { dependencies, devDependencies } = JSON.parse(read("package.json")) as Record<
      string,
      Record<string, string>
    >;
    const guide = read("DEVELOPERS.md");
    for (const [name, version] of Object.entries({ ...dependencies, ...devDependencies })) {
      expect(guide, name).toContain(`\`${name}\``);
      expect(version, name).toMatch(/^\d+\.\d+\.\d+$/);
    }
  });

  it("names every setting and every command in the README", () => {
    const readme = read("README.md");
    const { scripts } = JSON.parse(read("package.json")) as { scripts: Record<string, string> };
    for (const command of Object.keys(scripts))
      expect(readme, command).toMatch(new RegExp(`npm (run (-s )?)?${command}\\b`));
    for (const [setting] of read("server/env.ts").matchAll(/\b[A-Z]+(?:_[A-Z]+)+\b|\bPORT\b|\bHOST\b/g)) {
      if (setting !== "SETTINGS_HELP") expect(readme, setting).toContain(`\`${setting}\``);
    }
  });

  it("has no picture or link in README or DEVELOPERS that leads nowhere", () => {
    for (const page of ["README.md", "DEVELOPERS.md"]) {
      const links = [...read(page).matchAll(/\]\((?!https?:|#)([^)#]+)/g)].map((found) => found[1] ?? "");
      expect(links.filter((path) => !existsSync(join(ROOT, path)))).toEqual([]);
    }
  });
});

/** Lines of speech are data, not code; so are weights, whose signs may spell anything. */
const DATA = /^core\/speech\/(said\/|(noise|next-word)\/weights\.ts$)/;

describe("every file", () => {
  it("of code can be read at one sitting: at most 400 lines", () => {
    const lines = (file: string) => read(file).split("\n").length - 1;
    const code = sources.filter((file) => !DATA.test(file));
    expect(code.filter((file) => lines(file) > 400)).toEqual([]);
  });

  it("is named in kebab-case, and no room is a drawer for odds and ends", () => {
    const name = /^[a-z0-9]+(?:-[a-z0-9]+)*(?:\.[a-z0-9]+)*$/;
    const kept = sources.filter((file) => !/^server\/db\/(pg-)?migrations\//.test(file));
    expect(kept.filter((file) => !file.split("/").every((piece) => name.test(piece)))).toEqual([]);
    expect(files.filter((file) => /(^|\/)(utils?|helpers?|common|managers?|misc)(\.|\/)/.test(file))).toEqual([]);
  });

  it("has nothing put off, and no test that is skipped or alone", () => {
    // put together here so that this file does not hold them itself
    const barred = ["TO" + "DO", "FIX" + "ME", "X" + "XX"].map((word) => new RegExp(`\\b${word}\\b`));
    const skipped = /\b(?:it|test|describe)\.(?:only|skip|todo)\b/;
    // the one place that skips by name, with its reason, where no browser is to be had
    const maySkip = new Set(["tests/web/chromium.ts"]);
    const wrong = sources
      .filter((file) => !DATA.test(file))
      .flatMap((file) => {
        const text = read(file);
        const words = barred.filter((word) => word.test(text)).map(String);
        return [...words, ...(skipped.test(text) && !maySkip.has(file) ? ["skips or singles out a test"] : [])].map(
          (what) => `${file}: ${what}`,
        );
      });
    expect(wrong).toEqual([]);
  });

  it("swallows no error: every catch has something in it", () => {
    const empty = /catch\s*(?:\([^)]*\))?\s*\{\s*\}|\.catch\(\(\)\s*=>\s*(?:\{\s*\}|undefined|null)\)/;
    expect(sources.filter((file) => empty.test(read(file)))).toEqual([]);
  });
});
