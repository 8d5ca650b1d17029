/** Step 5d: what somebody asks himself: "should I flip the seat?" flips nothing, "is it cracked? nope" is its answer. */

import type { Finding } from "../shapes/entry.ts";
import { KIND_OF } from "../shapes/part-kinds.ts";
import { ROLE } from "../vocabulary/grammar.ts";
import { spellings } from "../vocabulary/notation.ts";
import { type Chunk, has } from "./chunks.ts";
import type { Draft, Scene } from "./scene.ts";

/** A question: chunks [from, to). */
export interface Question {
  from: number;
  to: number;
  /**
   * `state`: "is it worn", answered by yes or no; `deed`: "did I grease it", by yes alone; `open`: "which side is worn",
   * "can I reuse it", by whatever is said next
   */
  kind: "state" | "deed" | "open";
  answer?: "yes" | "no";
}

const STATES = spellings("is|are|was|were|does|isnt|arent|wasnt|doesnt");
const DEEDS = spellings("did|do|should|shall|have|am|must");
const MAY = spellings("can|could|would|may");
const WHATS = spellings("whats|hows|wheres");
const WHAT = spellings("what|which|how|where|when");
/** Every word that may begin a question: of most others nothing more need be asked. */
const ASKS: ReadonlySet<string> = new Set([...STATES, ...DEEDS, ...MAY, ...WHATS, ...WHAT]);
const AUX = /^(?:is|are|was|were|do|does|did|should|shall|can|could|would|will|has|have)$/;
/** "not only did I", "so did I": turned round, and not asked. */
const TURNED_ROUND = spellings("only|never|seldom|hardly|so|nor|neither|as|than|like");
const YES = /^(?:yes|yeah|yep|yup|it is|it does|they are|sure is|sure am|sure did|i did|i do|you bet)$/;
const NO = /^(?:no|nope|nope not|nah|not|no sir|negative|it isnt|it aint|it doesnt)$/;
const GOES_ON =
  /^(?:ok|okay|alright|oh|ah|aha|well|but|so|because|anyway|anyhow|i|im|ill|ive|we|weve|its|thats|theyre|theres|shes|heres)$/;
const SUBORDINATE = /^(?:if|whether|that|when|or|and|to|than|what|which|where|how|like)$/;

/** Leaves of each question what its answer makes of it; unanswered it says nothing, and its words come back. */
export function settleAsked(scene: Scene): void {
  for (const asked of questionsIn(scene)) {
    if (asked.answer === "yes") dropTwice(scene, asked);
    for (const draft of [...scene.drafts]) if (isOf(draft, asked)) settle(scene, draft, asked);
  }
}

/** Tests and readings asked for and not answered are let go ("did it pass?"); "is it leaking by? no" passes. */
export function answered(scene: Scene, drafts: readonly Draft[]): Draft[] {
  if (drafts.length === 0) return [];
  const questions = questionsIn(scene);
  return drafts.filter((draft) => {
    const asked = questions.find((one) => isOf(draft, one));
    const { entry } = draft;
    if (!asked || (asked.answer === "yes" && asked.kind !== "open")) return true;
    if (asked.answer === "no" && entry.type === "test" && entry.result) {
      draft.entry = { ...entry, result: entry.result === "pass" ? "fail" : "pass" };
      return true;
    }
    release(scene, draft);
    return false;
  });
}

const isOf = (draft: Draft, { from, to }: Question): boolean =>
  draft.chunks.length > 0 && Math.min(...draft.chunks) >= from && Math.max(...draft.chunks) < to;

function settle(scene: Scene, draft: Draft, { kind, answer }: Question): void {
  const { entry } = draft;
  if (entry.type !== "finding" && entry.type !== "work" && entry.type !== "need") return;
  if (answer === "yes" && kind !== "open") return;
  if (answer === "no" && kind === "state" && entry.type === "finding") {
    draft.entry = { ...entry, absent: true } satisfies Finding;
    return;
  }
  scene.drafts.splice(scene.drafts.indexOf(draft), 1);
  release(scene, draft);
}

/** The words of a draft let go come back unread, but for those that another was made of as well. */
function release(scene: Scene, draft: Draft): void {
  for (const at of [...draft.chunks, ...(draft.also ?? [])]) Object.assign(scene.chunks[at] ?? {}, { used: false });
  for (const other of scene.drafts) if (other !== draft) scene.use(...other.chunks);
}

/** "is that threads galled? yeah, outlet threads are galled": the answer says it better. */
function dropTwice(scene: Scene, asked: Question): void {
  for (const first of scene.drafts.filter((one) => isOf(one, asked))) {
    const again = scene.drafts.find((other) => Math.min(...other.chunks) >= asked.to && saysSame(first, other));
    if (!again) continue;
    // the words asked are kept in what answers them
    again.also = [...(again.also ?? []), ...first.chunks];
    scene.drafts.splice(scene.drafts.indexOf(first), 1);
  }
}

function saysSame({ entry: one }: Draft, { entry: other }: Draft): boolean {
  if (one.type === "work" && other.type === "work") return one.work === other.work && one.part === other.part;
  if (one.type !== "finding" || other.type !== "finding" || one.condition !== other.condition) return false;
  return one.part === other.part || (other.part !== undefined && KIND_OF[other.part] === one.part);
}

