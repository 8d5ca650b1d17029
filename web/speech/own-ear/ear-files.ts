import type { AcousticModel } from "../../../core/speech/engine.ts";
import type { Coming } from "./messages.ts";

/**
 * The ear's files, some megabytes that seldom change: fetched once, kept apart from the page's own, and each fetched again
 * only where its content is another. What is kept is used at once; whether there is newer is asked behind it.
 */

const NAMES = ["mdef", "means", "variances", "sendump", "transition_matrices", "noisedict", "dictionary.txt"] as const;
type Name = (typeof NAMES)[number];

/** What the build says of them, `/ear/model.json`. */
interface Manifest {
  features: AcousticModel["features"];
  /** whether the model hears to 6.8 kHz */
  wide: boolean;
  /** all files together */
  bytes: number;
  /** SHA-256 of each, as hex */
  files: Record<Name, string>;
}

export interface EarFiles {
  model: AcousticModel;
  wide: boolean;
  dictionary: string;
}

const KEPT = "ear-files";
const MANIFEST = "/ear/model.json";

type Store = Pick<Cache, "match" | "put" | "delete" | "keys">;

/** Where the browser lets the page keep nothing, they are fetched for each opening of it. */
const NO_STORE: Store = {
  match: async () => undefined,
  put: async () => {},
  delete: async () => false,
  keys: async () => [],
};

/** The files kept on this device, else fetched. Throws, in words, where they can be had from neither. */
export async function earFiles(tell: (coming: Coming) => void): Promise<EarFiles> {
  const store = await caches.open(KEPT).catch(() => NO_STORE);
  const kept = await store.match(MANIFEST);
  if (kept) {
    const manifest = readManifest(await kept.json());
    const had = manifest && (await allKept(store, manifest));
    if (had) {
      // for the next time; without a network there is nothing newer to be had, and nobody waits for it
      void refresh(store, () => {}).catch((problem) =>
        console.info("The ear's files were not looked up again.", problem),
      );
      return had;
    }
  }
  return refresh(store, tell);
}

async function allKept(store: Store, manifest: Manifest): Promise<EarFiles | undefined> {
  const replies = await Promise.all(NAMES.map((name) => store.match(addressOf(name, manifest))));
  if (!replies.every((reply) => reply !== undefined)) return undefined;
  return earOf(manifest, await Promise.all(replies.map(bytesOf)));
}

const bytesOf = async (reply: Response) => new Uint8Array(await reply.arrayBuffer());

/** Brings the store to what the server has; the list comes last into it, so that a load cut short is gone on with. */
async function refresh(store: Store, tell: (coming: Coming) => void): Promise<EarFiles> {
  const reply = await fetch(MANIFEST, { cache: "no-cache" });
  if (!reply.ok) throw new Error(`this server has no ear to give (${reply.status})`);
  const list: unknown = await reply.json();
  const manifest = readManifest(list);
  if (!manifest) throw new Error("what the server says of the ear's files cannot be read");
  let got = 0;
  const files: Uint8Array[] = [];
  for (const name of NAMES) {
    const address = addressOf(name, manifest);
    const had = await store.match(address);
    if (had) files.push(await bytesOf(had));
    else {
      const fetched = await fetchWhole(address, (more) => tell({ got: got + more, of: manifest.bytes }));
      if ((await sha256(fetched)) !== manifest.files[name]) throw new Error(`${name} of the ear came spoilt`);
      await keep(store, address, fetched);
      files.push(fetched);
    }
    got += files.at(-1)?.length ?? 0;
    tell({ got, of: manifest.bytes });
  }
  await keep(store, MANIFEST, JSON.stringify(list));
  const wanted = new Set([MANIFEST, ...NAMES.map((name) => addressOf(name, manifest))]);
  for (const request of await store.keys()) {
    const { pathname, search } = new URL(request.url);
    if (!wanted.has(pathname + search)) await store.delete(request);
  }
  return earOf(manifest, files);
}

/** A device too full to keep the ear hears by it all the same, and fetches it again the next time. */
async function keep(store: Store, address: string, content: Uint8Array<ArrayBuffer> | string): Promise<void> {
  try {
    await store.put(address, new Response(content));
  } catch (problem) {
    console.info("The ear is not kept on this device.", address, problem);
  }
}

async function fetchWhole(address: string, tell: (got: number) => void): Promise<Uint8Array<ArrayBuffer>> {
  const reply = await fetch(address);
  if (!reply.ok || !reply.body) throw new Error(`${address} was answered with ${reply.status}`);
  const pieces: Uint8Array<ArrayBuffer>[] = [];
  let got = 0;
  const reader = reply.body.getReader();
  for (let piece = await reader.read(); !piece.done; piece = await reader.read()) {
    pieces.push(piece.value);
    got += piece.value.length;
    tell(got);
  }
  return new Uint8Array(await new Blob(pieces).arrayBuffer());
}

const addressOf = (name: Name, { files }: Manifest) => `/ear/${name}?${files[name].slice(0, 16)}`;

function earOf({ features, wide }: Manifest, files: readonly Uint8Array[]): EarFiles {
  const [mdef, means, variances, sendump, transitionMatrices, noiseDictionary, dictionary] = files as [
    ...Uint8Array[],
    Uint8Array,
  ];
  const model = { features, mdef, means, variances, sendump, transitionMatrices, noiseDictionary } as AcousticModel;
  return { model, wide, dictionary: new TextDecoder().decode(dictionary) };
}

function readManifest(value: unknown): Manifest | undefined {
  if (typeof value !== "object" || value === null) return undefined;
  const { features, wide, bytes, files } = value as Partial<Record<keyof Manifest, unknown>>;
  if (typeof features !== "object" || features === null || typeof wide !== "boolean") return undefined;
  if (typeof bytes !== "number" || typeof files !== "object" || files === null) return undefined;
  const hashes = files as Record<string, unknown>;
  return NAMES.every((name) => /^[0-9a-f]{64}$/.test(String(hashes[name]))) ? (value as Manifest) : undefined;
}

async function sha256(bytes: Uint8Array<ArrayBuffer>): Promise<string> {
  const hash = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  return Array.from(hash, (byte) => byte.toString(16).padStart(2, "0")).join("");
}
