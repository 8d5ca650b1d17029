/** The roles a person may have, and what a call may need. Plain lists, without zod. */

export const ROLES = ["technician", "lead", "office"] as const;
export type Role = (typeof ROLES)[number];

/** `self` is what anybody known may do with his own sign-in; `anyone` needs nobody to be known. */
export const RIGHTS = [
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
  "anyone",
] as const;
export type Right = (typeof RIGHTS)[number];
