import { ask } from "../server/at-database.ts";
import type { Device } from "./devices.ts";

/** What a database holds against what devices were told. */
export interface Toll {
  acknowledged: number;
  lost: number;
  doubled: number;
  /** devices whose phrases do not stand in the order said */
  outOfOrder: number;
}

export async function tollOf(url: string, devices: Pick<Device, "job" | "told">[]): Promise<Toll> {
  const rows = await ask(url, "SELECT job, id, text FROM phrases ORDER BY job, said_at, id");
  const found: Toll = { acknowledged: 0, lost: 0, doubled: 0, outOfOrder: 0 };
  for (const { job, told } of devices) {
    const own = rows.filter((row) => row.job === job.id);
    const ids = own.map((row) => String(row.id));
    const kept = new Set(ids);
    found.acknowledged += told.length;
    found.lost += told.filter((id) => !kept.has(id)).length;
    // each was said once, in words of its own: whatever stands twice was stored twice
    found.doubled += own.length - new Set(own.map((row) => row.text)).size;
    if (told.join() !== ids.filter((id) => told.includes(id)).join()) found.outOfOrder++;
  }
  return found;
}
