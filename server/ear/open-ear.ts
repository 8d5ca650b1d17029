import { readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import createModule from "soundswallower";
import { readDictionary, soundsFrom } from "../../core/speech/dictionary.ts";
import { earWords, type SiteWords } from "../../core/speech/ear-words.ts";
import type { EngineModule } from "../../core/speech/engine.ts";
import { Hearing } from "../../core/speech/hearing.ts";
import { OWN_SOUNDS } from "../../core/speech/sounds.ts";
import { DICTIONARY_FILE, readModel } from "./model-files.ts";
import { bestModel } from "./wide-model.ts";

/** Kept outside what a build empties. */
export const MODEL_FOLDER = fileURLToPath(new URL("../../dist/ear-model", import.meta.url));

/** An ear on this machine: engine, model and words. `say` gets what a person should know, such as which model it is. */
export async function openEar(say: (line: string) => void, site?: SiteWords): Promise<Hearing> {
  const { module, model, soundsOf } = await earParts(say);
  return new Hearing(module, model, earWords(soundsOf, site));
}

/** What an ear is made of, but for its words. */
export async function earParts(say: (line: string) => void) {
  const model = readModel(await bestModel(join(MODEL_FOLDER), say));
  const soundsOf = soundsFrom(readDictionary(readFileSync(DICTIONARY_FILE, "utf8")), OWN_SOUNDS);
  // what the engine prints about itself is for its makers
  const quiet = { print() {}, printErr() {}, modelBase: "none/" };
  return { module: (await createModule(quiet)) as unknown as EngineModule, model, soundsOf };
}
