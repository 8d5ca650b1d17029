import type { DecisionResult, DecisionSent, JobToSign, ReviewItem, ReviewPage } from "../../../core/index.ts";
import { useEffect, useRef, useState } from "../../parts/hooks.ts";
import { useAnswer } from "../../parts/use-answer.ts";
import { type Answer, ask, path, send } from "../../sync/ask.ts";

/** Somebody else may decide meanwhile: how often the queue is looked at again while nothing is being written. */
const LOOK_AGAIN_MS = 15_000;

/** After a decision the queue is looked at again once the hands are still: counts and what comes next. */
const STILL_MS = 400;

/** What there is to do, one after the other: phrases to look at, then jobs to sign. */
export type Task = { of: "phrase"; key: string; item: ReviewItem } | { of: "job"; key: string; job: JobToSign };

/** A phrase as it stands after something was done here, by how many decisions; none where nothing is left of it. */
interface Changed {
  item?: ReviewItem;
  decided: number;
  /** shown though it is settled: somebody else did it while it was at hand here */
  hold?: true;
}

export interface Review {
  page: ReviewPage | undefined;
  problem: string | undefined;
  tasks: Task[];
  /** jobs that wait for an answer or for phrases to be looked at */
  notYet: JobToSign[];
  look(): void;
  decide(item: ReviewItem, what: DecisionSent["what"], words?: string): Promise<Answer<DecisionResult>>;
  sign(job: JobToSign): Promise<Answer<JobToSign>>;
}

/** The queue of a site as the server has it, with what was done here taken out of it at once. */
export function useReview(site: string | undefined, busy: boolean): Review {
  const [queue, againQueue] = useAnswer<ReviewPage>(path("/api/review", { site, limit: "50" }));
  const [signing, againSigning] = useAnswer<{ jobs: JobToSign[] }>(path("/api/signing", { site }));
  // what was done here: the server may have told its list before it was done
  const [changed, setChanged] = useState<Map<string, Changed>>(new Map());
  const change = (phrase: string, to: Changed) => setChanged((before) => new Map(before).set(phrase, to));
  // a job as the last decision in it left it, until the server tells its list anew
  const [decidedIn, setDecidedIn] = useState<Map<string, JobToSign>>(new Map());
  useEffect(() => {
    setDecidedIn(new Map());
  }, [signing]);
  const [signedHere, setSignedHere] = useState<Map<string, JobToSign>>(new Map());
  const writing = useRef(busy);
  writing.current = busy;
  const look = () => {
    againQueue();
    againSigning();
  };
  const soon = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const lookSoon = () => {
    clearTimeout(soon.current);
    soon.current = setTimeout(look, STILL_MS);
  };
  useEffect(() => () => clearTimeout(soon.current), []);
  useEffect(() => {
    const timer = setInterval(() => {
      if (document.visibilityState === "visible" && !writing.current) look();
    }, LOOK_AGAIN_MS);
    return () => clearInterval(timer);
  }, [site]);

  const page = queue?.ok ? queue.value : undefined;
  const served = page?.items ?? [];
  const held = [...changed.values()].flatMap(({ item, hold }) =>
    item && hold && !served.some((one) => one.phrase === item.phrase) ? [item] : [],
  );
  const items = [...held, ...served].flatMap((item) => {
    const here = changed.get(item.phrase);
    const now = here && here.decided > item.decided ? here.item : item;
    return now && (now.state === "open" || here?.hold) && now.reasons.length > 0 ? [now] : [];
  });
  const jobs = (signing?.ok ? signing.value.jobs : []).flatMap((job) => {
    const signed = signedHere.get(job.id);
    if (signed && job.phrases <= signed.phrases && !job.reopened) return [];
    return [decidedIn.get(job.id) ?? job];
  });
  const ready = (job: JobToSign) => job.doubtful === 0 && job.asked === 0;
  const tasks: Task[] = [
    ...items.map((item) => ({ of: "phrase" as const, key: item.phrase, item })),
    ...jobs.filter(ready).map((job) => ({ of: "job" as const, key: job.id, job })),
  ];

  return {
    page,
    problem: queue && !queue.ok ? queue.problem : signing && !signing.ok ? signing.problem : undefined,
    tasks,
    notYet: jobs.filter((job) => !ready(job)),
    look,
    async decide(item, what, words) {
      const done = await send<DecisionResult>("POST", `/api/review/${item.phrase}`, {
        id: crypto.randomUUID(),
        what,
        ...(words === undefined ? {} : { words }),
        seen: item.decided,
        meaning: item.meaning,
      });
      if (done.ok) {
        change(item.phrase, { item: done.value.item, decided: item.decided + 1 });
        setDecidedIn((before) => new Map(before).set(done.value.job.id, done.value.job));
        lookSoon();
      } else if (done.status === 409) {
        const now = await ask<ReviewItem>(`/api/review/${item.phrase}`);
        // what came meanwhile is shown beside the refusal, and the words half written stay; where nothing is left, it goes
        if (now.ok) change(item.phrase, { item: now.value, decided: now.value.decided, hold: true });
        else if (now.status === 404) change(item.phrase, { decided: item.decided + 1 });
        look();
      }
      return done;
    },
    async sign(job) {
      const sent = { id: crypto.randomUUID(), phrases: job.phrases };
      const done = await send<JobToSign>("POST", `/api/jobs/${job.id}/signature`, sent);
      if (done.ok) {
        setSignedHere((before) => new Map(before).set(job.id, done.value));
        lookSoon();
      } else look();
      return done;
    },
  };
}
