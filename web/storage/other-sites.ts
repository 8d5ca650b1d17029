import type { Database } from "./database.ts";

/**
 * Lets go of what the device holds of other sites than these: their valves and visits, and jobs that the server has
 * whole. A job of which anything was not sent stays as it is, with all that was said in it, and so does the one that is
 * open. What names no site goes where the server told it, and stays where it was said here.
 */
export async function letGoOfOtherSites(db: Database, sites: readonly string[]): Promise<void> {
  const theirs = (row: { site?: string }) => row.site === undefined || !sites.includes(row.site);
  const tx = db.transaction(["valves", "listed", "jobs", "phrases", "keepsakes", "bytes", "kept"], "readwrite");
  for (const name of ["valves", "listed"] as const) {
    const store = tx.objectStore(name);
    for (let cursor = await store.openCursor(); cursor; cursor = await cursor.continue())
      if (theirs(cursor.value)) await cursor.delete();
  }
  const known = await tx.objectStore("kept").get("sites");
  if (Array.isArray(known))
    await tx.objectStore("kept").put(known.filter((one) => !theirs(one)) as typeof known, "sites");
  const open = await tx.objectStore("kept").get("openJob");
  for (const job of await tx.objectStore("jobs").getAll()) {
    if (job.site === undefined || !theirs(job) || job.id === open) continue;
    const said = await tx.objectStore("phrases").index("job").getAll(job.id);
    const beside = await tx.objectStore("keepsakes").index("job").getAll(job.id);
    const sent = (row: { delivery: string }) => row.delivery === "kept" || row.delivery === "unwanted";
    if (![job, ...said, ...beside].every(sent)) continue;
    await tx.objectStore("jobs").delete(job.id);
    for (const one of said) await tx.objectStore("phrases").delete(one.id);
    for (const one of beside) {
      await tx.objectStore("keepsakes").delete(one.id);
      await tx.objectStore("bytes").delete(one.id);
    }
  }
  await tx.done;
}
