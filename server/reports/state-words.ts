import type { RecipientRow, VersionRow } from "../mail/outbox-store.ts";
import { clockTime, localDay } from "../moments.ts";
import type { KeptSettings } from "../routes/sending/store.ts";
import { goesOn } from "./day-end.ts";
import { versionName } from "./day-report.ts";
import type { Step } from "./next-step.ts";

/** Where reports go, for words. */
export interface Way {
  /** "mail.example.com:587"; undefined where there is no mail server */
  server: string | undefined;
  folder: string;
}
interface Where {
  zone: string;
  day: string;
}

/** What became of one version, a sentence each thing that somebody has to know. */
export function versionSays(row: VersionRow, recipients: readonly RecipientRow[], where: Where): string[] {
  const at = (utc: string | null) => (utc ? momentWords(utc, where) : "");
  const name = versionName(row.version);
  const of = (state: RecipientRow["state"]) => recipients.filter((one) => one.state === state);
  const sent = of("sent");
  const says: string[] = [];
  if (sent.length > 0) says.push(`${name} sent ${at(sent[0]?.at ?? row.settledAt)} to ${counted(sent)}.`);
  for (const one of of("refused")) says.push(`Refused for ${one.address}: ${one.reply ?? "no reason given"}.`);
  const open = of("waiting");
  if (row.state === "sending" || row.state === "handing") says.push(`${name} is being sent now.`);
  if (row.state === "waiting" && row.problem)
    says.push(`${name} not sent yet to ${counted(open)}: ${row.problem}. Next try ${at(row.nextTryAt)}.`);
  if (row.state === "waiting" && !row.problem) says.push(`${name} goes in a moment to ${counted(open)}.`);
  if (row.state === "stopped")
    says.push(`${name} not sent: ${row.problem}. It is not tried again by itself: mend the cause, then send it.`);
  if (row.state === "unknown")
    says.push(
      `It is not known whether ${name.toLowerCase()} reached ${counted(of("unknown"))}, ${at(row.settledAt)}: ${row.problem}. ` +
        "It may have arrived, so it is not sent again by itself: ask there first.",
    );
  if (row.state === "written")
    says.push(`${name} written ${at(row.settledAt)} to ${row.problem}: no mail server is set (SMTP_URL).`);
  return says;
}

/** What comes next for a site's day, the first thing first. */
export function daySays(
  about: Where & { jobs: number; step: Step; versions: number; settings: KeptSettings | undefined; way: Way },
): string[] {
  const { settings, day, way, step } = about;
  if (!settings) return ["Nobody is set to get this site's report. Say below who gets it, and when."];
  if (way.server && settings.recipients.length === 0)
    return ["Nobody is set to get this site's report, so it is not sent. Say below who gets it."];
  const to = way.server
    ? `to ${settings.recipients.join(", ")}`
    : `into ${way.folder}, for no mail server is set (SMTP_URL)`;
  if (about.versions === 0) {
    const on = goesOn(day, settings);
    const byItself = day > settings.lastDay && day >= settings.since;
    const when = `${settings.hour}${on === day ? "" : ` on ${on}`}`;
    if (!byItself && about.jobs === 0) return ["Nothing was said on this day, so nothing was sent."];
    if (!byItself && day < settings.since)
      return ["Not sent by itself: the day ended before anybody was set to get reports. It can be sent now."];
    if (!byItself) return [`Not sent yet. What was said goes ${nextRun(about)} ${to}, or now.`];
    if (about.jobs === 0 && !settings.quiet)
      return [`Nothing was said on this day so far. If something is, it will go at ${when} ${to}.`];
    return [`Will go at ${when} ${to}.`];
  }
  if (step === "correct")
    return [`Something was said or amended since it went. The correction goes ${nextRun(about)} ${to}, or now.`];
  return [];
}

const nextRun = ({ settings }: { settings: KeptSettings | undefined }) =>
  `at the next ${settings?.hour ?? "end of day"}`;

/** "18:00:04", with its day where it is another than the report's. */
function momentWords(utc: string, { zone, day }: Where): string {
  const on = localDay({ utc, offset: 0 }, zone);
  return `${on === day ? "" : `on ${on} `}at ${clockTime(utc, zone)}`;
}

const counted = (all: readonly RecipientRow[]) => `${all.length}: ${all.map((one) => one.address).join(", ")}`;
