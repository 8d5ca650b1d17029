import { isAbsolute, join, resolve } from "node:path";
import { z } from "zod";
import { readSmtpUrl, type SmtpServer } from "./mail/smtp-server.ts";

const empty = (schema: z.ZodType<string | undefined>) =>
  z.preprocess((value) => (value === "" ? undefined : value), schema);

const settingsSchema = z.object({
  PORT: z.preprocess((v) => (v === "" ? undefined : v), z.coerce.number().int().min(0).max(65535).default(8460)),
  HOST: empty(z.string().optional()),
  DATA_DIR: empty(z.string().optional()),
  DATABASE_URL: empty(z.string().optional()),
  SMTP_URL: empty(z.string().optional()),
  MAIL_FROM: empty(
    z
      .string()
      .regex(/^[^\p{Cc}]*[^\s<>@]+@[^\s<>@]+>?$/u, 'write an address, such as "Handsfull <log@example.com>"')
      .optional(),
  ),
  TLS_CERT: empty(z.string().optional()),
  TLS_KEY: empty(z.string().optional()),
  LOG_LEVEL: z.preprocess(
    (v) => (v === "" ? undefined : v),
    z.enum(["debug", "info", "warn", "error", "silent"]).default("info"),
  ),
});

export interface Settings {
  port: number;
  host: string;
  databaseUrl: string;
  dataDir: string;
  /** the mail server that SMTP_URL names */
  smtp: SmtpServer | undefined;
  mailFrom: string;
  /** where reports go as .eml without a mail server */
  mailFolder: string;
  tls: { cert: string; key: string } | undefined;
  logLevel: "debug" | "info" | "warn" | "error" | "silent";
}

const SENDER = "Handsfull <log@localhost>";

/** What each setting means, for `--help`. */
export const SETTINGS_HELP = {
  PORT: "port to listen on (8460)",
  HOST: "address to listen on (127.0.0.1; 0.0.0.0 opens it to the network, which is a decision)",
  DATA_DIR: "folder of the database (./data)",
  DATABASE_URL: "file:/path/to.db, a libSQL address, or postgres://user@host/database; replaces DATA_DIR",
  SMTP_URL: "mail server for reports, smtp[s]://[user:password@]host[:port]; without one they go into DATA_DIR/mail",
  MAIL_FROM: "sender of reports (Handsfull <log@localhost>)",
  TLS_CERT: "certificate file, PEM; with TLS_KEY the server speaks https",
  TLS_KEY: "key file, PEM",
  LOG_LEVEL: "debug, info, warn, error or silent (info)",
} as const;

/** Reads the settings once; a wrong one is answered with its name and what it should be. */
export function readSettings(
  env: Record<string, string | undefined>,
  cwd: string,
): { ok: true; value: Settings } | { ok: false; problem: string } {
  const read = settingsSchema.safeParse(env);
  if (!read.success) {
    const wrong = read.error.issues.map((issue) => `${issue.path.join(".")}: ${issue.message}`).join("; ");
    return { ok: false, problem: `These settings cannot be used: ${wrong}` };
  }
  const { TLS_CERT: cert, TLS_KEY: key, ...set } = read.data;
  if (Boolean(cert) !== Boolean(key))
    return { ok: false, problem: "TLS_CERT and TLS_KEY go together: set both or neither" };
  const smtp = set.SMTP_URL === undefined ? undefined : readSmtpUrl(set.SMTP_URL);
  if (smtp && !smtp.ok) return { ok: false, problem: smtp.problem };
  const dataDir = resolve(cwd, set.DATA_DIR ?? "data");
  return {
    ok: true,
    value: {
      port: set.PORT,
      host: set.HOST ?? "127.0.0.1",
      dataDir,
      databaseUrl: absolute(set.DATABASE_URL, cwd) ?? `file:${join(dataDir, "handsfull.db")}`,
      smtp: smtp?.ok ? smtp.value : undefined,
      mailFrom: set.MAIL_FROM ?? SENDER,
      mailFolder: join(dataDir, "mail"),
      tls: cert && key ? { cert, key } : undefined,
      logLevel: set.LOG_LEVEL,
    },
  };
}

/** `file:data/x.db` is meant from where the command was started. */
function absolute(url: string | undefined, cwd: string): string | undefined {
  if (!url?.startsWith("file:") || url.startsWith("file:/")) return url;
  const path = url.slice("file:".length);
  return `file:${isAbsolute(path) ? path : resolve(cwd, path)}`;
}
