/** Step 4: "three bubbles at fifty": counted without the time, they tell of a test and of no rate yet. */

import type { Unit } from "../shapes/codes.ts";
import type { Chunk } from "./chunks.ts";
import type { Scene } from "./scene.ts";

/** Bubbles or drops that a number stands before, with no minute behind; `unit`: what they would be with one. */
export function bubblesAt(scene: Scene, at: number): { thing: string; unit: Unit } | undefined {
  const thing = /^(bubble|drop)s?$/.exec(scene.at(at)?.text ?? "")?.[1];
  if (!thing || scene.at(at)?.senses.unit || !scene.at(at - 1)?.number) return undefined;
  // "six drops of oil"; "two bubbles at the packing", "packing has two bubbles": of that part, and not of the seat
  if (/^of/.test(scene.at(at + 1)?.text ?? "")) return undefined;
  if (scene.chunks.some((one, index) => index !== at && isElse(one))) return undefined;
  // "make that two bubbles": the rate just said, put right
  const rated = scene.carry.last.some((entry) => entry.type === "reading" && entry.quantity === "leak_rate");
  if (rated && scene.at(at + 1)?.text !== "at") return undefined;
  return { thing, unit: thing === "bubble" ? "bubble/min" : "drop/min" };
}

const isElse = ({ unknown, talk, senses: { part } }: Chunk): boolean =>
  unknown || talk || (part !== undefined && part !== "seat" && part !== "valve");
