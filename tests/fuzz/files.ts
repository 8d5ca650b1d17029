import fc from "fast-check";
import { FAMILIES } from "../../core/index.ts";
import { familySchema } from "../../core/shapes/valve.ts";
import { decodeWave } from "../../core/speech/wave.ts";
import { Refusal } from "../../server/errors.ts";
import { lookAtPicture, lookAtSound } from "../../server/keepsakes/content.ts";
import { readList } from "../../server/routes/valve-import/read-list.ts";

const LONGEST_CPU_MS = 1_000;

/** Files that people hand in, whole but for a few spoilt places: each is read or refused in words, within a second. */
export function fuzzFiles({ runs, seed }: { runs: number; seed: number }): string[] {
  const broken: string[] = [];
  const tried = (what: string, given: unknown, work: () => string | undefined) => {
    const cpu = process.cpuUsage();
    let problem: string | undefined;
    try {
      problem = work();
    } catch (cause) {
      problem = cause instanceof Refusal ? undefined : `threw ${cause instanceof Error ? cause.stack : cause}`;
    }
    const { user, system } = process.cpuUsage(cpu);
    if ((user + system) / 1000 > LONGEST_CPU_MS) problem ??= `took ${(user + system) / 1000} ms of a core`;
    if (problem) broken.push(`${what}: ${problem}\n  ${JSON.stringify(given).slice(0, 2_000)}`);
  };
  const each = <T>(values: fc.Arbitrary<T>, work: (value: T) => void) =>
    fc.assert(
      fc.property(values, (value) => void work(value)),
      { numRuns: runs, seed },
    );

  each(spoiltBytes(wave()), (bytes) => {
    tried("a WAV file", [...bytes], () => {
      const read = decodeWave(bytes);
      if (!read.ok) return read.problem.length > 10 ? undefined : "was refused without words";
      return read.value.samples.every(Number.isFinite) ? undefined : "gave a sample that is no number";
    });
    tried("a WAV file as a clip", [...bytes], () => void lookAtSound(bytes));
    tried("a WAV file as a picture", [...bytes], () => void lookAtPicture(bytes));
  });

  each(spoiltText(LIST), (text) => {
    tried("a list of valves", text, () => {
      const rows = readList(text, { site: "north", families: ["balanced_dump"] }, new Map());
      const silent = rows.find(({ becomes, problems }) => becomes === "refused" && !problems?.length);
      return silent ? `refused row ${silent.row} without words` : undefined;
    });
  });

  for (const family of Object.values(FAMILIES)) {
    each(spoiltValue(family), (value) => {
      tried("a family's file", value, () => {
        const read = familySchema.safeParse(value);
        return read.success || read.error.issues.length > 0 ? undefined : "was refused without words";
      });
    });
  }
  return broken;
}

const LIST = `tag,family,size_in,service,interval_months
LCV-213,balanced_dump,2,severe,1
PV-104,,3,,6
"a ""quoted"" tag",balanced_dump,,clean,
`;

/** 0.05 s of a tone, 16 bits, 8 kHz. */
function wave(): Uint8Array {
  const samples = 400;
  const bytes = new Uint8Array(44 + samples * 2);
  const view = new DataView(bytes.buffer);
  const name = (at: number, text: string) => bytes.set(new TextEncoder().encode(text), at);
  name(0, "RIFF");
  view.setUint32(4, 36 + samples * 2, true);
  name(8, "WAVEfmt ");
  view.setUint32(16, 16, true);
  view.setUint16(20, 1, true);
  view.setUint16(22, 1, true);
  view.setUint32(24, 8_000, true);
  view.setUint32(28, 16_000, true);
  view.setUint16(32, 2, true);
  view.setUint16(34, 16, true);
  name(36, "data");
  view.setUint32(40, samples * 2, true);
  for (let n = 0; n < samples; n++) view.setInt16(44 + n * 2, 9_000 * Math.sin(n / 3), true);
  return bytes;
}

/** Some bytes changed, most of them in the head, a piece put in, the end cut off. */
function spoiltBytes(whole: Uint8Array): fc.Arbitrary<Uint8Array> {
  const change = fc.tuple(fc.oneof(fc.nat(60), fc.nat(whole.length - 1)), fc.constantFrom(0, 1, 127, 128, 254, 255));
  return fc
    .tuple(fc.array(change, { maxLength: 6 }), fc.nat(whole.length), fc.uint8Array({ maxLength: 40 }), fc.nat(60))
    .map(([changes, end, piece, at]) => {
      const bytes = new Uint8Array([...whole.subarray(0, at), ...piece, ...whole.subarray(at, Math.max(at, end))]);
      for (const [place, value] of changes) if (place < bytes.length) bytes[place] = value;
      return bytes;
    });
}

function spoiltText(whole: string): fc.Arbitrary<string> {
  const piece = fc.oneof(
    fc.constantFrom(
      '"',
      ",",
      ";",
      "\t",
      "\n",
      "\r",
      "\r\n",
      "\0",
      "\ufeff",
      "=1+1",
      "tag",
      '"'.repeat(999),
      ",".repeat(999),
    ),
    fc.string({ unit: "binary", maxLength: 20 }),
  );
  const cut = fc.record({ at: fc.nat(whole.length), gone: fc.nat(20), piece });
  return fc
    .array(cut, { maxLength: 5 })
    .map((cuts) =>
      cuts.reduce((text, { at, gone, piece }) => text.slice(0, at) + piece + text.slice(at + gone), whole),
    );
}

/** The value with something else in one to three of its places. */
function spoiltValue(whole: unknown): fc.Arbitrary<unknown> {
  const places = placesOf(whole);
  const change = fc.tuple(fc.constantFrom(...places), fc.oneof(fc.jsonValue({ maxDepth: 2 }), fc.constant(undefined)));
  return fc.array(change, { minLength: 1, maxLength: 3 }).map((changes) => {
    const copy = structuredClone(whole);
    for (const [path, value] of changes) setAt(copy, path, value);
    return copy;
  });
}

function placesOf(value: unknown, path: string[] = []): string[][] {
  if (typeof value !== "object" || value === null) return [path];
  return [path, ...Object.entries(value).flatMap(([key, held]) => placesOf(held, [...path, key]))].filter(
    (one) => one.length > 0,
  );
}

function setAt(whole: unknown, path: readonly string[], value: unknown): void {
  let at = whole as Record<string, unknown>;
  for (const key of path.slice(0, -1)) {
    const next = at[key];
    // a place above this one was already changed
    if (typeof next !== "object" || next === null) return;
    at = next as Record<string, unknown>;
  }
  at[path.at(-1) ?? ""] = value;
}
