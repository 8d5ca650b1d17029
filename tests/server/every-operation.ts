import { familyOf } from "../../core/index.ts";
import { id, phrase } from "./app-under-test.ts";
import { wav } from "./keepsakes/with-place.ts";
import { DAY, JPEG, type Things } from "./two-sites.ts";

export interface Call {
  query?: string;
  body?: unknown;
  /** what a caller is answered who may do such things, but does not see the site of what is named */
  expects: number;
}
/** The calls that are made of an operation, with things of a site; the first name in its path is filled in from `at`. */
export interface Calls {
  at?: string;
  calls: Call[];
}

const AT = "2026-03-04T11:00:00-07:00";
const SETTINGS = { recipients: ["x@example.com"], hour: "18:00", weekends: true, quiet: false };
const word = () => ({ id: id(), say: "gubbins", as: { part: "seat" }, at: AT });

/** Of no phrase: one id, so that what is answered can be compared. */
const FRESH = "0199a000-0000-7000-8000-000000000001";

const query = (about: Record<string, string>) => `?${new URLSearchParams(about)}`;
/** A thing named in the path. */
const one = (at: string, ...bodies: unknown[]): Calls => ({
  at,
  calls: bodies.length > 0 ? bodies.map((body) => ({ body, expects: 404 })) : [{ expects: 404 }],
});
/** A list of all that is seen; and of a site, which is not. */
const list = (site: string, ...all: Record<string, string>[]): Calls => ({
  calls: [
    ...[{}, ...all].map((about) => ({ query: query(about), expects: 200 })),
    ...[{}, ...all].map((about) => ({ query: query({ ...about, site }), expects: 404 })),
  ],
});
const plain: Calls = { calls: [{ expects: 200 }] };
const posted = (expects: number, ...bodies: unknown[]): Calls => ({ calls: bodies.map((body) => ({ body, expects })) });
/** Of nobody's site. */
const nobodys: Calls = { calls: [] };

