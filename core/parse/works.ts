import type { Status, Work } from "../shapes/codes.ts";
import { TOOLS } from "../vocabulary/talk.ts";
import { type ClauseState, carried, clauseIsOurs, emitWork, range, reset, settleSubject } from "./clauses.ts";
import { talkBehind } from "./findings.ts";
import { has, type Named, type Noun, type Scene } from "./scene.ts";

/** Step 5b: what was done, is owed, or was left. */

type Form = "base" | "past" | "ing" | "noun";

export function readWork(scene: Scene, state: ClauseState, at: number): number | undefined {
  const chunk = scene.at(at);
  const options = chunk?.senses.work;
  if (!chunk || !options || chunk.used) return undefined;
  for (const option of options) {
    const small = option.with ? smallWordAt(scene, at, option.with) : undefined;
    const topsUp = option.code === "filled" && (state.subject?.nouns[0] ?? scene.named[0])?.part === "oil";
    if (option.with && small === undefined && !topsUp) continue;
    // "spring's broke, it's in pieces down in there": what happened to it, not what was done
    if (option.with && small !== at + 1 && chunk.senses.condition && state.subject?.open) continue;
    // "on this rebuild": with an article it is a thing, not an order
    if (option.form === "base" && !option.with && has(scene.at(at - 1), "det") && /^(?:a|an|the|this|that|every|each|our|last|my)$/.test(scene.at(at - 1)?.text ?? "")) continue;
    if (option.form === "noun" && !nounIsWork(scene, state, at)) continue;
    if (!option.with && chunk.senses.condition && !verbFits(scene, state, at, option.form)) continue;
    if (option.code === "vented" && option.form === "ing" && !objectAhead(scene, at)) continue;
    if (option.code === "reused" && option.form !== "noun" && chunk.text.startsWith("ke") && !objectAhead(scene, at)) continue;
    if (measuredTorque(scene, at, option.code)) {
      return undefined;
    }
    const end = work(scene, state, at, option.code, option.form, small);
    if (end) return end;
  }
  return undefined;
}

/** "torqued to thirty" is the reading alone. */
function measuredTorque(scene: Scene, at: number, code: Work): boolean {
  const text = scene.at(at)?.text ?? "";
  if (code !== "tightened" || !/torqu/.test(text)) return false;
  for (let next = at + 1; next < Math.min(scene.chunks.length, at + 9); next += 1) {
    const chunk = scene.at(next);
    if (chunk?.used && chunk.number) return true;
    if (chunk?.senses.work && !/torqu/.test(chunk.text)) return false;
  }
  return false;
}

/** The small word that makes a work of a verb ("took … off"), at once or behind its object. */
function smallWordAt(scene: Scene, at: number, words: readonly string[]): number | undefined {
  for (let next = at + 1; next <= at + 7; next += 1) {
    const chunk = scene.at(next);
    if (!chunk) return undefined;
    const first = chunk.text.split(" ")[0] ?? "";
    if (words.includes(chunk.text) || (words.includes(first) && !chunk.senses.part)) return next;
    if (next > at + 1 && (chunk.senses.work || chunk.senses.placing || has(chunk, "is") || has(chunk, "owed")) && !chunk.senses.part && !scene.isPlain(next)) return undefined;
    if (chunk.hazard || chunk.talk || chunk.number?.fraction || (chunk.number && scene.at(next + 1)?.senses.unit)) return undefined;
  }
  return undefined;
}

function nounIsWork(scene: Scene, state: ClauseState, at: number): boolean {
  if (state.owed !== undefined) return true;
  if (state.not !== undefined && /^(?:didnt get|no need|didnt bother|dont need)/.test(scene.at(state.not)?.text ?? "")) return true;
  const before = scene.at(at - 1);
  return /^(?:did|gave|finished|done|started|needs|bother|bothering)$/.test(before?.text ?? "") || has(before, "owed") || (state.not !== undefined && has(before, "declined"));
}

