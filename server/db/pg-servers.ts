import pg from "pg";
import { codeOf, StoreAway, StoreBusy, StoreRefused } from "./failures.ts";
import { nameOf, urlsOf } from "./pg-url.ts";

/** The PostgreSQL servers that a URL names: the one that takes writes is found among them, and found again. */
export interface Servers {
  /** as a person may see it: without user and password */
  name: string;
  /** hands out a connection of its own; where that breaks meanwhile, what comes of it is `StoreAway` */
  on<T>(work: (client: pg.PoolClient) => Promise<T>): Promise<T>;
  end(): Promise<void>;
}

const MOST_CONNECTIONS = 10;
const LONGEST_CONNECT_MS = 5_000;
/** a server that was cut off sends no word of it; and a commit may wait for a standby that is gone */
const LONGEST_ANSWER_MS = 30_000;
/** as the pool says it: all that it may open are at work, and stayed so */
const NONE_FREE = "timeout exceeded when trying to connect";
/** shorter, so that the server gives up waiting before its caller does */
const LONGEST_LOCK = "15s";

// whole numbers to 64 bits, and their sums, are numbers in libSQL: counts would be strings here
for (const type of [pg.types.builtins.INT8, pg.types.builtins.NUMERIC]) pg.types.setTypeParser(type, Number);

/** `patient`: for work that may take long, as bringing a large database forward does. */
export function reach(url: string, patient = false): Servers {
  const name = nameOf(url);
  const pools = urlsOf(url).map((one) => poolOf(one, patient));
  /** the one that took writes last */
  let at = 0;

  async function connect(): Promise<pg.PoolClient> {
    let found: unknown;
    const first = at;
    // each call asks each of them, the last known first: what one call found says nothing about a moment later
    for (const turn of pools.keys()) {
      const one = (first + turn) % pools.length;
      try {
        const client = await (pools[one] as pg.Pool).connect();
        at = one;
        return client;
      } catch (cause) {
        const refused = refusal(name, cause);
        if (refused) throw refused;
        if (cause instanceof Error && cause.message === NONE_FREE)
          throw new StoreBusy(`every connection to the database server ${name} is in use`, { cause });
        found = cause;
      }
    }
    throw away(name, found);
  }

  return {
    name,
    async on(work) {
      const client = await connect();
      let lost: Error | undefined;
      const broke = (cause: Error) => {
        lost ??= cause;
      };
      client.on("error", broke);
      try {
        return await work(client);
      } catch (cause) {
        if (!lost && !isGone(cause)) throw cause;
        broke(cause as Error);
        throw away(name, cause);
      } finally {
        client.off("error", broke);
        client.release(lost);
      }
    },
    async end() {
      await Promise.all(pools.map((pool) => pool.end()));
    },
  };
}

function poolOf(connectionString: string, patient: boolean): pg.Pool {
  const pool = new pg.Pool({
    connectionString,
    max: MOST_CONNECTIONS,
    connectionTimeoutMillis: LONGEST_CONNECT_MS,
    query_timeout: patient ? 0 : LONGEST_ANSWER_MS,
    keepAlive: true,
    application_name: "handsfull",
    onConnect: prepare,
  });
  // a connection that breaks while nobody uses it: the pool lets go of it, and the next call makes another
  pool.on("error", () => {});
  return pool;
}

/** Each new connection, before it is used. */
async function prepare(client: pg.ClientBase): Promise<void> {
  const { rows } = await client.query<{ standby: boolean; durable: string; encoding: string }>(
    "SELECT pg_is_in_recovery() AS standby, current_setting('synchronous_commit') AS durable, current_setting('server_encoding') AS encoding",
  );
  const [found] = rows;
  if (found?.standby) throw new Standby("it is a standby, which takes no writes");
  if (found?.encoding !== "UTF8") throw new WrongEncoding(String(found?.encoding));
  // what is answered is on the disk: where somebody turned that off, for us it is on; whatever promises more stays
  if (found.durable === "off") await client.query("SET synchronous_commit = on");
  // a statement that takes too long is given up by its caller; cancelled by the server, a COMMIT would pass for one
  await client.query(`SET lock_timeout = '${LONGEST_LOCK}'; SET statement_timeout = 0; SET search_path = public`);
}

class Standby extends Error {}
class WrongEncoding extends Error {}

/** as the driver says it, without a code: it waited in vain, or the connection broke just before it was asked */
const GONE = /^Query read timeout$|is not queryable$|^Connection terminated/;

/** It is being shut down, was, takes only reads now, or gave no answer in time. */
function isGone(cause: unknown): boolean {
  if (/^(57P|08|25006)/.test(codeOf(cause))) return true;
  for (let at = cause; at instanceof Error; at = at.cause) if (GONE.test(at.message)) return true;
  return false;
}

const away = (name: string, cause: unknown) =>
  cause instanceof StoreAway
    ? cause
    : new StoreAway(`The database server ${name} does not answer (${shortly(cause)}). Start it, or set DATABASE_URL.`, {
        cause,
      });

/** What trying again does not mend, in words; undefined for everything else. */
function refusal(name: string, cause: unknown): StoreRefused | undefined {
  const what = cause instanceof WrongEncoding ? `keeps its text as ${cause.message}` : REFUSALS[codeOf(cause)];
  if (what === undefined) return undefined;
  return new StoreRefused(`The database ${name} ${what}. Nothing was changed. Set DATABASE_URL to another one.`, {
    cause,
  });
}

const REFUSALS: Record<string, string> = {
  "28000": "does not let this user in",
  "28P01": "does not take this user's password",
  "3D000": "is not there: make it by createdb -E UTF8 -T template0",
  "42501": "does not let this user in: it needs the right to connect",
};

function shortly(cause: unknown): string {
  if (!(cause instanceof Error)) return String(cause);
  const code = (cause as { code?: unknown }).code;
  return typeof code === "string" ? code : cause.message;
}
