import { execFileSync } from "node:child_process";
import { killUnderLoad } from "./kills.ts";

/** `npm run faults -- [KILLS] [SEED]`: a hundred kills with fifty devices sending. Exits 1 where anything was lost. */
const today = Number(new Date().toISOString().slice(0, 10).replaceAll("-", ""));
const [kills = 100, seed = today] = process.argv.slice(2).map(Number);
execFileSync(process.execPath, ["server/commands/build.mjs"], { stdio: "inherit" });
const began = Date.now();
const toll = await killUnderLoad({ devices: 50, kills, seed });
console.log(
  `${toll.kills} kills under load of 50 devices, seed ${seed}, ${Math.round((Date.now() - began) / 1000)} s: ` +
    `${toll.acknowledged} phrases acknowledged, ${toll.lost} lost, ${toll.doubled} doubled, ` +
    `${toll.outOfOrder} devices out of order, integrity ${toll.integrity}`,
);
process.exitCode = toll.lost + toll.doubled + toll.outOfOrder > 0 || toll.integrity !== "ok" ? 1 : 0;
