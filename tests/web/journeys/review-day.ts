/** An invented day at an invented site: 12 jobs, 150 phrases, with the trouble that a day has. */

const TAGS = [
  "LCV-213",
  "LCV-214",
  "LCV-215",
  "LCV-216",
  "LCV-301",
  "LCV-302",
  "PV-104",
  "PV-105",
  "PV-106",
  "FCV-110",
];
const ALL_TAGS = [...TAGS, "FCV-111", "FCV-112"];

/** What nobody doubts; each job says these and its own. */
const PLAIN = [
  "breather ok, travel indicator ok",
  "upper diaphragm good",
  "lower diaphragm good",
  "stem guide ok",
  "plug is fine",
  "cage looks good",
  "body threads are good",
  "bonnet gasket flattened, replaced it",
  "bonnet bolts torqued to twenty eight foot pounds",
  "no leak at sixty psi",
  "strokes full",
];

/** What a job says beside them, and what a lead makes of it: a key, and words where it takes some. */
interface Doubt {
  say: string;
  heard?: number;
}
const DOUBTS: Doubt[][] = [
  [{ say: "hold on I smell gas" }],
  [{ say: "leaking by at fifty psi" }],
  [{ say: "the thingamajig rattles" }],
  [{ say: "did you see the ball game last night" }, { say: "seat worn one side", heard: 0.55 }],
  [{ say: "bonnet bolts torqued to eighty foot pounds" }],
  [{ say: "replaced the cage o ring" }, { say: "cage o ring reused" }],
  [{ say: "the donut is cut" }],
  [{ say: "seat is cracked" }],
  [{ say: "gasket torn" }],
  [{ say: "stem bent", heard: 0.41 }],
  [{ say: "seat worn one side" }, { say: "flipped it" }],
  [{ say: "order one plug" }],
];

export interface DayPhrase {
  text: string;
  confidence?: number;
}
export interface DayJob {
  tag: string;
  phrases: DayPhrase[];
}

export function reviewDay(): DayJob[] {
  const jobs = ALL_TAGS.map((tag, n): DayJob => {
    const own = (DOUBTS[n] ?? []).map(({ say, heard }) => ({ text: say, ...(heard ? { confidence: heard } : {}) }));
    return { tag, phrases: [...PLAIN.map((text) => ({ text })), ...own] };
  });
  // to 150 in all: a note here and there
  for (let n = 0; jobs.reduce((sum, job) => sum + job.phrases.length, 0) < 150; n++)
    jobs[n]?.phrases.push({ text: `note that the plate of ${jobs[n]?.tag} is hard to read` });
  return jobs;
}
