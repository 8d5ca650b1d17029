import { spawn } from "node:child_process";
import { expect, it } from "vitest";
import { ended } from "../server/running.ts";
import { killUnderLoad } from "./kills.ts";

it("loses, doubles and reorders nothing acknowledged to kill -9 while fifty devices send", async () => {
  await ended(spawn(process.execPath, ["server/commands/build.mjs"]));
  const { acknowledged, ...toll } = await killUnderLoad({ devices: 50, kills: 3, seed: 20_260_304 });
  expect(toll).toEqual({ kills: 3, lost: 0, doubled: 0, outOfOrder: 0, integrity: "ok" });
  expect(acknowledged).toBeGreaterThan(3);
});
