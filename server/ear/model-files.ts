import { createHash } from "node:crypto";
import { existsSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import type { AcousticModel } from "../../core/speech/engine.ts";

/** Where an acoustic model's files lie, and how wide it hears. */
export interface ModelPlace {
  folder: string;
  /** to 6.8 kHz; the narrow one hears to 3.7 kHz */
  wide: boolean;
}

/** The files of a model, by what they hold. */
export const MODEL_FILES = {
  mdef: "mdef",
  means: "means",
  variances: "variances",
  sendump: "sendump",
  transitionMatrices: "transition_matrices",
} as const;
const NOISE = ["noisedict", "noisedict.txt"] as const;

/** SHA-256 of the wide model's two largest files: the same wherever it comes from. */
const WIDE_HASHES: Readonly<Record<string, string>> = {
  means: "832019e32cac12eb318964f96f469034acb12d0348eeddc3831831a100cb4dd4",
  sendump: "8c9564c0d5bef69ca9d9bf1014abe162f071644cf02cf1fa8a483c3dc165a7a8",
};

const PACKAGE = join(dirname(createRequire(import.meta.url).resolve("soundswallower/jsonly")), "..");
/** The engine package's own model and pronouncing dictionary. */
export const NARROW: ModelPlace = { folder: join(PACKAGE, "model/en-us"), wide: false };
export const DICTIONARY_FILE = join(NARROW.folder, "dict.txt");
/** Where Debian's package pocketsphinx-en-us puts the wide model. */
export const DEBIAN: ModelPlace = { folder: "/usr/share/pocketsphinx/model/en-us/en-us", wide: true };

/** Whether all files are there and, of the wide model, are the ones that were measured. */
export function isWhole({ folder, wide }: ModelPlace): boolean {
  if (!Object.values(MODEL_FILES).every((name) => existsSync(join(folder, name)))) return false;
  if (!NOISE.some((name) => existsSync(join(folder, name)))) return false;
  return !wide || Object.entries(WIDE_HASHES).every(([name, hash]) => sha256(join(folder, name)) === hash);
}

export function readModel({ folder, wide }: ModelPlace): AcousticModel {
  const read = (name: string) => new Uint8Array(readFileSync(join(folder, name)));
  const noise = NOISE.find((name) => existsSync(join(folder, name)));
  if (!noise) throw new Error(`the acoustic model in ${folder} lacks its list of noises`);
  return {
    features: featuresOf(wide),
    mdef: read(MODEL_FILES.mdef),
    means: read(MODEL_FILES.means),
    variances: read(MODEL_FILES.variances),
    sendump: read(MODEL_FILES.sendump),
    transitionMatrices: read(MODEL_FILES.transitionMatrices),
    noiseDictionary: read(noise),
  };
}

/** The front end that each was trained with. */
export const featuresOf = (wide: boolean): AcousticModel["features"] => ({
  lowerf: 130,
  upperf: wide ? 6800 : 3700,
  nfilt: wide ? 25 : 20,
  transform: "dct",
  lifter: 22,
  feat: "1s_c_d_dd",
  svspec: "0-12/13-25/26-38",
  cmn: "live",
  varnorm: false,
});

const sha256 = (path: string) => createHash("sha256").update(readFileSync(path)).digest("hex");
