import { defineConfig } from "drizzle-kit";

/** `npx drizzle-kit generate --name what-changed` after editing the tables; the migration is committed. */
export default defineConfig({
  dialect: "sqlite",
  schema: ["tables", "people-tables", "report-tables", "review-tables"].map((file) => `./server/db/${file}.ts`),
  out: "./server/db/migrations",
});
