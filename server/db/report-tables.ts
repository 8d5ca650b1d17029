import { type Kit, lite } from "./kit.lite.ts";

/** What is sent out: the day's reports and what became of them, and the calendars that are read from outside. */
export function reportTables({ table, text, integer, bytes, index, primaryKey }: Kit) {
  /** Who gets a site's report of the day, and when. */
  const reportSettings = table("report_settings", {
    site: text("site").primaryKey(),
    /** addresses, as JSON */
    recipients: text("recipients").notNull(),
    /** HH:MM at the site; see reports/day-end.ts */
    hour: text("hour").notNull(),
    /** 1 where reports go on Saturdays and Sundays too */
    weekends: integer("weekends").notNull(),
    /** 1 where a day with nothing said is reported too */
    quiet: integer("quiet").notNull(),
    /** the first day that goes by itself: nobody is sent what was long ago */
    since: text("since").notNull(),
    /** the last day whose end was seen to; "" before the first */
    lastDay: text("last_day").notNull(),
  });

  /**
   * The outbox and what became of it: a row a version of a day's report, 1 the first, the later ones corrections.
   * `state` is written before and after each step that a crash could cut: see mail/outbox.ts.
   */
  const reportVersions = table(
    "report_versions",
    {
      site: text("site").notNull(),
      day: text("day").notNull(),
      version: integer("version").notNull(),
      messageId: text("message_id").notNull(),
      /** what the record held when it was made: see reports/record-digest.ts */
      record: text("record").notNull(),
      sender: text("sender").notNull(),
      /** the message, byte for byte: every attempt sends the same */
      message: bytes("message").notNull(),
      madeAt: text("made_at").notNull(),
      state: text("state", {
        enum: ["waiting", "sending", "handing", "settled", "stopped", "unknown", "written"],
      }).notNull(),
      /** which running outbox is at it */
      claim: text("claim").notNull().default(""),
      /** attempts made since it was last asked for */
      attempts: integer("attempts").notNull(),
      /** when it was last asked for: giving up counts from here */
      askedAt: text("asked_at").notNull(),
      nextTryAt: text("next_try_at").notNull(),
      /** when its state last changed for good */
      settledAt: text("settled_at"),
      /** why it has not gone, in words */
      problem: text("problem"),
    },
    (t) => [
      primaryKey({ columns: [t.site, t.day, t.version] }),
      index("report_versions_waiting").on(t.state, t.nextTryAt),
    ],
  );

  /** What each recipient's server answered to a version. */
  const reportRecipients = table(
    "report_recipients",
    {
      site: text("site").notNull(),
      day: text("day").notNull(),
      version: integer("version").notNull(),
      address: text("address").notNull(),
      state: text("state", { enum: ["waiting", "sent", "refused", "unknown"] }).notNull(),
      /** the mail server's own words */
      reply: text("reply"),
      at: text("at"),
    },
    (t) => [primaryKey({ columns: [t.site, t.day, t.version, t.address] })],
  );

  /** The private address at which a site's due dates are read as a calendar; none where nobody asked for one. */
  const calendarFeeds = table(
    "calendar_feeds",
    {
      site: text("site").primaryKey(),
      /** SHA-256 of the secret in the address: a copied database opens no calendar */
      secret: text("secret_hash").notNull(),
      madeAt: text("made_at").notNull(),
    },
    (t) => [index("calendar_feeds_by_secret").on(t.secret)],
  );

  return { reportSettings, reportVersions, reportRecipients, calendarFeeds };
}

/** As libSQL has them; every query is written with these: see kit.pg.ts. */
export const { reportSettings, reportVersions, reportRecipients, calendarFeeds } = reportTables(lite);
