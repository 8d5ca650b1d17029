import { createPrivateKey, createPublicKey, X509Certificate } from "node:crypto";
import { chmod, mkdir, readFile, rename, writeFile } from "node:fs/promises";
import { isIP } from "node:net";
import { hostname, networkInterfaces } from "node:os";
import { join, relative } from "node:path";
import { type Authority, makeAuthority, makeServer, mayVouch, pem, SERVER_DAYS } from "../certificates/certificate.ts";
import { readSettings } from "../env.ts";
import { now } from "../moments.ts";
import { helpText, readArguments, wrongUse } from "./arguments.ts";

/** Makes a certificate for this server and, the first time, the local authority that vouches for it. */
const OPTIONS = {
  name: { value: "NAME", help: "a further name or address phones open it by; may be given several times" },
  out: { value: "FOLDER", help: "where the files go (DATA_DIR/tls)" },
  help: { help: "this text" },
};
const HELP = helpText(
  "npm run -s cert -- [--name NAME] ...",
  "Writes authority.crt, to be trusted once on each phone, and server.crt and server.key, to start with. Run it again\nto renew or to add a name: the authority stays, and so does the phones' trust in it.",
  OPTIONS,
  ["DATA_DIR"],
);
const HOST_NAME = /^(?=.{1,253}$)[a-z0-9](?:[a-z0-9-]{0,62})(?:\.[a-z0-9][a-z0-9-]{0,62})*$/;

const asked = readArguments(process.argv.slice(2), OPTIONS);
if (!asked.ok) wrongUse("cert", asked.problem);
const { options, every, words } = asked.value;
if (options.has("help")) process.stdout.write(HELP);
else {
  if (words.length > 0) wrongUse("cert", `${words[0]} is not known here; see --help`);
  const settings = readSettings(process.env, process.cwd());
  if (!settings.ok) wrongUse("cert", settings.problem);
  const folder = options.get("out") ?? join(settings.value.dataDir, "tls");
  const given = (every.get("name") ?? []).map((name) => name.toLowerCase());
  const odd = given.find((name) => !isIP(name) && !HOST_NAME.test(name));
  if (odd !== undefined) wrongUse("cert", `--name ${odd} is neither a host name nor an address`);
  await makeCertificates(folder, given);
}

async function makeCertificates(folder: string, given: readonly string[]): Promise<void> {
  const wanted = [...new Set([...given, ...ownNames()])];
  const at = (file: string) => join(folder, file);
  await mkdir(folder, { recursive: true, mode: 0o700 });
  const from = new Date(now().utc);
  let authority = await authorityIn(folder);
  const isNew = authority === undefined;
  if (!authority) {
    authority = { ...makeAuthority(`Log authority of ${hostname()}`, wanted, from), names: wanted };
    await writePrivately(at("authority.key"), pem(authority.key));
    await writeFile(at("authority.names"), wanted.join("\n"));
    await writeFile(at("authority.crt"), authority.certificate);
  }
  const vouches = authority.names;
  const barred = given.find((name) => !mayVouch(vouches, name));
  if (barred !== undefined) {
    wrongUse(
      "cert",
      `the authority in ${folder} was not made for ${barred}, and phones would refuse it: move authority.* away, run this again, and have each phone trust the new one`,
    );
  }
  // a name or address that this machine came by later and the authority cannot vouch for would spoil the others
  const names = wanted.filter((name) => mayVouch(vouches, name));
  const vouching = new X509Certificate(authority.certificate);
  const { certificate, key } = makeServer(authority, vouching.publicKey, names, from);
  await writePrivately(at("server.key"), key);
  await writeFile(at("server.crt"), certificate);
  const here = (file: string) => relative(process.cwd(), at(file)) || at(file);
  process.stdout.write(
    [
      `${isNew ? "Made" : "Kept"} the authority ${here("authority.crt")}: trust it once on each phone (README, "On a phone").`,
      `  its fingerprint, SHA-256: ${vouching.fingerprint256}`,
      `  whoever has ${here("authority.key")} can vouch in its name: keep it away from this machine until you renew`,
      `Made ${here("server.crt")} for ${names.join(", ")}: good for ${SERVER_DAYS - 1} days.`,
      `Start with  TLS_CERT=${here("server.crt")} TLS_KEY=${here("server.key")} HOST=0.0.0.0 npm start`,
      "",
    ].join("\n"),
  );
}

/** The authority made earlier, with the names it may vouch for beside those of private networks. */
async function authorityIn(folder: string): Promise<(Authority & { names: string[] }) | undefined> {
  const read = (file: string) =>
    readFile(join(folder, file), "utf8").catch((problem: NodeJS.ErrnoException) => {
      if (problem.code === "ENOENT") return undefined;
      throw problem;
    });
  const [certificate, keyText] = [await read("authority.crt"), await read("authority.key")];
  if (certificate === undefined) return undefined;
  if (keyText === undefined) {
    wrongUse(
      "cert",
      `${join(folder, "authority.key")} is away: bring it back to renew, or move authority.crt away too`,
    );
  }
  const key = createPrivateKey(keyText);
  const vouching = new X509Certificate(certificate);
  const own = createPublicKey(key).export({ type: "spki", format: "der" });
  if (!vouching.publicKey.export({ type: "spki", format: "der" }).equals(own)) {
    wrongUse("cert", `authority.key in ${folder} is not the key of authority.crt`);
  }
  const names = ((await read("authority.names")) ?? "").split("\n").filter(Boolean);
  return { certificate, key, name: vouching.subject.replace(/^CN=/, ""), names };
}

/** Readable by its owner from the first byte on, and never half written. */
async function writePrivately(path: string, words: string): Promise<void> {
  await writeFile(`${path}.new`, words, { mode: 0o600 });
  await chmod(`${path}.new`, 0o600);
  await rename(`${path}.new`, path);
}

/** What this machine is called and where it stands in the networks it is in. */
function ownNames(): string[] {
  const name = hostname().toLowerCase();
  const addresses = Object.values(networkInterfaces()).flatMap((all) =>
    (all ?? []).filter((one) => !one.internal && !one.address.startsWith("fe80")).map((one) => one.address),
  );
  const hosts = HOST_NAME.test(name) ? [name, ...(name.includes(".") ? [] : [`${name}.local`])] : [];
  return ["localhost", ...hosts, "127.0.0.1", "::1", ...addresses];
}
