import type { Decision } from "../../core/index.ts";
import { namesOf } from "../accounts/people.ts";
import type { Tx } from "../db/writer.ts";
import { clockTime, localDay } from "../moments.ts";
import { todayIn, zoneOf } from "../reading/what-is-known.ts";

/** What was done, to begin a sentence with. */
export const DID: Record<Decision["what"], string> = {
  accepted: "Accepted",
  amended: "Amended",
  struck: "Struck",
  asked: "Asked about",
  returned: "Put back",
};

/** "A. Person at 14:02", on the site's clock; with the day where that is not today. */
export async function whoAndWhen(
  db: Pick<Tx, "select" | "selectDistinct">,
  act: { site: string; person: string | null; madeAt: string },
): Promise<string> {
  const zone = await zoneOf(db, act.site);
  const name = act.person === null ? undefined : (await namesOf(db)).get(act.person);
  const day = localDay({ utc: act.madeAt, offset: 0 }, zone);
  const clock = `${clockTime(act.madeAt, zone ?? "UTC").slice(0, 5)}${zone ? "" : " UTC"}`;
  return `${name ?? "somebody at the server’s own machine"} at ${clock}${day === todayIn(zone) ? "" : ` on ${day}`}`;
}
