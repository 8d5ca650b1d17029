import { dateSchema } from "../../core/shapes/valve.ts";
import { dayData } from "../reports/day-data.ts";
import { makeReport } from "../reports/day-report.ts";
import { reportMail } from "../reports/mail.ts";
import { helpText, readArguments, wrongUse } from "./arguments.ts";
import { withStore } from "./with-store.ts";

const OPTIONS = {
  site: { value: "SITE", help: "the site's key" },
  day: { value: "YYYY-MM-DD", help: "the site's day (its today)" },
  send: { help: "hand the report to the outbox; not set up yet" },
  help: { help: "this text" },
};
const HELP = helpText(
  "npm run -s report -- --site SITE --day YYYY-MM-DD > report.eml",
  "Writes a site's day as a mail (.eml: text and HTML) to standard output.",
  OPTIONS,
  ["DATA_DIR", "DATABASE_URL", "MAIL_FROM", "SMTP_URL"],
);

const asked = readArguments(process.argv.slice(2), OPTIONS);
if (!asked.ok) wrongUse("report", asked.problem);
const { options, words } = asked.value;
if (options.has("help")) process.stdout.write(HELP);
else {
  const site = options.get("site");
  const day = options.get("day");
  if (words.length > 0) wrongUse("report", `${words[0]} is not known here; see --help`);
  if (options.has("send"))
    wrongUse("report", "sending is not set up: leave out --send and the report comes as .eml on standard output");
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
    process.stdout.write(await reportMail(makeReport(data), settings.mailFrom));
  });
}
