import { z } from "zod";
import { dateSchema } from "./valve.ts";

/** Who gets a site's report, when, and what became of each that was sent. */

const ADDRESS = "is no mail address: write name@example.com";

export const reportSettingsSchema = z.object({
  /** at most 50, each once; without any, reports go into the folder of a server that has no mail server */
  recipients: z
    .array(z.string().trim().max(254).pipe(z.email(ADDRESS)))
    .max(50)
    .transform((all) => [...new Map(all.map((one) => [one.toLowerCase(), one])).values()]),
  /** on the site's clock; before noon it is the morning after the day */
  hour: z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/, "is no time of day: write HH:MM, such as 18:00"),
  /** whether reports go on Saturdays and Sundays; else theirs go on Monday */
  weekends: z.boolean(),
  /** whether a day on which nothing was said is reported too */
  quiet: z.boolean(),
});
export type ReportSettings = z.infer<typeof reportSettingsSchema>;

export const sentVersionSchema = z.object({
  version: z.number().int(),
  /** "Report", "Correction 1" */
  name: z.string(),
  messageId: z.string(),
  state: z.enum(["waiting", "sending", "handing", "settled", "stopped", "unknown", "written"]),
  madeAt: z.string(),
  /** its state in words, the one for whom it went wrong each by itself */
  says: z.array(z.string()),
  recipients: z.array(
    z.object({
      address: z.string(),
      state: z.enum(["waiting", "sent", "refused", "unknown"]),
      /** the mail server's own words */
      reply: z.string().optional(),
    }),
  ),
});
export type SentVersion = z.infer<typeof sentVersionSchema>;

export const reportStateSchema = z.object({
  site: z.string(),
  name: z.string(),
  zone: z.string(),
  day: dateSchema,
  /** what will happen, or what has to be done, in words */
  says: z.array(z.string()),
  /** what sending would do now */
  next: z.enum(["send", "correct", "repeat", "again", "nothing"]),
  /** whether what follows needs somebody: it did not go as it should */
  trouble: z.boolean(),
  jobs: z.number().int(),
  settings: reportSettingsSchema.optional(),
  /** newest first */
  versions: z.array(sentVersionSchema),
});
export type ReportState = z.infer<typeof reportStateSchema>;

/** `again`: send it once more to those of whom it is not known whether they have it; it may then arrive twice. */
export const sendAskSchema = z.object({ again: z.boolean().optional() });
