/** Step 5b: work told by its tool: "went to town on it with a wire brush", "ran a stone over the face". */

import type { Work } from "../shapes/codes.ts";
import { ROLE } from "../vocabulary/grammar.ts";
import { spellings } from "../vocabulary/notation.ts";
import { type Chunk, has } from "./chunks.ts";
import { type ClauseState, clauseIsOurs, emitWork, settleSubject } from "./clause-state.ts";
import type { Named, Noun } from "./noun.ts";
import { pronoun } from "./pronouns.ts";
import type { Scene } from "./scene.ts";

/** Verbs that say how hard one went at a part and leave what was done to the tool. */
const EFFORT = spellings(
  "hit|soaked|dunked|worked|used|spent|attacked|tackled|scuffed|rubbed|touched|gave|(went|goes|go|gone|going)[ over]",
  "got|ran|took|put|passed|dragged|knocked",
);
/** "to town on", "at", "after", "over": what such a verb may lead to its part by. */
const LEADS = /^(?:to|town|at|on|after|over|through|across|along|down|up|around|into|some|time|all|real|good|hard)$/;
/** No tool stands farther from its verb. */
const NEAR = 9;

/** The work that starts at `at`; the index to go on from. */
export function readTooling(scene: Scene, state: ClauseState, at: number): number | undefined {
  const verb = scene.at(at);
  if (!verb || verb.used || !EFFORT.has(verb.text) || state.not !== undefined) return undefined;
  const tool = toolAhead(scene, at);
  if (!tool) return undefined;
  const target = targetOf(scene, state, at, tool.at);
  if (!target || (!target.named && !clauseIsOurs(scene, state.since, at))) return undefined;
  const end = Math.max(target.end, tool.at + 1);
  const owed = state.owed !== undefined && (state.did === undefined || state.did < state.owed);
  for (const one of target.nouns)
    emitWork(scene, state, tool.work, owed ? "needed" : "done", one, [at, end], "by_tool");
  if (target.named) settleSubject(scene, state, target.nouns as Noun[], false);
  for (let own = at; own < end; own += 1) Object.assign(scene.at(own) ?? {}, { talk: undefined, unknown: undefined });
  state.since = end;
  return end;
}

/** The tool, behind "with a" or as what was run over the part. */
function toolAhead(scene: Scene, at: number): { work: Work; at: number } | undefined {
  for (let next = at + 1; next < at + NEAR; next += 1) {
    const chunk = scene.at(next);
    if (!chunk || chunk.hazard || chunk.command || chunk.tag || joins(chunk)) return undefined;
    const before = scene.at(next - 1);
    if (chunk.senses.tool && (has(before, ROLE.det) || /^(?:with|some|in|in the)$/.test(before?.text ?? "")))
      return { work: chunk.senses.tool, at: next };
  }
  return undefined;
}

const joins = (chunk: Chunk) => (has(chunk, ROLE.and) && chunk.text !== "with") || has(chunk, ROLE.but);

/** What the tool was used on: the part between verb and tool, or behind the tool. */
function targetOf(
  scene: Scene,
  state: ClauseState,
  at: number,
  tool: number,
): { nouns: Named[]; named: boolean; end: number } | undefined {
  const first = pointed(scene, state, skipLeads(scene, at + 1), tool);
  if (first) return first;
  const behind = scene.at(tool + 1);
  if (!has(behind, ROLE.prep)) return undefined;
  return pointed(scene, state, skipLeads(scene, tool + 2), tool + NEAR);
}

function skipLeads(scene: Scene, from: number): number {
  let at = from;
  while (LEADS.test(scene.at(at)?.text ?? "") || scene.at(at)?.text === "to town on") at += 1;
  return at;
}

function pointed(
  scene: Scene,
  state: ClauseState,
  at: number,
  before: number,
): { nouns: Named[]; named: boolean; end: number } | undefined {
  if (at >= before) return undefined;
  const objects = scene.nouns(at, "object");
  if (objects?.nouns.every((one) => one.part)) return { nouns: objects.nouns, named: true, end: objects.end };
  const it = scene.at(at);
  if (!it || !has(it, ROLE.it) || has(it, ROLE.det)) return undefined;
  const nouns = pronoun(scene, state, it.text);
  return nouns.every((one) => one.part) ? { nouns, named: false, end: at + 1 } : undefined;
}
