import { z } from "zod";
import { keepable } from "./keepable.ts";
import { familySchema } from "./valve.ts";

/** A valve family as a person sets it up at a site: the shape of ours, held to what can be true. */

const KEEPABLE = "holds a character that cannot be kept (NUL or half a surrogate pair): send it without";
const words = (most: number) => z.string().trim().min(1).max(most).refine(keepable, KEEPABLE);
const SOURCE = "say where the figure is from";
const source = z.string().trim().min(1, SOURCE).max(300).refine(keepable, KEEPABLE);
const size = z.number().positive().max(100);
const sizes = z.tuple([size, size]).refine(([from, to]) => from <= to, "the smaller size first");
const months = z.number().positive().max(240);

export const familyCodeSchema = z
  .string()
  .trim()
  .max(60)
  .regex(/^[a-z][a-z0-9_]*$/, "a code is small letters, digits and _, and begins with a letter");

const { shape } = familySchema;
export const siteFamilySchema = familySchema
  .extend({
    family: familyCodeSchema,
    name: words(80),
    about: z.string().trim().max(2000).refine(keepable, KEEPABLE),
    source,
    bill: shape.bill.min(1, "a valve has at least one part").max(200),
    inspection: shape.inspection.max(200),
    torque: z
      .array(
        shape.torque.element
          .extend({ size_in: sizes, min: z.number().positive(), max: z.number().positive(), source })
          .refine(({ min, max }) => min <= max, "the lower limit first"),
      )
      .max(200),
    bolts: z.array(shape.bolts.element.extend({ size_in: sizes, count: z.number().int().min(4).max(200) })).max(200),
    intervals: z.object({ seat_inspection_months: months, seal_replacement_months: months, source }),
    rated_cv: z.array(z.object({ size_in: size, cv: z.number().positive(), source })).max(200),
    xT: z.number().positive().max(1).optional(),
    kits: shape.kits.max(50),
    sources: z.record(z.string().max(80), source).optional(),
  })
  .superRefine(({ bill, inspection }, say) => {
    const parts = bill.map((line) => line.part);
    const twice = parts.find((part, at) => parts.indexOf(part) !== at);
    if (twice)
      say.addIssue({ code: "custom", path: ["bill"], message: `${twice} stands in it twice: once, with its count` });
    const other = inspection.find((part) => !parts.includes(part));
    if (other) say.addIssue({ code: "custom", path: ["inspection"], message: `${other} is not in the bill of parts` });
  });

/** One set up at a site, and how often it was: a device that has an older one asks again. */
export const ownFamilySchema = z.object({ number: z.number().int(), data: familySchema });
export type OwnFamily = z.infer<typeof ownFamilySchema>;
export const siteFamiliesSchema = z.object({ site: z.string(), families: z.array(familySchema) });
export type SiteFamilies = z.infer<typeof siteFamiliesSchema>;

/** Sets a family up, or says anew what it is; or takes one back, after which ours of that code holds, if there is one. */
export const familySentSchema = z.union([
  z.object({ family: siteFamilySchema }),
  z.object({ withdraw: familyCodeSchema }),
]);
export type FamilySent = z.infer<typeof familySentSchema>;
