import type { ReportState, Site } from "../../core/index.ts";
import type { Clock } from "../clock.ts";
import type { Store } from "../db/open.ts";
import type { Post } from "../mail/outbox.ts";
import { recipientsOf, versionsOf } from "../mail/outbox-store.ts";
import { serverName } from "../mail/smtp-server.ts";
import { writeMoment } from "../moments.ts";
import { settingsOf } from "../routes/sending/store.ts";
import { versionName } from "./day-report.ts";
import { nextStep, type Step } from "./next-step.ts";
import { NOTHING_SAID, recordOfDays } from "./record-digest.ts";
import { daySays, versionSays } from "./state-words.ts";

const TROUBLE: ReadonlySet<string> = new Set(["stopped", "unknown"]);

/** A site's day as the desk sees it: what went to whom, what has not and why, what sending would do now. */
export async function dayState(
  given: { store: Store; clock: Clock; post: Post },
  site: Site,
  day: string,
): Promise<ReportState> {
  const { store, post } = given;
  const rows = await versionsOf(store.db, site.site, day);
  const versions = [];
  for (const row of rows) versions.push({ row, recipients: await recipientsOf(store.db, row) });
  const settings = await settingsOf(store.db, site.site);
  const record = (await recordOfDays(store, site.site, day, day)).get(day);
  const [last] = versions;
  const step = nextStep({
    last: last?.row,
    recipients: last?.recipients ?? [],
    record: record?.digest ?? NOTHING_SAID,
    wanted: settings?.recipients ?? [],
    server: post.server !== undefined,
  });
  const where = { zone: site.zone, day };
  const way = { server: post.server && serverName(post.server), folder: post.folder };
  const { since: _since, lastDay: _lastDay, ...shown } = settings ?? { since: "", lastDay: "" };
  return {
    site: site.site,
    name: site.name,
    zone: site.zone,
    day,
    says: daySays({ ...where, jobs: record?.jobs ?? 0, step, versions: rows.length, settings, way }),
    next: shownStep(step),
    trouble: versions.some(
      ({ row, recipients }) => TROUBLE.has(row.state) || recipients.some((one) => one.state === "refused"),
    ),
    jobs: record?.jobs ?? 0,
    ...("hour" in shown ? { settings: shown } : {}),
    versions: versions.map(({ row, recipients }) => ({
      version: row.version,
      name: versionName(row.version),
      messageId: row.messageId,
      state: row.state,
      madeAt: writeMoment({ utc: row.madeAt, offset: 0 }),
      says: versionSays(row, recipients, where),
      recipients: recipients.map(({ address, state, reply }) => ({ address, state, ...(reply ? { reply } : {}) })),
    })),
  };
}

const shownStep = (step: Step): ReportState["next"] => (step === "remake" ? "repeat" : step);
