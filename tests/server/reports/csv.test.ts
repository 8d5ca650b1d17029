import { stringify } from "csv-stringify/sync";
import fc from "fast-check";
import { expect, it } from "vitest";
import { csvOf } from "../../../server/reports/csv.ts";

/** A lone line feed is quoted as well (RFC 4180, 2.6): some readers would end the row there. */
const AS_OURS = {
  bom: true,
  escape_formulas: true,
  record_delimiter: "windows",
  quote_record_delimiter: true,
} as const;

it("writes the same bytes as another writer that keeps spreadsheets from running formulas", () => {
  const sign = fc.constantFrom(..."=+-@|\t\r\n\",;'＝＋－＠ a1é😀".split(/(?:)/u));
  const field = fc.oneof(
    fc.array(sign, { maxLength: 6 }).map((all) => all.join("")),
    fc.double({ noNaN: true, noDefaultInfinity: true }),
    fc.integer(),
  );
  fc.assert(
    fc.property(fc.array(fc.array(field, { minLength: 2, maxLength: 5 }), { minLength: 1, maxLength: 4 }), (rows) => {
      expect(csvOf(rows)).toBe(stringify(rows, AS_OURS));
    }),
    { numRuns: 3_000 },
  );
});
