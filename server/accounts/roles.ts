import { RIGHTS, type Right, type Role } from "../../core/shapes/roles.ts";
import { EVERY_SITE, type SitesSeen } from "./sites-seen.ts";

/**
 * What each role may do: the one table. A person of several roles may do what any of them may.
 *
 * A person may be kept to some sites (people.sites): the same roles then hold at those and nowhere else, and what holds
 * at every site (`every_site`: its words, the whole trail) is not his to do. A lead kept to sites manages people who are
 * kept to his own sites or fewer, and nobody else (see people.ts): he can widen neither them nor himself.
 */
const MAY: Record<Role, readonly Right[]> = {
  technician: ["say", "read", "self"],
  lead: [
    "say",
    "read",
    "read_all",
    "correct",
    "review",
    "teach",
    "set_up",
    "send_mail",
    "manage_people",
    "every_site",
    "self",
  ],
  office: ["read", "read_all", "self"],
};

export function rightsOf(roles: readonly Role[], sees: SitesSeen): Right[] {
  return RIGHTS.filter((right) => {
    if (right === "every_site" && sees !== EVERY_SITE) return false;
    return right === "anyone" || roles.some((role) => MAY[role].includes(right));
  });
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
  every_site: "What holds at every site is for leads who see every site.",
  self: "This is for people who are enrolled.",
  anyone: "This is for everybody.",
};
