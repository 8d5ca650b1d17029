import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { failureRate } from "../../../core/compute/failure-rate.ts";
import { failureTrend } from "../../../core/compute/failure-trend.ts";
import { poissonCovering } from "../../../core/compute/poisson.ts";
import { fitWeibull } from "../../../core/compute/weibull.ts";
import type { CountedLife } from "../../../core/compute/weibull-likelihood.ts";
import reliability from "../../published/reliability.json" with { type: "json" };
import weibull from "../../published/weibull.json" with { type: "json" };

/** The scripts that made the check values, run again where R is; elsewhere the values they made still hold the code. */
const R = ["--vanilla", "-e", 'suppressMessages(library(survival)); cat("ready")'];
const here = spawnSync("Rscript", R, { encoding: "utf8", timeout: 60_000 });
const ready = here.status === 0 && here.stdout.endsWith("ready");
const named = ready
  ? "R's own figures"
  : "R's own figures (no Rscript with survival here: apt-get install -y r-cran-survival)";

function ask(script: string, lines: readonly string[]): number[][] {
  const path = fileURLToPath(new URL(`../../published/${script}`, import.meta.url));
  const run = spawnSync("Rscript", ["--vanilla", path], { input: `${lines.join("\n")}\n`, encoding: "utf8" });
  if (run.status !== 0) throw new Error(`${script}: ${run.stderr}`);
  return run.stdout
    .trim()
    .split("\n")
    .map((line) => line.trim().split(/\s+/).map(Number));
}

function near(got: number | undefined, want: number | undefined, tolerance: number, what: string): void {
  const off = Math.abs((got as number) - (want as number));
  expect(off, `${what}: ${got} for R's ${want}`).toBeLessThanOrEqual(tolerance * Math.abs(want as number) + 1e-300);
}

const lives = (set: readonly CountedLife[]) =>
  set.map(({ lower, upper, count }) => `${lower}:${upper ?? "NA"}:${count ?? 1}`).join(" ");

/** Lives of a Weibull drawn by a fixed seed; only sets with a top well inside the range of shapes, as survreg wants. */
function randomSets(count: number): CountedLife[][] {
  let seed = 7;
  const chance = (): number => {
    seed = (seed * 1103515245 + 12345) % 2147483648;
    return seed / 2147483648;
  };
  const sets: CountedLife[][] = [];
  while (sets.length < count) {
    const [shape, scale, step] = [0.6 + chance() * 4, 1 + chance() * 10, 0.5 + chance() * 2];
    const set = Array.from({ length: 4 + Math.floor(chance() * 20) }, (): CountedLife => {
      const age = Math.max(0.1, scale * (-Math.log(1 - chance())) ** (1 / shape));
      const kind = chance();
      if (kind < 0.3) return { lower: Number((age * (0.2 + 0.7 * chance())).toFixed(3)) };
      if (kind < 0.5) return { lower: Number(age.toFixed(3)), upper: Number(age.toFixed(3)) };
      const seen = Math.floor(age / step) * step;
      return { lower: Number(seen.toFixed(3)), upper: Number((seen + step).toFixed(3)) };
    });
    const fit = fitWeibull(set);
    if (fit.ok && fit.shape > 0.3 && fit.shape < 15) sets.push(set);
  }
  return sets;
}

describe.skipIf(!ready)(named, () => {
  test("Weibull fits and likelihood-ratio bounds: survreg and a profile root, free and with the shape held", () => {
    const sets = weibull.sets.map((set) => ({ id: set.id, lives: set.lives as CountedLife[] }));
    const asked = [
      ...sets.map((set) => ({ ...set, shape: undefined })),
      ...sets.map((set) => ({ ...set, shape: 2 as number | undefined })),
    ];
    const answers = ask(
      "weibull.R",
      asked.map((one) => `${one.shape ?? "free"} ${lives(one.lives)}`),
    );
    expect(answers).toHaveLength(asked.length);
    answers.forEach(([shape, scale, likelihood, b10, low, high], at) => {
      const { id, lives: set, shape: held } = asked[at] as (typeof asked)[number];
      const fit = fitWeibull(set, { shape: held });
      if (!fit.ok) throw new Error(`${id}: ${fit.why}`);
      near(fit.shape, shape, 1e-5, `${id} shape`);
      near(fit.scale, scale, 1e-5, `${id} scale`);
      near(fit.logLikelihood, likelihood, 1e-6, `${id} log-likelihood`);
      near(fit.quantile(0.1), b10, 1e-5, `${id} B10`);
      near(fit.lowerBound(0.1, 0.9), low, 1e-5, `${id} lower bound`);
      near(fit.upperBound(0.1, 0.9), high, 1e-5, `${id} upper bound`);
    });
  }, 120_000);

  test("forty sets drawn at random, exact, censored and between inspections", () => {
    const sets = randomSets(40);
    const answers = ask(
      "weibull.R",
      sets.map((set) => `free ${lives(set)}`),
    );
    sets.forEach((set, at) => {
      const fit = fitWeibull(set);
      if (!fit.ok) throw new Error(fit.why);
      const ours = [
        fit.shape,
        fit.scale,
        fit.logLikelihood,
        fit.quantile(0.1),
        fit.lowerBound(0.1, 0.9),
        fit.upperBound(0.1, 0.9),
      ];
      for (const [n, value] of ours.entries()) near(value, answers[at]?.[n], 1e-6, `set ${at}, figure ${n}`);
    });
  }, 120_000);

  test("failure rates, trends and covering counts", () => {
    const rates = [0, 1, 2, 7, 40, 300].map((failures) => ({ failures, exposure: 123.4, confidence: 0.9 }));
    const covers = [0.02, 0.0513, 0.4, 1, 3.3, 12, 80].map((mean) => ({ mean, p: 0.95 }));
    const answers = ask("reliability.R", [
      ...rates.map((one) => `rate ${one.failures} ${one.exposure} ${one.confidence}`),
      ...reliability.trends.map((one) => `trend ${one.stopped} ${one.end} ${one.ages.join(" ")}`),
      ...covers.map((one) => `covering ${one.mean} ${one.p}`),
    ]);
    rates.forEach((one, at) => {
      const rate = failureRate(one.failures, one.exposure, one.confidence);
      if (one.failures > 0) near(rate.lower, answers[at]?.[0], 1e-10, `lower of ${one.failures}`);
      near(rate.upper, answers[at]?.[1], 1e-10, `upper of ${one.failures}`);
    });
    reliability.trends.forEach((one, at) => {
      const trend = failureTrend(one.ages, one.end, one.stopped as "time" | "failure");
      if (!trend.ok) throw new Error(trend.why);
      const [chiSquare, freedom, p, u, uP] = answers[rates.length + at] ?? [];
      near(trend.handbook.chiSquare, chiSquare, 1e-12, one.what);
      expect(trend.handbook.freedom).toBe(freedom);
      near(trend.handbook.p, p, 1e-10, one.what);
      near(trend.laplace.u, u, 1e-12, one.what);
      near(trend.laplace.p, uP, 1e-10, one.what);
    });
    covers.forEach((one, at) => {
      expect([poissonCovering(one.mean, one.p)]).toEqual(answers[rates.length + reliability.trends.length + at]);
    });
  }, 60_000);
});