/** The questions of a phrase, from left to right. */
export function questionsIn(scene: Scene): Question[] {
  const questions: Question[] = [];
  let fresh = true;
  for (let at = 0; at < scene.chunks.length; at += 1) {
    const opened = opens(scene, at, fresh);
    if (opened) {
      const to = endOf(scene, opened.past);
      questions.push({ from: at, to, kind: opened.kind, answer: answerTo(scene, to) });
      at = to - 1;
      fresh = true;
    } else if (fresh && !isFiller(scene, at)) fresh = false;
  }
  return questions;
}

/** What kind of question begins at `at`, and one past its subject. `fresh`: nothing was said since the phrase began. */
function opens(scene: Scene, at: number, fresh: boolean): { kind: Question["kind"]; past: number } | undefined {
  const text = scene.at(at)?.text ?? "";
  if (!ASKS.has(text)) return undefined;
  const before = scene.at(at - 1)?.text ?? "";
  const next = scene.at(at + 1);
  if (!next || TURNED_ROUND.has(before)) return undefined;
  const self = (DEEDS.has(text) || MAY.has(text)) && /^(?:i|we|you)\b/.test(next.text);
  if (self && !/^(?:i|we|you|they) /.test(`${before} `)) {
    // "can you order two seats": asked of somebody, and no question
    if (MAY.has(text) && /^you/.test(next.text)) return undefined;
    return {
      kind: DEEDS.has(text) && !WHAT.has(before) ? "deed" : "open",
      past: at + 2,
    };
  }
  if (!fresh) return undefined;
  // "why is the packing leaking": it leaks, whatever the reason
  if (STATES.has(text) && before !== "why" && before !== "come") {
    const noun = scene.noun(at + 1);
    if (has(next, ROLE.it) || /^there\b/.test(next.text)) return { kind: "state", past: at + 2 };
    // "wasn't any gasket in it" tells
    if (noun && !(/nt$/.test(text) && /^(?:an?|any)$/.test(next.text))) return { kind: "state", past: noun.to };
  }
  const wanted = wantedBy(scene, at);
  return wanted === undefined ? undefined : { kind: "open", past: wanted };
}

/** "which side is worn", "how bad is it", "what's this one called": one past the verb of what is wanted. */
function wantedBy(scene: Scene, at: number): number | undefined {
  const text = scene.at(at)?.text ?? "";
  if (WHATS.has(text)) return at + 1;
  if (!WHAT.has(text)) return undefined;
  const next = scene.at(at + 1)?.text ?? "";
  if (/^(?:a|an|i|we|you|come)$/.test(next)) return undefined;
  for (let verb = at + 1; verb <= at + 4; verb += 1) {
    const chunk = scene.at(verb);
    if (!chunk || has(chunk, ROLE.and) || chunk.senses.work) return undefined;
    if (!AUX.test(chunk.text) && chunk.text !== "s") continue;
    // "which was worn too": goes on with what was said
    return text === "which" && verb === at + 1 ? undefined : verb + 1;
  }
  return undefined;
}

/** One past the last chunk of a question whose predicate begins at `from`: to what answers it or says something new. */
function endOf(scene: Scene, from: number): number {
  let told = false;
  for (let at = from; at < scene.chunks.length; at += 1) {
    const chunk = scene.at(at) as Chunk;
    const before = scene.at(at - 1)?.text ?? "";
    const may = told && !SUBORDINATE.test(before);
    if (may && (YES.test(chunk.text) || NO.test(chunk.text) || GOES_ON.test(chunk.text))) return at;
    // "is there a crack in the cage, no": where it is, and no new subject
    const inside = has(scene.at(at - 1), ROLE.prep) || has(scene.at(at - 1), ROLE.det);
    const noun = may && !inside ? scene.noun(at) : undefined;
    if (noun?.part && noun.from === at && scene.predicateFollows(noun.to)) return at;
    if (SAYS.some((sense) => chunk.senses[sense] !== undefined) || chunk.number || chunk.unknown) told = true;
    else if (!told && chunk.senses.plain && at > from) told = true;
  }
  return scene.chunks.length;
}

const SAYS = ["condition", "work", "placing", "outcome", "verdict", "quantity", "part"] as const;

/** The plain yes or no that follows, fillers and second thoughts before it. */
function answerTo(scene: Scene, from: number): Question["answer"] {
  for (let at = from; at < scene.chunks.length; at += 1) {
    const text = scene.at(at)?.text ?? "";
    if (YES.test(text)) return "yes";
    // "there's no o ring on it": says something new
    if (NO.test(text)) return has(scene.at(at - 1), ROLE.found) ? undefined : "no";
    if (scene.at(at)?.senses.part || opens(scene, at, true)) return undefined;
  }
  return undefined;
}

/** "okay so", "hmm": nothing said yet. */
function isFiller(scene: Scene, at: number): boolean {
  const text = scene.at(at)?.text ?? "";
  return text === "wait" || (scene.isPlain(at) && !STATES.has(text) && !/^(?:it|that|this)$/.test(text));
}
