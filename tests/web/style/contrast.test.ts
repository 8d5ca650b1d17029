import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";

/** Contrast ratio of WCAG 2.2 (relative luminance, then (L1 + 0.05) / (L2 + 0.05)). */
function contrast(a: string, b: string): number {
  const luminance = (colour: string) => {
    const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
      const part = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
      return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  };
  const [dark = 0, light = 0] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (light + 0.05) / (dark + 0.05);
}

const css = readFileSync(new URL("../../../web/style/tokens.css", import.meta.url), "utf8");
const pairs = [...css.matchAll(/--([\w-]+): light-dark\((#[0-9a-f]{6}), (#[0-9a-f]{6})\);/g)];
const theme = (at: 2 | 3): Record<string, string | undefined> =>
  Object.fromEntries(pairs.map((found) => [found[1], found[at]]));
const THEMES = { day: theme(2), dark: theme(3) };

/** Text on ground; 4.5 is AA for text, and what is read in sun is held to AAA's 7. */
const PAIRS: [string, string, number][] = [
  ["ink", "paper", 7],
  ["ink", "steel", 7],
  ["ink-2", "paper", 7],
  ["ink-2", "steel", 7],
  ["on-enamel", "enamel", 7],
  ["on-paint", "paint", 7],
  ["paper", "ink", 7],
  ["chalk", "paper", 4.5],
  ["oxide-ink", "paper", 4.5],
  ["oxide-ink", "steel", 4.5],
  ["enamel-ink", "paper", 4.5],
];

describe.each(Object.entries(THEMES))("the %s theme", (_name, theme) => {
  it.each(PAIRS)("%s on %s has a contrast of at least %d", (text, ground, least) => {
    expect(contrast(theme[text] ?? "", theme[ground] ?? "")).toBeGreaterThanOrEqual(least);
  });
  it("has white on its red for text", () => {
    expect(contrast("#ffffff", theme.oxide ?? "")).toBeGreaterThanOrEqual(4.5);
  });
});

it("names every colour for both themes, and each once", () => {
  expect(pairs.length).toBeGreaterThan(12);
  expect(css.match(/#[0-9a-f]{3,8}\b/g)).toHaveLength(pairs.length * 2);
});
