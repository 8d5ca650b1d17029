import { execFileSync } from "node:child_process";
import { killUnderLoad } from "./kills.ts";
import { promoteUnderLoad } from "./promotion.ts";
import type { Toll } from "./toll.ts";

/**
 * `npm run faults -- [KILLS] [SEED]`: a hundred kills with fifty devices sending. `npm run faults -- standby [TIMES]`: the
 * primary of two PostgreSQL servers killed, the standby promoted. Exits 1 where anything was lost.
 */
const asked = process.argv.slice(2);
execFileSync(process.execPath, ["server/commands/build.mjs"], { stdio: "inherit" });
if (asked[0] === "standby") await promotions(Number(asked[1] ?? 10));
else await kills();

async function kills(): Promise<void> {
  const today = Number(new Date().toISOString().slice(0, 10).replaceAll("-", ""));
  const [kills = 100, seed = today] = asked.map(Number);
  const began = Date.now();
  const toll = await killUnderLoad({ devices: 50, kills, seed });
  const seconds = Math.round((Date.now() - began) / 1000);
  console.log(
    `${toll.kills} kills under load of 50 devices, seed ${seed}, ${seconds} s: ${told(toll)}, integrity ${toll.integrity}`,
  );
  process.exitCode = isLoss(toll) || toll.integrity !== "ok" ? 1 : 0;
}

async function promotions(times: number): Promise<void> {
  for (let n = 1; n <= times; n++) {
    const { silentMs, after, ...toll } = await promoteUnderLoad({ devices: 50, before: 1_000, after: 500 });
    console.log(
      `promotion ${n} under load of 50 devices: ${told(toll)}; first answer ${Math.round(silentMs)} ms after it was asked for, ${after} after the kill`,
    );
    if (isLoss(toll)) process.exitCode = 1;
  }
}

function told({ acknowledged, lost, doubled, outOfOrder }: Toll): string {
  return `${acknowledged} phrases acknowledged, ${lost} lost, ${doubled} doubled, ${outOfOrder} devices out of order`;
}

function isLoss({ lost, doubled, outOfOrder }: Toll): boolean {
  return lost + doubled + outOfOrder > 0;
}
