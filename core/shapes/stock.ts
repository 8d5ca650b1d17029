import { z } from "zod";
import { PARTS } from "./codes.ts";

const NAME = /^([a-z_]+)(\/[\w-]+(\/\d+(\.\d+)?)?)?$/;

/** True for a part, part/family or part/family/size in inches: "packing", "seat/balanced_dump/2". */
export function isStockName(text: string): boolean {
  const read = NAME.exec(text);
  return read !== null && (PARTS as readonly string[]).includes(read[1] ?? "");
}

/** How many of each are on hand. */
export const stockSchema = z
  .record(
    z.string().max(160).refine(isStockName, "is no stock: name a part, part/family or part/family/size"),
    z.number().int().min(0).max(999_999),
  )
  .refine((stock) => Object.keys(stock).length <= 2000, "holds more than 2000 lines");

export const siteStockSchema = z.object({ site: z.string(), stock: stockSchema });
