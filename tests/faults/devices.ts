import { mkdtemp, rm } from "node:fs/promises";
import { Agent, request } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { openStore } from "../../server/db/open.ts";
import { retryAfterMs } from "../../web/sync/retry-after.ts";
import { enrolled } from "../server/enrolled.ts";

/** A device in somebody's pocket: it says one phrase after another, and each again until the server answers for it. */
export interface Device {
  token: string;
  job: { id: string; tag: string; startedAt: string };
  /** every phrase that was answered `stored` or `known`, in the order said */
  told: string[];
  /** milliseconds that each answer took, of those that came the first time */
  tookMs: number[];
}

/** A folder for a server's data with so many people in its database (or in that at `url`), a device each. */
export async function peopled(
  count: number,
  url?: string,
): Promise<{ dir: string; devices: Device[]; remove(): Promise<void> }> {
  const dir = await mkdtemp(join(tmpdir(), "handsfull-devices-"));
  const store = await openStore(url ?? `file:${join(dir, "handsfull.db")}`);
  const devices: Device[] = [];
  for (let n = 0; n < count; n++) {
    const { token } = await enrolled(store, `Person ${n}`, ["technician"]);
    devices.push({ token, job: newJob(n), told: [], tookMs: [] });
  }
  await store.close();
  return { dir, devices, remove: () => rm(dir, { recursive: true, force: true }) };
}

export const newJob = (n: number) => ({
  id: crypto.randomUUID(),
  tag: `LCV-${n}`,
  startedAt: new Date().toISOString(),
});

/** Says one phrase and does not give up; `address` is asked for anew each time, since the server comes and goes. */
export async function say(device: Device, text: string, saidAt: string, address: () => Promise<string>): Promise<void> {
  const id = crypto.randomUUID();
  const body = JSON.stringify({
    jobs: [device.job],
    phrases: [{ id, job: device.job.id, text, saidAt, how: "typed" }],
  });
  const headers = { "content-type": "application/json", authorization: `Bearer ${device.token}` };
  for (let attempt = 0; ; attempt++) {
    const start = performance.now();
    const answer = await send(`${await address()}/api/phrases`, headers, body);
    if (answer.status === 200) {
      const { results } = answer.told as { results: { status: string; problem?: string }[] };
      if (results[0]?.status === "refused") throw new Error(`a phrase was refused: ${results[0].problem}`);
      device.told.push(id);
      if (attempt === 0) device.tookMs.push(performance.now() - start);
      return;
    }
    // 408, which has no body: on a machine with much to do a request does not come in by its time
    if (![0, 408, 429, 503].includes(answer.status))
      throw new Error(`a phrase was answered ${answer.status}: ${JSON.stringify(answer.told)}`);
    await new Promise((wake) => setTimeout(wake, answer.waitMs ?? 20));
  }
}

/** One connection a device, kept open: fetch would cost the machine more than the server does. */
const agent = new Agent({ keepAlive: true, maxSockets: 1_000 });

interface Answer {
  /** 0: the server went away before it had answered whole, and nothing is known of what it did */
  status: number;
  told?: unknown;
  waitMs?: number | undefined;
}

function send(url: string, headers: Record<string, string>, body: string): Promise<Answer> {
  return new Promise((resolve) => {
    const cutOff = () => resolve({ status: 0 });
    const asked = request(url, { method: "POST", agent, headers }, (answer) => {
      let text = "";
      answer.setEncoding("utf8");
      answer.on("data", (part) => {
        text += part;
      });
      answer.on("error", cutOff);
      answer.on("end", () => {
        if (!answer.complete) return cutOff();
        const waitMs = retryAfterMs(answer.headers["retry-after"] ?? null, Date.now());
        resolve({ status: answer.statusCode ?? 0, told: text === "" ? undefined : JSON.parse(text), waitMs });
      });
    });
    asked.on("error", cutOff);
    asked.end(body);
  });
}
