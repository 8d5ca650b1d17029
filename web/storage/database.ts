import { type DBSchema, type IDBPDatabase, openDB } from "idb";
import type { CardKeepsake } from "../state/keepsake.ts";
import type { CardPhrase, JobCard, KnownSite, KnownValve, ListedValve, Settings } from "../state/state.ts";
import type { KeptWord } from "../state/taught.ts";

/** A job row also says whether the server has it. */
export interface KeptJob extends JobCard {
  delivery: "waiting" | "kept" | "refused";
  problem?: string;
}

/** What the device holds. Words not yet sent live here and nowhere else: rows are added and marked, never removed. */
interface Shelf extends DBSchema {
  jobs: { key: string; value: KeptJob; indexes: { delivery: string } };
  phrases: { key: string; value: CardPhrase; indexes: { job: string; delivery: string } };
  /** sound and photographs; their bytes lie in `bytes` by the same id, until their room is wanted after they were sent */
  keepsakes: { key: string; value: CardKeepsake; indexes: { job: string; delivery: string } };
  bytes: { key: string; value: ArrayBuffer };
  /** by site and tag: two sites may each have an LCV-213 */
  valves: { key: string; value: KnownValve };
  listed: { key: string; value: ListedValve };
  kept: {
    key: "openJob" | "settings" | "lastKeptAt" | "sites" | "taught" | "token";
    value: string | Partial<Settings> | KnownSite[] | KeptWord[];
  };
}
export type Database = IDBPDatabase<Shelf>;

/** Opens the device's own store, making it on the first visit. Rejects where the browser keeps nothing. */
export function openDatabase(name = "handsfull"): Promise<Database> {
  return openDB<Shelf>(name, 2, {
    // step by step from whatever this device has: what it holds stays
    upgrade(db, had) {
      if (had < 1) {
        const jobs = db.createObjectStore("jobs", { keyPath: "id" });
        jobs.createIndex("delivery", "delivery");
        const phrases = db.createObjectStore("phrases", { keyPath: "id" });
        phrases.createIndex("job", "job");
        phrases.createIndex("delivery", "delivery");
        db.createObjectStore("valves");
        db.createObjectStore("listed");
        db.createObjectStore("kept");
      }
      if (had < 2) {
        const keepsakes = db.createObjectStore("keepsakes", { keyPath: "id" });
        keepsakes.createIndex("job", "job");
        keepsakes.createIndex("delivery", "delivery");
        db.createObjectStore("bytes");
      }
    },
    blocking(_old, _new, event) {
      // a newer page in another tab waits for us: let it go on, this tab reloads into the newer page
      (event.target as IDBDatabase).close();
      location.reload();
    },
  });
}
