import type { TestProject } from "vitest/node";
import { openStore } from "../server/db/open.ts";
import { connected, makeCluster, POSTGRES_BIN, requirePostgres } from "./postgres.ts";

/** The run of tests on PostgreSQL: one cluster for all of them, and an empty database for each. */

declare module "vitest" {
  interface ProvidedContext {
    /** the address of its cluster's first database; undefined where tests run on libSQL */
    postgres?: string | undefined;
  }
}

const TEMPLATE = "handsfull_template";

export async function setup(project: TestProject): Promise<(() => Promise<void>) | undefined> {
  requirePostgres("the tests on PostgreSQL");
  if (!POSTGRES_BIN) return undefined;
  // what outlives a power cut is tried elsewhere, with every default: here the disk need not be waited for
  const cluster = await makeCluster({ fsync: "off", full_page_writes: "off", max_connections: "300" });
  await cluster.start();
  await cluster.ask(`CREATE DATABASE ${TEMPLATE}`);
  await (await openStore(cluster.url(TEMPLATE))).close();
  project.provide("postgres", cluster.url("postgres"));
  return () => cluster.remove();
}

export interface TestDatabase {
  url: string;
  /** nobody is at it any more: emptied, it is the next test's */
  giveBack(): Promise<void>;
}

/** Emptied ones: making one costs fifty times what emptying one does. */
const free: string[] = [];
let made = 0;

/** A database with all tables; with nothing in it but them, or with nothing at all. */
export async function takeDatabase(cluster: string, tables = true): Promise<TestDatabase> {
  const waiting = tables ? free.pop() : undefined;
  const url = waiting ?? (await make(cluster, tables ? `TEMPLATE ${TEMPLATE}` : ""));
  return { url, giveBack: async () => void ((await emptied(url)) && free.push(url)) };
}

async function make(cluster: string, like: string): Promise<string> {
  const url = new URL(cluster);
  const name = `test_${process.pid}_${made++}`;
  url.pathname = `/${name}`;
  await connected(cluster, (client) => client.query(`CREATE DATABASE ${name} ${like}`));
  return url.href;
}

const EMPTY_ALL = `DO $$ DECLARE one regclass; BEGIN
  SET LOCAL session_replication_role = replica;
  FOR one IN SELECT format('public.%I', tablename)::regclass FROM pg_tables WHERE schemaname = 'public' LOOP
    EXECUTE 'DELETE FROM ' || one;
  END LOOP; END $$`;

/** Whether it is as new: one whose tables a test has changed is not, and ends with the cluster. */
const emptied = (url: string): Promise<boolean> =>
  connected(url, async (client) => {
    const whole = await client.query("SELECT 1 FROM pg_tables WHERE schemaname = 'public' AND tablename = 'jobs'");
    if (whole.rows.length === 0) return false;
    await client.query(EMPTY_ALL);
    return true;
  });
