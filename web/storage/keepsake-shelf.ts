import type { CardKeepsake } from "../state/keepsake.ts";
import type { Database } from "./database.ts";

const STRICT = { durability: "strict" } as const;

/** Sound and photographs on the device. Every promise of writing settles after the commit. */
export interface KeepsakeShelf {
  keep(row: CardKeepsake, bytes: ArrayBuffer): Promise<void>;
  /** undefined once its room was given to something else */
  bytes(id: string): Promise<ArrayBuffer | undefined>;
  /** all of a job, in the order taken */
  ofJob(job: string): Promise<CardKeepsake[]>;
  /**
   * The oldest that waits, is not in `but`, and whose phrase, or job, the server has: nothing goes before what it
   * belongs to.
   */
  toSend(but?: { has(id: string): boolean }): Promise<{ row: CardKeepsake; bytes: ArrayBuffer } | undefined>;
  mark(id: string, delivery: CardKeepsake["delivery"], problem?: string): Promise<CardKeepsake | undefined>;
  /**
   * Lets go of bytes that the server has: sound first, the oldest first, then photographs, until `wanted` bytes or more
   * are free. What was not sent is never touched. Gives how many bytes it let go of.
   */
  letGo(wanted: number): Promise<number>;
  /** Sets room aside that only words may have: some thousand phrases. Whether there was room for it. */
  setReserve(): Promise<boolean>;
  /** Gives it up; false where it was given up before. */
  giveUpReserve(): Promise<boolean>;
}

const RESERVE = "set aside for words";
const RESERVE_BYTES = 1_000_000;

export function keepsakesOn(db: Database): KeepsakeShelf {
  return {
    async keep(row, bytes) {
      // the bytes apart from the row: whoever counts or lists does not read megabytes
      const tx = db.transaction(["keepsakes", "bytes"], "readwrite", STRICT);
      await Promise.all([
        tx.objectStore("keepsakes").add({ ...row, delivery: "waiting" }),
        tx.objectStore("bytes").add(bytes, row.id),
        tx.done,
      ]);
    },
    bytes: (id) => db.get("bytes", id),
    ofJob: (job) => db.getAllFromIndex("keepsakes", "job", job),
    async toSend(but) {
      const tx = db.transaction(["keepsakes", "bytes", "phrases", "jobs"]);
      // by id, which ascends with time
      let cursor = await tx.objectStore("keepsakes").index("delivery").openCursor("waiting");
      for (; cursor; cursor = await cursor.continue()) {
        const row = cursor.value;
        if (but?.has(row.id)) continue;
        const belongs = row.phrase
          ? await tx.objectStore("phrases").get(row.phrase)
          : await tx.objectStore("jobs").get(row.job);
        if (belongs?.delivery !== "kept") continue;
        const bytes = await tx.objectStore("bytes").get(row.id);
        if (bytes) return { row, bytes };
      }
      return undefined;
    },
    async mark(id, delivery, problem) {
      const tx = db.transaction(["keepsakes", "bytes"], "readwrite", STRICT);
      const row = await tx.objectStore("keepsakes").get(id);
      const marked = row && { ...row, delivery, problem };
      if (marked) await tx.objectStore("keepsakes").put(marked);
      // what its site does not want kept is not kept here either
      if (delivery === "unwanted") await tx.objectStore("bytes").delete(id);
      await tx.done;
      return marked;
    },
    async letGo(wanted) {
      const tx = db.transaction(["keepsakes", "bytes"], "readwrite");
      const sent = await tx.objectStore("keepsakes").index("delivery").getAll("kept");
      const inOrder = [...sent.filter((row) => row.kind === "clip"), ...sent.filter((row) => row.kind === "photo")];
      let freed = 0;
      for (const row of inOrder) {
        if (freed >= wanted) break;
        if ((await tx.objectStore("bytes").count(row.id)) === 0) continue;
        await tx.objectStore("bytes").delete(row.id);
        freed += row.size;
      }
      await tx.done;
      return freed;
    },
    async setReserve() {
      if (await db.count("bytes", RESERVE)) return true;
      // what is alike the store squeezes, and it would hold no place
      const bytes = new Uint8Array(RESERVE_BYTES);
      for (let at = 0; at < bytes.length; at += 50_000) crypto.getRandomValues(bytes.subarray(at, at + 50_000));
      try {
        await db.put("bytes", bytes.buffer, RESERVE);
        return true;
      } catch {
        // the store is too full for it already: words have what is left
        return false;
      }
    },
    async giveUpReserve() {
      if (!(await db.count("bytes", RESERVE))) return false;
      await db.delete("bytes", RESERVE);
      return true;
    },
  };
}
