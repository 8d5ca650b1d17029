import { describe, expect, it } from "vitest";
import { addressOf, type Route, readRoute } from "../../../web/state/route.ts";

const ROUTES: Route[] = [
  { screen: "bench" },
  { screen: "desk", site: "north & east", day: "2026-03-04" },
  { screen: "desk", site: undefined, day: undefined },
  { screen: "job", id: "0190-abc" },
  { screen: "valve", tag: "LCV/213 #2", site: "north" },
  { screen: "report", site: "north", day: "2026-03-04" },
  { screen: "due", site: "north" },
  { screen: "carry", site: "north", days: 30, stock: "packing:4,seat/globe_control/2:1" },
  { screen: "carry", site: undefined, days: undefined, stock: undefined },
  { screen: "reliability", site: "north" },
  { screen: "help" },
  { screen: "glossary" },
  { screen: "words", say: "doohickey squeals" },
  { screen: "words", say: undefined },
];

describe("addresses", () => {
  it.each(ROUTES)("read back to $screen", (route) => {
    expect(readRoute(addressOf(route))).toEqual(route);
  });
  it.each(["", "#", "#/", "#/nowhere", "#/job", "#/valve/", "#/%E0%A4%A"])("take %s for the bench", (hash) => {
    expect(readRoute(hash)).toEqual({ screen: "bench" });
  });
  it.each([
    ["/report?site=north&day=2026-03-04", "/report?site=north&day=2026-03-04"],
    ["https://elsewhere.example/report?site=north", undefined],
    ["//elsewhere.example/report?a=b", undefined],
    ["/report?next=//elsewhere.example", undefined],
    ["javascript:alert(1)", undefined],
    ["/report?a=b\nx", undefined],
  ])("after signing in goes on to a report of this server and nowhere else: %s", (next, gone) => {
    expect(readRoute(`#/sign-in?next=${encodeURIComponent(next)}`)).toEqual({ screen: "sign-in", next: gone });
  });
});
