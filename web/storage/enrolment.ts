import type { Database } from "./database.ts";

/** The token this device was enrolled with, kept on it until it is given back. */
export interface EnrolmentShelf {
  token(): Promise<string | undefined>;
  keepToken(token: string | undefined): Promise<void>;
}

export function enrolmentOn(db: Database): EnrolmentShelf {
  return {
    async token() {
      const kept = await db.get("kept", "token");
      return typeof kept === "string" ? kept : undefined;
    },
    async keepToken(token) {
      const tx = db.transaction("kept", "readwrite", { durability: "strict" });
      await Promise.all([token === undefined ? tx.store.delete("token") : tx.store.put(token, "token"), tx.done]);
    },
  };
}

/** Where the browser keeps nothing, the enrolment lasts as long as the page. */
export const noEnrolmentShelf: EnrolmentShelf = {
  async token() {
    return undefined;
  },
  async keepToken() {},
};