/** Every operation of the OpenAPI document, and the pages beside it. */
export const EVERY_OPERATION: Record<string, (of: Things) => Calls> = {
  "POST /api/sign-in": () => nobodys,
  "POST /api/sign-out": () => nobodys,
  "POST /api/first-password": () => nobodys,
  "PUT /api/password": () => nobodys,
  "POST /api/enrolments": () => nobodys,
  "GET /api/me": () => plain,
  "GET /api/people": () => plain,
  "POST /api/people": ({ site }) => posted(403, { name: "New", roles: ["technician"], sites: [site] }),
  "PUT /api/people/{id}": ({ person }) => one(person, { roles: ["lead"] }, { sites: null }, { sites: ["north"] }),
  "DELETE /api/people/{id}": ({ person }) => one(person),
  "POST /api/people/{id}/codes": ({ person }) => one(person, { for: "device" }, { for: "password" }),
  "DELETE /api/devices/{id}": ({ device }) => one(device),
  "GET /api/audit": () => posted(403, undefined),
  "POST /api/phrases": ({ site, job, phrase: said }) => {
    const more = { ...phrase({ id: job }, "seat is fine"), id: FRESH };
    const sent = (id: string) => ({ jobs: [{ id: job, site, startedAt: AT }], phrases: [{ ...more, id }] });
    return posted(200, { phrases: [more] }, { phrases: [{ ...more, id: said }] }, sent(more.id), sent(said));
  },
  "POST /api/corrections": ({ phrase }) => posted(404, { id: id(), phrase, madeAt: AT, text: "x" }),
  "GET /api/jobs/{id}": ({ job }) => one(job),
  "GET /api/jobs": ({ site }) => list(site, { day: DAY }),
  "GET /api/review": ({ site, job }) => list(site, { state: "asked" }, { state: "settled" }, { job }),
  "GET /api/review/{id}": ({ phrase }) => one(phrase),
  "POST /api/review/{id}": ({ phrase }) =>
    one(phrase, { id: id(), what: "accepted", seen: 0 }, { id: id(), what: "struck", seen: 0 }),
  "POST /api/readings": ({ phrase }) => posted(404, { phrase, text: "seat worn" }),
  "GET /api/signing": ({ site }) => list(site, { state: "signed" }),
  "POST /api/jobs/{id}/acceptance": ({ job }) => one(job),
  "POST /api/jobs/{id}/signature": ({ job }) => one(job, { id: id(), phrases: 2 }),
  "POST /api/jobs/{id}/reopening": ({ signed }) => one(signed, { id: id(), why: "to see" }),
  "GET /api/questions": () => plain,
  "POST /api/questions/{id}": ({ question }) => one(question, { id: id(), text: "yes", how: "typed" }),
  "GET /api/valves": ({ site }) => list(site),
  "GET /api/valves/{tag}": ({ tag, site }) => ({
    at: tag,
    calls: [{ expects: 404 }, { query: query({ site }), expects: 404 }],
  }),
  "PUT /api/valves/{tag}": ({ tag, site }) => one(tag, { site, size_in: 3 }),
  "POST /api/sites/{site}/valve-list": ({ site, tag }) =>
    one(site, { csv: `tag\n${tag}\n` }, { csv: `tag,size_in\n${tag},3\n`, apply: true }),
  "GET /api/search": ({ site, tag }) => list(site, { words: "bent" }, { part: "seat" }, { condition: "worn" }, { tag }),
  "GET /api/follow-ups": ({ site, person }) => list(site, { owner: "nobody" }, { owner: person }),
  "GET /api/follow-ups/people": ({ site }) => list(site),
  "PUT /api/follow-ups/owner": ({ site, tag, person }) => {
    const sent = { id: id(), site, tag, key: "replace|packing|", seen: 0 };
    return posted(404, { ...sent, owner: person }, { ...sent, owner: null });
  },
  "GET /api/due": ({ site }) => list(site, { days: "3650" }, { days: "3650", limit: "1" }),
  "GET /api/carry": ({ site }) => list(site, { days: "3650" }),
  "GET /api/reliability": ({ site }) => list(site),
  "GET /api/export": ({ site }) => list(site),
  "GET /api/sites": () => plain,
  "PUT /api/sites/{site}": ({ site }) => one(site, { name: "Mine", zone: "Etc/UTC" }),
  "GET /api/sites/{site}/families": ({ site }) => one(site),
  "PUT /api/sites/{site}/families": ({ site }) =>
    one(site, { family: { ...familyOf("globe_control"), family: "our_globe" } }, { withdraw: "our_globe" }),
  "GET /api/sites/{site}/stock": ({ site }) => one(site),
  "PUT /api/sites/{site}/stock": ({ site }) => one(site, { stock: {} }),
  "GET /api/sites/{site}/words": ({ site }) => one(site),
  "PUT /api/sites/{site}/words": ({ site }) => one(site, { words: [word()] }),
  "GET /api/words": () => plain,
  "PUT /api/words": () => posted(403, { words: [word()] }),
  "POST /api/words/trial": ({ site }) => ({
    calls: [
      { body: { site, say: "gubbins", as: { part: "seat" } }, expects: 404 },
      { body: { say: "gubbins", as: { part: "seat" } }, expects: 403 },
    ],
  }),
  "PUT /api/clips/{id}": ({ clip, phrase }) => ({
    at: clip,
    calls: [{ query: query({ phrase, at: AT, seconds: "1" }), body: wav(2), expects: 404 }],
  }),
  "GET /api/clips/{id}": ({ clip }) => one(clip),
  "PUT /api/photos/{id}": ({ photo, job, phrase }) => ({
    at: photo,
    calls: [
      { query: query({ job, at: AT }), body: JPEG, expects: 404 },
      { query: query({ job, phrase, at: AT }), body: JPEG, expects: 404 },
    ],
  }),
  "GET /api/photos/{id}": ({ photo }) => one(photo),
  "PUT /api/sites/{site}/keeping": ({ site }) => one(site, { clips: "none", days: 30 }),
  "GET /api/sites/{site}/report": ({ site }) => one(site),
  "PUT /api/sites/{site}/report": ({ site }) => one(site, SETTINGS),
  "GET /api/sites/{site}/reports/{day}": ({ site }) => one(site),
  "POST /api/sites/{site}/reports/{day}": ({ site }) => one(site, {}, { again: true }),
  "GET /api/entries": ({ site }) => ({
    calls: ["csv", "jsonl"].map((form) => ({
      query: query({ site, from: DAY, to: DAY, form }),
      expects: 404,
    })),
  }),
  "GET /api/sites/{site}/calendar": ({ site }) => one(site),
  "POST /api/sites/{site}/calendar": ({ site }) => one(site),
  "DELETE /api/sites/{site}/calendar": ({ site }) => one(site),
  "GET /report": ({ site }) => ({
    calls: ["page", "text", "pdf", "mail"].map((form) => ({
      query: query({ site, day: DAY, form }),
      expects: 404,
    })),
  }),
};
