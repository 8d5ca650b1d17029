import { type Hands, problemWords } from "./hands.ts";
import { lastVisitWords } from "./last-visit.ts";
import type { Heard } from "./loop.ts";
import type { Answer } from "./saying-back.ts";
import { dayOfJob, standingAlert, valveAtHand, whatFollows } from "./seen.ts";
import type { CardPhrase, JobCard, KnownValve } from "./state.ts";
import type { Store } from "./store.ts";
import { instantHere } from "./time-words.ts";

/** A job from its opening to its closing, and the phrases that go into it. */
export interface JobDeeds {
  start(tag: string | undefined, site?: string): Promise<void>;
  /** puts a phrase into the open job: shown at once, kept on the device, sent when that can be */
  add(text: string, how: CardPhrase["how"], heard?: Omit<Heard, "text">): Promise<void>;
  keep(phrase: CardPhrase): Promise<void>;
  close(): Promise<void>;
  reopen(): Promise<void>;
  /** takes in what another tab of this device did to the open job */
  catchUp(): Promise<void>;
  /** fetches what is known of the valve at hand */
  recall(): Promise<void>;
}

export function jobDeeds(store: Store, hands: Hands): JobDeeds {
  const answered = (answer: Answer) => hands.turned({ is: "answered", ...answer });

  /** After the last phrase of the job, so that a clock set back does not change the order of what was said. */
  function instantAfterLast(): string {
    const last = store.state().phrases.at(-1);
    const now = hands.now();
    return instantHere(last && Date.parse(last.saidAt) >= now.getTime() ? new Date(Date.parse(last.saidAt) + 1) : now);
  }

  async function keep(phrase: CardPhrase): Promise<void> {
    try {
      await hands.shelf.keepPhrase(phrase);
      store.happen({ is: "on_device", id: phrase.id });
      hands.flush();
    } catch (problem) {
      store.happen({ is: "not_on_device", id: phrase.id, problem: problemWords(problem) });
      // the page may still hold it for the server: then it is not lost yet
      hands.flush();
    }
  }

  async function learn(tag: string | undefined): Promise<void> {
    if (!tag || store.state().known?.tag === tag) return;
    const known = await hands.knowValve(tag);
    // the valve may have changed while the server was asked
    if (known && valveAtHand(store.state()).tag === tag) store.happen({ is: "knew", known });
  }

  /** Says when the valve was last seen: by what the device keeps, so that no network is waited for; else once it is known. */
  async function tellLastVisit(tag: string, site: string | undefined): Promise<void> {
    const kept = await hands.keptValve(tag, site);
    if (kept) tellOf(tag, kept);
    await learn(tag);
    if (!kept) tellOf(tag, store.state().known);
  }

  function tellOf(tag: string, known: KnownValve | undefined): void {
    const { card, heard, settings } = store.state();
    const told = lastVisitWords(known, dayOfJob(store.state()));
    // who has begun to say something is not talked over
    if (!told || card?.tag !== tag || known?.tag !== tag || heard.entries.some((one) => one.type !== "valve")) return;
    store.happen({ is: "told", text: told });
    // a tag said by itself has had its tone
    answered({
      mood: heard.entries.length ? undefined : "understood",
      say: settings.readBack === "tones" ? undefined : told,
    });
  }

  function unknowing(problem: unknown): void {
    store.happen({
      is: "noticed",
      notice: `What this device keeps cannot be read: ${problemWords(problem)}`,
    });
  }

  return {
    keep,
    async recall() {
      await hands.keepsakes.recall();
      await learn(valveAtHand(store.state()).tag);
    },
    async start(tag, site = store.state().settings.site) {
      const card: JobCard = { id: hands.newId(), tag, site, startedAt: instantHere(hands.now()) };
      store.happen({ is: "started", card });
      try {
        await hands.shelf.keepJob(card);
        hands.flush();
      } catch (problem) {
        store.happen({ is: "noticed", notice: `This device does not keep the job: ${problemWords(problem)}` });
      }
      // neither is waited for: what was said beside the tag must not wait for a network
      if (tag) void tellLastVisit(tag, site).catch(unknowing);
    },
    async add(text, how, { confidence, sound } = {}) {
      const { card } = store.state();
      if (!card) return;
      const phrase: CardPhrase = {
        id: hands.newId(),
        job: card.id,
        text,
        saidAt: instantAfterLast(),
        how,
        confidence,
        delivery: "keeping",
      };
      store.happen({ is: "said", phrase });
      await keep(phrase);
      // the words come first: their sound may take its time
      if (sound) void hands.keepsakes.keepClip(phrase, sound);
      await learn(valveAtHand(store.state()).tag);
    },
    async close() {
      const state = store.state();
      const { card } = state;
      if (!card || standingAlert(state)) return;
      const { missing } = whatFollows(state);
      const tag = valveAtHand(state).tag ?? "Job";
      store.happen({ is: "closed", at: instantHere(hands.now()), missing });
      answered({
        mood: "understood",
        say: state.settings.readBack === "tones" ? undefined : `${tag} closed.`,
      });
      const closed = store.state().closed;
      if (closed) await hands.shelf.closeJob({ ...closed, tag: card.tag });
      hands.flush();
    },
    async catchUp() {
      const { card } = store.state();
      if (!card) return;
      try {
        const kept = await hands.shelf.job(card.id);
        // opened again there, the row still says when it was closed
        const open = (await hands.shelf.openJob())?.card.id === card.id;
        if (!kept || store.state().card?.id !== card.id) return;
        store.happen({ is: "caught_up", phrases: kept.phrases });
        const at = kept.card.closedAt;
        if (at && !open) store.happen({ is: "closed", at, missing: whatFollows(store.state()).missing });
      } catch (problem) {
        unknowing(problem);
      }
    },
    async reopen() {
      const { closed } = store.state();
      const kept = closed && (await hands.shelf.job(closed.id));
      if (!kept) return;
      store.happen({ is: "restored", ...kept });
      await hands.shelf.setOpenJob(kept.card.id);
      await hands.keepsakes.recall();
      await learn(valveAtHand(store.state()).tag);
    },
  };
}
