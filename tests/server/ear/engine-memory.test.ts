import createModule from "soundswallower";
import { expect, test } from "vitest";
import { Engine, type EngineModule } from "../../../core/speech/engine.ts";
import { PHONE_DICTIONARY, PHONE_NETWORK } from "../../../core/speech/phone-loop.ts";
import { readModel } from "../../../server/ear/model-files.ts";
import { MODEL_FOLDER } from "../../../server/ear/open-ear.ts";
import { bestModel } from "../../../server/ear/wide-model.ts";

/** An ear is made anew whenever the words of its site change: some dozens of times in a page that stays open. */
test("an engine that is let go of gives back all its memory", async () => {
  const quiet = { print() {}, printErr() {}, modelBase: "none/" };
  const module = (await createModule(quiet)) as unknown as EngineModule;
  const model = readModel(await bestModel(MODEL_FOLDER, () => {}));
  const once = () => new Engine(module, model, PHONE_DICTIONARY, PHONE_NETWORK).free();
  once();
  const after = module.HEAPU8.length;
  for (let n = 0; n < 20; n++) once();
  expect(module.HEAPU8.length).toBe(after);
}, 120_000);
