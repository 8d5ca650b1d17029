import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["tests/**/*.test.ts"],
    pool: "forks",
    testTimeout: 20_000,
    hookTimeout: 60_000,
    reporters: ["default", "./tests/count-reporter.ts"],
  },
});
