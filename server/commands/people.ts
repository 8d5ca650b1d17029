import { makeCode } from "../accounts/codes.ts";
import { revokeDevice } from "../accounts/devices.ts";
import { type Done, everyone, letGo, personNamed } from "../accounts/people.ts";
import type { Store } from "../db/open.ts";
import { helpText, readArguments, wrongUse } from "./arguments.ts";
import { AT_COMMAND, linkAt } from "./at-command.ts";
import { withStore } from "./with-store.ts";

/** Who is enrolled, with what devices; and, from the server's own machine, ending either. */
const OPTIONS = {
  revoke: { value: "ID", help: "revoke a device, or let a person go: either's id as printed" },
  password: { value: "NAME", help: "print a link with which this person chooses a new password" },
  help: { help: "this text" },
};
const HELP = helpText(
  "npm run -s people",
  "Lists people, their roles, the sites they are kept to and their devices.",
  OPTIONS,
  ["DATA_DIR", "DATABASE_URL", "HOST", "PORT", "TLS_CERT", "TLS_KEY"],
);

const asked = readArguments(process.argv.slice(2), OPTIONS);
if (!asked.ok) wrongUse("people", asked.problem);
const { options, words } = asked.value;
if (options.has("help")) process.stdout.write(HELP);
else {
  if (words.length > 0) wrongUse("people", `${words[0]} is not known here; see --help`);
  const id = options.get("revoke");
  const name = options.get("password");
  await withStore("people", async (store, settings) => {
    if (id !== undefined) return tell(await revoke(store, id), `${id} is revoked`);
    if (name !== undefined) {
      const made = await store.write(async (tx) => {
        const person = await personNamed(tx, name);
        return person && (await makeCode(tx, AT_COMMAND, person, { for: "password", until: null }));
      });
      if (!made) return fail(`nobody here is called ${name}; without --password everybody is listed`);
      process.stdout.write(`${linkAt(settings, made.path)}\n`);
      return;
    }
    process.stdout.write(await listed(store));
  });
}

/** A device's id ends the device, a person's everything of theirs. */
function revoke(store: Store, id: string): Promise<Done<undefined>> {
  return store.write(async (tx) => {
    const device = await revokeDevice(tx, AT_COMMAND, id);
    if (device.ok) return device;
    const person = await letGo(tx, AT_COMMAND, id);
    if (person.ok || person.status !== 404) return person;
    return { ok: false, status: 404, problem: `${id} is the id of no person and no device here` };
  });
}

async function listed(store: Store): Promise<string> {
  const people = await everyone(store, AT_COMMAND);
  if (people.length === 0) return "Nobody is enrolled yet.\n";
  const lines = people.flatMap((one) => [
    `${one.name} (${one.roles.join(", ")}${one.sites ? `; kept to ${one.sites.join(", ")}` : ""})${one.leftAt ? `, left ${one.leftAt}` : ""}  ${one.id}`,
    ...one.devices.map((device) => {
      const end = device.revokedAt
        ? `revoked ${device.revokedAt}`
        : device.until
          ? `until ${device.until}`
          : "enrolled";
      return `  ${device.name}, ${end}  ${device.id}`;
    }),
  ]);
  return `${lines.join("\n")}\n`;
}

function tell(done: Done<undefined>, words: string): void {
  if (done.ok) process.stdout.write(`${words}\n`);
  else fail(done.problem);
}

function fail(problem: string): void {
  process.stderr.write(`people: ${problem}\n`);
  process.exitCode = 1;
}
