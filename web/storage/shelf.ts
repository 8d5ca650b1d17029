import { inOrderSaid } from "../state/order-said.ts";
import type { CardPhrase, JobCard, KnownSite, KnownValve, ListedValve, Outbox, Settings } from "../state/state.ts";
import type { KeptWord } from "../state/taught.ts";
import type { Database, KeptJob } from "./database.ts";
import { letGoOfOtherSites } from "./other-sites.ts";
import type { Room } from "./room.ts";

/** `strict`: the promise settles after the words are on the disk, not in some cache in front of it. */
const STRICT = { durability: "strict" } as const;

/** What the rest of the page may ask of the device's store. Every promise of writing settles after the commit. */
export interface Shelf {
  keepJob(card: JobCard): Promise<void>;
  keepPhrase(phrase: CardPhrase): Promise<void>;
  markSeen(phraseId: string): Promise<void>;
  /** the job on the bench when the page was last open, with its phrases in the order said */
  openJob(): Promise<{ card: JobCard; phrases: CardPhrase[] } | undefined>;
  setOpenJob(id: string | undefined): Promise<void>;
  closeJob(card: JobCard): Promise<void>;
  job(id: string): Promise<{ card: JobCard; phrases: CardPhrase[] } | undefined>;
  /** what the server does not hold yet, oldest first, at most `limit` phrases */
  waiting(limit: number): Promise<{ jobs: KeptJob[]; phrases: CardPhrase[] }>;
  /**
   * Marks what the server holds. A phrase that was confirmed while it was being sent stays in the queue: the server has
   * it as it was before. Gives the ids of those that stand as they were sent.
   */
  markDelivered(jobs: string[], phrases: readonly CardPhrase[]): Promise<string[]>;
  markRefused(kind: "jobs" | "phrases", id: string, problem: string): Promise<void>;
  refused(): Promise<{ jobs: KeptJob[]; phrases: CardPhrase[] }>;
  /** puts every refused row back in the queue */
  askAgain(): Promise<void>;
  /** what waits, by kind, and what was refused of any kind */
  counts(): Promise<Pick<Outbox, "waiting" | "clips" | "photos" | "refused" | "lastKeptAt">>;
  keepValve(known: KnownValve): Promise<void>;
  valve(tag: string, site: string | undefined): Promise<KnownValve | undefined>;
  keepListed(valves: ListedValve[], sites: KnownSite[]): Promise<void>;
  /** phrases of the jobs closed on this device, site by site, the newest first, at most `limit` in all */
  saidBefore(limit: number): Promise<{ site?: string; phrase: CardPhrase }[]>;
  listed(): Promise<{ valves: ListedValve[]; sites: KnownSite[] }>;
  /** lets go of what it holds of other sites than these; never of what was not sent */
  keepOnly(sites: readonly string[]): Promise<void>;
  settings(): Promise<Partial<Settings>>;
  keepSettings(settings: Settings): Promise<void>;
  setLastKeptAt(at: string): Promise<void>;
  taught(): Promise<KeptWord[]>;
  keepTaught(words: KeptWord[]): Promise<void>;
}

function valveKey({ tag, site }: { tag: string; site?: string }): string {
  return `${site ?? ""}\n${tag}`;
}

