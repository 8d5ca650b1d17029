import { type Consequences, type DueLine, type Entry, followUpKey, type Part, type Valve } from "../../core/index.ts";
import { capital, HAZARD_WORDS, partName } from "../wording/names.ts";
import {
  checkSentence,
  dueSentence,
  followUpWords,
  otherSentences,
  partSentences,
  testSentence,
  valveWords,
  whenWords,
} from "../wording/sentences.ts";

/** What the report is made from: a site's day as the log has it. */
export interface DayData {
  site: { key: string; name: string; zone: string | undefined };
  day: string;
  jobs: DayJob[];
  /** what is overdue or falls due soon at this site */
  due: DueLine[];
  dueDays: number;
}
export interface DayJob {
  /** local time of the start, HH:MM */
  time: string;
  /** the names of those who said it, where they are known */
  by: string[];
  /** that a lead signed it, and who, where that is known */
  signed?: { by?: string };
  shares: {
    tag: string;
    valve: Valve;
    entries: Entry[];
    consequences: Consequences;
    /** whose the follow-ups are, by their keys, where somebody has them */
    owners?: ReadonlyMap<string, string>;
  }[];
  phrases: { time: string; text: string; unread: string[]; alerts: Entry[] }[];
}

/** The report: sentences in the order they are read, nothing of how they are shown. */
export interface Report {
  title: string;
  /** that and how this is a correction of what was sent before */
  correction: string | undefined;
  site: string;
  day: string;
  zone: string;
  hazards: { valve: string; time: string; what: string; words: string }[];
  failed: { valve: string; what: string }[];
  valves: {
    valve: string;
    about: string;
    time: string;
    by: string[];
    done: string[];
    tests: string[];
    checks: string[];
  }[];
  followUps: { valve: string; what: string; when: string; why: string; urgent: boolean; owner: string }[];
  parts: { used: CountedPart[]; needed: CountedPart[] };
  due: { valve: string; what: string; overdue: boolean; why: string }[];
  dueDays: number;
  notUnderstood: { valve: string; time: string; text: string; words: string[]; what: string }[];
  totals: { what: string; count: number }[];
  reviewed: string;
  caution: string;
}
export interface CountedPart {
  part: string;
  count: number;
  valves: string;
}

const CAUTION =
  "This report says what was said, found and done. It does not say that any valve is safe to operate. " +
  "Site procedure, local codes and the people licensed to decide govern.";
const REPLACES = "It replaces what was sent of this day before: something was said or amended since.";
const NO_TAG = "Valve not named";

/** A site's day as a report; from version 2 on as a correction. Pure: the same data gives the same report. */
export function makeReport(data: DayData, version = 1): Report {
  const shares = data.jobs.flatMap((job) => job.shares.map((share) => ({ ...share, time: job.time, job })));
  const all = shares.flatMap((share) => share.entries);
  return {
    title: `${version > 1 ? `${versionName(version)}: ` : ""}Valve work, ${data.site.name}, ${data.day}`,
    correction: version > 1 ? `${versionName(version)}. ${REPLACES}` : undefined,
    site: data.site.name,
    day: data.day,
    zone: data.site.zone ?? "by the clock of each device",
    hazards: data.jobs.flatMap(hazardsOf),
    failed: shares.flatMap((share) => failuresOf(share).map((what) => ({ valve: nameOf(share.tag), what }))),
    valves: shares.map((share) => ({
      valve: nameOf(share.tag),
      about: valveWords(share.valve, serviceSaid(share.entries)),
      time: share.time,
      by: share.job.by,
      done: [
        ...hazardsCalled(share),
        ...partSentences(share.entries),
        ...otherSentences(share.entries.filter((one) => one.type !== "test")),
      ],
      tests: testsOf(share),
      checks: share.consequences.checks.map(checkSentence),
    })),
    followUps: followUpsOf(shares),
    parts: { used: sumParts(shares, "used"), needed: sumParts(shares, "needed") },
    due: data.due.map((line) => ({
      valve: line.tag,
      what: line.overdue > 0 ? `${dueSentence(line)}, overdue by ${days(line.overdue)}` : dueSentence(line),
      overdue: line.overdue > 0,
      why: capital(line.why),
    })),
    dueDays: data.dueDays,
    notUnderstood: data.jobs.flatMap((job) =>
      job.phrases
        .filter((one) => one.unread.length > 0)
        .map(({ time, text, unread }) => ({
          valve: jobName(job),
          time,
          text,
          words: unread,
          what: unreadWords(text, unread),
        })),
    ),
    totals: totalsOf(data, all, shares),
    reviewed: reviewedWords(data.jobs),
    caution: CAUTION,
  };
}

