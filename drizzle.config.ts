import { defineConfig } from "drizzle-kit";

/** `npx drizzle-kit generate --name what-changed` after editing the tables; the migration is committed. */
export default defineConfig({
  dialect: "sqlite",
  schema: "./server/db/*tables.ts",
  out: "./server/db/migrations",
});
