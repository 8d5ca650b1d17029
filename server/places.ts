import { existsSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

/**
 * Where things lie, whether this runs from source or from dist/: the package's folder is the nearest one
 * above this file that holds package.json.
 */
function packageFolder(): string {
  let folder = dirname(fileURLToPath(import.meta.url));
  while (!existsSync(join(folder, "package.json"))) {
    const above = dirname(folder);
    if (above === folder)
      throw new Error(`no package.json above ${fileURLToPath(import.meta.url)}: run from a whole checkout`);
    folder = above;
  }
  return folder;
}

export const ROOT = packageFolder();
export const MIGRATIONS = join(ROOT, "server/db/migrations");
export const PG_MIGRATIONS = join(ROOT, "server/db/pg-migrations");
export const WEB = join(ROOT, "dist/web");
export const REPORT_CSS = join(ROOT, "server/reports/report.css");
/** The thread that sets PDFs: built beside the server, or read from source as the server itself is. */
export const PDF_THREAD = join(
  ROOT,
  import.meta.url.endsWith(".ts") ? "server/reports/pdf/thread-from-source.mjs" : "dist/server/pdf-thread.js",
);