/** "Report", then "Correction 1" and so on. */
export const versionName = (version: number): string => (version > 1 ? `Correction ${version - 1}` : "Report");

type Share = DayJob["shares"][number];

function hazardsOf(job: DayJob): Report["hazards"] {
  return job.phrases.flatMap((one) =>
    one.alerts.flatMap((alert) =>
      alert.type === "hazard"
        ? [{ valve: jobName(job), time: one.time, what: HAZARD_WORDS[alert.hazard], words: one.text }]
        : [],
    ),
  );
}

/** The job's hazards stand with its own valve too, where somebody reads about that valve alone. */
function hazardsCalled({ job, tag }: Share & { job: DayJob }): string[] {
  if (job.shares[0]?.tag !== tag) return [];
  const called = new Set(hazardsOf(job).map((one) => one.what));
  return called.size > 0 ? [`A hazard was called: ${[...called].join(", ")}.`] : [];
}

/** Tests said to have failed, and measured leaks over their limit; the last word on each test counts. */
function failuresOf(share: Share): string[] {
  const last = new Map<string, Extract<Entry, { type: "test" }>>();
  for (const entry of share.entries) if (entry.type === "test") last.set(entry.test, entry);
  const said = [...last.values()].filter((one) => one.result === "fail").map(testSentence);
  const judged = share.consequences.checks.filter((one) => one.check === "seat_leakage" && one.verdict === "fail");
  return [...said, ...judged.map(checkSentence)];
}

/** A test whose measured rate was judged has its result in the check, not in what was said. */
function testsOf({ entries, consequences }: Share): string[] {
  const judged = consequences.checks.some((one) => one.check === "seat_leakage" && one.verdict !== "no_limit");
  return entries.flatMap((one) => {
    if (one.type !== "test" || (one.test === "seat_leak" && one.result === null && judged)) return [];
    return [testSentence(one)];
  });
}

/** Which words of a phrase were not understood; all of them are not said twice. */
function unreadWords(text: string, unread: readonly string[]): string {
  if (unread.length === 1 && unread[0] === text.trim()) return "nothing of it was understood";
  return `not understood: ${unread.map((one) => `"${one}"`).join(", ")}`;
}

/** Which jobs a lead has reviewed and signed, and which stand as they were said. */
function reviewedWords(jobs: readonly DayJob[]): string {
  const signed = jobs.filter((job) => job.signed);
  const names = [...new Set(signed.flatMap((job) => job.signed?.by ?? []))];
  const by = names.length > 0 ? ` by ${names.join(" and ")}` : "";
  const open = jobs.filter((job) => !job.signed);
  if (open.length === 0 && jobs.length > 0)
    return `Reviewed and signed${by}: ${jobs.length === 1 ? "the one job" : `all ${jobs.length} jobs`} of this day.`;
  if (signed.length === 0) {
    const what = jobs.length === 0 ? "this day" : jobs.length === 1 ? "the one job" : `all ${jobs.length} jobs`;
    return `Not yet reviewed: ${what}. Everything below stands as it was heard or typed at the valve.`;
  }
  const left = open.map((job) => `${jobName(job)} at ${job.time}`).join(", ");
  return `Reviewed and signed${by}: ${signed.length} of ${jobs.length} jobs. Not yet reviewed, and standing as it was heard or typed at the valve: ${left}.`;
}

