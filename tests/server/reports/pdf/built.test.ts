import { expect, it } from "vitest";
import { folder } from "../../app-under-test.ts";
import { startBuilt } from "../../running.ts";

it("the built server sets a PDF, where the thread for it is a file of its own, and ends when told to", async () => {
  const { address, child } = await startBuilt({ DATA_DIR: await folder() });
  await fetch(`${address}/api/sites/north`, {
    method: "PUT",
    body: JSON.stringify({ name: "North Pad", zone: "America/Denver" }),
    headers: { "content-type": "application/json" },
  });
  const reply = await fetch(`${address}/report?site=north&day=2026-03-04&form=pdf`);
  expect([reply.status, reply.headers.get("content-type")]).toEqual([200, "application/pdf"]);
  expect(Buffer.from(await reply.arrayBuffer()).toString("latin1")).toMatch(/^%PDF-1\.7[\s\S]*%%EOF\n$/);
  const ended = new Promise((resolve) => child.once("exit", resolve));
  child.kill("SIGTERM");
  expect(await ended).toBe(0);
});
