import { dateSchema } from "../../core/shapes/valve.ts";
import { systemClock } from "../clock.ts";
import type { Store } from "../db/open.ts";
import type { Settings } from "../env.ts";
import { dayData } from "../reports/day-data.ts";
import { dayMail } from "../reports/day-mail.ts";
import type { DayData } from "../reports/day-report.ts";
import { dayState } from "../reports/day-state.ts";
import { issue } from "../reports/issue.ts";
import { settingsOf } from "../routes/sending/store.ts";
import { helpText, readArguments, wrongUse } from "./arguments.ts";
import { AT_COMMAND } from "./at-command.ts";
import { withStore } from "./with-store.ts";

const OPTIONS = {
  site: { value: "SITE", help: "the site's key" },
  day: { value: "YYYY-MM-DD", help: "the site's day (its today)" },
  send: { help: "hand the report to the outbox; the server sends it" },
  again: { help: "with --send: even to those who may have it already" },
  help: { help: "this text" },
};
const HELP = helpText(
  "npm run -s report -- --site SITE --day YYYY-MM-DD [--send]",
  "Writes a site's day as a mail (.eml) to standard output, or with --send hands it to the outbox.",
  OPTIONS,
  ["DATA_DIR", "DATABASE_URL", "MAIL_FROM", "SMTP_URL"],
);

/** Puts the report into the outbox and says what became of it so far; a running server takes it from there. */
async function send(store: Store, settings: Settings, data: DayData): Promise<void> {
  const { key, name, zone } = data.site;
  const post = { server: settings.smtp, folder: settings.mailFolder };
  const issuing = { store, clock: systemClock, from: settings.mailFrom, server: post.server !== undefined };
  const issued = await issue(issuing, key, data.day, { by: "person", who: AT_COMMAND, again: options.has("again") });
  if (!issued.ok) {
    process.stderr.write(`report: ${issued.problem}\n`);
    process.exitCode = 1;
    return;
  }
  const site = { site: key, name, zone: zone ?? "Etc/UTC" };
  const { versions } = await dayState({ store, clock: systemClock, post }, site, data.day);
  process.stdout.write(
    `${versions[0]?.says.join("\n")}\nA running server sends it: see the report's page at the desk.\n`,
  );
}

const asked = readArguments(process.argv.slice(2), OPTIONS);
if (!asked.ok) wrongUse("report", asked.problem);
const { options, words } = asked.value;
if (options.has("help")) process.stdout.write(HELP);
else {
  const site = options.get("site");
  const day = options.get("day");
  if (words.length > 0) wrongUse("report", `${words[0]} is not known here; see --help`);
  if (options.has("again") && !options.has("send")) wrongUse("report", "--again goes with --send");
  if (!site) wrongUse("report", "--site is needed; see --help");
  if (day !== undefined && !dateSchema.safeParse(day).success)
    wrongUse("report", `--day ${day} is no day: write YYYY-MM-DD`);
  await withStore("report", async (store, settings) => {
    const data = await dayData(store, site, day);
    if (!data) {
      process.stderr.write(`report: no site ${site} is set up and no job names it\n`);
      process.exitCode = 1;
      return;
    }
    if (options.has("send")) return send(store, settings, data);
    const to = (await settingsOf(store.db, site))?.recipients;
    process.stdout.write(await dayMail(store, data, 1, { from: settings.mailFrom, to }));
  });
}
