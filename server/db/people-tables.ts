import { sql } from "drizzle-orm";
import { type Kit, lite } from "./kit.lite.ts";

/**
 * Who may do what, and what was done. No token, code or password lies here in clear: of the first two the SHA-256,
 * of the last an Argon2id hash. Nobody is removed: who left has `leftAt`, a revoked device `revokedAt`.
 */
export function peopleTables({ table, text, integer, index, uniqueIndex }: Kit) {
  const people = table(
    "people",
    {
      id: text("id").primaryKey(),
      name: text("name").notNull(),
      /** the name as it is compared: one person a name among those who have not left */
      nameKey: text("name_key").notNull(),
      /** roles as a JSON list */
      roles: text("roles").notNull(),
      /** the sites he or she is kept to, as a JSON list of their keys; null: to none, and sees every site */
      sites: text("sites"),
      enrolledAt: text("enrolled_at").notNull(),
      leftAt: text("left_at"),
      /** Argon2id, in PHC form; null: nothing to sign in with */
      password: text("password"),
    },
    (t) => [uniqueIndex("people_by_name").on(t.nameKey).where(sql`left_at is null`)],
  );

  const devices = table(
    "devices",
    {
      id: text("id").primaryKey(),
      person: text("person")
        .notNull()
        .references(() => people.id),
      name: text("name").notNull(),
      tokenHash: text("token_hash").notNull(),
      enrolledAt: text("enrolled_at").notNull(),
      /** when the enrolment ends by itself; null: never */
      until: text("until"),
      revokedAt: text("revoked_at"),
    },
    (t) => [uniqueIndex("devices_by_token").on(t.tokenHash), index("devices_of_person").on(t.person)],
  );

  const oneTimeCodes = table("one_time_codes", {
    codeHash: text("code_hash").primaryKey(),
    person: text("person")
      .notNull()
      .references(() => people.id),
    for: text("for", { enum: ["device", "password"] }).notNull(),
    /** when the device enrolled by it ends by itself */
    until: text("until"),
    expiresAt: text("expires_at").notNull(),
    usedAt: text("used_at"),
  });

  const sessions = table(
    "sessions",
    {
      id: text("id").primaryKey(),
      person: text("person")
        .notNull()
        .references(() => people.id),
      tokenHash: text("token_hash").notNull(),
      beganAt: text("began_at").notNull(),
      /** moved on as it is used, a few minutes coarse */
      usedAt: text("used_at").notNull(),
      endedAt: text("ended_at"),
    },
    (t) => [uniqueIndex("sessions_by_token").on(t.tokenHash), index("sessions_of_person").on(t.person)],
  );

  /** Tries at signing in, counted by name and by address. Whatever was typed as a name may be a password: hashed too. */
  const signInTries = table("sign_in_tries", {
    key: text("key").primaryKey(),
    failures: integer("failures").notNull(),
    /** when the count began */
    since: text("since").notNull(),
    lockedUntil: text("locked_until"),
  });

  /** One row an act, chained: see server/audit. Rows are only ever added. */
  const audit = table("audit", {
    n: integer("n").primaryKey(),
    at: text("at").notNull(),
    person: text("person"),
    /** how the one who did it was known: open, device:ID, session:ID, command, nobody */
    by: text("by").notNull(),
    act: text("act").notNull(),
    /** what it was about, as canonical JSON; never a token, a password or what was said at a valve */
    about: text("about").notNull(),
    hash: text("hash").notNull(),
  });

  return { people, devices, oneTimeCodes, sessions, signInTries, audit };
}

/** As libSQL has them; every query is written with these: see kit.pg.ts. */
export const { people, devices, oneTimeCodes, sessions, signInTries, audit } = peopleTables(lite);
