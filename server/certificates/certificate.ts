import { createHash, generateKeyPairSync, type KeyObject, randomBytes, sign } from "node:crypto";
import { isIP } from "node:net";
import {
  bits,
  type Der,
  explicit,
  implicit,
  integer,
  moment,
  objectId,
  octets,
  sequence,
  set,
  text,
  yes,
} from "./der.ts";

/**
 * Certificates of a local authority (RFC 5280): one authority that the site's phones are told to trust, and from it a
 * certificate for the server. Keys are P-256, signatures ECDSA with SHA-256: every phone in use reads both.
 */
export interface Authority {
  certificate: string;
  key: KeyObject;
  name: string;
}

/** The longest that phones take a server's certificate whose authority a person trusted: 825 days, less a margin. */
export const SERVER_DAYS = 820;
export const AUTHORITY_DAYS = 3650;

const ECDSA_SHA256 = sequence(objectId("1.2.840.10045.4.3.2"));
const OID = {
  commonName: "2.5.4.3",
  subjectKeyId: "2.5.29.14",
  keyUsage: "2.5.29.15",
  subjectAltName: "2.5.29.17",
  basicConstraints: "2.5.29.19",
  nameConstraints: "2.5.29.30",
  authorityKeyId: "2.5.29.35",
  extendedKeyUsage: "2.5.29.37",
  serverAuth: "1.3.6.1.5.5.7.3.1",
};

/**
 * An authority that can vouch for names and addresses of private networks and for the names given, and for nothing
 * else (RFC 5280, 4.2.1.10): whoever steals its key cannot pass for a bank before the phones that trust it.
 */
export function makeAuthority(name: string, names: readonly string[], from: Date): Authority {
  const { publicKey, privateKey } = generateKeyPairSync("ec", { namedCurve: "P-256" });
  const certificate = signed({
    subject: name,
    issuer: name,
    publicKey,
    signer: privateKey,
    signerPublic: publicKey,
    from,
    days: AUTHORITY_DAYS,
    extensions: [
      extension(OID.basicConstraints, sequence(yes(), integer(Buffer.from([0]))), true),
      // keyCertSign and cRLSign: bits 5 and 6
      extension(OID.keyUsage, bits(Buffer.from([0b0000_0110]), 1), true),
      extension(OID.nameConstraints, sequence(permitted(names)), true),
    ],
  });
  return { certificate, key: privateKey, name };
}

/** A server's certificate for these names and addresses, vouched for by the authority, with its private key as PEM. */
export function makeServer(
  authority: Authority,
  authorityPublic: KeyObject,
  names: readonly string[],
  from: Date,
): { certificate: string; key: string } {
  const { publicKey, privateKey } = generateKeyPairSync("ec", { namedCurve: "P-256" });
  const certificate = signed({
    subject: names[0] ?? "localhost",
    issuer: authority.name,
    publicKey,
    signer: authority.key,
    signerPublic: authorityPublic,
    from,
    days: SERVER_DAYS,
    extensions: [
      extension(OID.basicConstraints, sequence(), true),
      // digitalSignature: bit 0
      extension(OID.keyUsage, bits(Buffer.from([0b1000_0000]), 7), true),
      extension(OID.extendedKeyUsage, sequence(objectId(OID.serverAuth))),
      extension(OID.subjectAltName, sequence(...names.map(generalName))),
    ],
  });
  return { certificate, key: pem(privateKey) };
}

export const pem = (key: KeyObject): string => key.export({ type: "pkcs8", format: "pem" }).toString();

interface ToSign {
  subject: string;
  issuer: string;
  publicKey: KeyObject;
  signer: KeyObject;
  signerPublic: KeyObject;
  from: Date;
  days: number;
  extensions: Der[];
}

