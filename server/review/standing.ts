import { desc, eq, inArray } from "drizzle-orm";
import { answers, signatures } from "../db/review-tables.ts";
import type { Reads } from "../reading/what-is-known.ts";

export type SignatureRow = typeof signatures.$inferSelect;

/** The last word on a job: signed, or opened again; undefined where nobody signed it yet. */
export async function newestSignature(db: Reads, job: string): Promise<SignatureRow | undefined> {
  const [row] = await db.select().from(signatures).where(eq(signatures.job, job)).orderBy(desc(signatures.n)).limit(1);
  return row;
}

/** Which of these questions have an answer. */
export async function answeredQuestions(db: Reads, ids: readonly string[]): Promise<Set<string>> {
  if (ids.length === 0) return new Set();
  const found = new Set<string>();
  for (let at = 0; at < ids.length; at += 200) {
    const rows = await db
      .selectDistinct({ question: answers.question })
      .from(answers)
      .where(inArray(answers.question, ids.slice(at, at + 200)));
    for (const row of rows) found.add(row.question);
  }
  return found;
}
