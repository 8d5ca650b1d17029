import { z } from "zod";
import { RIGHTS, ROLES } from "./roles.ts";
import { keepable, siteKeySchema } from "./served.ts";

/** People, what they may do, and what they carry to show who they are. Moments are ISO 8601 in UTC. */

export const roleSchema = z.enum(ROLES);

const UNKEEPABLE = "holds a character that cannot be kept (NUL or half a surrogate pair): send it without";
const line = (most: number) =>
  z
    .string()
    .transform((text) => text.trim().replace(/\s+/g, " "))
    .pipe(z.string().min(1).max(most).refine(keepable, UNKEEPABLE));

export const personNameSchema = line(100);
export const deviceNameSchema = line(60);
/** Long enough that guessing is hopeless; no rule about its letters, which only makes people write them down. */
export const passwordSchema = z.string().min(12, "a password has at least 12 characters").max(200);
export const codeSchema = z.string().min(1).max(200);
/** The sites a person is kept to, each once. */
export const keptToSchema = z
  .array(siteKeySchema)
  .min(1, "name at least one site, or leave it out for every site")
  .max(200)
  .transform((sites) => [...new Set(sites)].sort());

/** Who the caller is, for the page. */
export const callerSchema = z.object({
  /** nobody is enrolled yet, and this call came from the machine itself */
  open: z.boolean(),
  id: z.string().optional(),
  name: z.string().optional(),
  roles: z.array(roleSchema),
  rights: z.array(z.enum(RIGHTS)),
  /** the sites he or she is kept to; absent: sees every site */
  sites: z.array(z.string()).optional(),
  by: z.enum(["open", "device", "session"]),
  /** on a device: what it is called, and until when it is enrolled */
  device: z.string().optional(),
  until: z.string().optional(),
  /** whether this person has a password to sign in with */
  password: z.boolean(),
});
export type Caller = z.infer<typeof callerSchema>;

export const deviceSchema = z.object({
  id: z.string(),
  name: z.string(),
  enrolledAt: z.string(),
  /** the end of a shift, say; absent: until revoked */
  until: z.string().optional(),
  revokedAt: z.string().optional(),
});
export type Device = z.infer<typeof deviceSchema>;

export const personSchema = z.object({
  id: z.string(),
  name: z.string(),
  roles: z.array(roleSchema),
  /** the sites he or she is kept to; absent: sees every site */
  sites: z.array(z.string()).optional(),
  password: z.boolean(),
  enrolledAt: z.string(),
  /** no longer one of us: nothing of his or hers is let in any more */
  leftAt: z.string().optional(),
  devices: z.array(deviceSchema),
});
export type Person = z.infer<typeof personSchema>;
export const peopleSchema = z.object({ people: z.array(personSchema) });

export const newPersonSchema = z.object({
  name: personNameSchema,
  roles: z.array(roleSchema).min(1),
  /** left out: every site */
  sites: keptToSchema.optional(),
});
/** What is left out stays; `sites` null is every site. */
export const personChangeSchema = z
  .object({ roles: z.array(roleSchema).min(1).optional(), sites: keptToSchema.nullable().optional() })
  .refine((change) => change.roles !== undefined || change.sites !== undefined, "send roles, sites or both");
export type PersonChange = z.infer<typeof personChangeSchema>;

/** Asking for a one-time code: to enrol a device, or to set a password. */
export const codeWishSchema = z.object({
  for: z.enum(["device", "password"]),
  /** when the device's enrolment ends; absent: when it is revoked */
  until: z.iso.datetime({ offset: true }).optional(),
});
export const oneTimeCodeSchema = z.object({
  code: z.string(),
  for: z.enum(["device", "password"]),
  /** the page's address that takes it, to stand behind the server's own */
  path: z.string(),
  expiresAt: z.string(),
});
export type OneTimeCode = z.infer<typeof oneTimeCodeSchema>;

export const enrolmentSchema = z.object({ code: codeSchema, device: deviceNameSchema.optional() });
export const enrolledSchema = z.object({ token: z.string(), caller: callerSchema });
export type Enrolled = z.infer<typeof enrolledSchema>;

export const signInSchema = z.object({ name: z.string().min(1).max(200), password: z.string().min(1).max(200) });
export const firstPasswordSchema = z.object({ code: codeSchema, password: passwordSchema });
export const passwordChangeSchema = z.object({ was: z.string().min(1).max(200), password: passwordSchema });

/** One act, as the audit trail keeps it. */
export const auditRecordSchema = z.object({
  n: z.number().int(),
  at: z.string(),
  /** who did it; absent: nobody known (the machine itself, or a refused stranger) */
  person: z.string().optional(),
  name: z.string().optional(),
  by: z.string(),
  act: z.string(),
  about: z.record(z.string(), z.unknown()),
  hash: z.string(),
});
export type AuditRecord = z.infer<typeof auditRecordSchema>;
export const auditListSchema = z.object({ records: z.array(auditRecordSchema) });