function signed(given: ToSign): string {
  // a day earlier: a phone's clock may be behind
  const start = new Date(given.from.getTime() - 86_400_000);
  const end = new Date(start.getTime() + given.days * 86_400_000);
  const body = sequence(
    explicit(0, integer(Buffer.from([2]))),
    integer(randomBytes(16)),
    ECDSA_SHA256,
    nameOf(given.issuer),
    sequence(moment(start), moment(end)),
    nameOf(given.subject),
    given.publicKey.export({ type: "spki", format: "der" }),
    explicit(
      3,
      sequence(
        extension(OID.subjectKeyId, octets(keyId(given.publicKey))),
        extension(OID.authorityKeyId, sequence(implicit(0, keyId(given.signerPublic)))),
        ...given.extensions,
      ),
    ),
  );
  const whole = sequence(body, ECDSA_SHA256, bits(sign("sha256", body, given.signer)));
  const lines = whole.toString("base64").replaceAll(/.{1,64}/g, "$&\n");
  return `-----BEGIN CERTIFICATE-----\n${lines}-----END CERTIFICATE-----\n`;
}

const nameOf = (common: string): Der => sequence(set(sequence(objectId(OID.commonName), text(common))));

function extension(oid: string, value: Der, critical = false): Der {
  return sequence(objectId(oid), ...(critical ? [yes()] : []), octets(value));
}

/** RFC 7093, method 1, over the whole of the key as written: any value does that is the key's own. */
const keyId = (key: KeyObject): Buffer =>
  createHash("sha256")
    .update(key.export({ type: "spki", format: "der" }))
    .digest()
    .subarray(0, 20);

const generalName = (name: string): Der =>
  isIP(name) ? implicit(7, addressBytes(name)) : implicit(2, Buffer.from(name, "ascii"));

/** Whether an authority made for `names` may vouch for this one. */
export function mayVouch(names: readonly string[], name: string): boolean {
  if (!isIP(name)) return [...PRIVATE_NAMES, ...names].some((one) => name === one || name.endsWith(`.${one}`));
  return names.includes(name) || PRIVATE_ADDRESSES.some(([address, mask]) => isWithin(name, address, mask));
}

function isWithin(name: string, address: string, mask: string): boolean {
  const [own, base, held] = [addressBytes(name), addressBytes(address), addressBytes(mask)];
  return own.length === base.length && own.every((byte, at) => (byte & (held[at] ?? 0)) === base[at]);
}

const PRIVATE_NAMES = ["localhost", "local", "lan", "internal", "home.arpa"];
/** Address and mask, each in full. */
const PRIVATE_ADDRESSES: readonly [string, string][] = [
  ["127.0.0.0", "255.0.0.0"],
  ["10.0.0.0", "255.0.0.0"],
  ["172.16.0.0", "255.240.0.0"],
  ["192.168.0.0", "255.255.0.0"],
  ["169.254.0.0", "255.255.0.0"],
  ["::1", "ffff:ffff:ffff:ffff:ffff:ffff:ffff:ffff"],
  ["fc00::", "fe00::"],
  ["fe80::", "ffc0::"],
];

function permitted(names: readonly string[]): Der {
  const hosts = [...PRIVATE_NAMES, ...names.filter((name) => !isIP(name))];
  const own = names.filter((name) => isIP(name)).map((name): [string, string] => [name, wholeMask(name)]);
  const trees = [
    ...hosts.map((name) => sequence(implicit(2, Buffer.from(name, "ascii")))),
    ...[...PRIVATE_ADDRESSES, ...own].map(([address, mask]) =>
      sequence(implicit(7, Buffer.concat([addressBytes(address), addressBytes(mask)]))),
    ),
  ];
  // [0] permittedSubtrees, in place of the sequence's own tag
  const list = sequence(...trees);
  list[0] = 0xa0;
  return list;
}

const wholeMask = (name: string): string =>
  isIP(name) === 4 ? "255.255.255.255" : "ffff:ffff:ffff:ffff:ffff:ffff:ffff:ffff";

function addressBytes(address: string): Buffer {
  if (isIP(address) === 4) return Buffer.from(address.split(".").map(Number));
  const [head = "", tail = ""] = address.split("::");
  const groups = (part: string) => (part ? part.split(":") : []);
  const gap = 8 - groups(head).length - groups(tail).length;
  const all = [...groups(head), ...new Array(address.includes("::") ? gap : 0).fill("0"), ...groups(tail)];
  return Buffer.from(all.flatMap((group) => [Number.parseInt(group, 16) >> 8, Number.parseInt(group, 16) & 0xff]));
}
