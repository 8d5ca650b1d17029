import { RIGHTS, type Right, type Role } from "../../core/shapes/roles.ts";

/** What each role may do: the one table. A person of several roles may do what any of them may. */
const MAY: Record<Role, readonly Right[]> = {
  technician: ["say", "read", "self"],
  lead: ["say", "read", "read_all", "correct", "review", "teach", "set_up", "send_mail", "manage_people", "self"],
  office: ["read", "read_all", "self"],
};

export function rightsOf(roles: readonly Role[]): Right[] {
  return RIGHTS.filter((right) => right === "anyone" || roles.some((role) => MAY[role].includes(right)));
}

/** Everything: while nobody is enrolled, whoever sits at the machine is let do all. */
export const EVERY_RIGHT: readonly Right[] = RIGHTS;

/** What a person lacks, in words for the refusal. */
export const RIGHT_WORDS: Record<Right, string> = {
  say: "Saying phrases is for technicians and leads.",
  read: "Reading jobs and valves is for people who are enrolled.",
  read_all: "Reports and figures of the fleet are for leads and the office.",
  correct: "Correcting a phrase is for leads.",
  review: "Reviewing and signing jobs is for leads.",
  teach: "Teaching the site a word is for leads.",
  set_up: "Setting up sites, valves and stock is for leads.",
  send_mail: "Sending mail is for leads.",
  manage_people: "People and devices are for leads.",
  self: "This is for people who are enrolled.",
  anyone: "This is for everybody.",
};
