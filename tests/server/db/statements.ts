import type { Client, InStatement, Transaction } from "@libsql/client";
import type { Store } from "../../../server/db/open.ts";

/** A statement as it was sent to a libSQL store, and its values. */
export interface Sent {
  sql: string;
  args: unknown[];
}

/** Hears every statement that a store sends from here on, and every transaction just before its COMMIT. */
export function overhear(
  store: Store,
  heard: { statement?: (sent: Sent) => void; ending?: (transaction: Transaction) => Promise<void> },
): void {
  const { $client: client } = store.db as unknown as { $client: Client };
  const note = (one: InStatement) =>
    heard.statement?.(typeof one === "string" ? { sql: one, args: [] } : { sql: one.sql, args: [...(one.args as [])] });
  const execute = client.execute.bind(client) as (one: InStatement) => ReturnType<Client["execute"]>;
  client.execute = ((one: InStatement) => {
    note(one);
    return execute(one);
  }) as Client["execute"];
  const begin = client.transaction.bind(client);
  client.transaction = (async (mode) => {
    const open = await begin(mode);
    const within = open.execute.bind(open);
    const commit = open.commit.bind(open);
    open.execute = (one) => {
      note(one);
      return within(one);
    };
    open.commit = async () => {
      await heard.ending?.(open);
      await commit();
    };
    return open;
  }) as Client["transaction"];
}
