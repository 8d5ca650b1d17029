/** The store cannot take this now; the same call may succeed later. */
export class StoreBusy extends Error {}
/** The store has no room left. */
export class StoreFull extends Error {}
/** The database cannot be used, for a reason a person can mend. The message says which file and what to do. */
export class StoreRefused extends Error {}

/** The driver's code, through whatever wrapped it. */
export function codeOf(cause: unknown): string {
  for (let at = cause; at instanceof Error; at = at.cause) {
    const code = (at as { code?: unknown }).code;
    if (typeof code === "string" && code.startsWith("SQLITE_")) return code;
  }
  return "";
}

/** Another connection or process holds the database, for a moment. */
export function isLock(cause: unknown): boolean {
  return /^SQLITE_(BUSY|LOCKED)/.test(codeOf(cause)) || /statements in progress/.test(String(cause));
}

/** Another process may be at the same: starting, or bringing the database forward. */
const LONGEST_LOCK_MS = 15_000;

/** Does it again while another process holds the database. `work` leaves nothing behind where it fails. */
export async function whenFree<T>(what: string, work: () => Promise<T>): Promise<T> {
  const until = performance.now() + LONGEST_LOCK_MS;
  for (let attempt = 0; ; attempt++) {
    try {
      return await work();
    } catch (cause) {
      if (!isLock(cause)) throw cause;
      if (performance.now() > until) throw new StoreBusy(`another process holds the database ${what}`, { cause });
      await new Promise((wake) => setTimeout(wake, Math.min(20 * 2 ** attempt, 500)));
    }
  }
}

/** After these the engine may have rolled the whole transaction back by itself. */
export function endsTransaction(cause: unknown): boolean {
  return isLock(cause) || /^SQLITE_(FULL|IOERR|NOMEM|CORRUPT|INTERRUPT|READONLY|CANTOPEN)/.test(codeOf(cause));
}

/** A failed commit as whoever asked for it is told. */
export function explain(cause: unknown): Error {
  const code = codeOf(cause);
  if (isLock(cause)) return new StoreBusy("another process holds the database", { cause });
  if (/^SQLITE_(FULL|IOERR)/.test(code)) return new StoreFull(`the database could not be written (${code})`, { cause });
  return new Error(`the database refused a commit (${code || "no code"})`, { cause });
}
