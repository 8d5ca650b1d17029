import { type Code, type CodeOf, TABLES, type WordKind } from "./tables.ts";

/**
 * What the log calls a code: the name in its row. Five codes stand in two tables (`packing` and `actuator` are a part
 * and a test, `missing` a condition and a command, `min` a unit and a bound, `severe` a severity and a service): `kind`
 * says which is meant, and without it the part comes before the test, the condition before the command, and so on.
 */
export function nameOf<Kind extends WordKind>(code: CodeOf[Kind], kind: Kind): string;
export function nameOf(code: Code): string;
export function nameOf(code: Code, kind?: WordKind): string {
  const named = names();
  const name = kind ? named.get(`${kind} ${code}`) : KINDS.map((one) => named.get(`${one} ${code}`)).find(Boolean);
  // a place that is a part too ("body") has the part's row alone
  return name ?? named.get(`part ${code}`) ?? code.replaceAll("_", " ");
}

const KINDS = Object.keys(TABLES) as WordKind[];

let made: Map<string, string> | undefined;
function names(): Map<string, string> {
  made ??= new Map(KINDS.flatMap((kind) => TABLES[kind].map((row) => [`${kind} ${row.code}`, row.name] as const)));
  return made;
}
