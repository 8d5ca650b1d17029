import type { Valve } from "../core/index.ts";

/**
 * An invented producing field. Nothing here is or resembles a place, a firm or a person; the time zones alone are
 * real. On screen every site's name says so.
 */
export interface DemoSite {
  site: string;
  name: string;
  zone: string;
}

/** How somebody talks: `drawl` and `plain` are spoken at the valve, `short` is typed with a thumb. */
export type Style = "drawl" | "plain" | "short";

/** Three invented technicians. The log does not know who speaks yet; here each has a way of talking. */
export const PEOPLE: { name: string; style: Style }[] = [
  { name: "Ray T. (invented)", style: "drawl" },
  { name: "Dana K. (invented)", style: "plain" },
  { name: "M. Ortega (invented)", style: "short" },
];

export const SITES: DemoSite[] = [
  { site: "juniper-draw", name: "Juniper Draw (invented)", zone: "America/Denver" },
  { site: "saltgrass-flats", name: "Saltgrass Flats (invented)", zone: "America/North_Dakota/Beulah" },
  { site: "kettle-bottom", name: "Kettle Bottom (invented)", zone: "America/Chicago" },
];

export interface DemoValve {
  site: string;
  tag: string;
  valve: Valve;
  /** months that a seat side lasts here, by the invented truth that the log has to find out */
  lasts: number;
  /** how those lives scatter: the Weibull shape */
  shape: number;
  /** days between the date that falls due and the visit: least and most */
  late: [number, number];
  /** months ago of the last visit, where somebody forgot it */
  forgotten?: number;
}

type Row = [tag: string, size: number, service: "normal" | "severe", lasts: number, extra?: Partial<DemoValve>];

const DUMP: Valve = { family: "balanced_dump", acts: "pressure_opens", leak_class: "VI", rated_dp_psi: 125 };
const GLOBE: Valve = { family: "globe_control", acts: "pressure_opens", leak_class: "IV" };

const valves = (site: string, kind: Valve, late: [number, number], rows: Row[]): DemoValve[] =>
  rows.map(([tag, size_in, service, lasts, extra]) => ({
    site,
    tag,
    valve: { tag, ...kind, size_in, port_in: size_in, service },
    lasts,
    shape: service === "severe" ? 4.5 : 3,
    late,
    ...extra,
  }));

/** Two dozen valves of both families; severe ones see sand, and wear by a pattern of their own. */
export const VALVES: DemoValve[] = [
  ...valves(
    "juniper-draw",
    DUMP,
    [-2, 5],
    [
      ["LCV-213", 2, "severe", 3.4, { shape: 9 }],
      ["LCV-214", 2, "severe", 4.6],
      ["LCV-215", 2, "normal", 26],
      ["LCV-216", 3, "normal", 30],
      ["LCV-221", 2, "normal", 24, { late: [20, 60] }],
    ],
  ),
  ...valves(
    "juniper-draw",
    GLOBE,
    [-2, 8],
    [
      ["PV-104", 2, "severe", 6],
      ["PV-105", 2, "normal", 40],
      ["FCV-110", 3, "normal", 36],
    ],
  ),
  ...valves(
    "saltgrass-flats",
    DUMP,
    [0, 12],
    [
      ["LCV-301", 2, "severe", 2.6],
      ["LCV-302", 2, "normal", 22],
      ["LCV-303", 3, "normal", 28],
      ["LCV-304", 4, "normal", 34, { forgotten: 9 }],
      ["LCV-305", 2, "normal", 25],
    ],
  ),
  ...valves(
    "saltgrass-flats",
    GLOBE,
    [0, 12],
    [
      ["PV-310", 1.5, "normal", 38],
      ["TCV-312", 2, "normal", 45],
      ["FCV-315", 2, "severe", 5],
    ],
  ),
  ...valves(
    "kettle-bottom",
    DUMP,
    [3, 40],
    [
      ["LCV-402", 2, "severe", 3.8],
      ["LCV-403", 2, "normal", 20],
      ["LCV-404", 2, "normal", 27, { forgotten: 11 }],
      ["LCV-405", 3, "normal", 29],
      ["LCV-406", 4, "normal", 33],
    ],
  ),
  ...valves(
    "kettle-bottom",
    GLOBE,
    [3, 40],
    [
      ["PV-411", 2, "normal", 35],
      ["PV-412", 4, "normal", 42],
      ["TCV-420", 1, "normal", 50],
    ],
  ),
];
