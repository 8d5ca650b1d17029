import fc from "fast-check";
import ICAL from "ical.js";
import { expect, it } from "vitest";
import { calendarLines, calendarText } from "../../../server/reports/calendar-lines.ts";

it("any text is read back by another reader as it was, out of lines that every calendar takes", () => {
  const letter = fc.constantFrom(...'\\;,:\n"nN é中😀x'.split(/(?:)/u));
  const text = fc.array(letter, { minLength: 1, maxLength: 300 }).map((all) => all.join(""));
  fc.assert(
    fc.property(text, (text) => {
      const written = calendarLines(["BEGIN:VCALENDAR", `DESCRIPTION:${calendarText(text)}`, "END:VCALENDAR"]);
      expect(new ICAL.Component(ICAL.parse(written)).getFirstPropertyValue("description")).toBe(text);
      // RFC 5545, 3.1: no line longer than 75 octets; a letter cut in two would not be UTF-8 any more
      for (const line of written.split("\r\n")) {
        expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
        expect(line).not.toMatch(/[\r\n\p{Surrogate}]/u);
      }
    }),
    { numRuns: 1_000 },
  );
});