/** Words that name both a work and a condition ("cut", "clean", "sand"): the work needs an object or its place. */
function verbFits(scene: Scene, state: ClauseState, at: number, form: Form): boolean {
  // "supply port clean, signal port blocked": right behind its part the word is a verdict
  if (form === "base" && state.subject?.open && state.subject.nouns.at(-1)?.to === at) return false;
  if (objectAhead(scene, at)) return !(has(scene.at(at - 1), "is") && state.subject?.open) && !has(scene.at(at - 1), "found") && !has(scene.at(at - 1), "has");
  if (state.owed !== undefined || state.did !== undefined) return form !== "noun" && !has(scene.at(at - 1), "is");
  return false;
}

/** Whether a verb has something to act on right behind it. */
export function objectAhead(scene: Scene, at: number): boolean {
  let next = at + 1;
  while (scene.at(next) && isParticle(scene, next)) next += 1;
  return scene.noun(next)?.part !== undefined || has(scene.at(next), "it") || has(scene.at(next), "det");
}

const isParticle = (scene: Scene, at: number): boolean => {
  const chunk = scene.at(at);
  return chunk !== undefined && /^(?:out|up|off|down|back|in|on|over|around|away|apart|real|good|well|really|on the|up on|out of)$/.test(chunk.text) && !has(chunk, "and") && !chunk.senses.unit;
};

function statusOf(scene: Scene, state: ClauseState, form: Form, code: Work): Status {
  const not = state.not !== undefined ? scene.at(state.not) : undefined;
  if (not && (has(not, "declined") || has(not, "not"))) return "declined";
  if (form === "past") return state.owed !== undefined && (state.did === undefined || state.did < state.owed) ? "needed" : "done";
  if (form === "base") return state.did !== undefined && state.owed === undefined ? "done" : "needed";
  if (form === "ing") {
    if (code === "reused") return "done";
    return state.did !== undefined && state.owed === undefined && /^(?:finished|done|got done|did)$/.test(scene.at(state.did)?.text ?? "") ? "done" : "needed";
  }
  return state.owed !== undefined ? "needed" : "done";
}

function work(scene: Scene, state: ClauseState, at: number, code: Work, form: Form, small: number | undefined): number | undefined {
  const found = workTarget(scene, state, at, form);
  if (!found) return undefined;
  const status = statusOf(scene, state, form, code);
  const fitsNew = code === "installed" && found.nouns.some((one) => (one as Noun).fresh);
  const span: [number, number] = [found.from, Math.max(found.to, small === undefined ? 0 : small + 1, at + 1)];
  if (found.named && talkBehind(scene, span[1])) return undefined;
  if (!found.nouns.some((one) => one.part) && scene.chunks.slice(Math.max(0, state.since), at).some((one) => /^(?:he|hes|they|theyre|you|who|guys|theyve|hed)$/.test(one.text))) return undefined;
  if (!found.named && !clauseIsOurs(scene, Math.min(state.since, at), span[1] + 1)) return undefined;
  for (const one of found.nouns) emitWork(scene, state, fitsNew ? "replaced" : code, status, one, span, `work_${status}`);
  if (small !== undefined) scene.use(small);
  if (found.named) settleSubject(scene, state, found.nouns as Noun[], false);
  else if (state.subject) state.subject.open = false;
  // "swapped the guide for a new one": the new one is what the swap was for
  if (code === "replaced" && /^(?:for|with)$/.test(scene.at(span[1])?.text ?? "") && scene.noun(span[1] + 1)?.fresh) {
    const to = scene.noun(span[1] + 1)?.to ?? span[1];
    scene.use(...range(span[1], to));
    state.since = to;
    return to;
  }
  const nextJoins = has(scene.at(span[1]), "and") && scene.at(span[1] + 1)?.senses.work;
  if (!nextJoins) {
    state.hedge = undefined;
    if (status === "declined" && !(has(scene.at(span[1]), "or"))) state.not = undefined;
  }
  state.since = span[1];
  return span[1];
}

interface WorkTarget {
  nouns: Named[];
  named: boolean;
  from: number;
  to: number;
}

