/**
 * A font's table of places (GPOS) as fontkit reads it, as far as kerning goes.
 * OpenType 1.9, chapters "GPOS: pair adjustment positioning" and "Common table formats: coverage, class definition".
 */
export interface PlacesTable {
  featureList: readonly { tag: string; feature: { lookupListIndexes: readonly number[] } }[];
  lookupList: Listed<{ lookupType: number; subTables: Listed<PairTable> }>;
}
interface Value {
  xAdvance?: number;
}
type PairTable =
  | { version: 1; coverage: Coverage; pairSets: Listed<Iterable<{ secondGlyph: number; value1: Value }>> }
  | {
      version: 2;
      coverage: Coverage;
      classDef1: Classes;
      classDef2: Classes;
      classRecords: Listed<Listed<{ value1: Value }>>;
    };
type Coverage =
  | { version: 1; glyphs: readonly number[] }
  | { version: 2; rangeRecords: readonly { start: number; end: number; startCoverageIndex: number }[] };
type Classes =
  | { version: 1; startGlyph: number; classValueArray: Listed<number> }
  | { version: 2; classRangeRecord: readonly { start: number; end: number; class: number }[] };
/** Read at once, or piece by piece when asked for. */
type Listed<T> = readonly T[] | { length: number; get(at: number): T };

const PAIRS = 2;

/**
 * What the font adds between two glyphs, in its own units. This alone of all the rules of a font, since applying all of
 * them takes half of the time in which a short report is set; and the scripts that need the others are not in it.
 */
export function pairKerning({ featureList, lookupList }: PlacesTable): (left: number, right: number) => number {
  const kern = featureList.find((one) => one.tag === "kern");
  const lookups = (kern?.feature.lookupListIndexes ?? []).flatMap((index) => {
    const lookup = at(lookupList, index);
    return lookup?.lookupType === PAIRS ? [all(lookup.subTables)] : [];
  });
  return (left, right) => {
    let sum = 0;
    // of the tables of one lookup the first that knows the pair counts
    for (const tables of lookups) {
      for (const table of tables) {
        const value = valueIn(table, left, right);
        if (!value) continue;
        sum += value.xAdvance ?? 0;
        break;
      }
    }
    return sum;
  };
}

function valueIn(table: PairTable, left: number, right: number): Value | undefined {
  const index = covered(table.coverage, left);
  if (index < 0) return undefined;
  if (table.version === 2)
    return at(at(table.classRecords, classOf(table.classDef1, left)) ?? [], classOf(table.classDef2, right))?.value1;
  for (const pair of at(table.pairSets, index) ?? []) if (pair.secondGlyph === right) return pair.value1;
  return undefined;
}

function covered(coverage: Coverage, glyph: number): number {
  if (coverage.version === 1) return coverage.glyphs.indexOf(glyph);
  const range = coverage.rangeRecords.find((one) => one.start <= glyph && glyph <= one.end);
  return range ? range.startCoverageIndex + glyph - range.start : -1;
}

/** A glyph that is in no class is in class 0. */
function classOf(classes: Classes, glyph: number): number {
  if (classes.version === 1) return at(classes.classValueArray, glyph - classes.startGlyph) ?? 0;
  return classes.classRangeRecord.find((one) => one.start <= glyph && glyph <= one.end)?.class ?? 0;
}

function at<T>(list: Listed<T>, index: number): T | undefined {
  if (index < 0 || index >= list.length) return undefined;
  return "get" in list ? list.get(index) : list[index];
}
const all = <T>(list: Listed<T>): T[] =>
  Array.from({ length: list.length }, (_, index) => at(list, index)).filter((one) => one !== undefined);
