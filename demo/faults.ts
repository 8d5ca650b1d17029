import type { Style } from "./field.ts";
import type { Saying } from "./sayings.ts";

/** Things that go wrong beside the seat: what is said when it is found, and what puts it right. */
export interface Fault {
  found: Record<Style, Saying>;
  /** said at a later visit, where it was left open; without it the finding was mended on the spot */
  mended?: Record<Style, Saying>;
}

const said = (say: string, ...means: string[]): Saying => ({ say, means });

export const DUMP_FAULTS: Fault[] = [
  {
    found: {
      drawl: said(
        "top diaphragm's tore at the edge, put a new one in",
        "torn upper_diaphragm @edge",
        "replaced upper_diaphragm done",
      ),
      plain: said(
        "The upper diaphragm is torn, and I replaced it.",
        "torn upper_diaphragm",
        "replaced upper_diaphragm done",
      ),
      short: said("upper diaph torn, repl'd", "torn upper_diaphragm", "replaced upper_diaphragm done"),
    },
  },
  {
    found: {
      drawl: said(
        "balance diaphragm's getting hard, need to change it next time",
        "hardened lower_diaphragm",
        "replaced lower_diaphragm needed",
      ),
      plain: said(
        "The lower diaphragm has gone hard and needs replacing.",
        "hardened lower_diaphragm",
        "replaced lower_diaphragm needed",
      ),
      short: said("lower diaph hard, needs replaced", "hardened lower_diaphragm", "replaced lower_diaphragm needed"),
    },
    mended: {
      drawl: said("put that new bottom diaphragm in", "replaced lower_diaphragm done"),
      plain: said("I replaced the lower diaphragm.", "replaced lower_diaphragm done"),
      short: said("lower diaph repl'd", "replaced lower_diaphragm done"),
    },
  },
  {
    found: {
      drawl: said("both backup rings are cut, put two new ones in", "cut backup_ring", "replaced backup_ring done x2"),
      plain: said("Both backup rings are cut. I replaced both.", "cut backup_ring", "replaced backup_ring done x2"),
      short: said("backup rings cut, replaced 2", "cut backup_ring", "replaced backup_ring done x2"),
    },
  },
  {
    found: {
      drawl: said(
        "jam nut was loose, put some thread locker on it and snugged it down",
        "loose lock_nut",
        "threadlocked lock_nut done",
        "tightened lock_nut done",
      ),
      plain: said("The lock nut was loose, so I tightened it.", "loose lock_nut", "tightened lock_nut done"),
      short: said("lock nut loose, tightened", "loose lock_nut", "tightened lock_nut done"),
    },
  },
  {
    found: {
      drawl: said("cage is washed out a little at the top", "washed_out cage slight @top"),
      plain: said("The cage is slightly eroded at the top.", "eroded cage slight @top"),
      short: said("cage slightly eroded at top", "eroded cage slight @top"),
    },
    mended: {
      drawl: said("put a new cage in it", "replaced cage done"),
      plain: said("I replaced the cage.", "replaced cage done"),
      short: said("cage repl'd", "replaced cage done"),
    },
  },
  {
    found: {
      drawl: said("bonnet gasket's mashed, put a new one in", "flattened bonnet_gasket", "replaced bonnet_gasket done"),
      plain: said(
        "The bonnet gasket is flattened and I replaced it.",
        "flattened bonnet_gasket",
        "replaced bonnet_gasket done",
      ),
      short: said("bonnet gasket flat, repl'd", "flattened bonnet_gasket", "replaced bonnet_gasket done"),
    },
  },
  {
    found: {
      drawl: said("spring's a little weak, leaving it for now", "weak spring slight", "replaced spring declined"),
      plain: said("The actuator spring might be weak.", "weak actuator_spring unsure"),
      short: said("order 1 actuator spring", "need actuator_spring x1"),
    },
    mended: {
      drawl: said("put a new actuator spring in", "replaced actuator_spring done"),
      plain: said("I replaced the actuator spring.", "replaced actuator_spring done"),
      short: said("actuator spring repl'd", "replaced actuator_spring done"),
    },
  },
];

export const GLOBE_FAULTS: Fault[] = [
  {
    found: {
      drawl: said(
        "packing's weeping a little, snugged up the packing nut",
        "leaking packing slight",
        "tightened packing_nut done",
      ),
      plain: said(
        "The packing is leaking. I tightened the packing nut.",
        "leaking packing",
        "tightened packing_nut done",
      ),
      short: said("packing leaking, packing nut tightened", "leaking packing", "tightened packing_nut done"),
    },
    mended: {
      drawl: said("put new packing in it", "replaced packing done"),
      plain: said("I replaced the packing.", "replaced packing done"),
      short: said("packing repl'd", "replaced packing done"),
    },
  },
  {
    found: {
      drawl: said("plug's got a nick on the edge", "nicked plug @edge"),
      plain: said("The plug is nicked at the edge and needs replacing.", "nicked plug @edge", "replaced plug needed"),
      short: said("plug nicked, order plug", "nicked plug", "need plug"),
    },
    mended: {
      drawl: said("put a new plug in", "replaced plug done"),
      plain: said("I replaced the plug.", "replaced plug done"),
      short: said("plug repl'd", "replaced plug done"),
    },
  },
  {
    found: {
      drawl: said("guide's galled, put a new one in", "galled guide", "replaced guide done"),
      plain: said("The guide is galled, and I replaced it.", "galled guide", "replaced guide done"),
      short: said("guide galled, repl'd", "galled guide", "replaced guide done"),
    },
  },
  {
    found: {
      drawl: said("calibrated the positioner", "calibrated positioner done"),
      plain: said("I calibrated the positioner.", "calibrated positioner done"),
      short: said("positioner calibrated", "calibrated positioner done"),
    },
  },
  {
    found: {
      drawl: said("signal port's plugged with dirt, blew it out", "plugged signal_port", "cleaned signal_port done"),
      plain: said("The signal port was plugged, and I cleaned it.", "plugged signal_port", "cleaned signal_port done"),
      short: said("signal port plugged, cleaned", "plugged signal_port", "cleaned signal_port done"),
    },
  },
];
