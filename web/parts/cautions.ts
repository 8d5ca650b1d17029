import type { Hazard } from "../../core/index.ts";

/**
 * Cautions shown when a job starts and when a hazard is said. Common practice, no source; they defer to local codes,
 * site procedure and licensed practice, and nothing here says that anything is safe.
 */
export const STANDING_LINE = "Isolate · prove zero energy · lock out, tag out · bleed both sides · springs · gas · PPE";

export const STANDING: readonly string[] = [
  "Isolate the valve from every source: process both sides, supply and signal. Prove zero energy before opening anything.",
  "Lock out and tag out by the site's procedure. Your own lock, your own tag.",
  "Bleed both sides. Pressure can stay trapped in the body, between seats and in a balanced chamber after the line is down.",
  "Springs in the actuator are under load. Take the load off as the site's procedure for this actuator says before loosening a housing.",
  "Gas and H2S: wear the monitor, know the wind, know the way out.",
  "PPE as the site demands for this job, gloves and eyes first.",
  "Local codes, site procedure and licensed practice govern. This log writes down what is said; it does not know the state of the valve.",
];

export const AT_HAZARD: Record<Hazard, readonly string[]> = {
  gas: [
    "Leave the area, crosswind or upwind. Do not go back for tools.",
    "No spark, no flame, no switching.",
    "Warn everyone near. Report it the way the site says.",
  ],
  trapped_pressure: [
    "Do not loosen another bolt. Stay out of line of bonnet, plugs and fittings.",
    "A gauge at zero does not prove that nothing is trapped.",
    "Back off and report; bleeding goes by site procedure only.",
  ],
  not_isolated: [
    "Do not open the valve. Step away from the line of release.",
    "A passing block valve is no isolation.",
    "Isolation, lock and tag go by site procedure before anyone touches it.",
  ],
  stored_spring: [
    "Hands and face out of line of housing and spring.",
    "Do not loosen or cut anything that still holds it.",
    "Unloading goes by site procedure for this actuator only.",
  ],
  injury: [
    "Call for help now, the way the site says.",
    "Do not become the second one hurt: look before going near.",
    "Give first aid only as far as you are trained.",
  ],
  spill: [
    "Keep away from it, and keep ignition away from it.",
    "Close the source only if site procedure lets you and you can do so from a clear place.",
    "Warn everyone near. Report it the way the site says.",
  ],
  fire: [
    "Raise the alarm. Leave by the clear way, crosswind or upwind.",
    "Fight it only if you are trained, it is small and your way out is behind you.",
    "Muster and be counted.",
  ],
};
