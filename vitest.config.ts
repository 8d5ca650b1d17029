import { defineConfig } from "vitest/config";

/**
 * What must hold whichever engine keeps the log: run on libSQL with all the rest, and once more on PostgreSQL. A choice of
 * every kind of query, since all of them twice would cost minutes.
 */
const ON_BOTH = [
  "tests/server/accounts/{enrolment,kept-to-sites,sites-seen}.test.ts",
  "tests/server/{audit,review,transfer}/*.test.ts",
  "tests/server/when-said/days-said.test.ts",
  "tests/server/routes/{due-pages,jobs,phrases,phrases-of-sites,search,valves,words}.test.ts",
  "tests/server/mail/settings.test.ts",
  "tests/server/db/writer.test.ts",
];
const ON_POSTGRES = "tests/server/db/pg-*.test.ts";

export default defineConfig({
  test: {
    pool: "forks",
    // the heaviest takes ten seconds of a core to itself, and the machine may be shared by many
    testTimeout: 120_000,
    hookTimeout: 120_000,
    reporters: ["default", "./tests/count-reporter.ts"],
    projects: [
      { extends: true, test: { name: "log", include: ["tests/**/*.test.ts"], exclude: [ON_POSTGRES] } },
      {
        extends: true,
        test: {
          name: "log on PostgreSQL",
          include: [...ON_BOTH, ON_POSTGRES],
          // one process tries file after file: it keeps its databases, and loads the log once
          isolate: false,
          globalSetup: ["tests/postgres-run.ts"],
          setupFiles: ["tests/postgres-skip.ts"],
        },
      },
    ],
  },
});
