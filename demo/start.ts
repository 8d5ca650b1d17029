import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { ENROL_FIRST } from "../server/accounts/caller.ts";
import { helpText, readArguments, wrongUse } from "../server/commands/arguments.ts";
import { StoreRefused } from "../server/db/failures.ts";
import { readSettings, type Settings } from "../server/env.ts";
import { keptFolder } from "../server/keepsakes/files.ts";
import { type Served, serve } from "../server/serve.ts";
import { SITES, VALVES } from "./field.ts";
import { fill } from "./fill.ts";
import { tellStory } from "./story.ts";

/** The same server on a database of its own, filled with an invented field. Touches no other data. */
const OPTIONS = {
  fresh: { help: "forget the demo's database and tell its story again, up to today" },
  help: { help: "this text" },
};
const HELP = helpText(
  "npm run demo [-- --fresh]",
  "Serves an invented producing field: three sites, two dozen valves, 18 months of jobs. Nothing in it is real.\nIts database is the folder demo/ inside DATA_DIR; no other database is touched.",
  OPTIONS,
  ["PORT", "HOST", "DATA_DIR", "LOG_LEVEL", "TLS_CERT", "TLS_KEY"],
);

const asked = readArguments(process.argv.slice(2), OPTIONS);
if (!asked.ok) wrongUse("demo", asked.problem);
if (asked.value.words.length > 0) wrongUse("demo", `${asked.value.words[0]} is not known here; see --help`);
if (asked.value.options.has("help")) process.stdout.write(HELP);
else {
  // DATABASE_URL may name somebody's real log: invented jobs never go there
  const read = readSettings({ LOG_LEVEL: "warn", ...process.env, DATABASE_URL: "" }, process.cwd());
  if (!read.ok) wrongUse("demo", read.problem);
  const folder = join(read.value.dataDir, "demo");
  await start(
    {
      ...read.value,
      dataDir: folder,
      mailFolder: join(folder, "mail"),
      databaseUrl: `file:${join(folder, "handsfull.db")}`,
    },
    asked.value.options.has("fresh"),
  );
}

async function start(settings: Settings, fresh: boolean): Promise<void> {
  // written once the whole story is told: a database without it was left half filled
  const mark = join(settings.dataDir, "invented.json");
  if (fresh || !existsSync(mark)) {
    for (const end of ["", "-wal", "-shm"]) rmSync(join(settings.dataDir, `handsfull.db${end}`), { force: true });
    rmSync(keptFolder(settings.dataDir), { recursive: true, force: true });
    rmSync(mark, { force: true });
  }
  mkdirSync(settings.dataDir, { recursive: true });
  // told by its own door on this machine, before it is opened any wider: there nobody is let in who is not enrolled
  if (!existsSync(mark)) await tell(settings, mark);
  const served = await listen(settings);
  const stop = () => {
    served.stop().then(() => process.exit(0));
  };
  process.on("SIGINT", stop);
  process.on("SIGTERM", stop);
  const about = JSON.parse(readFileSync(mark, "utf8")) as About;
  process.stdout.write(whatToLookAt(served.address, about));
  if (served.waitsForLead)
    process.stdout.write(`It is open to the network and answers nobody until a lead is enrolled:
  DATA_DIR=${settings.dataDir} ${ENROL_FIRST}
`);
}

/** Serves, or says in one line why not. */
async function listen(settings: Settings): Promise<Served> {
  try {
    return await serve(settings);
  } catch (cause) {
    if (cause instanceof StoreRefused) wrongUse("demo", cause.message);
    if ((cause as { code?: string }).code !== "EADDRINUSE") throw cause;
    return wrongUse("demo", `port ${settings.port} on ${settings.host} is taken: set PORT to another one`);
  }
}

interface About {
  note: string;
  site: string;
  day: string;
  jobs: number;
  phrases: number;
}

async function tell(settings: Settings, mark: string): Promise<void> {
  const began = Date.now();
  const served = await listen({ ...settings, host: "127.0.0.1", port: 0, tls: undefined });
  const { jobs, busy } = tellStory(new Date().toISOString().slice(0, 10));
  await fill(served.address, jobs);
  await served.stop();
  const phrases = jobs.reduce((sum, one) => sum + one.phrases.length, 0);
  const note = "An invented field: no place, person, valve or job in this database is real.";
  const about: About = { note, site: busy.site.site, day: busy.day, jobs: jobs.length, phrases };
  writeFileSync(mark, `${JSON.stringify(about, null, 2)}\n`);
  process.stdout.write(`Told the story in ${((Date.now() - began) / 1000).toFixed(1)} s.\n`);
}

function whatToLookAt(address: string, { note, site, day, jobs, phrases }: About): string {
  return `
${note}
${SITES.length} sites, ${VALVES.length} valves, ${jobs} jobs, ${phrases} phrases over 18 months, up to ${day}.

  the bench, where phrases are said      ${address}
  a day with six jobs and a hazard       ${address}#/desk?site=${site}&day=${day}
  that day's report                      ${address}report?site=${site}&day=${day}
  a seat that wears by a pattern         ${address}#/valve/LCV-213?site=${site}
  what is due, overdue first             ${address}#/due

Ctrl+C stops it and keeps its data; npm run demo -- --fresh tells the story again.
`;
}
