import { createClient, type InStatement, type Transaction } from "@libsql/client";
import { is } from "drizzle-orm";
import { getTableConfig, SQLiteTable } from "drizzle-orm/sqlite-core";
import { describe, expect, it, onTestFinished } from "vitest";
import * as report from "../../../server/db/report-tables.ts";
import * as review from "../../../server/db/review-tables.ts";
import * as record from "../../../server/db/tables.ts";
import { EVERY_OPERATION } from "../every-operation.ts";
import { DAY, twoSites } from "../two-sites.ts";
import { overhear, type Sent } from "./statements.ts";

/** What a log of hundreds of sites, or one cut into several, rests on: things are kept and found site by site. */

type Log = Awaited<ReturnType<typeof twoSites>>;

/** Every operation there is, done by people who see both sites and by some who are kept to one. */
async function doEverything(log: Log, doing: (operation: string) => void = () => {}): Promise<void> {
  const kept = await log.keptTo("north", "lead");
  for (const who of [log.boss, kept]) {
    for (const [operation, make] of Object.entries(EVERY_OPERATION)) {
      const [method = "", path = ""] = operation.split(" ");
      doing(operation);
      for (const { things } of [log.north, log.south]) {
        const { at = "", calls } = make(things);
        for (const { query = "", body } of calls) {
          const filled = path.replace(/\{(id|site|tag)\}/, at).replace("{day}", DAY);
          expect((await who.call(method, `${filled}${query}`, body)).status, operation).toBeLessThan(500);
        }
      }
    }
  }
}

/** Tables that stay small however large a field is. */
const SMALL = [
  "sites",
  "site_words",
  "site_stock",
  "site_families",
  "site_keeping",
  "moved_sites",
  "people",
  "devices",
  "days_to_list",
  "report_settings",
  // the few words there are, to find those that hold some letters
  "words_said",
];
/** What asks for all there is and hands it out, or for all valves, of which there are not more than a hundred thousand. */
const WHOLE: [why: string, statement: RegExp][] = [
  ["every valve, for the list of them", /from "valve_tags" left join/],
  ["every valve as set up, for what to carry and how often what fails", /from "valve_records"/],
  ["all that was given to anybody, to tell what is whose", /from "follow_up_owners" order by/],
  ["how much is still owed, of all sites", /^select count\(\*\) from "owed"$/],
  ["all that is due, where no page was asked for", /^select "site", "tag", "task".* from "due" where .*order by/],
  ["all that is due, for what to carry", /^select "site", "tag", "body" from "due"$/],
  ["everything ever noted, to count failures", /^select "entries"."site", "entries"."tag".* from "entries" inner join/],
];

