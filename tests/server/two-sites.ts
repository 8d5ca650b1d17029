import { readFileSync } from "node:fs";
import type { Role } from "../../core/index.ts";
import { bench, id, job, phrase } from "./app-under-test.ts";
import { client, enrolled } from "./enrolled.ts";
import { wav } from "./keepsakes/with-place.ts";

export const JPEG = new Uint8Array(readFileSync(new URL("./keepsakes/pictures/plate.jpg", import.meta.url)));
const AT = "2026-03-04T10:00:05-07:00";
export const DAY = "2026-03-04";

/** All that a site has which can be named in a call. */
export interface Things {
  site: string;
  tag: string;
  job: string;
  /** a job that is signed */
  signed: string;
  phrase: string;
  /** a phrase about which its speaker was asked, and the question */
  asked: string;
  question: string;
  clip: string;
  photo: string;
  person: string;
  device: string;
}

/** The same names for things that are nowhere. */
export const nothing = (): Things => ({
  site: "nowhere",
  tag: "NO-1",
  job: id(),
  signed: id(),
  phrase: id(),
  asked: id(),
  question: id(),
  clip: id(),
  photo: id(),
  person: id(),
  device: id(),
});

/** A log of two invented sites, each with something of every kind, and people who see every site. */
export async function twoSites() {
  const log = await bench();
  const lead = await enrolled(log.store, "Ada Allover", ["lead"]);
  const boss = client(log.app, { token: lead.token });
  // biome-ignore lint/suspicious/noExplicitAny: answers are looked at key by key
  const must = async (who: typeof boss, method: string, path: string, body?: unknown): Promise<any> => {
    const answer = await who.call(method, path, body);
    if (answer.status !== 200) throw new Error(`${method} ${path}: ${answer.status} ${await answer.text()}`);
    return answer.json();
  };
  /** `mark` stands in all that is said, taught and named there, so that it can be looked for. */
  async function site(key: string, name: string, tag: string, mark: string) {
    await must(boss, "PUT", `/api/sites/${key}`, { name, zone: "America/Denver" });
    await must(boss, "PUT", `/api/valves/${tag}`, {
      site: key,
      family: "balanced_dump",
      size_in: 2,
      service: "severe",
    });
    await must(boss, "PUT", `/api/sites/${key}/stock`, { stock: { packing: 3 } });
    await must(boss, "PUT", `/api/sites/${key}/words`, {
      words: [{ id: id(), say: mark, as: { part: "positioner" }, at: AT }],
    });
    const settings = { recipients: [`${mark}@example.com`], hour: "18:00", weekends: true, quiet: false };
    await must(boss, "PUT", `/api/sites/${key}/report`, settings);
    const calendar: string = (await must(boss, "POST", `/api/sites/${key}/calendar`)).address;
    const speaker = await enrolled(log.store, `${name} Speaker`, ["technician"], null, [key]);
    const says = client(log.app, { token: speaker.token });
    const [one, signed] = [job({ tag, site: key }), job({ tag, site: key, startedAt: "2026-03-04T08:00:00-07:00" })];
    const said = phrase(one, `${mark} is bent`);
    const asked = phrase(one, `seat worn one side, ${mark} perhaps`, 1);
    const done = phrase(signed, "packing leaking", -7200);
    await must(says, "POST", "/api/phrases", { jobs: [one, signed], phrases: [said, asked, done] });
    const [clip, photo, question] = [id(), id(), id()];
    const clipQuery = new URLSearchParams({ phrase: said.id, at: new Date().toISOString(), seconds: "1" });
    await must(says, "PUT", `/api/clips/${clip}?${clipQuery}`, wav());
    const photoQuery = new URLSearchParams({ job: one.id, at: AT });
    await must(says, "PUT", `/api/photos/${photo}?${photoQuery}`, JPEG);
    await must(boss, "GET", "/api/review");
    const words = `which ${mark} do you mean?`;
    await must(boss, "POST", `/api/review/${asked.id}`, { id: question, what: "asked", words, seen: 0 });
    const item = await must(boss, "GET", `/api/review/${done.id}`);
    await must(boss, "POST", `/api/review/${done.id}`, { id: id(), what: "accepted", seen: item.decided });
    await must(boss, "POST", `/api/jobs/${signed.id}/signature`, { id: id(), phrases: 1 });
    await must(boss, "POST", `/api/sites/${key}/reports/${DAY}`, {});
    const { person, device } = speaker;
    const things: Things = {
      ...{ site: key, tag, job: one.id, signed: signed.id, phrase: said.id, asked: asked.id, question, clip, photo },
      ...{ person, device },
    };
    return { things, calendar, speaker, said, one, tells: [tag, mark, name] };
  }

  const north = await site("north", "Northfield", "NOR-11", "gizmo");
  const south = await site("south", "Southmoor", "SOU-77", "thingummy");
  const keptTo = async (key: string, role: Role) =>
    client(log.app, { token: (await enrolled(log.store, `${role} of ${key}`, [role], null, [key])).token });
  return { ...log, boss, lead, must, north, south, keptTo };
}
