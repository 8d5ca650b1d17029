import { defineConfig } from "drizzle-kit";

/** The same for PostgreSQL: `npx drizzle-kit generate --config drizzle.pg.config.ts --name what-changed`. */
export default defineConfig({
  dialect: "postgresql",
  schema: "./server/db/pg-tables.ts",
  out: "./server/db/pg-migrations",
});
