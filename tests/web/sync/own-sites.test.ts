import { describe, expect, it } from "vitest";
import { firstState, type Happening, next } from "../../../web/state/next.ts";
import type { State } from "../../../web/state/state.ts";
import type { KeptWord } from "../../../web/state/taught.ts";
import { keepToOwnSites } from "../../../web/sync/own-sites.ts";

const caller = (sites?: string[]): State["caller"] => ({
  open: false,
  roles: ["technician"],
  rights: ["say", "read", "self"],
  by: "device",
  password: false,
  ...(sites ? { sites } : {}),
});
const word = (say: string, more: Partial<KeptWord> = {}): KeptWord => ({ say, as: { part: "positioner" }, ...more });

/** A device at its next contact: what it stands at, reads, and let go of. */
async function contact(sites: string[] | undefined, site?: string, taught: KeptWord[] = []) {
  let state = next(firstState({ screen: "bench" }), { is: "set", settings: site ? { site } : {} });
  const tell = (now: Happening) => {
    state = next(state, now);
  };
  tell({ is: "taught", words: taught });
  const who = caller(sites);
  if (who) tell({ is: "known_as", caller: who });
  const only: (readonly string[])[] = [];
  await keepToOwnSites({
    shelf: {
      keepOnly: async (own) => void only.push(own),
      keepTaught: async () => {},
      listed: async () => ({ valves: [], sites: [] }),
    },
    state: () => state,
    tell,
    set: (settings) => tell({ is: "set", settings }),
  });
  return { at: state.settings.site, words: state.taught.map(({ say }) => say), only };
}

describe("a device at its next contact", () => {
  it("of somebody who sees every site keeps what it has", async () => {
    const words = [word("gizmo", { site: "south", sent: true })];
    expect(await contact(undefined, "south", words)).toEqual({ at: "south", words: ["gizmo"], only: [] });
  });

  it("stands at his one site, or at the one chosen where that is his", async () => {
    expect(await contact(["north"])).toMatchObject({ at: "north", only: [["north"]] });
    expect(await contact(["north"], "south")).toMatchObject({ at: "north" });
    expect(await contact(["north", "west"], "west")).toMatchObject({ at: "west" });
    // which of several it is he knows, and nobody else
    expect((await contact(["north", "west"], "south")).at).toBeUndefined();
    expect((await contact(["north", "west"])).at).toBeUndefined();
  });

  it("lets go of words taught at other sites, and of none that was never sent", async () => {
    const words = [
      word("everywhere", { sent: true }),
      word("his", { site: "north", sent: true }),
      word("theirs", { site: "south", sent: true }),
      word("unsent", { site: "south" }),
      word("refused", { site: "south", sent: false, problem: "read already" }),
      word("withdrawal unsent", { site: "south", withdrawn: true, sent: false }),
    ];
    const { words: left } = await contact(["north"], "north", words);
    expect(left).toEqual(["everywhere", "his", "unsent", "refused", "withdrawal unsent"]);
  });
});