it("nothing that is asked for goes through a whole table, but what hands out the whole", async () => {
  const log = await twoSites();
  const sent = new Map<string, Sent>();
  overhear(log.store, { statement: (one) => sent.set(one.sql, one) });
  await doEverything(log);
  const client = createClient({ url: log.url });
  onTestFinished(() => client.close());
  const through: string[] = [];
  for (const { sql, args } of sent.values()) {
    // an insert is told with the scans of what points at it, which are only done where a row was missing before
    if (/^(insert|begin|commit|rollback|savepoint|release)/i.test(sql)) continue;
    // of no site or no word nothing is asked for: libSQL knows that before it looks
    if (/ where \(?false/.test(sql)) continue;
    const { rows } = await client.execute({ sql: `EXPLAIN QUERY PLAN ${sql}`, args } as InStatement);
    for (const { detail } of rows) {
      const [, table = "", how = ""] = /^SCAN (\w+)(.*)/.exec(String(detail)) ?? [];
      if (table === "" || SMALL.includes(table)) continue;
      // in the order of an index, or of the table itself, it is left where the page is full
      if (/ limit \?$/.test(sql) && (how.includes("USING") || table === "audit")) continue;
      if (!WHOLE.some(([, statement]) => statement.test(sql))) through.push(`${detail}: ${sql}`);
    }
  }
  expect(sent.size).toBeGreaterThan(150);
  expect(through).toEqual([]);
});

/** A word for every site is read at every site from the same moment on. */
const SPANNING = ["PUT /api/words"];

describe("no transaction spans two sites", () => {
  it("whatever is asked by whoever sees both, but what is meant for every site", { timeout: 120_000 }, async () => {
    const log = await twoSites();
    const client = createClient({ url: log.url });
    onTestFinished(() => client.close());
    await noteTouched(client);
    const spans = new Map<string, string[]>();
    let [count, done] = [0, ""];
    overhear(log.store, {
      ending: async (transaction) => {
        const sites = await touchedIn(transaction);
        if (sites.length > 0) count++;
        if (sites.length > 1) spans.set(done, sites);
      },
    });
    // what follows of both waits to be reckoned
    await client.execute("UPDATE jobs SET stale = 1, unweighed = 1");
    await client.execute("DELETE FROM touched");
    await doEverything(log, (operation) => {
      done = operation;
    });
    expect(count).toBeGreaterThan(40);
    expect([...spans.keys()]).toEqual(SPANNING);
  });
});

/** Every table of the record tells into another one which site's rows were changed. */
async function noteTouched(client: ReturnType<typeof createClient>): Promise<void> {
  await client.execute("CREATE TABLE touched (site TEXT)");
  for (const table of tablesOfRecord()) {
    if (!getTableConfig(table).columns.some((column) => column.name === "site")) continue;
    const { name } = getTableConfig(table);
    for (const [event, row] of [
      ["INSERT", "NEW"],
      ["UPDATE", "NEW"],
      ["DELETE", "OLD"],
    ])
      await client.execute(
        `CREATE TRIGGER touched_${name}_${event} AFTER ${event} ON ${name} BEGIN INSERT INTO touched VALUES (${row}.site); END`,
      );
  }
}

async function touchedIn(transaction: Transaction): Promise<string[]> {
  const { rows } = await transaction.execute("SELECT DISTINCT site FROM touched ORDER BY site");
  await transaction.execute("DELETE FROM touched");
  return rows.map((row) => String(row.site));
}

const tablesOfRecord = () =>
  Object.values({ ...record, ...review, ...report }).filter((one) => is(one, SQLiteTable)) as SQLiteTable[];

/** Indexes that do not begin with the site, and what they are for. Rows have ids that devices made, unlike in all the world. */
const OTHERWISE: Record<string, string> = {
  jobs_stale_of_all: "the few that changed, for those who see every site",
  jobs_unweighed: "the few that changed, for those who see every site",
  jobs_unsigned_of_all: "the queue of those who see every site",
  jobs_by_time: "the latest, for those who see every site",
  phrases_by_time: "the latest, for those who see every site",
  keepsakes_by_content: "a file is kept once, whosever it is",
  valve_tags_stale_of_all: "the few that changed, for those who see every site",
  valve_tags_by_tag: "a tag that was said without its site",
  due_by_urgency: "the board of those who see every site",
  owed_by_urgency: "the board of those who see every site",
  review_items_of_all: "the queue of those who see every site",
  review_items_of_job: "by a job's id",
  answers_of_phrase: "by a phrase's id",
  answers_of_question: "by a decision's id",
  signatures_by_id: "by its own id",
  follow_up_owners_by_id: "by its own id",
  report_versions_waiting: "the outbox, which is one",
  calendar_feeds_by_secret: "whoever has the address says no more than it",
};

it("every index of the record begins with the site, but those that say why not", () => {
  const others = tablesOfRecord().flatMap((table) =>
    getTableConfig(table).indexes.flatMap(({ config }) => {
      const [first] = config.columns as { name?: string }[];
      return first?.name === "site" ? [] : [config.name];
    }),
  );
  expect(others.sort()).toEqual(Object.keys(OTHERWISE).sort());
});