function workTarget(scene: Scene, state: ClauseState, at: number, form: Form): WorkTarget | undefined {
  const subject = state.subject;
  let next = at + 1;
  while (scene.at(next) && (isParticle(scene, next) || (scene.isPlain(next) && !has(scene.at(next), "det") && !has(scene.at(next), "it") && !has(scene.at(next), "prep") && !has(scene.at(next), "and") && /^(?:just|really|also|all|then|up|pretty|good|right|real|well|of|then)$/.test(scene.at(next)?.text ?? "")))) next += 1;
  if (scene.at(next)?.text === "to" && form === "noun") next += 1;
  // "cleaned the crud out of the vent hole", "put grease on the stem"
  const through = throughDirt(scene, next);
  if (through) return { nouns: through.nouns, named: true, from: at, to: through.end };
  // "replaced the torn diaphragm": what was found stands inside the object's name
  const inner = innerCondition(scene, next);
  const objects = inner ? undefined : scene.nouns(next, "object");
  if (inner) {
    for (const noun of inner.nouns.nouns) {
      if (!noun.part) continue;
      scene.drafts.push({ entry: { type: "finding", condition: inner.code, part: noun.part, ...(noun.place ? { place: noun.place } : {}) }, chunks: range(inner.at, inner.nouns.end), rule: "finding_inside", named: true });
    }
    return { nouns: inner.nouns.nouns, named: true, from: at, to: inner.nouns.end };
  }
  const open = subject?.open === true;
  if (objects && objects.nouns[0]) {
    const first = objects.nouns[0];
    const loose = (subject !== undefined || scene.drafts.length > 0) && !first.det && first.count === undefined && !first.fresh && !first.both && scene.predicateFollows(objects.end);
    const passive = open && (form === "past" || form === "noun" || (form === "ing" && state.not !== undefined)) && !first.det && !first.count;
    if (!loose && !passive) {
      if (first.one || first.other) return { nouns: objects.nouns, named: true, from: at, to: objects.end };
      return { nouns: objects.nouns, named: true, from: at, to: objects.end };
    }
  }
  if (open && subject) return { nouns: subject.nouns, named: true, from: Math.min(subject.nouns[0]?.from ?? at, at), to: at + 1 };
  const it = scene.at(next);
  if (it?.text === "all" && scene.countAt(next + 1) !== undefined) return { nouns: [{ ...(carried(scene, state)[0] ?? { part: undefined }), count: scene.countAt(next + 1) }], named: false, from: at, to: next + 2 };
  if (has(it, "it") && it) return { nouns: pronoun(scene, state, it.text), named: false, from: at, to: next + 1 };
  if (it?.number && scene.countAt(next) !== undefined) {
    const target = carried(scene, state)[0] ?? { part: undefined };
    return { nouns: [{ ...target, count: scene.countAt(next) }], named: false, from: at, to: next + 1 };
  }
  // a verb with an object that the log does not know is about something else
  if (it && (it.unknown || it.talk)) return undefined;
  if (has(it, "det") && TOOLS.has(scene.at(next + 1)?.text ?? "")) return undefined;
  if ((has(it, "det") || (it && /^(?:my|his|her|your|the)$/.test(it.text))) && (scene.at(next + 1)?.unknown || scene.at(next + 1)?.talk)) return undefined;
  if (subject) return { nouns: subject.nouns, named: false, from: at, to: at + 1 };
  return { nouns: carried(scene, state), named: false, from: at, to: at + 1 };
}

/** "cleaned the sand off the cage": the dirt is what the cleaning takes away, the part stands behind it. */
function throughDirt(scene: Scene, from: number): { nouns: Noun[]; end: number } | undefined {
  let at = from;
  while (has(scene.at(at), "det") || scene.at(at)?.senses.severity) at += 1;
  const dirt = scene.at(at);
  if (!dirt?.senses.condition?.some((one) => one.form === "has" && (one.code === "fouled" || one.code === "corroded" || one.code === "frozen" || one.code === "plugged"))) return undefined;
  let next = at + 1;
  while (has(scene.at(next), "prep") || isParticle(scene, next)) next += 1;
  if (next === at + 1) return undefined;
  return scene.nouns(next, "object");
}

