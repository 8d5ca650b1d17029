import fc from "fast-check";

/** A schema as an OpenAPI 3.1 document holds it: JSON Schema, as far as ours use it. */
export interface Schema {
  $ref?: string;
  type?: string | string[];
  const?: unknown;
  enum?: unknown[];
  anyOf?: Schema[];
  oneOf?: Schema[];
  allOf?: Schema[];
  properties?: Record<string, Schema>;
  required?: string[];
  additionalProperties?: boolean | Schema;
  items?: Schema;
  minItems?: number;
  maxItems?: number;
  minLength?: number;
  maxLength?: number;
  pattern?: string;
  format?: string;
  minimum?: number;
  maximum?: number;
  exclusiveMinimum?: number;
}

/** Ids that stand in the log already: what is sent again, corrected, decided upon. */
export const KNOWN_IDS = [1, 2, 3, 4].map((n) => `019530d2-7a00-7000-8000-00000000000${n}`);

/** What people, spreadsheets and programs that go wrong put where something else belongs. */
const HOSTILE = [
  "",
  " ",
  "\u0000",
  "\ud800",
  "=1+1",
  "../../etc/passwd",
  "' OR 1=1 --",
  "<img src=x onerror=alert(1)>",
  "\r\nBcc: x@example.com",
  "\u202eabc",
  "__proto__",
  "9".repeat(400),
  "a".repeat(5_000),
  -0,
  -1,
  1e308,
  2 ** 53,
  null,
  true,
  [],
  {},
  [[[[[]]]]],
  { constructor: { prototype: { x: 1 } } },
];

/** Mostly what the schema takes, so that it gets past the door; here and there, at any depth, something else. */
export function fromSchema(schema: Schema, components: Record<string, Schema>, depth = 0): fc.Arbitrary<unknown> {
  const good = goodOf(schema, components, depth);
  const odd = fc.oneof(fc.constantFrom(...HOSTILE), fc.jsonValue({ maxDepth: 2 }));
  return fc.oneof({ weight: 30, arbitrary: good }, { weight: 1, arbitrary: odd });
}

function goodOf(schema: Schema, components: Record<string, Schema>, depth: number): fc.Arbitrary<unknown> {
  const of = (one: Schema) => fromSchema(one, components, depth + 1);
  if (depth > 6) return fc.constant(null);
  if (schema.$ref) return goodOf(components[schema.$ref.split("/").at(-1) ?? ""] ?? {}, components, depth);
  if ("const" in schema) return fc.constant(schema.const);
  if (schema.enum) return fc.constantFrom(...schema.enum);
  const either = schema.anyOf ?? schema.oneOf;
  if (either) return fc.oneof(...either.map(of));
  if (schema.allOf) return goodOf(Object.assign({}, ...schema.allOf), components, depth);
  const type = Array.isArray(schema.type) ? schema.type[0] : schema.type;
  switch (type) {
    case "object":
      return objectOf(schema, of);
    case "array":
      return fc.array(of(schema.items ?? {}), {
        minLength: Math.min(schema.minItems ?? 0, 3),
        maxLength: Math.min(schema.maxItems ?? 3, 3),
      });
    case "integer":
      return fc.integer({ min: schema.minimum ?? -10, max: Math.min(schema.maximum ?? 1000, 1_000_000) });
    case "number":
      return fc.double({ min: schema.minimum ?? schema.exclusiveMinimum ?? -10, max: schema.maximum ?? 1000 });
    case "boolean":
      return fc.boolean();
    case "string":
      return textOf(schema);
    default:
      return fc.jsonValue({ maxDepth: 2 });
  }
}

function objectOf(schema: Schema, of: (one: Schema) => fc.Arbitrary<unknown>): fc.Arbitrary<unknown> {
  const properties = Object.entries(schema.properties ?? {});
  if (properties.length === 0 && typeof schema.additionalProperties === "object")
    return fc.dictionary(fc.string({ maxLength: 20 }), of(schema.additionalProperties), { maxKeys: 3 });
  const required = new Set(schema.required);
  const known = properties.map(([name, one]) => {
    const value = of(one).map((held) => [[name, held]] as [string, unknown][]);
    const absent = fc.constant([] as [string, unknown][]);
    return fc.oneof({ weight: required.has(name) ? 40 : 3, arbitrary: value }, { weight: 1, arbitrary: absent });
  });
  return fc.tuple(...known).map((pairs) => Object.fromEntries(pairs.flat()));
}

function textOf({ format, pattern, minLength = 0, maxLength = 60 }: Schema): fc.Arbitrary<unknown> {
  if (format === "uuid") return fc.oneof(fc.uuid(), fc.constantFrom(...KNOWN_IDS));
  if (format === "email") return fc.emailAddress();
  if (format?.startsWith("date"))
    return fc
      .date({ min: new Date("2000-01-01"), max: new Date("2099-12-31"), noInvalidDate: true })
      .map((at) => (format === "date" ? at.toISOString().slice(0, 10) : at.toISOString()));
  if (pattern) return fc.oneof(matching(pattern), fc.string({ maxLength: 10 }));
  return fc.string({ unit: "binary", minLength, maxLength: Math.max(minLength, Math.min(maxLength, 60)) });
}

function matching(pattern: string): fc.Arbitrary<string> {
  try {
    return fc.stringMatching(new RegExp(pattern));
  } catch {
    // a pattern with a look-around cannot be turned round: any text then
    return fc.string({ maxLength: 20 });
  }
}
