import type { AuditRecord, Role, Site } from "../../../core/index.ts";
import { clockThere, dayWords } from "../../state/time-words.ts";

const ROLE_WORDS: Record<Role, string> = { technician: "technician", lead: "lead", office: "office" };

export const rolesWords = (roles: readonly Role[]): string => roles.map((role) => ROLE_WORDS[role]).join(" and ");

/** "kept to North and South". `known` gives the names of sites by their keys. */
export function keptToWords(kept: readonly string[], known: readonly Pick<Site, "site" | "name">[]): string {
  const names = kept.map((site) => known.find((one) => one.site === site)?.name ?? site);
  return `kept to ${new Intl.ListFormat("en").format(names)}`;
}

/** A moment by the clock on the wall here. */
export function momentWords(iso: string): string {
  const at = new Date(iso);
  const local = new Date(at.getTime() - at.getTimezoneOffset() * 60_000).toISOString();
  return `${dayWords(local.slice(0, 10))}, ${clockThere(local)}`;
}

export const untilWords = (iso: string): string => `until ${momentWords(iso)}`;

const ACTS: Record<string, string> = {
  person_enrolled: "enrolled",
  roles_changed: "changed the roles of",
  sites_changed: "changed the sites of",
  person_left: "let go",
  code_made: "made a code for",
  device_enrolled: "enrolled a device of",
  device_revoked: "revoked a device of",
  signed_in: "signed in",
  sign_in_refused: "was refused at signing in",
  signed_out: "signed out",
  password_set: "set a password",
  password_change_refused: "was refused at changing the password",
  phrase_corrected: "corrected a phrase",
  phrase_decided: "decided a phrase",
  phrases_accepted: "accepted what was certain of a job",
  question_answered: "answered a question",
  job_signed: "signed a job",
  job_reopened: "opened a signed job again",
  database_imported: "read an export into the empty log",
  site_moved: "moved a site to another log",
  site_taken_over: "took a site over from another log",
  words_taught: "taught words",
  site_set_up: "set up site",
  valve_set_up: "set up valve",
  family_set_up: "set up valve family",
  family_taken_back: "took back valve family",
  follow_up_given: "gave somebody what is open at",
  follow_up_taken_away: "took from somebody what is open at",
  stock_set: "said what is on hand at",
  keeping_set: "said how long sound is kept at",
  report_set_up: "said who gets the report of",
  calendar_opened: "made a calendar address for",
  calendar_closed: "took back the calendar address of",
  report_handed_over: "had the report sent of",
  mail_sent: "sent the report of",
};

const BY_WORDS: Record<string, string> = {
  command: "Somebody at the server’s machine",
  open: "Somebody at the server’s machine",
  server: "The server by itself",
};

/** One act as a line: who did what to whom. `names` are people's by their ids. */
export function actWords(record: AuditRecord, names: ReadonlyMap<string, string>): string {
  const { about, act } = record;
  const person =
    typeof about.person === "string" && about.person !== record.person ? names.get(about.person) : undefined;
  const thing = [about.tag, about.family, about.site].find((one) => typeof one === "string" && one !== "") as
    | string
    | undefined;
  const who = record.name ?? BY_WORDS[record.by] ?? "Somebody unknown";
  return [who, ACTS[act] ?? act.replaceAll("_", " "), person ?? thing].filter(Boolean).join(" ");
}
