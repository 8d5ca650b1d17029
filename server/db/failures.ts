/** The store cannot take this now; the same call may succeed later. */
export class StoreBusy extends Error {}
/** The database server does not answer, or stopped answering: whether what was asked of it last was kept is not known. */
export class StoreAway extends StoreBusy {}
/** The store has no room left. */
export class StoreFull extends Error {}
/** The database cannot be used, for a reason a person can mend. The message says which file and what to do. */
export class StoreRefused extends Error {}

/** libSQL's name of a failure, or PostgreSQL's five characters; a system's own names, such as EPIPE, have no digit. */
const CODE = /^(SQLITE_|(?=.*\d)[0-9A-Z]{5}$)/;

/** The driver's code, through whatever wrapped it. */
export function codeOf(cause: unknown): string {
  for (let at = cause; at instanceof Error; at = at.cause) {
    const code = (at as { code?: unknown }).code;
    if (typeof code === "string" && CODE.test(code)) return code;
  }
  return "";
}

/** That the store cannot take this now, through whatever wrapped it. */
export function busyIn(cause: unknown): StoreBusy | undefined {
  for (let at = cause; at instanceof Error; at = at.cause) if (at instanceof StoreBusy) return at;
  return undefined;
}

/** A trigger's refusal: the record of that site is in another log now. */
export function isMoved(cause: unknown): boolean {
  for (let at = cause; at instanceof Error; at = at.cause) if (/the site has moved$/.test(at.message)) return true;
  return false;
}

const isAway = (cause: unknown) => busyIn(cause) instanceof StoreAway;

/**
 * Another connection or process holds the database, for a moment. In PostgreSQL: transactions that cannot stand one
 * after the other, a deadlock, a lock waited for too long.
 */
export function isLock(cause: unknown): boolean {
  return (
    /^(SQLITE_(BUSY|LOCKED)|40001$|40P01$|55P03$)/.test(codeOf(cause)) || /statements in progress/.test(String(cause))
  );
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

/** After these the engine may have rolled the whole transaction back by itself, or takes nothing more. */
export function endsTransaction(cause: unknown): boolean {
  const ends = /^(SQLITE_(FULL|IOERR|NOMEM|CORRUPT|INTERRUPT|READONLY|CANTOPEN)|53|58|XX)/;
  return isLock(cause) || isAway(cause) || ends.test(codeOf(cause));
}

/** A failed commit as whoever asked for it is told. */
export function explain(cause: unknown): Error {
  const code = codeOf(cause);
  if (isAway(cause)) return new StoreAway("the database server went away", { cause });
  if (isLock(cause)) return new StoreBusy("another process holds the database", { cause });
  // 53100: the disk is full; 53200: no memory left; 53300: too many connections
  if (/^53[23]/.test(code)) return new StoreBusy(`the database server has too much to do (${code})`, { cause });
  if (/^(SQLITE_(FULL|IOERR)|53|58)/.test(code))
    return new StoreFull(`the database could not be written (${code})`, { cause });
  return new Error(`the database refused a commit (${code || "no code"})`, { cause });
}
