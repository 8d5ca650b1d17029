import { describe, expect, it } from "vitest";
import { listen, startListening } from "../../../core/index.ts";
import { meantBy } from "../../../web/state/answers.ts";
import type { Question } from "../../../web/state/questions.ts";

const session = (...said: string[]) => said.reduce(listen, startListening());
const doubt: Question = { is: "doubt", phrase: "a", heard: "" };
const close: Question = { is: "close", missing: ["plug"] };
const phrases = (...texts: string[]) => ({ is: "phrases", texts });

/** What was said, what is asked, the answer, and what it means. */
const CASES: [said: string, asked: Question | undefined, answer: string, meant: object][] = [
  ["seat worn one side", doubt, "yes", { is: "right" }],
  ["seat worn one side", doubt, "That's right.", { is: "right" }],
  ["seat worn one side", doubt, "seat worn one side", { is: "right" }],
  ["seat worn one side", doubt, "no", phrases("scratch that")],
  ["bonnet bolts torqued to thirty five", doubt, "no, twenty eight", phrases("correction, twenty eight")],
  ["bonnet bolts torqued to thirty five", doubt, "no twenty eight", phrases("correction, twenty eight")],
  ["seat worn one side", doubt, "no, plug cracked", phrases("scratch that", "plug cracked")],
  ["seat worn one side", doubt, "no, plug", phrases("correction, plug")],
  ["seat worn one side", doubt, "cage is clean", phrases("cage is clean")],
  ["seat worn one side", doubt, "scratch that", phrases("scratch that")],
  // the no of the next phrase is no answer: taken for one it would say the opposite
  ["bonnet bolts torqued to thirty five", doubt, "no leak at sixty psi", phrases("no leak at sixty psi")],
  ["seat worn one side", doubt, "no bubbles", phrases("no bubbles")],
  ["seat worn one side", doubt, "no cracks in the cage", phrases("no cracks in the cage")],
  ["seat worn one side", doubt, "no wear on the plug", phrases("no wear on the plug")],
  ["seat worn one side", doubt, "no plug cracked", phrases("scratch that", "plug cracked")],
  // said back and found wrong, with nothing asked
  ["bonnet bolts torqued to thirty five", undefined, "no, twenty eight", phrases("no, twenty eight")],
  ["seat worn one side", undefined, "no, both sides", phrases("correction, both sides")],
  ["seat worn one side", undefined, "no cracks in the cage", phrases("no cracks in the cage")],
  ["replace the seat", undefined, "done", phrases("correction, already replaced it")],
  ["seat worn", { is: "follow_up", question: "" }, "one side", phrases("correction, one side")],
  ["diaphragm torn", { is: "reader", question: "" }, "upper", phrases("upper")],
  ["close it out", close, "yes", { is: "close" }],
  ["close it out", close, "close it out", { is: "close" }],
  ["close it out", close, "no", { is: "go_on" }],
  ["close it out", close, "plug looks good", phrases("plug looks good")],
];

describe("an answer in a word", () => {
  it.each(CASES)("%s, asked %j: %s", (said, asked, answer, meant) => {
    expect(meantBy(answer, asked, session(said))).toEqual(meant);
  });

  it("is read by any reader as it was meant at the bench", () => {
    const meant = (said: string, asked: Question | undefined, answer: string) => {
      const heard = session(said);
      const found = meantBy(answer, asked, heard);
      return (found.is === "phrases" ? found.texts.reduce(listen, heard) : heard).entries;
    };
    expect(meant("bonnet bolts torqued to thirty five", doubt, "no, twenty eight")).toMatchObject([{ value: 28 }]);
    expect(meant("seat worn one side", doubt, "no, plug cracked")).toMatchObject([
      { part: "plug", condition: "cracked" },
    ]);
    expect(meant("replace the seat", undefined, "done")).toMatchObject([{ work: "replaced", status: "done" }]);
    expect(meant("seat worn", { is: "follow_up", question: "" }, "one side")).toMatchObject([{ extent: "one_side" }]);
    expect(meant("diaphragm torn", { is: "reader", question: "" }, "upper")).toMatchObject([
      { part: "upper_diaphragm" },
    ]);
    expect(meant("seat worn one side", doubt, "no")).toEqual([]);
  });
});
