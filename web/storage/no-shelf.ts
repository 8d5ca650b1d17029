import type { CardPhrase, JobCard, KnownSite, ListedValve } from "../state/state.ts";
import type { KeptJob } from "./database.ts";
import type { KeepsakeShelf } from "./keepsake-shelf.ts";
import type { Shelf } from "./shelf.ts";

/**
 * Stands in where the browser keeps nothing. Words are held in this page only, long enough to be sent;
 * every promise to keep them is refused with the reason, so that nobody is told that they are kept.
 */
export function noShelf(why: string): Shelf & { phrasesOf(job: string): CardPhrase[] } {
  const jobs = new Map<string, KeptJob>();
  const phrases = new Map<string, CardPhrase>();
  let listed: { valves: ListedValve[]; sites: KnownSite[] } = { valves: [], sites: [] };
  let lastKeptAt: string | undefined;
  const only = <Row extends { delivery: string }>(rows: Map<string, Row>, delivery: string) =>
    [...rows.values()].filter((row) => row.delivery === delivery);
  const mark = <Row extends { delivery: string; problem?: string }>(
    rows: Map<string, Row>,
    id: string,
    delivery: Row["delivery"],
    problem?: string,
  ) => {
    const row = rows.get(id);
    if (row) rows.set(id, { ...row, delivery, problem });
  };
  const phrasesOf = (job: string) => [...phrases.values()].filter((phrase) => phrase.job === job);
  return {
    phrasesOf,
    async keepJob(card: JobCard) {
      jobs.set(card.id, { ...card, delivery: "waiting" });
    },
    async keepPhrase(phrase) {
      phrases.set(phrase.id, { ...phrase, delivery: "waiting" });
      throw new Error(
        `this browser lets the page keep nothing (${why}); it is sent to the server if that can be reached`,
      );
    },
    async markSeen() {},
    async openJob() {
      return undefined;
    },
    async setOpenJob() {},
    async closeJob() {},
    async saidBefore() {
      return [];
    },
    async job(id) {
      const card = jobs.get(id);
      return card && { card, phrases: phrasesOf(id) };
    },
    async waiting(limit) {
      const first = only(phrases, "waiting").slice(0, limit);
      return { jobs: [...jobs.values()].filter((job) => first.some((one) => one.job === job.id)), phrases: first };
    },
    async markDelivered(jobIds, sent) {
      for (const id of jobIds) mark(jobs, id, "kept");
      const same = sent.filter((one) => phrases.get(one.id)?.confidence === one.confidence).map((one) => one.id);
      for (const id of same) mark(phrases, id, "kept");
      return same;
    },
    async markRefused(kind, id, problem) {
      if (kind === "jobs") mark(jobs, id, "refused", problem);
      else mark(phrases, id, "refused", problem);
    },
    async refused() {
      return { jobs: only(jobs, "refused"), phrases: only(phrases, "refused") };
    },
    async askAgain() {
      for (const one of only(jobs, "refused")) mark(jobs, one.id, "waiting");
      for (const one of only(phrases, "refused")) mark(phrases, one.id, "waiting");
    },
    async counts() {
      const said = only(phrases, "refused");
      const idle = only(jobs, "refused").filter((job) => !said.some((phrase) => phrase.job === job.id));
      const refused = idle.length + said.length;
      return { waiting: only(phrases, "waiting").length, clips: 0, photos: 0, refused, lastKeptAt };
    },
    async keepValve() {},
    async valve() {
      return undefined;
    },
    async keepListed(valves, sites) {
      listed = { valves, sites };
    },
    async listed() {
      return listed;
    },
    async keepOnly(own) {
      const { valves, sites } = listed;
      const isOwn = ({ site }: { site?: string }) => site !== undefined && own.includes(site);
      listed = { valves: valves.filter(isOwn), sites: sites.filter(isOwn) };
    },
    async settings() {
      return {};
    },
    async keepSettings() {},
    async setLastKeptAt(at) {
      lastKeptAt = at;
    },
    async taught() {
      return [];
    },
    async keepTaught() {
      throw new Error(`this browser lets the page keep nothing (${why}); it is read until the page closes`);
    },
  };
}

/** Sound and photographs are not even held in the page: they are told to be lost, with the reason. */
export function noKeepsakes(why: string): KeepsakeShelf {
  return {
    async keep() {
      throw new Error(`this browser lets the page keep nothing (${why})`);
    },
    async bytes() {
      return undefined;
    },
    async ofJob() {
      return [];
    },
    async toSend() {
      return undefined;
    },
    async mark() {
      return undefined;
    },
    async letGo() {
      return 0;
    },
    async setReserve() {
      return true;
    },
    async giveUpReserve() {
      return false;
    },
  };
}
