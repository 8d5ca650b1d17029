import { deviceNameSchema, keptToSchema, personNameSchema, roleSchema } from "../../core/shapes/people.ts";
import { ROLES, type Role } from "../../core/shapes/roles.ts";
import { makeCode } from "../accounts/codes.ts";
import { enrolDevice } from "../accounts/devices.ts";
import { addPerson, changePerson, personNamed, rolesOf } from "../accounts/people.ts";
import type { Tx } from "../db/writer.ts";
import { now, readMoment } from "../moments.ts";
import { helpText, readArguments, wrongUse } from "./arguments.ts";
import { AT_COMMAND, linkAt } from "./at-command.ts";
import { withStore } from "./with-store.ts";

/** Enrols a device for a person, making the person where nobody bears the name. The token is printed once. */
const OPTIONS = {
  name: { value: "NAME", help: "the person, as the log shows it; who is enrolled already gets one more device" },
  role: { value: ROLES.join("|"), help: "what he or she may do; may be given several times" },
  site: {
    value: "SITE",
    help: "keeps him or her to this site; may be given several times. Not given: every site, or as before",
  },
  device: { value: "NAME", help: "what the device is called (a device)" },
  until: { value: "TIME", help: "when this device's enrolment ends by itself, ISO 8601 with offset (never)" },
  help: { help: "this text" },
};
const HELP = helpText(
  'npm run -s enrol -- --name "A. Person" --role technician|lead|office',
  "Prints the bearer token of an enrolled device, once, to standard output. For a lead or the office a link to\nchoose a password follows on standard error; it can be opened once, within an hour.",
  OPTIONS,
  ["DATA_DIR", "DATABASE_URL", "HOST", "PORT", "TLS_CERT", "TLS_KEY"],
);

const asked = readArguments(process.argv.slice(2), OPTIONS);
if (!asked.ok) wrongUse("enrol", asked.problem);
const { options, every, words } = asked.value;
if (options.has("help")) process.stdout.write(HELP);
else {
  if (words.length > 0) wrongUse("enrol", `${words[0]} is not known here; see --help`);
  const name = personNameSchema.safeParse(options.get("name") ?? "");
  if (!name.success) wrongUse("enrol", '--name is needed, at most 100 characters: --name "A. Person"');
  const device = deviceNameSchema.safeParse(options.get("device") ?? "a device");
  if (!device.success) wrongUse("enrol", "--device is a name of at most 60 characters");
  const roles = rolesFrom(every.get("role") ?? []);
  const sites = sitesFrom(every.get("site") ?? []);
  const until = untilFrom(options.get("until"));
  await withStore("enrol", async (store, settings) => {
    const done = await store.write(async (tx) => {
      const person = await personWith(tx, name.data, roles, sites);
      if (typeof person === "string") return person;
      const enrolled = await enrolDevice(tx, AT_COMMAND, person, { name: device.data, until });
      const signsIn = rolesOf(person).some((role) => role !== "technician") && person.password === null;
      const code = signsIn ? await makeCode(tx, AT_COMMAND, person, { for: "password", until: null }) : undefined;
      return { token: enrolled.token, code };
    });
    if (typeof done === "string") {
      process.stderr.write(`enrol: ${done}\n`);
      process.exitCode = 1;
      return;
    }
    process.stdout.write(`${done.token}\n`);
    if (!done.code) return;
    process.stderr.write(
      `To sign in at the desk, ${name.data} chooses a password here, once, within an hour:\n  ${linkAt(settings, done.code.path)}\n`,
    );
  });
}

/** The person of that name with these roles beside those had so far, kept to these sites where any are given; or why not. */
async function personWith(tx: Tx, name: string, roles: readonly Role[], sites: string[] | undefined) {
  const found = await personNamed(tx, name);
  if (!found && roles.length === 0) return `nobody is called ${name} yet: say what he or she may do with --role`;
  const made = found
    ? await changePerson(tx, AT_COMMAND, found.id, { roles: [...rolesOf(found), ...roles], sites })
    : await addPerson(tx, AT_COMMAND, { name, roles, sites });
  return made.ok ? made.value : made.problem;
}

function rolesFrom(given: readonly string[]): Role[] {
  return given.map((word) => {
    const role = roleSchema.safeParse(word);
    if (!role.success) wrongUse("enrol", `--role ${word} is none: ${ROLES.join(", ")}`);
    return role.data;
  });
}

function sitesFrom(given: readonly string[]): string[] | undefined {
  if (given.length === 0) return undefined;
  const sites = keptToSchema.safeParse(given);
  if (!sites.success) wrongUse("enrol", "--site is the short key of a site that is set up");
  return sites.data;
}

function untilFrom(text: string | undefined): string | null {
  if (text === undefined) return null;
  const moment = readMoment(text);
  if (!moment || moment.utc <= now().utc) {
    wrongUse("enrol", `--until ${text} is no time to come: write 2026-03-04T18:00:00-07:00`);
  }
  return moment.utc;
}
