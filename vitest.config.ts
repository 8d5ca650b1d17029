import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["tests/**/*.test.ts"],
    pool: "forks",
    // the heaviest takes ten seconds of a core to itself, and the machine may be shared by many
    testTimeout: 120_000,
    hookTimeout: 120_000,
    reporters: ["default", "./tests/count-reporter.ts"],
  },
});
