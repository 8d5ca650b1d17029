import type { Part } from "../shapes/codes.ts";
import { PART_ROWS } from "./parts.ts";

let names: Map<Part, string> | undefined;

/** What the log calls a part. */
export function nameOfPart(part: Part): string {
  names ??= new Map(PART_ROWS.map((row) => [row.code, row.name]));
  return names.get(part) ?? part.replaceAll("_", " ");
}
