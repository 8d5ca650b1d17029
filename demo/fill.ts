import { SITES, VALVES } from "./field.ts";
import type { DemoDelivery } from "./story.ts";

const PHRASES_A_REQUEST = 150;

/**
 * Tells the story to a running server by its own door, as a device would: sites and valves set up, then every job's
 * phrases. Throws where the server refuses anything, with its words.
 */
export async function fill(address: string, story: readonly DemoDelivery[]): Promise<void> {
  for (const { site, name, zone } of SITES) await send(address, "PUT", `api/sites/${site}`, { name, zone });
  for (const { site, tag, valve } of VALVES) await send(address, "PUT", `api/valves/${tag}`, { ...valve, site });
  let batch: DemoDelivery[] = [];
  let waiting = 0;
  for (const one of story) {
    if (waiting + one.phrases.length > PHRASES_A_REQUEST) {
      await deliver(address, batch);
      batch = [];
      waiting = 0;
    }
    batch.push(one);
    waiting += one.phrases.length;
  }
  await deliver(address, batch);
}

async function deliver(address: string, jobs: readonly DemoDelivery[]): Promise<void> {
  const body = { jobs: jobs.map((one) => one.job), phrases: jobs.flatMap((one) => one.phrases) };
  const answer = await send(address, "POST", "api/phrases", body);
  const { results } = answer as { results: { status: string; problem?: string }[] };
  const refused = results.find((one) => one.status === "refused");
  if (refused) throw new Error(`an invented phrase was refused: ${refused.problem}`);
}

async function send(address: string, method: string, path: string, body: unknown): Promise<unknown> {
  const reply = await fetch(new URL(path, address), {
    method,
    headers: { "content-type": "application/json" },
    body: JSON.stringify(body),
  });
  if (!reply.ok) throw new Error(`${method} ${path} was answered ${reply.status}: ${await reply.text()}`);
  return reply.json();
}
