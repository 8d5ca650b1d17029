import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Block } from "../../../../server/reports/pdf/blocks.ts";
import { lineBreaker } from "../../../../server/reports/pdf/lines.ts";
import { ROOM } from "../../../../server/reports/pdf/looks.ts";
import { type Placed, pagesOf } from "../../../../server/reports/pdf/pages.ts";
import { rowsOf } from "../../../../server/reports/pdf/rows.ts";
import { typewriter } from "./typewriter.ts";

const words = ({ row }: Placed) => row.lines.flatMap(({ line }) => line.stretches.map((one) => one.glyphs)).join("");
const set = (blocks: readonly Block[]) => pagesOf(rowsOf(blocks, lineBreaker(typewriter)));
const pagesIn = (blocks: readonly Block[]) => set(blocks).map((page) => page.map(words));

const line = (text: string): Block => ({ as: "plain", runs: [{ text, pen: "plain" }] });
const lines = (text: string, count: number) => Array.from({ length: count }, (_, n) => line(`${text} ${n}`));
const head = (text: string): Block => ({ as: "head", runs: [{ text, pen: "head" }] });
/** how many lines of plain words a page holds */
const FULL = Math.floor(ROOM.height / (10.5 * 1.2));

describe("rows shared out to pages", () => {
  it("a head is never the last on a page: it goes over with its first line", () => {
    for (let above = FULL - 4; above <= FULL; above++) {
      const pages = pagesIn([...lines("above", above), head("Follow-ups"), ...lines("below", 3)]);
      expect(pages.length, `${above} lines above`).toBe(2);
      const page = pages.find((one) => one.includes("Follow-ups"));
      expect(page?.[page.indexOf("Follow-ups") + 1], `${above} lines above`).toBe("below 0");
    }
  });

  it("a block that fits on a page is not torn", () => {
    for (let above = FULL - 8; above <= FULL; above++) {
      const pages = pagesIn([...lines("above", above), { together: [head("LCV-7"), ...lines("said", 6)] }]);
      expect(pages.filter((page) => page.some((one) => one.startsWith("said"))).length).toBe(1);
    }
  });

  it("a block longer than that begins where it is, and is torn between lines", () => {
    const pages = pagesIn([...lines("above", 10), { together: lines("said", FULL * 2) }]);
    expect(pages[0]?.slice(9, 11)).toEqual(["above 9", "said 0"]);
    expect(pages.length).toBe(3);
  });

  it("neither the first nor the last line of a paragraph is alone on a page", () => {
    const paragraph = line("word ".repeat(120));
    const size = pagesIn([paragraph])[0]?.length ?? 0;
    expect(size).toBeGreaterThan(5);
    for (let above = FULL - size; above <= FULL; above++) {
      const counts = pagesIn([...lines("above", above), paragraph]).map(
        (page) => page.filter((one) => one.startsWith("word")).length,
      );
      expect(counts, `${above} lines above`).not.toContain(1);
    }
  });

  it("a frame keeps to its rows, and a table is never torn", () => {
    const counts = Array.from({ length: 10 }, (_, n) => ({ what: `thing ${n}`, count: n }));
    const boxed: Block = {
      boxed: [{ as: "boxHead", runs: [{ text: "Hazards", pen: "alarmHead" }] }, ...lines("gas", FULL + 5)],
    };
    const pages = set([boxed, ...lines("after", FULL - 8), { head: "Totals", counts }]);
    expect(pages.flat().filter(({ row }) => row.box === 1).length).toBe(FULL + 6);
    const tables = pages.filter((page) => page.some((one) => words(one).startsWith("thing")));
    expect(tables.map((page) => page.map(words).filter((one) => /^(Totals|thing)/.test(one)).length)).toEqual([11]);
  });

  it("keeps all rows in their order, each within its page, whatever is set", () => {
    const text = fc.integer({ min: 0, max: 400 }).map((size) => "word ".repeat(size));
    const paragraph = fc.record({
      as: fc.constantFrom("title" as const, "head" as const, "plain" as const, "item" as const, "notice" as const),
      runs: text.map((one) => [{ text: one, pen: "plain" as const }]),
    });
    const parts = fc.array(paragraph, { maxLength: 8 });
    const block: fc.Arbitrary<Block> = fc.oneof(
      paragraph,
      parts.map((together) => ({ together })),
      parts.map((boxed) => ({ boxed })),
    );
    fc.assert(
      fc.property(fc.array(block, { maxLength: 20 }), (blocks) => {
        const rows = rowsOf(blocks, lineBreaker(typewriter));
        const pages = pagesOf(rows);
        expect(pages.flat().map(({ row }) => row)).toEqual(rows);
        for (const page of pages) {
          let end = 0;
          for (const { row, y } of page) {
            expect(y).toBeGreaterThanOrEqual(end - 1e-6);
            end = y + row.height;
          }
          expect(end).toBeLessThanOrEqual(ROOM.height);
        }
      }),
      { numRuns: 50 },
    );
  });
});
