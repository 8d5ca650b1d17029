import { describe, expect, test } from "vitest";
import { listen, mostSensible, startListening } from "../../core/index.ts";

const ways = (...texts: [string, number][]) => texts.map(([text, behind]) => ({ text, behind }));

describe("of the ways in which a phrase may have been heard", () => {
  test.each([
    ["upper backup ring looks he said", "upper backup ring looks decent"],
    ["stem length skew hundred and ten millimeters", "stem length two hundred and ten millimeters"],
  ])("not %s but %s, where they are close", (nonsense, sense) => {
    expect(mostSensible(ways([nonsense, 0], [sense, 0.5])).text).toBe(sense);
  });
  test("what sounds much likelier stays, whatever sense it makes", () => {
    expect(mostSensible(ways(["we had a barbecue", 0], ["we had a bad seat", 6])).text).toBe("we had a barbecue");
  });
  test("of two that make as much sense, the likelier", () => {
    expect(mostSensible(ways(["seat is worn", 0], ["seats worn", 0.1])).text).toBe("seat is worn");
  });
  test("an answer makes sense where it was asked for", () => {
    const asked = listen(startListening(), "diaphragm is torn");
    expect(mostSensible(ways(["upper", 0], ["up her", 0.2]), asked).text).toBe("upper");
  });
});