/** Who does it; where nobody has it yet, whom to ask. */
function ownerOf(owner: string | undefined, by: readonly string[]): string {
  if (owner !== undefined) return `Owner: ${owner}`;
  return by.length > 0 ? `No owner yet, logged by ${by.join(", ")}` : "No owner yet";
}

function followUpsOf(shares: readonly (Share & { job: DayJob })[]): Report["followUps"] {
  const lines = shares.flatMap(({ tag, consequences, owners, job }) => {
    const inspection = consequences.due.find((one) => one.task === "seat_inspection")?.on;
    return consequences.followUps.map((one) => ({
      valve: nameOf(tag),
      what: followUpWords(one),
      when: whenWords(one, inspection),
      why: capital(one.why),
      urgent: one.when === "now",
      owner: ownerOf(owners?.get(followUpKey(one)), job.by),
      stop: one.do === "stop",
    }));
  });
  const rank = (line: (typeof lines)[number]) => (line.stop ? 0 : line.urgent ? 1 : 2);
  return lines.sort((a, b) => rank(a) - rank(b)).map(({ stop: _, ...line }) => line);
}

function sumParts(shares: readonly Share[], which: "used" | "needed"): CountedPart[] {
  const sums = new Map<string, { count: number; valves: Set<string> }>();
  for (const { tag, consequences } of shares) {
    for (const { part, count } of which === "used" ? consequences.parts.used : toBring(consequences)) {
      const sum = sums.get(partName(part)) ?? { count: 0, valves: new Set() };
      sum.count += count;
      sum.valves.add(nameOf(tag));
      sums.set(partName(part), sum);
    }
  }
  return [...sums].map(([part, sum]) => ({ part, count: sum.count, valves: [...sum.valves].join(", ") }));
}

/** What is needed for work still owed, and what was asked for: of one part the greater number. */
function toBring({ parts, followUps }: Consequences): Consequences["parts"]["needed"] {
  const asked = followUps.flatMap((one) =>
    one.do === "order" && one.part ? [{ part: one.part, count: one.count ?? 1 }] : [],
  );
  const most = new Map<Part, number>();
  for (const { part, count } of [...parts.needed, ...asked]) most.set(part, Math.max(count, most.get(part) ?? 0));
  return [...most].map(([part, count]) => ({ part, count }));
}

function totalsOf(data: DayData, all: readonly Entry[], shares: readonly Share[]): Report["totals"] {
  const phrases = data.jobs.flatMap((job) => job.phrases);
  const of = (type: Entry["type"]) => all.filter((one) => one.type === type).length;
  const result = (wanted: string) => all.filter((one) => one.type === "test" && one.result === wanted).length;
  const follow = shares.flatMap((share) => share.consequences.followUps);
  return [
    many(data.jobs.length, "job"),
    many(new Set(shares.map((share) => share.tag).filter(Boolean)).size, "valve"),
    many(phrases.length, "phrase"),
    many(of("finding"), "finding"),
    many(
      all.filter((one) => one.type === "work" && one.status === "done").length,
      "piece of work done",
      "pieces of work done",
    ),
    many(result("pass"), "test passed", "tests passed"),
    many(result("fail"), "test failed", "tests failed"),
    many(follow.filter((one) => one.when === "now").length, "follow-up due now", "follow-ups due now"),
    many(follow.filter((one) => one.when !== "now").length, "follow-up for later", "follow-ups for later"),
    many(
      phrases.filter((one) => one.unread.length > 0).length,
      "phrase not wholly understood",
      "phrases not wholly understood",
    ),
  ];
}

const many = (count: number, one: string, several = `${one}s`) => ({ what: count === 1 ? one : several, count });

function serviceSaid(entries: readonly Entry[]): string | undefined {
  const last = entries.findLast((entry) => entry.type === "valve" && entry.service !== undefined);
  return last?.type === "valve" ? last.service : undefined;
}

const nameOf = (tag: string) => tag || NO_TAG;
const jobName = (job: DayJob) => nameOf(job.shares[0]?.tag ?? "");
const days = (count: number) => `${count} ${count === 1 ? "day" : "days"}`;
