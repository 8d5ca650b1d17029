import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { expect, it } from "vitest";
import { openStore } from "../../../server/db/open.ts";
import { job, phrase } from "../app-under-test.ts";
import { gone, startServer } from "../running.ts";
import { smallDisk } from "./small-disk.ts";

const PLATE = new URL("../keepsakes/pictures/plate.jpg", import.meta.url);

it("a full disk is answered with 507 in words, nothing is kept by halves, and serving goes on once there is room", async () => {
  const disk = await smallDisk(2);
  const env = { DATA_DIR: disk.dir, DATABASE_URL: "" };
  const { command, args } = disk.under(process.execPath, ["--import", "tsx", "server/main.ts"]);
  const { address, child } = await startServer(env, args, command);
  const post = (body: unknown) =>
    fetch(`${address}/api/phrases`, {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: JSON.stringify(body),
    });
  const statuses = async (answer: Response) =>
    ((await answer.json()) as { results: { status: string }[] }).results.map((one) => one.status);
  const delivery = () => {
    const one = job({ tag: "LCV-213" });
    const words = "seat worn one side, flipped it. ".repeat(10);
    return { jobs: [one], phrases: Array.from({ length: 10 }, (_, n) => phrase(one, `${words} ${n}`, n)) };
  };

  const told: ReturnType<typeof delivery>[] = [];
  let turnedAway = delivery();
  let answer = await post(turnedAway);
  for (; answer.status === 200; answer = await post(turnedAway)) {
    expect(new Set(await statuses(answer))).toEqual(new Set(["stored"]));
    told.push(turnedAway);
    turnedAway = delivery();
  }
  expect(answer.status).toBe(507);
  expect(answer.headers.get("content-type")).toBe("application/problem+json");
  expect(Number(answer.headers.get("retry-after"))).toBeGreaterThan(0);
  expect(((await answer.json()) as { detail: string }).detail).toMatch(
    /disk may be full.*send it again once there is room/,
  );
  expect(told.length).toBeGreaterThan(0);

  // still alive, still answering what it has, still refusing what it cannot keep
  const [first] = told[0]?.jobs ?? [];
  expect((await fetch(`${address}/api/jobs/${first?.id}`)).status).toBe(200);
  expect((await fetch(`${address}/healthz`)).status).toBe(200);
  expect((await post(turnedAway)).status).toBe(507);

  await disk.makeRoom(child.pid ?? 0);
  // had half of it been kept, some of it would be known
  expect(new Set(await statuses(await post(turnedAway)))).toEqual(new Set(["stored"]));
  told.push(turnedAway);
  const photo = `${address}/api/photos/${crypto.randomUUID()}?job=${first?.id}&at=2026-03-04T17:01:00Z`;
  const headers = { "content-type": "image/jpeg" };
  expect((await fetch(photo, { method: "PUT", body: await readFile(PLATE), headers })).status).toBe(200);

  child.kill("SIGKILL");
  await gone(child);
  const store = await openStore(`file:${join(disk.dir, "handsfull.db")}`);
  await store.close();
  const again = await startServer(env);
  for (const { jobs, phrases } of told) {
    const kept = (await (await fetch(`${again.address}/api/jobs/${jobs[0]?.id}`)).json()) as {
      phrases: { id: string }[];
    };
    expect(kept.phrases.map((one) => one.id)).toEqual(phrases.map((one) => one.id));
  }
  again.child.kill("SIGTERM");
  await gone(again.child);
});
