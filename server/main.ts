import { ENROL_FIRST } from "./accounts/caller.ts";
import { systemClock } from "./clock.ts";
import { helpText } from "./commands/arguments.ts";
import { StoreBusy, StoreRefused } from "./db/failures.ts";
import { readSettings, SETTINGS_HELP } from "./env.ts";
import { serve } from "./serve.ts";

/** Starts the server; on SIGTERM or SIGINT finishes what it acknowledged and leaves. */
const HELP = helpText(
  "npm start",
  "Opens or creates the database and serves pages and API on one port.",
  { help: { help: "this text" } },
  Object.keys(SETTINGS_HELP) as (keyof typeof SETTINGS_HELP)[],
);

const WAITS = `Nobody is enrolled yet, and it is open to the network, so it answers nobody. Enrol the first lead:
  ${ENROL_FIRST}
`;

const [unknown] = process.argv.slice(2).filter((word) => word !== "--help");
const settings = readSettings(process.env, process.cwd());
if (unknown !== undefined) fail(`${unknown} is not known here; settings come from the environment, see --help`);
else if (process.argv.includes("--help")) process.stdout.write(HELP);
else if (!settings.ok) fail(settings.problem);
else await start(settings.value);

async function start(value: Extract<typeof settings, { ok: true }>["value"]): Promise<void> {
  try {
    const served = await serve(value, systemClock);
    process.stdout.write(`Handsfull is at ${served.address}\n`);
    if (served.waitsForLead) process.stdout.write(WAITS);
    let leaving = false;
    const leave = async () => {
      if (leaving) return;
      leaving = true;
      await served.stop();
      process.exit(0);
    };
    process.on("SIGTERM", leave);
    process.on("SIGINT", leave);
  } catch (cause) {
    if (cause instanceof StoreRefused || cause instanceof StoreBusy) return fail(cause.message);
    const code = (cause as { code?: string }).code;
    if (code === "EADDRINUSE") return fail(`Port ${value.port} on ${value.host} is taken: set PORT to another one.`);
    if (code === "EACCES" || code === "EADDRNOTAVAIL") {
      return fail(
        `Cannot listen on ${value.host} port ${value.port} (${code}): set HOST and PORT to what this machine has.`,
      );
    }
    throw cause;
  }
}

function fail(words: string): void {
  process.stderr.write(`${words}\n`);
  process.exit(1);
}
