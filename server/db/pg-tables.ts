import { pg } from "./kit.pg.ts";
import { peopleTables } from "./people-tables.ts";
import { reportTables } from "./report-tables.ts";
import { reviewTables } from "./review-tables.ts";
import { setUpTables } from "./set-up-tables.ts";
import { recordTables } from "./tables.ts";

/** The tables as PostgreSQL has them, one by one: drizzle-kit looks at what a file exports. */
const record = recordTables(pg);
export const {
  sites,
  siteWords,
  valveRecords,
  jobs,
  phrases,
  wordDays,
  wordsSaid,
  daysToList,
  corrections,
  keepsakes,
  siteKeeping,
  readings,
  entries,
  valveStates,
  owed,
  valveTags,
  due,
  siteStock,
  movedSites,
} = record;
export const { people, devices, oneTimeCodes, sessions, signInTries, audit } = peopleTables(pg);
export const { reviewItems, decisions, answers, signatures, followUpOwners } = reviewTables(pg, record);
export const { reportSettings, reportVersions, reportRecipients, calendarFeeds } = reportTables(pg);
export const { siteFamilies } = setUpTables(pg);