function innerCondition(scene: Scene, from: number): { code: "torn"; at: number; nouns: { nouns: Noun[]; end: number } } | undefined {
  let at = from;
  while (has(scene.at(at), "det") && !scene.at(at)?.senses.condition) at += 1;
  const chunk = scene.at(at);
  const condition = chunk?.senses.condition?.find((one) => one.form === "is" && one.code !== "ok");
  if (!chunk || !condition || chunk.senses.part || at === from) return undefined;
  const nouns = scene.nouns(at + 1, "object");
  if (!nouns || scene.predicateFollows(nouns.end)) return undefined;
  return { code: condition.code as "torn", at, nouns };
}

/** The parts that "it", "them" and "both" stand for. */
export function pronoun(scene: Scene, state: ClauseState, text: string): Named[] {
  const current: Named[] = state.subject ? state.subject.nouns : scene.named;
  const both = /both|two|pair/.test(text);
  const many = both || /^(?:them|em|those|these|they|all)/.test(text);
  const strip = (list: readonly Named[]): Named[] => list.map(({ part, place, plural, both: two, count }) => ({ part, place, plural, both: two, count }));
  if (!many) return strip(current.length > 0 ? current.slice(-1) : [{ part: undefined }]).map((one) => ({ part: one.part, place: one.place }));
  const here = scene.namedHere.filter((one) => one.part !== undefined);
  const lastHere = here.at(-1);
  // "gasket's torn, o ring's cut, replaced both": the two just named, unless the last is many by nature
  if (current.length < 2 && here.length >= 2 && lastHere && !lastHere.both && (both || !/bolting|threads|seals/.test(lastHere.part ?? ""))) return here.slice(-2).map((one) => ({ part: one.part, place: one.place }));
  if (current.length >= 2) return strip(current).map((one) => ({ part: one.part, place: one.place }));
  const last = current[0];
  if (!last?.part) return [{ part: undefined }];
  // there is one seat, one plug: "both" after those means the two parts named last
  const alone = !/ring|bolting|nut|threads|gasket|diaphragm|spring|fitting|port|seals|tubing|housing/.test(last.part);
  const pair = scene.recent.filter((one) => one.part !== undefined).slice(-2);
  if (alone && pair.length === 2) return pair.map((one) => ({ part: one.part, place: one.place }));
  if (last.both) return [{ part: last.part, count: both ? 2 : 2 }];
  if (last.plural || last.count) return [{ part: last.part, place: last.place, count: both ? 2 : undefined }];
  const recent = scene.recent.filter((one) => one.part !== undefined).slice(-2);
  if (recent.length === 2) return recent.map((one) => ({ part: one.part, place: one.place }));
  return [{ part: last.part, place: last.place, count: both ? 2 : undefined }];
}