/** `write`: around every writing of words, which must find room before anything else does. */
export function shelfOn(db: Database, write: Room["writeWords"] = (put) => put()): Shelf {
  async function job(id: string) {
    const row = await db.get("jobs", id);
    if (!row) return undefined;
    const { delivery: _delivery, problem: _problem, ...card } = row;
    return { card, phrases: (await db.getAllFromIndex("phrases", "job", id)).sort(inOrderSaid) };
  }
  return {
    job,
    async keepJob(card) {
      await write(async () => {
        const tx = db.transaction(["jobs", "kept"], "readwrite", STRICT);
        await Promise.all([
          tx.objectStore("jobs").put({ ...card, delivery: "waiting" }),
          tx.objectStore("kept").put(card.id, "openJob"),
          tx.done,
        ]);
      });
    },
    async keepPhrase(phrase) {
      await write(async () => {
        const tx = db.transaction("phrases", "readwrite", STRICT);
        await Promise.all([tx.store.put({ ...phrase, delivery: "waiting", problem: undefined }), tx.done]);
      });
    },
    async markSeen(phraseId) {
      const tx = db.transaction("phrases", "readwrite", STRICT);
      const row = await tx.store.get(phraseId);
      if (row) await tx.store.put({ ...row, alertSeen: true });
      await tx.done;
    },
    async openJob() {
      const id = await db.get("kept", "openJob");
      return typeof id === "string" ? job(id) : undefined;
    },
    async setOpenJob(id) {
      if (id === undefined) await db.delete("kept", "openJob");
      else await db.put("kept", id, "openJob");
    },
    async closeJob(card) {
      const tx = db.transaction(["jobs", "kept"], "readwrite", STRICT);
      const row = await tx.objectStore("jobs").get(card.id);
      if (row) await tx.objectStore("jobs").put({ ...row, closedAt: card.closedAt });
      // another tab may have opened a job of its own since
      if ((await tx.objectStore("kept").get("openJob")) === card.id) await tx.objectStore("kept").delete("openJob");
      await tx.done;
    },
    async waiting(limit) {
      // by id, which ascends with time: the oldest words go first
      const phrases = await db.getAllFromIndex("phrases", "delivery", "waiting", limit);
      const jobs = new Map<string, KeptJob>();
      for (const row of await db.getAllFromIndex("jobs", "delivery", "waiting", limit)) jobs.set(row.id, row);
      // the job goes along with its phrases each time: the server takes it twice without harm
      for (const phrase of phrases) {
        const row = jobs.has(phrase.job) ? undefined : await db.get("jobs", phrase.job);
        if (row) jobs.set(row.id, row);
      }
      return { jobs: [...jobs.values()], phrases };
    },
    async markDelivered(jobs, phrases) {
      const tx = db.transaction(["jobs", "phrases"], "readwrite", STRICT);
      const marked: string[] = [];
      for (const id of jobs) {
        const row = await tx.objectStore("jobs").get(id);
        if (row) await tx.objectStore("jobs").put({ ...row, delivery: "kept", problem: undefined });
      }
      for (const sent of phrases) {
        const row = await tx.objectStore("phrases").get(sent.id);
        if (!row || row.confidence !== sent.confidence) continue;
        await tx.objectStore("phrases").put({ ...row, delivery: "kept", problem: undefined });
        marked.push(sent.id);
      }
      await tx.done;
      return marked;
    },
    async markRefused(kind, id, problem) {
      const tx = db.transaction(["jobs", "phrases"], "readwrite", STRICT);
      if (kind === "jobs") {
        const row = await tx.objectStore("jobs").get(id);
        if (row) await tx.objectStore("jobs").put({ ...row, delivery: "refused", problem });
      } else {
        const row = await tx.objectStore("phrases").get(id);
        if (row) await tx.objectStore("phrases").put({ ...row, delivery: "refused", problem });
      }
      await tx.done;
    },
    async refused() {
      return {
        jobs: await db.getAllFromIndex("jobs", "delivery", "refused"),
        phrases: await db.getAllFromIndex("phrases", "delivery", "refused"),
      };
    },
    async askAgain() {
      const tx = db.transaction(["jobs", "phrases", "keepsakes"], "readwrite", STRICT);
      for (const row of await tx.objectStore("jobs").index("delivery").getAll("refused"))
        await tx.objectStore("jobs").put({ ...row, delivery: "waiting" });
      for (const row of await tx.objectStore("keepsakes").index("delivery").getAll("refused"))
        await tx.objectStore("keepsakes").put({ ...row, delivery: "waiting" });
      for (const row of await tx.objectStore("phrases").index("delivery").getAll("refused"))
        await tx.objectStore("phrases").put({ ...row, delivery: "waiting" });
      await tx.done;
    },
    async counts() {
      const [waiting, keepsakes, at, jobs, said, others] = await Promise.all([
        db.countFromIndex("phrases", "delivery", "waiting"),
        db.getAllFromIndex("keepsakes", "delivery", "waiting"),
        db.get("kept", "lastKeptAt"),
        db.getAllFromIndex("jobs", "delivery", "refused"),
        db.getAllFromIndex("phrases", "delivery", "refused"),
        db.countFromIndex("keepsakes", "delivery", "refused"),
      ]);
      // a job refused with its phrases is no more that is lacking than they are
      const idle = jobs.filter((job) => !said.some((phrase) => phrase.job === job.id));
      const clips = keepsakes.filter((row) => row.kind === "clip").length;
      return {
        waiting,
        clips,
        photos: keepsakes.length - clips,
        refused: idle.length + said.length + others,
        lastKeptAt: typeof at === "string" ? at : undefined,
      };
    },
    async keepValve(known) {
      await db.put("valves", known, valveKey(known));
    },
    async valve(tag, site) {
      return db.get("valves", valveKey({ tag, site }));
    },
    async keepListed(valves, sites) {
      const tx = db.transaction(["listed", "kept"], "readwrite");
      const listed = tx.objectStore("listed");
      await listed.clear();
      for (const valve of valves) await listed.put(valve, valveKey(valve));
      await tx.objectStore("kept").put(sites, "sites");
      await tx.done;
    },
    async listed() {
      const sites = await db.get("kept", "sites");
      return { valves: await db.getAll("listed"), sites: Array.isArray(sites) ? (sites as KnownSite[]) : [] };
    },
    async saidBefore(limit) {
      const said: { site?: string; phrase: CardPhrase }[] = [];
      // by id, which ascends with time
      for (const { id, site, closedAt } of (await db.getAll("jobs")).reverse()) {
        if (said.length >= limit) break;
        if (!closedAt) continue;
        for (const phrase of await db.getAllFromIndex("phrases", "job", id)) said.push({ site, phrase });
      }
      return said.slice(0, limit);
    },
    keepOnly: (sites) => letGoOfOtherSites(db, sites),
    async settings() {
      const kept = await db.get("kept", "settings");
      return typeof kept === "object" && !Array.isArray(kept) ? kept : {};
    },
    async keepSettings(settings) {
      await db.put("kept", settings, "settings");
    },
    async setLastKeptAt(at) {
      await db.put("kept", at, "lastKeptAt");
    },
    async taught() {
      const words = await db.get("kept", "taught");
      return Array.isArray(words) ? (words as KeptWord[]) : [];
    },
    async keepTaught(words) {
      const tx = db.transaction("kept", "readwrite", STRICT);
      await Promise.all([tx.store.put(words, "taught"), tx.done]);
    },
  };
}
