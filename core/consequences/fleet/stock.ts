import type { CarryLine } from "../../shapes/fleet.ts";

/** On hand: parts by name, or by part, family and size where a name fits several lines ("seat/balanced_dump/2"). */
export type Stock = Readonly<Record<string, number>>;

/**
 * Each stock figure goes to the one line it names; one that names none, or several, is said and not guessed.
 * `standing`: the stock is a site's whole store, of which most is not needed now: that is passed over.
 */
export function takeStock(
  stock: Stock,
  lines: readonly CarryLine[],
  standing = false,
): { unclear: string[]; given: Map<number, number> } {
  const given = new Map<number, number>();
  const unclear: string[] = [];
  for (const [name, count] of Object.entries(stock)) {
    const [part, family, size] = name.split("/");
    const fits = lines.flatMap((line, index) =>
      line.part === part && (!family || line.family === family) && (!size || String(line.size_in ?? "") === size)
        ? [index]
        : [],
    );
    const [only] = fits;
    if (fits.length === 1 && only !== undefined) given.set(only, (given.get(only) ?? 0) + count);
    else if (fits.length > 1 || !standing)
      unclear.push(
        fits.length === 0
          ? `${name}: nothing of the kind is needed`
          : `${name}: fits ${fits.length} lines; name the family and size, as in ${part}/${lines[fits[0] ?? 0]?.family}/${lines[fits[0] ?? 0]?.size_in ?? ""}`,
      );
  }
  return { unclear, given };
}
