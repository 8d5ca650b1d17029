import type { Settings } from "./settings.ts";

/**
 * What is said to the bench and not of the valve: how much it says back, whether it listens for its word. Matched as
 * whole phrases, and never written into the job.
 */
export interface BenchOrder {
  set: Partial<Settings>;
  /** said back once it is so */
  told: string;
}

const ORDERS: readonly { say: RegExp; order: BenchOrder }[] = [
  {
    say: /^(?:tones only|just (?:the )?tones|dont (?:talk|speak)(?: back)?|be quiet|quiet)$/,
    order: { set: { readBack: "tones" }, told: "Tones only." },
  },
  {
    say: /^(?:brief read ?back|keep it (?:brief|short)|read ?back brief|talk less|be brief)$/,
    order: { set: { readBack: "brief" }, told: "Brief read-back." },
  },
  {
    say: /^(?:full read ?back|read ?back (?:in )?full|talk more|tell me (?:everything|more))$/,
    order: { set: { readBack: "full" }, told: "Full read-back." },
  },
  {
    say: /^(?:hands ?free|hands ?free on|listen for (?:the|your) (?:word|name))$/,
    order: { set: { handsFree: true }, told: "Hands-free." },
  },
  { say: /^hands ?free off$/, order: { set: { handsFree: false }, told: "Hands-free is off." } },
];

export function benchOrder(text: string): BenchOrder | undefined {
  const plain = text
    .toLowerCase()
    .replaceAll(/['’]/g, "")
    .replaceAll(/[^a-z]+/g, " ")
    .trim();
  return ORDERS.find(({ say }) => say.test(plain))?.order;
}
