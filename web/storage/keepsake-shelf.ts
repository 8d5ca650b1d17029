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
  /** the oldest that waits and whose phrase, or job, the server has: nothing goes before what it belongs to */
  toSend(): Promise<{ row: CardKeepsake; bytes: ArrayBuffer } | undefined>;
  mark(id: string, delivery: CardKeepsake["delivery"], problem?: string): Promise<CardKeepsake | undefined>;
  /**
   * Lets go of bytes that the server has: sound first, the oldest first, then photographs, until `wanted` bytes or more
   * are free. What was not sent is never touched. Gives how many bytes it let go of.
   */
  letGo(wanted: number): Promise<number>;
}

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
    async toSend() {
      const tx = db.transaction(["keepsakes", "bytes", "phrases", "jobs"]);
      // by id, which ascends with time
      let cursor = await tx.objectStore("keepsakes").index("delivery").openCursor("waiting");
      for (; cursor; cursor = await cursor.continue()) {
        const row = cursor.value;
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
  };
}
