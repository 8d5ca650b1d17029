import type { Happening } from "../state/next.ts";
import type { Settings, State } from "../state/state.ts";
import { waits } from "../state/taught.ts";
import type { Shelf } from "../storage/shelf.ts";

/** What keeping a device to its person's sites touches. */
export interface OwnSites {
  shelf: Pick<Shelf, "keepOnly" | "keepTaught" | "listed">;
  state(): Pick<State, "caller" | "settings" | "taught">;
  tell(now: Happening): void;
  set(settings: Partial<Settings>): void;
}

/**
 * At each contact with the server: what this device holds of sites that its person is not kept to goes, words that were
 * never sent excepted, and the bench stands at one of his. Whoever sees every site loses nothing.
 */
export async function keepToOwnSites(at: OwnSites): Promise<void> {
  const { caller, settings, taught } = at.state();
  const sites = caller?.sites;
  if (!sites) return;
  const [only, ...more] = sites;
  if (settings.site ? !sites.includes(settings.site) : more.length === 0)
    at.set({ site: more.length ? undefined : only });
  const own = taught.filter((word) => !word.site || sites.includes(word.site) || waits(word) || word.problem);
  try {
    if (own.length < taught.length) {
      at.tell({ is: "taught", words: own });
      await at.shelf.keepTaught(own);
    }
    await at.shelf.keepOnly(sites);
    at.tell({ is: "listed", ...(await at.shelf.listed()) });
  } catch (problem) {
    const why = problem instanceof Error ? problem.message : String(problem);
    at.tell({ is: "noticed", notice: `This device still holds what it knew of other sites: ${why}` });
  }
}
