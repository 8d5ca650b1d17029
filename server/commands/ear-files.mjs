import { createHash } from "node:crypto";
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { brotliCompressSync, constants } from "node:zlib";

/**
 * Puts what the page's ear needs into dist/web/ear: an acoustic model, the dictionary of the words it may hear, and a list of
 * them by content. Plain JavaScript, like the build that calls it; what is written in TypeScript is read by vite.
 */

/** Every so many of a general dictionary's short words go along: what a site may teach is put together from them. */
const ONE_IN = 12;

export async function putEarFiles(root, say) {
  const { runnerImport } = await import("vite");
  const get = async (path) => (await runnerImport(join(root, path), { configFile: false, logLevel: "warn" })).module;
  const { bestModel } = await get("server/ear/wide-model.ts");
  const { DICTIONARY_FILE, MODEL_FILES, readModel } = await get("server/ear/model-files.ts");
  const place = await bestModel(join(root, "dist/ear-model"), say);
  const model = readModel(place);
  const files = new Map(Object.entries(MODEL_FILES).map(([part, name]) => [name, Buffer.from(model[part])]));
  files.set("noisedict", Buffer.from(model.noiseDictionary));
  files.set("dictionary.txt", Buffer.from(await trimmed(get, readFileSync(DICTIONARY_FILE, "utf8"))));

  const out = join(root, "dist/web/ear");
  mkdirSync(out, { recursive: true });
  for (const [name, bytes] of files) {
    writeFileSync(join(out, name), bytes);
    // a higher quality takes ten times as long for a hundredth of the bytes
    const params = { [constants.BROTLI_PARAM_QUALITY]: 9 };
    writeFileSync(join(out, `${name}.br`), brotliCompressSync(bytes, { params }));
  }
  const all = [...files];
  const list = {
    features: model.features,
    wide: place.wide,
    bytes: all.reduce((sum, [, bytes]) => sum + bytes.length, 0),
    files: Object.fromEntries(all.map(([name, bytes]) => [name, createHash("sha256").update(bytes).digest("hex")])),
  };
  writeFileSync(join(out, "model.json"), `${JSON.stringify(list)}\n`);
}

/** The dictionary's lines of the words that may be heard, of the words those are put together from, and of some more. */
async function trimmed(get, whole) {
  const { readDictionary, soundsFrom, dictionaryText } = await get("core/speech/dictionary.ts");
  const { earWords } = await get("core/speech/ear-words.ts");
  const { OWN_SOUNDS } = await get("core/speech/sounds.ts");
  const dictionary = readDictionary(whole);
  const asked = new Set([...dictionary.keys()].filter((word, at) => /^[a-z]{3,7}$/.test(word) && at % ONE_IN === 0));
  // whatever was looked up on the way is what the page will look up
  const watched = {
    get(word) {
      const sounds = dictionary.get(word);
      if (sounds) asked.add(word);
      return sounds;
    },
  };
  earWords(soundsFrom(watched, OWN_SOUNDS));
  return dictionaryText(asked, (word) => dictionary.get(word) ?? []);
}
