import { describe, expect, it } from "vitest";
import type { SiteWord } from "../../../core/index.ts";
import type { KeptWord } from "../../../web/state/taught.ts";
import type { Answer } from "../../../web/sync/ask.ts";
import { wordPasser } from "../../../web/sync/words.ts";

const AT = "2026-03-04T10:00:00-07:00";
const positioner = { part: "positioner" } as const;

/** A device with these words, and a server that holds words by path and refuses "seat". */
function device(first: KeptWord[]) {
  let words = first;
  let ids = 0;
  const held = new Map<string, SiteWord[]>();
  const asked: { path: string; put?: object }[] = [];
  const network = { up: true };
  const gone = new Set<string>();
  const pass = wordPasser({
    async ask(path, put): Promise<Answer<{ words: SiteWord[] }>> {
      if (!network.up) return { ok: false, status: 0, problem: "no network" };
      asked.push({ path, put });
      if (gone.has(path)) return { ok: false, status: 404, problem: "no such site" };
      const there = held.get(path) ?? [];
      const sent = (put as { words: SiteWord[] } | undefined)?.words ?? [];
      const taken = sent.filter((word) => word.say !== "seat");
      const now = [...there.filter((one) => !taken.some((word) => word.id === one.id)), ...taken];
      held.set(path, now);
      const results = sent.map(({ id, say }) =>
        say === "seat" ? { id, status: "refused", problem: "read already" } : { id, status: "stored" },
      );
      return { ok: true, value: { words: now, ...(put ? { results } : {}) } as { words: SiteWord[] } };
    },
    words: () => words,
    sites: () => ["north"],
    keep: async () => {},
    tell: (now) => {
      if (now.is === "taught") words = now.words;
    },
    newId: () => `id-${ids++}`,
    now: () => AT,
  });
  return { pass, held, asked, network, gone, words: () => words };
}

describe("words passed on", () => {
  it("wait without a network, are sent once there is one, and not again", async () => {
    const { pass, held, asked, network, words } = device([{ say: "doohickey", as: positioner, site: "north" }]);
    network.up = false;
    await pass();
    expect(words()).toMatchObject([{ say: "doohickey", id: "id-0" }]);
    network.up = true;
    await pass();
    expect(held.get("/api/sites/north/words")).toMatchObject([
      { id: "id-0", say: "doohickey", as: positioner, at: AT },
    ]);
    expect(words()).toMatchObject([{ id: "id-0", site: "north", sent: true }]);
    await pass();
    expect(asked.filter((one) => one.put)).toHaveLength(1);
  });

  it("of a site that is none of his any more are kept here, with the server's words", async () => {
    const { pass, gone, words } = device([{ say: "doohickey", as: positioner, site: "south" }]);
    gone.add("/api/sites/south/words");
    await pass();
    expect(words()).toMatchObject([{ say: "doohickey", site: "south", problem: "no such site" }]);
  });

  it("come from other devices of the site, and go when one withdrew them", async () => {
    const { pass, held, words } = device([]);
    const theirs: SiteWord = { id: "b", say: "gizmo", as: positioner, at: AT };
    held.set("/api/sites/north/words", [theirs]);
    await pass();
    expect(words()).toEqual([{ ...theirs, site: "north", sent: true }]);
    held.set("/api/sites/north/words", [{ ...theirs, withdrawn: true }]);
    await pass();
    expect(words()).toEqual([]);
  });

  it("withdrawn here are withdrawn there", async () => {
    const word: KeptWord = { id: "a", say: "gizmo", as: positioner, at: AT, sent: false, withdrawn: true };
    const { pass, held, words } = device([word]);
    held.set("/api/words", [{ id: "a", say: "gizmo", as: positioner, at: AT }]);
    await pass();
    expect(held.get("/api/words")).toMatchObject([{ id: "a", withdrawn: true }]);
    expect(words()).toEqual([]);
  });

  it("refused are kept with the reason and not sent again; lost by the server they are sent again", async () => {
    const { pass, held, asked, words } = device([
      { id: "a", say: "seat", as: positioner, at: AT },
      { id: "b", say: "gizmo", as: positioner, at: AT },
    ]);
    await pass();
    expect(words()).toMatchObject([
      { id: "a", problem: "read already" },
      { id: "b", sent: true },
    ]);
    held.clear();
    await pass();
    await pass();
    expect(held.get("/api/words")).toMatchObject([{ id: "b" }]);
    expect(asked.filter((one) => one.put)).toHaveLength(2);
  });
});