/** "put a new one in", "put the bonnet back on", "stuck the old spring back in", "put grease on the stem". */
export function readPlacing(scene: Scene, state: ClauseState, at: number): number | undefined {
  const chunk = scene.at(at);
  const form = chunk?.senses.placing;
  if (!chunk || !form || chunk.used) return undefined;
  // "stuck down in the body": nothing placed, so it is what sticks
  if (chunk.text === "stuck" && (has(scene.at(at + 1), "prep") || scene.isPlain(at + 1)) && !has(scene.at(at + 1), "it") && !has(scene.at(at + 1), "det")) return undefined;
  // "threw it away", "slid the stem out": with its small word the verb is a work of its own
  if (chunk.senses.work?.some((one) => one.with && smallWordAt(scene, at, one.with) !== undefined && !freshAhead(scene, at))) return undefined;
  let noun: { nouns: Noun[]; end: number } | undefined;
  let it: number | undefined;
  let substance: { code: Work; at: number } | undefined;
  let back = false;
  let inOn = "";
  let end = at + 1;
  let old = false;
  let condition = false;
  for (let next = at + 1; next < Math.min(scene.chunks.length, at + 9); next += 1) {
    const one = scene.at(next);
    if (!one || one.hazard || one.talk || one.command || (one.used && !one.senses.part)) break;
    if (one.unknown) break;
    const nounWork = one.senses.work?.find((sense) => sense.form === "noun" && ["greased", "threadlocked", "cleaned", "lapped", "inspected", "adjusted", "dressed", "calibrated"].includes(sense.code));
    if (nounWork && (!noun || /^g[ai]v/.test(chunk.text)) && !one.senses.part && !substance) {
      substance = { code: nounWork.code, at: next };
      end = next + 1;
      continue;
    }
    if (!noun || (substance && !noun)) {
      const found = scene.nouns(next, "object");
      if (found && (!it || found.nouns[0]?.from === next)) {
        if (noun === undefined) {
          noun = found;
          old = found.nouns.some((each) => each.old);
          next = found.end - 1;
          end = found.end;
          continue;
        }
      }
    }
    if (has(one, "it") && it === undefined && !noun) {
      it = next;
      end = next + 1;
      continue;
    }
    const small = /^(back|in|on|back in|back on|into|onto|in there|together|back together|on it|in it|it|her|there|inside|over|up|down|away|off|out)\b/.exec(one.text);
    if (small) {
      if (one.text.startsWith("back")) back = true;
      if (/\b(?:in|into|inside)\b/.test(one.text)) inOn = "in";
      if (/\b(?:on|onto)\b/.test(one.text)) inOn = "on";
      if (!/^(?:it|her|there)$/.test(one.text) || inOn || back) end = next + 1;
      if (substance && (inOn || one.senses.roles?.has("prep"))) continue;
      continue;
    }
    if (has(one, "det") || one.senses.severity || has(one, "prep") || (scene.isPlain(next) && !has(one, "and")) || (has(one, "fresh") && !noun)) continue;
    // "a shot of grease"
    if (one.text === "shot") continue;
    if (one.senses.condition && !noun) condition = true;
    break;
  }
  void condition;
  const done: Status = statusFrom(scene, state, form);
  const isGet = /^(?:get|gets|got|gotten|getting|give|gives|gave|giving|go|goes|going|went|gone)$/.test(chunk.text);
  if (substance) {
    const target = noun?.nouns ?? (it !== undefined ? pronoun(scene, state, scene.at(it)?.text ?? "it") : carried(scene, state));
    if (!noun && !clauseIsOurs(scene, at, end)) return undefined;
    return place(scene, state, target, noun !== undefined, substance.code, done, [at, Math.max(end, substance.at + 1)]);
  }
  if (isGet && !(noun?.nouns.some((one) => one.fresh) && (inOn || done === "needed"))) return undefined;
  if (onList(scene, end)) return undefined;
  if (noun) {
    const fresh = noun.nouns.some((one) => one.fresh);
    if (fresh) return place(scene, state, noun.nouns, true, "replaced", done, [at, end]);
    if (old || (back && inOn === "in")) return place(scene, state, noun.nouns, true, "reused", done, [at, end]);
    if (back && inOn === "on") return place(scene, state, noun.nouns, true, "installed", done, [at, end]);
    if (back) return place(scene, state, noun.nouns, true, noun.nouns.every((one) => one.part === "valve") ? "installed" : "reused", done, [at, end]);
    if (inOn && noun.nouns.every((one) => one.part)) return place(scene, state, noun.nouns, true, "installed", done, [at, end]);
    return undefined;
  }
  if (it === undefined && back && state.subject && /^(?:put|stuck|slid|dropped|popped|set|screwed|slapped)$/.test(chunk.text)) return place(scene, state, state.subject.nouns, false, inOn === "on" ? "installed" : "reused", done, [at, end]);
  if (it !== undefined && (back || inOn)) {
    if (!clauseIsOurs(scene, state.since, end)) return undefined;
    const target = pronoun(scene, state, scene.at(it)?.text ?? "it");
    return place(scene, state, target, false, back && inOn !== "on" ? "reused" : "installed", done, [at, end]);
  }
  return undefined;
}

