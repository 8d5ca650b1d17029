import { describe, expect, it } from "vitest";
import { findValves } from "../../../web/state/find-valves.ts";
import type { ListedValve } from "../../../web/state/state.ts";

const VALVES = ["LCV-213", "LCV-214", "PCV-113", "FV-101", "FV-110A"].map((tag) => ({ tag }) as ListedValve);
const found = (asked: string) => findValves(VALVES, asked).map(({ tag }) => tag);

describe("finding a valve among many", () => {
  it.each([
    ["", ["LCV-213", "LCV-214", "PCV-113", "FV-101", "FV-110A"]],
    ["lcv", ["LCV-213", "LCV-214"]],
    ["L C V", ["LCV-213", "LCV-214"]],
    ["lcv 2", ["LCV-213", "LCV-214"]],
    ["13", ["LCV-213", "PCV-113"]],
    ["v-1", ["PCV-113", "FV-101", "FV-110A"]],
    ["two one three", ["LCV-213"]],
    ["two fourteen", ["LCV-214"]],
    ["thirteen", ["LCV-213", "PCV-113"]],
    ["f v one oh one", ["FV-101"]],
    ["one zero one", ["FV-101"]],
    ["ten a", ["FV-110A"]],
    ["seat worn on one side", []],
    // "one" is a word of tags, "on one" of none
    ["on one", []],
  ])("%s", (asked, tags) => expect(found(asked)).toEqual(tags));
});
