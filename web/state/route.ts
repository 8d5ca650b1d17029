/**
 * Which screen the address asks for. The part after `#` is used, so that one kept page serves every screen offline
 * and the server needs no list of our screens.
 */
export type Route =
  | { screen: "bench" }
  | { screen: "hearing" }
  | { screen: "record-set" }
  | { screen: "desk"; site?: string; day?: string }
  | { screen: "job"; id: string }
  | { screen: "valve"; tag: string; site?: string }
  | { screen: "review"; site?: string }
  | { screen: "asked" }
  | { screen: "set-up"; site?: string }
  | { screen: "search" }
  | { screen: "report"; site?: string; day?: string }
  | { screen: "due"; site?: string }
  | { screen: "carry"; site?: string; days?: number; stock?: string }
  | { screen: "reliability"; site?: string }
  | { screen: "help" }
  | { screen: "glossary" }
  | { screen: "words"; say?: string }
  | { screen: "sign-in"; next?: string }
  | { screen: "set-password"; code: string }
  | { screen: "enrol"; code: string }
  | { screen: "me" }
  | { screen: "people" };

/** Reads the part of an address after `#`; what it does not know is the bench. */
export function readRoute(hash: string): Route {
  const [path = "", query = ""] = hash.replace(/^#\/?/, "").split("?");
  const [screen = "", subject = ""] = path.split("/").map(decode);
  const asked = new URLSearchParams(query);
  const site = asked.get("site") || undefined;
  if (screen === "desk" || screen === "report") return { screen, site, day: asked.get("day") || undefined };
  if (screen === "job" && subject) return { screen, id: subject };
  if (screen === "valve" && subject) return { screen, tag: subject, site };
  if (screen === "review" || screen === "due" || screen === "set-up") return { screen, site };
  if (screen === "reliability") return { screen, site };
  if (screen === "carry")
    return { screen, site, days: wholeDays(asked.get("days")), stock: asked.get("stock") || undefined };
  if (screen === "hearing" || screen === "record-set") return { screen };
  if (screen === "help" || screen === "glossary") return { screen };
  if (screen === "words") return { screen, say: asked.get("say") || undefined };
  if (screen === "sign-in") return { screen, next: ownPath(asked.get("next")) };
  if (screen === "set-password" || screen === "enrol") return { screen, code: asked.get("code") ?? "" };
  if (screen === "me" || screen === "people" || screen === "asked" || screen === "search") return { screen };
  return { screen: "bench" };
}

/** The address of a screen, to stand in a link. */
export function addressOf(route: Route): string {
  if (route.screen === "job") return `#/job/${encodeURIComponent(route.id)}`;
  const asked = new URLSearchParams();
  if ("site" in route && route.site) asked.set("site", route.site);
  if ("day" in route && route.day) asked.set("day", route.day);
  if ("say" in route && route.say) asked.set("say", route.say);
  if ("days" in route && route.days !== undefined) asked.set("days", String(route.days));
  if ("next" in route && route.next) asked.set("next", route.next);
  if ("code" in route && route.code) asked.set("code", route.code);
  if ("stock" in route && route.stock) asked.set("stock", route.stock);
  const query = asked.toString();
  const path = route.screen === "valve" ? `valve/${encodeURIComponent(route.tag)}` : route.screen;
  return `#/${path}${query ? `?${query}` : ""}`;
}

/** A number of days as an address has it; what is none is left to the screen. */
function wholeDays(text: string | null): number | undefined {
  return text && /^\d{1,4}$/.test(text) ? Number(text) : undefined;
}

/** Where to go on after signing in: a report of this very server, and nowhere else. */
function ownPath(text: string | null): string | undefined {
  return text && /^\/report\?[\w=&%.+-]*$/.test(text) ? text : undefined;
}

function decode(piece: string): string {
  try {
    return decodeURIComponent(piece);
  } catch {
    // a half-typed % escape is taken as it stands
    return piece;
  }
}
