import type { KeepsakeDeeds } from "./keepsake-deeds.ts";
import type { Turn } from "./loop.ts";
import type { CardPhrase, JobCard, KnownValve, Settings } from "./state.ts";
import type { KeptWord } from "./taught.ts";

/** What the deeds need from the rooms that touch the world; main.tsx hands them in. */
export interface Hands {
  shelf: {
    keepJob(card: JobCard): Promise<void>;
    keepPhrase(phrase: CardPhrase): Promise<void>;
    markSeen(id: string): Promise<void>;
    closeJob(card: JobCard): Promise<void>;
    setOpenJob(id: string): Promise<void>;
    openJob(): Promise<{ card: JobCard } | undefined>;
    job(id: string): Promise<{ card: JobCard; phrases: CardPhrase[] } | undefined>;
    keepSettings(settings: Settings): Promise<void>;
    askAgain(): Promise<void>;
    keepTaught(words: KeptWord[]): Promise<void>;
  };
  flush(): void;
  /** sends the words taught and fetches those of the site */
  sendWords(): void;
  /** what is known of a valve, from the server or from this device */
  knowValve(tag: string): Promise<KnownValve | undefined>;
  /** the same from this device alone, at once */
  keptValve(tag: string, site: string | undefined): Promise<KnownValve | undefined>;
  /** what is done with sound and photographs */
  keepsakes: KeepsakeDeeds;
  /** tells the loop what happened: it opens the ear, sounds the tone, speaks */
  turned(now: Turn): void;
  /** cuts off what is being said */
  quiet(): void;
  newId(): string;
  now(): Date;
  /** changes over to the newer page that waits */
  takeNewer(): void;
}

export const problemWords = (problem: unknown): string =>
  problem instanceof Error ? problem.message : String(problem);