function freshAhead(scene: Scene, at: number): boolean {
  for (let next = at + 1; next < at + 4; next += 1) if (has(scene.at(next), "fresh")) return true;
  return false;
}

function onList(scene: Scene, end: number): boolean {
  for (let at = end; at < end + 2; at += 1) if (has(scene.at(at), "onList")) return true;
  return false;
}

function statusFrom(scene: Scene, state: ClauseState, form: "base" | "past" | "ing"): Status {
  if (state.not !== undefined && (has(scene.at(state.not), "declined") || has(scene.at(state.not), "not"))) return "declined";
  if (state.owed !== undefined && (state.did === undefined || state.did < state.owed)) return "needed";
  return form === "past" || state.did !== undefined ? "done" : "needed";
}

function place(scene: Scene, state: ClauseState, nouns: readonly Named[], named: boolean, code: Work, status: Status, span: [number, number]): number {
  for (const one of nouns) emitWork(scene, state, code, status, one, span, `placed_${code}`);
  if (named) settleSubject(scene, state, nouns as Noun[], false);
  else if (state.subject) state.subject.open = false;
  state.not = undefined;
  state.hedge = undefined;
  state.since = span[1];
  return span[1];
}

/** "leaving it for now" leaves a replacement undone; "going back in" and "ran it again" reuse the part. */
export function readLeaving(scene: Scene, state: ClauseState, at: number): number | undefined {
  const chunk = scene.at(at);
  if (!chunk || chunk.used) return undefined;
  const reuse = has(chunk, "reuse");
  // "bonnet back on"
  if (chunk.text === "back" && scene.at(at + 1)?.text === "on" && state.subject?.open) {
    for (const one of state.subject.nouns) emitWork(scene, state, "installed", "done", one, [one.from, at + 2], "placed_installed");
    settleSubject(scene, state, state.subject.nouns, false);
    return at + 2;
  }
  if (!reuse && !has(chunk, "leave")) {
    // "left the old gasket in"
    if (/^(?:left|leaving|leave)$/.test(chunk.text)) return readLeft(scene, state, at);
    return undefined;
  }
  const nouns = state.subject ? state.subject.nouns : pronoun(scene, state, /\b(?:them|em|those|both)\b/.test(chunk.text) ? "them" : "it");
  if (!clauseIsOurs(scene, state.since, at + 1)) return undefined;
  if (!state.subject && scene.named.length === 0 && reuse && !/\b(?:it|them|em|her|ones?|old|original)\b/.test(chunk.text)) return undefined;
  const keep = { not: state.not };
  const denied = keep.not !== undefined && keep.not === at - 1;
  const status: Status = reuse ? (denied ? "declined" : "done") : "declined";
  if (!reuse) state.not = undefined;
  for (const one of nouns) emitWork(scene, state, reuse ? "reused" : "replaced", status, { part: one.part, place: one.place, count: (one as Noun).both ? 2 : undefined }, [at, at + 1], reuse ? "reused" : "left");
  if (state.subject) state.subject.open = false;
  reset(state);
  state.since = at + 1;
  return at + 1;
}

function readLeft(scene: Scene, state: ClauseState, at: number): number | undefined {
  const objects = scene.nouns(at + 1, "object");
  if (!objects) return undefined;
  const old = objects.nouns.some((one) => one.old);
  const next = scene.at(objects.end);
  const stays = next !== undefined && /^(?:in|on|alone|as is|be|in place|for now|there|in there)\b/.test(next.text);
  if (!old && !stays) return undefined;
  for (const one of objects.nouns) emitWork(scene, state, old ? "reused" : "replaced", old ? "done" : "declined", one, [at, objects.end + (stays ? 1 : 0)], old ? "left_old_in" : "left");
  settleSubject(scene, state, objects.nouns, false);
  return objects.end + (stays ? 1 : 0);
}
