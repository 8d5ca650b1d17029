import { PEOPLE, type Style } from "./field.ts";
import type { DemoJob } from "./job.ts";
import type { Saying } from "./sayings.ts";

const said = (say: string, ...means: string[]): Saying => ({ say, means });

interface Told {
  tag: string;
  starts: string;
  style: Style;
  say: Saying[];
}

/** The last workday at the first site, written by hand so that its report is worth reading. */
const DAY: Told[] = [
  {
    tag: "LCV-213",
    starts: "07:40",
    style: "drawl",
    say: [
      said("okay we're on lima charlie victor two one three", "valve LCV-213"),
      said("breather's plugged up with mud, rodded it out", "plugged breather", "cleaned breather done"),
      said("top diaphragm's good, bottom one too", "ok upper_diaphragm", "ok lower_diaphragm"),
      said("plug's good, cage is good", "ok plug", "ok cage"),
      said("seat's wore on one side, flipped it over", "worn seat one_side", "flipped seat done"),
      said("both backup rings are cut, put two new ones in", "cut backup_ring", "replaced backup_ring done x2"),
      said("bonnet bolts torqued to thirty five foot pounds", "torque bonnet_bolting 35 ft_lbf"),
      said("she's leaking by at fifty psi", "upstream_pressure 50 psi", "seat_leak fail"),
      said("lapped the seat in", "lapped seat done"),
      said("bonnet bolts torqued to twenty eight foot pounds", "torque bonnet_bolting 28 ft_lbf"),
      said("holding at fifty pounds, no leak", "upstream_pressure 50 psi", "seat_leak pass"),
      said("strokes full", "stroke pass"),
      said("that's it for this one", "command finish"),
    ],
  },
  {
    tag: "PV-104",
    starts: "09:05",
    style: "plain",
    say: [
      said("This is P V one oh four.", "valve PV-104"),
      said("The packing is leaking. I tightened the packing nut.", "leaking packing", "tightened packing_nut done"),
      said("The plug is nicked at the edge and needs replacing.", "nicked plug @edge", "replaced plug needed"),
      said("Order one plug and a soft goods kit.", "need plug x1", "need kit"),
      said("Seat leak test at sixty psi failed.", "upstream_pressure 60 psi", "seat_leak fail"),
      said("Note that the upstream block valve is hard to turn.", "note"),
    ],
  },
  {
    tag: "LCV-215",
    starts: "10:30",
    style: "short",
    say: [
      said("LCV-215", "valve LCV-215"),
      said("breather ok, travel indicator ok", "ok breather", "ok travel_indicator"),
      said("upper diaph torn, repl'd", "torn upper_diaphragm", "replaced upper_diaphragm done"),
      said("seat ok, plug ok, cage ok", "ok seat", "ok plug", "ok cage"),
      said(
        "bonnet bolts 27 ft-lb, body bolts 28 ft-lb",
        "torque bonnet_bolting 27 ft_lbf",
        "torque body_bolting 28 ft_lbf",
      ),
      said("2 bubbles/min @ 50 psi", "leak_rate 2 bubble/min", "upstream_pressure 50 psi", "seat_leak unsaid"),
      said("stroke test ok", "stroke pass"),
      said("all done", "command finish"),
    ],
  },
  {
    tag: "LCV-216",
    starts: "11:20",
    style: "drawl",
    say: [said("okay we're on lima charlie victor two one six", "valve LCV-216"), said("I smell gas", "hazard gas")],
  },
  {
    tag: "LCV-214",
    starts: "13:10",
    style: "plain",
    say: [
      said("This is L C V two one four.", "valve LCV-214"),
      said("The travel indicator and the breather are both fine.", "ok travel_indicator", "ok breather"),
      said("Plug and cage both look fine.", "ok plug", "ok cage"),
      said("The seat is sound, no wear on it.", "ok seat", "worn seat absent"),
      { say: "The thingamajig under the bracket rattles.", means: [], strange: true },
      said(
        "The bonnet gasket is flattened and I replaced it.",
        "flattened bonnet_gasket",
        "replaced bonnet_gasket done",
      ),
      said("The bonnet bolts are torqued to twenty seven foot-pounds.", "torque bonnet_bolting 27 ft_lbf"),
      said("Seat leak test at sixty psi, no leak.", "upstream_pressure 60 psi", "seat_leak pass"),
      said("It strokes fully.", "stroke pass"),
      said("All done with this one.", "command finish"),
    ],
  },
  {
    tag: "FCV-110",
    starts: "14:45",
    style: "short",
    say: [
      said("FCV-110", "valve FCV-110"),
      said("positioner calibrated", "calibrated positioner done"),
      said("signal port plugged, cleaned", "plugged signal_port", "cleaned signal_port done"),
      said("diaph ok, yoke ok", "ok diaphragm", "ok yoke"),
      said("stroke test ok", "stroke pass"),
      said("all done", "command finish"),
    ],
  },
];

export function busyDay(site: string, day: string): DemoJob[] {
  return DAY.map(({ tag, starts, style, say }) => {
    const [hours = 0, minutes = 0] = starts.split(":").map(Number);
    const person = PEOPLE.find((one) => one.style === style)?.name ?? "";
    return { site, tag, day, starts: (hours * 60 + minutes) * 60, person, style, say };
  });
}
