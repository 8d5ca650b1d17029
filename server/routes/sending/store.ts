import { and, eq, ne } from "drizzle-orm";
import type { ReportSettings } from "../../../core/index.ts";
import { reportSettingsSchema } from "../../../core/shapes/sending.ts";
import type { Who } from "../../access.ts";
import { record } from "../../audit/record.ts";
import type { Store } from "../../db/open.ts";
import { reportSettings } from "../../db/report-tables.ts";
import type { Tx } from "../../db/writer.ts";
import { addDays } from "../../moments.ts";
import { lastRun } from "../../reports/day-end.ts";

export interface KeptSettings extends ReportSettings {
  /** the first day that goes by itself */
  since: string;
  /** the last day whose end was seen to */
  lastDay: string;
}

/** Who gets a site's report and when; undefined where nobody said. */
export async function settingsOf(db: Pick<Tx, "select">, site: string): Promise<KeptSettings | undefined> {
  const [row] = await db.select().from(reportSettings).where(eq(reportSettings.site, site));
  return row && readSettings(row);
}

export async function allSettings(store: Store): Promise<(KeptSettings & { site: string })[]> {
  const rows = await store.db.select().from(reportSettings);
  return rows.map((row) => ({ site: row.site, ...readSettings(row) }));
}

/** Keeps them whole. Once there is somebody to send to, what had ended before is not sent: it is old news by then. */
export async function keepSettings(
  store: Store,
  { site, zone }: { site: string; zone: string },
  settings: ReportSettings,
  at: Date,
  who: Who,
): Promise<void> {
  const set = {
    recipients: JSON.stringify(settings.recipients),
    hour: settings.hour,
    weekends: Number(settings.weekends),
    quiet: Number(settings.quiet),
  };
  const lastDay = lastRun(at, zone, settings);
  const begin = { since: addDays(lastDay, 1), lastDay };
  await store.write(async (tx) => {
    const before = await settingsOf(tx, site);
    const begins = !before || (before.recipients.length === 0 && settings.recipients.length > 0);
    await tx
      .insert(reportSettings)
      .values({ site, ...set, ...begin })
      .onConflictDoUpdate({ target: reportSettings.site, set: { ...set, ...(begins ? begin : {}) } });
    await record(tx, who, "report_set_up", { site, recipients: settings.recipients.length, hour: settings.hour });
  });
}

/** Notes that a site's days up to this one have been seen to. */
export async function keepLastDay(store: Store, site: string, lastDay: string): Promise<void> {
  await store.write(async (tx) => {
    await tx
      .update(reportSettings)
      .set({ lastDay })
      .where(and(eq(reportSettings.site, site), ne(reportSettings.lastDay, lastDay)));
  });
}

function readSettings(row: typeof reportSettings.$inferSelect): KeptSettings {
  const read = reportSettingsSchema.safeParse({
    recipients: JSON.parse(row.recipients),
    hour: row.hour,
    weekends: row.weekends === 1,
    quiet: row.quiet === 1,
  });
  if (!read.success) throw new Error("stored report settings do not read", { cause: read.error });
  return { ...read.data, since: row.since, lastDay: row.lastDay };
}
