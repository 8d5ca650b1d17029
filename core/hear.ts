import { consequences } from "./consequences/index.ts";
import { familyOf } from "./families/index.ts";
import { narrow } from "./narrow.ts";
import { byValve, listen, startListening } from "./parse/index.ts";
import type { Session, SessionResult } from "./shapes/session.ts";

/**
 * Reads a whole job: every phrase in order, then what follows from what stands.
 * Without `on` there is no date to count from, and what follows is reckoned as of 1970-01-01 with no due dates.
 */
export function hear(session: Session): SessionResult {
  let heard = startListening();
  for (const text of session.say) heard = listen(heard, text);
  const bill = familyOf(session.valve?.family).bill.map((line) => line.part);
  const narrowed = narrow(heard.entries, bill, session.history ?? []);
  const stretches = byValve(narrowed.entries, session.valve?.tag);
  const stretch = stretches.find((one) => one.tag === session.valve?.tag) ?? stretches[stretches.length - 1];
  const after = consequences(
    session.valve ?? {},
    session.history ?? [],
    stretch?.entries ?? [],
    session.on ?? "1970-01-01",
    session.fleet ?? [],
  );
  return {
    id: session.id,
    entries: narrowed.entries,
    unread: [...heard.unread],
    ask: heard.ask.length > 0 ? [...heard.ask] : narrowed.ask,
    ...after,
    due: session.on ? after.due : [],
  };
}
