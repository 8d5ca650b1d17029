import type { Condition, Extent, Part, Place, Severity } from "../shapes/codes.ts";
import type { Finding } from "../shapes/entry.ts";
import type { Chunk } from "./chunks.ts";
import { type ClauseState, carried, clauseIsOurs, range, settleSubject } from "./clauses.ts";
import { has, type Named, type Noun, type Scene } from "./scene.ts";
import { objectAhead } from "./works.ts";

/** Step 5a: what was found, and on which part. */

interface Said {
  code: Condition;
  form: "is" | "has" | "does";
  severity?: Severity;
  extent?: Extent;
  place?: Place;
  absent?: boolean;
  at: number;
}

const RUBBER = new Set<string>(["diaphragm", "upper_diaphragm", "lower_diaphragm", "o_ring", "backup_ring", "packing", "seals", "gasket", "seat_gasket", "cage_gasket", "bonnet_gasket", "indicator_gasket", "cage_o_ring", "stem_guide_o_ring"]);
/** Words so common in talk that they say something of a part only right behind it. */
const EVERYDAY = new Set(["ok", "okay", "good", "fine", "alright", "all right", "great", "clean", "bad", "gone", "hard", "low", "black", "dry", "soft", "rough", "empty", "solid", "sound", "perfect", "decent", "tired", "lazy", "lost", "flat", "stiff", "in good shape", "not good", "not bad", "excellent", "toast", "junk", "shot", "o k", "nasty", "dirty", "no good", "good shape", "rusty", "backing out", "backing off", "backed off", "backed out", "catches", "drags", "catching", "hung up", "play", "not there", "left out", "fell off", "fell out", "score", "break", "jammed", "big", "froze"]);
/** Conditions that somebody or something does to a part. */
const DEEDS = new Set<Condition>(["stripped", "cross_threaded", "kinked", "bent", "broken", "cracked", "torn", "cut", "dented", "damaged", "galled", "rounded", "pinched", "burnt", "scored", "scratched", "nicked", "eroded", "holed", "chipped", "washed_out", "flattened", "plugged"]);
/** Plug and ice block a hole; the same word elsewhere is what it says. */
const HOLES = new Set<string>(["vent_hole", "breather", "supply_port", "signal_port", "strainer", "tubing"]);

/** "not leaking", "no leak": a verdict on a test, or, where no test is said, a leak looked for and not found. */
export const tightSaid = (chunk: Chunk): boolean => chunk.senses.verdict === "pass" && /leak|weep|seep|drip/.test(chunk.text) && !chunk.used;

export function readFindings(scene: Scene, state: ClauseState, start: number): number | undefined {
  const group = readGroup(scene, state, start);
  if (!group) return undefined;
  const { said, end } = group;
  const targetRead = target(scene, state, said, start, end);
  if (!targetRead) return undefined;
  const { nouns, named, to, span } = targetRead;
  if (!named && !clauseIsOurs(scene, Math.min(state.since, start), end + 1)) return undefined;
  if (named && talkBehind(scene, to)) return undefined;
  // "crack in the upper housing, right side": a detail may stand behind the part
  const late = to > end ? trail(scene, to) : undefined;
  const lastSaid = said.at(-1);
  if (late && late.end > to && lastSaid) {
    lastSaid.place ??= late.place;
    lastSaid.extent ??= late.extent;
    lastSaid.severity ??= late.severity;
    scene.use(...range(to, late.end));
  }
  const kept = emit(scene, state, said, nouns, named, [Math.min(span, start), to]);
  if (!kept) return undefined;
  settleSubject(scene, state, nouns as Noun[], false);
  for (const one of said) scene.use(one.at);
  scene.use(...range(start, to).filter((at) => !scene.at(at)?.unknown));
  state.not = undefined;
  state.since = to;
  return Math.max(to, late?.end ?? 0);
}

/** One or more conditions said together: "bent and scored", "no cracks or pitting". */
function readGroup(scene: Scene, state: ClauseState, start: number): { said: Said[]; end: number } | undefined {
  const said: Said[] = [];
  let at = start;
  let end = start;
  // "wouldn't you know it" denies nothing
  let not = state.not !== undefined && (has(scene.at(state.not), "not") || has(scene.at(state.not), "notAfter"));
  const led = leading(scene, state, start);
  let { severity, extent } = led;
  const { place } = led;
  for (;;) {
    const chunk = scene.at(at);
    if (!chunk || chunk.used || chunk.talk) break;
    if (chunk.senses.severity && (!chunk.senses.condition || scene.at(at + 1)?.senses.condition)) {
      // "no cracks, slight corrosion": what has a degree is there
      if (said.length > 0 && !has(scene.at(at - 1), "or")) not = false;
      severity = chunk.senses.severity;
      at += 1;
      continue;
    }
    if (chunk.senses.extent && !chunk.senses.condition && scene.at(at + 1)?.senses.condition) {
      extent = chunk.senses.extent;
      at += 1;
      continue;
    }
    if (said.length > 0 && chunk.senses.work && objectAhead(scene, at)) break;
    const condition = tightSaid(chunk) ? { code: "leaking" as const, form: /^n/.test(chunk.text) && !/^not/.test(chunk.text) ? ("has" as const) : ("does" as const), tight: true } : chunk.senses.condition ? choose(scene, state, at, said.length > 0) : undefined;
    if (!condition) {
      if (said.length === 0) return undefined;
      // "worn and badly scored", "cracks or pitting", "scale and some rust"
      const joins = has(chunk, "and") || has(chunk, "or") || (scene.isPlain(at) && !has(chunk, "it") && /^(?:a|an|any|also|just|all|bit|little|of)$/.test(chunk.text)) || (has(chunk, "det") && /^(?:a|an|any|the)$/.test(chunk.text));
      if (joins && joinsCondition(scene, at)) {
        if (has(chunk, "or")) not = not || said.at(-1)?.absent === true;
        at += 1;
        continue;
      }
      if (has(chunk, "not") && joinsCondition(scene, at) && !has(chunk, "declined")) {
        not = true;
        at += 1;
        continue;
      }
      break;
    }
    if (said.length > 0 && condition.code === "ok" && !/^(?:and|or|but|just|still)/.test(scene.at(at - 1)?.text ?? "")) break;
    if (said.length > 0 && condition.form === "has" && said.at(-1)?.form !== "has" && !has(scene.at(at - 1), "and") && !has(scene.at(at - 1), "or") && !has(scene.at(at - 1), "det")) {
      const prep = scene.at(trail(scene, at + 1).end);
      if (has(prep, "prep")) break;
    }
    const tail = trail(scene, at + 1);
    if (/^(?:pretty|real|really|so) bad$/.test(chunk.text)) severity = "severe";
    said.push({ code: condition.code, form: condition.form, severity: severity ?? tail.severity, extent: extent ?? tail.extent, place: tail.place ?? place, absent: ((not || "tight" in condition) && condition.code !== "ok") || undefined, at });
    if (not && condition.code === "ok") said[said.length - 1] = { ...(said[said.length - 1] as Said), code: "damaged", absent: undefined };
    severity = undefined;
    extent = undefined;
    at = withWhat(scene, condition.code, tail.end);
    const beyond = at > tail.end ? trail(scene, at) : undefined;
    const newest = said.at(-1);
    if (beyond && newest) {
      newest.place ??= beyond.place;
      newest.extent ??= beyond.extent;
      newest.severity ??= beyond.severity;
      at = beyond.end;
    }
    end = at;
    // "not worn, just dirty": "just" ends what the "not" reaches
    if (has(scene.at(at), "but") && !has(scene.at(at), "is")) break;
    if (scene.at(at)?.text === "just") {
      not = false;
      state.not = undefined;
      at += 1;
    }
    const next = scene.at(at);
    if (has(next, "and") && !has(next, "or") && not) {
      // "no cracks and no pitting" says "no" again; "no cracks and heavy scoring" does not
      const beyond = scene.at(at + 1);
      if (!has(beyond, "not") && !(beyond?.senses.condition?.some((one) => one.form === "has") && said.at(-1)?.form === "has")) not = false;
    }
  }
  return said.length > 0 ? { said, end } : undefined;
}

/** "plugged with mud", "full of sand": what it is blocked with is no second finding. */
function withWhat(scene: Scene, code: Condition, from: number): number {
  if (code !== "plugged" && code !== "fouled" && code !== "frozen") return from;
  let at = from;
  while (at < from + 3 && (/^(?:with|by|of|full of|in|from|a|some|the|solid|full|up)$/.test(scene.at(at)?.text ?? "") || scene.at(at)?.senses.severity)) at += 1;
  if (at === from && !/(?:with|of|by|in)$/.test(scene.at(from - 1)?.text ?? "")) return from;
  const what = scene.at(at);
  if (what?.senses.condition?.some((one) => one.form === "has" && ["fouled", "frozen", "plugged", "corroded"].includes(one.code))) {
    const more = (has(scene.at(at + 1), "and") || has(scene.at(at + 1), "or")) && scene.at(at + 2)?.senses.condition?.some((one) => one.form === "has" && one.code === "fouled");
    return more ? at + 3 : at + 1;
  }
  // "plugged with bugs": whatever it is, it is what blocks the hole
  if (what && (what.unknown || what.talk) && /^(?:with|by|full of|of)$/.test(scene.at(from)?.text ?? "")) {
    Object.assign(what, { used: true, talk: undefined, unknown: undefined });
    return at + 1;
  }
  return from;
}

function joinsCondition(scene: Scene, at: number): boolean {
  for (let next = at + 1; next <= at + 4; next += 1) {
    const chunk = scene.at(next);
    if (!chunk || chunk.used) return false;
    if (has(chunk, "found") && !has(chunk, "has")) return false;
    if (chunk.senses.condition && !scene.noun(next)?.part) {
      // a part behind a preposition after it takes the condition away: "worn and pitting on the plug"
      const after = trail(scene, next + 1).end;
      const startsOwn = chunk.senses.condition.some((one) => one.form === "has") && has(scene.at(after), "prep") && scene.noun(after + 1)?.part !== undefined;
      return !startsOwn || chunk.senses.condition.every((one) => one.form === "has");
    }
    if (!(chunk.senses.severity || chunk.senses.extent || has(chunk, "not") || has(chunk, "det") || has(chunk, "or") || chunk.senses.plain || has(chunk, "and"))) return false;
    if (chunk.senses.work) return false;
  }
  return false;
}

/** Severity, extent and place said just before. */
function leading(scene: Scene, state: ClauseState, start: number): { severity?: Severity; extent?: Extent; place?: Place } {
  const found: { severity?: Severity; extent?: Extent; place?: Place } = {};
  for (let back = start - 1; back >= 0 && back >= start - 4; back -= 1) {
    const chunk = scene.at(back);
    if (!chunk || chunk.used || chunk.senses.part || chunk.senses.condition && !chunk.senses.severity) break;
    if (chunk.senses.severity) found.severity ??= chunk.senses.severity;
    else if (chunk.senses.extent) found.extent ??= chunk.senses.extent;
    else if (chunk.senses.place === "hole" || (chunk.senses.place && state.subject?.open && back >= state.since)) {
      found.place ??= chunk.senses.place;
      if (chunk.senses.place === "hole") scene.use(back);
    }
    else if (!(has(chunk, "is") || has(chunk, "has") || has(chunk, "found") || /^(?:just|real|pretty|also|still|all|both|kind|quite|really|too)$/.test(chunk.text) || has(chunk, "it") || has(chunk, "not") || has(chunk, "hedge") || has(chunk, "prep") || has(chunk, "det"))) break;
  }
  return found;
}

/** Severity, extent and place said just behind: "eroded real bad on the outlet side". */
export function trail(scene: Scene, from: number): { severity?: Severity; extent?: Extent; place?: Place; end: number } {
  const found: { severity?: Severity; extent?: Extent; place?: Place } = {};
  let end = from;
  let at = from;
  for (let steps = 0; steps < 8; steps += 1) {
    const chunk = scene.at(at);
    if (!chunk || chunk.used || chunk.talk) break;
    const next = scene.at(at + 1);
    const spread = chunk.text === "all over" && (scene.noun(at + 1)?.part !== undefined || has(next, "it"));
    if (spread) break;
    if (chunk.senses.extent && found.extent === undefined && !(next?.senses.condition && chunk.senses.extent === "partial")) {
      found.extent = chunk.senses.extent;
      at += 1;
      end = at;
    } else if (chunk.senses.severity && found.severity === undefined && !next?.senses.condition && !(next?.senses.severity && scene.at(at + 2)?.senses.condition) && !scene.noun(at)?.part && !(chunk.text === "all the way" && (has(next, "is") || next?.senses.outcome))) {
      found.severity = chunk.senses.severity;
      at += 1;
      end = at;
    } else if (chunk.senses.place && found.place === undefined && !scene.noun(at)?.part && !(has(next, "prep") && scene.noun(at + 2)?.part !== undefined && /^of/.test(next?.text ?? "")) && !(next?.text === "of" && has(scene.at(at + 2), "it")) && !has(next, "one")) {
      if (has(next, "prep") && next && scene.noun(at + 2)?.part) {
        // "up top on the stem": the place is the part's
        found.place = chunk.senses.place;
        return { ...found, end: at + 1 };
      }
      found.place = chunk.senses.place;
      at += 1;
      end = at;
    } else if (/^(?:just|only|but)$/.test(chunk.text) && (next?.senses.severity || (has(next, "det") && scene.at(at + 2)?.senses.severity)) && !scene.at(at + 3)?.senses.condition && !scene.at(at + 2)?.senses.condition) at += next?.senses.severity ? 1 : 2;
    else if ((has(chunk, "prep") || has(chunk, "det")) && placeAhead(scene, at + 1)) at += 1;
    else if (has(chunk, "prep") && has(next, "it") && !scene.noun(at + 1)?.part) {
      at += 2;
      end = at;
    } else if (has(chunk, "prep") && (next?.text === "there" || next?.text === "here" || next?.text === "me")) {
      at += 2;
      end = at;
    } else if (scene.isPlain(at) && /^(?:right|out|up|down|over|clear|way|too|also|real|pretty|on|off|there|here|again|though|all)$/.test(chunk.text) && !has(chunk, "it")) {
      at += 1;
    } else break;
  }
  return { ...found, end };
}

function placeAhead(scene: Scene, from: number): boolean {
  for (let at = from; at < from + 3; at += 1) {
    const chunk = scene.at(at);
    if (!chunk) return false;
    if (chunk.senses.place || chunk.senses.extent) return !scene.noun(at)?.part && !(/^of/.test(scene.at(at + 1)?.text ?? "") && scene.noun(at + 2)?.part);
    if (!(has(chunk, "det") || has(chunk, "prep") || scene.isPlain(at))) return false;
  }
  return false;
}

/** Which of a chunk's conditions counts here, if any. */
function choose(scene: Scene, state: ClauseState, at: number, inGroup: boolean): { code: Condition; form: Said["form"] } | undefined {
  const chunk = scene.at(at) as Chunk;
  const options = chunk.senses.condition ?? [];
  const first = options[0];
  if (!first) return undefined;
  const before = scene.at(at - 1);
  const next = scene.at(at + 1);
  const subject = (state.subject?.nouns[0] ?? scene.named[0])?.part;
  const said = has(before, "is") || has(before, "has") || has(before, "not") || before?.senses.severity !== undefined || (state.subject?.open === true && state.subject.nouns.at(-1)?.to === at) || has(before, "it");
  const startsObject = has(next, "det") || has(next, "it") || (scene.noun(at + 1)?.part !== undefined && !scene.predicateFollows(scene.noun(at + 1)?.to ?? 0));
  const joined = inGroup && (has(before, "and") || has(before, "or") || has(before, "but"));
  const everyday = EVERYDAY.has(chunk.text) || EVERYDAY.has(chunk.text.replace(/^(?:pretty|real|very|still|all|in) /, ""));
  if (chunk.text === "painted" && !(HOLES.has(scene.noun(at + 1)?.part ?? "") || HOLES.has(subject ?? ""))) return undefined;
  // "shot, that actuator spring": the verdict first, then its part
  const turned = state.subject === undefined && scene.drafts.length === 0 && verdictFirst(scene, at + 1) !== undefined;
  if (everyday && !joined && !turned && (!said || subject === undefined)) return undefined;
  // "just flat gone"
  if (/^(?:flat|clean|plain)$/.test(chunk.text) && next?.senses.condition) return undefined;
  // "gone weak": the verb of becoming, not the loss
  if (/^(?:gone|went|came|lost)$/.test(chunk.text) && (next?.senses.condition || next?.senses.severity)) return undefined;
  if (/^(?:ok|okay|alright|all right)$/.test(chunk.text) && !inGroup && !(has(before, "is") && before?.text !== "just") && !(state.subject?.open && state.subject.nouns.at(-1)?.to === at) && !before?.senses.severity) return undefined;
  // "clean the cage" is an order, "cage is clean" a verdict
  if (chunk.senses.work?.some((one) => one.form === "base") && startsObject && !said) return undefined;
  if (chunk.text === "stuck" || chunk.text.startsWith("stuck ")) {
    if (subject && /gasket|ring|seals|packing/.test(subject) && (has(next, "prep") || scene.isPlain(at + 1))) return { code: "fouled", form: "is" };
  }
  const code = sharpen(first.code, chunk.text, subject);
  if (!code) return undefined;
  // "leaking three cc a minute": the measure says it better
  if (code === "leaking" && next?.used && next.number) {
    chunk.used = true;
    return undefined;
  }
  const form = has(before, "det") || has(before, "found") || state.not !== undefined || before?.senses.severity ? (options.find((one) => one.form === "has") ?? first) : (options.find((one) => one.form !== "has") ?? first);
  return { code: form.code === first.code ? code : form.code, form: form.form };
}

/** What a word means of this part: a split is cracked in metal and torn in rubber. */
function sharpen(code: Condition, text: string, subject: Part | undefined): Condition | undefined {
  const rubber = subject !== undefined && RUBBER.has(subject);
  if (subject === "oil") {
    if (code === "fouled" && text === "dirty") return "dirty";
    if (code === "low" || code === "dirty") return code;
  } else if (code === "low" || code === "dirty") return undefined;
  if (rubber && /^split/.test(text)) return "torn";
  if (rubber && code === "sticking" && text === "stiff") return "hardened";
  if (!rubber && code === "torn" && /^(?:blown|blew)/.test(text)) return subject ? "damaged" : undefined;
  if (rubber && code === "weak" && text === "soft") return "swollen";
  if (code === "frozen" && subject && HOLES.has(subject) && /shut/.test(text)) return "plugged";
  return code;
}

interface Target {
  nouns: Named[];
  named: boolean;
  /** one past the last chunk taken */
  to: number;
  /** first chunk of the part */
  span: number;
}

function target(scene: Scene, state: ClauseState, said: readonly Said[], start: number, end: number): Target | undefined {
  const subject = state.subject;
  const last = said.at(-1) as Said;
  const here = scene.at(end);
  const subjectNouns = (): Target => ({ nouns: subject?.nouns ?? [], named: true, to: end, span: subject?.nouns[0]?.from ?? start });
  // "stuck down in the body": where a seal sticks is a place
  if (last.code === "fouled" && /^stuck/.test(scene.at(last.at)?.text ?? "")) {
    const held = subject ? subjectNouns() : { nouns: carried(scene, state), named: false, to: end, span: start };
    let at = end;
    while (scene.isPlain(at) || has(scene.at(at), "prep") || has(scene.at(at), "det")) at += 1;
    const where = scene.at(at)?.senses;
    if (where?.place ?? (where?.part === "body" ? "body" : undefined)) {
      last.place = where?.place ?? "body";
      return { ...held, to: at + 1 };
    }
    if (where?.part) return { ...held, to: at + 1 };
  }
  const prepAt = prepositionAt(scene, end);
  // "pitting up top on the stem": the place stands before its part; "air coming out the breather" needs no more
  const direct = scene.at(end)?.senses.place || (/(?:out|out of|from)$/.test(scene.at(last.at)?.text ?? "") && last.form === "has") ? scene.nouns(end, "object") : undefined;
  const objects = prepAt >= 0 ? scene.nouns(prepAt + 1, "object") : direct;
  const open = subject?.open === true && subject.nouns.every((noun) => noun.part) && state.found === undefined;
  if (open && subject) {
    if (last.code === "fouled" || last.form === "has") {
      // "cage has scale on the inside" stays the cage's
      return subjectNouns();
    }
    return subjectNouns();
  }
  if (objects && (last.form !== "is" || here)) {
    const followed = scene.predicateFollows(objects.end) && !saysAgain(scene, objects.end);
    if (!followed || last.form === "has") return { nouns: objects.nouns, named: true, to: objects.end, span: objects.nouns[0]?.from ?? end };
  }
  // "torn diaphragm": a condition that stands before its part
  if (last.form === "is") {
    const behind = scene.nouns(end, "object");
    const first = behind?.nouns[0];
    // "somebody stripped the inlet threads": said as a deed
    if (behind && first?.part && first.det && end === last.at + 1 && DEEDS.has(last.code) && !has(scene.at(start - 1), "is")) return { nouns: behind.nouns, named: true, to: behind.end, span: end };
    if (behind && first?.part && !first.det && end === last.at + 1 && !scene.predicateFollows(behind.end) && (has(scene.at(start - 1), "det") || has(scene.at(start - 1), "found") || !subject || has(scene.at(start - 1), "fresh") || state.found !== undefined)) return { nouns: behind.nouns, named: true, to: behind.end, span: end };
  }
  // "broke the egg": done to something that is none of the valve's
  if (DEEDS.has(last.code) && has(here, "det") && (scene.at(end + 1)?.unknown || scene.at(end + 1)?.talk)) return undefined;
  const behind = subject === undefined || state.said ? verdictFirst(scene, end) : undefined;
  if (behind && !open) return { nouns: behind.nouns, named: true, to: behind.end, span: end };
  if (subject) return { ...subjectNouns(), named: subject.open };
  const carriedParts = carried(scene, state);
  if (carriedParts.every((one) => !one.part) && last.form === "has" && state.found === undefined && !last.absent) return undefined;
  return { nouns: carriedParts, named: false, to: end, span: start };
}

/** "no damage, upper housing, no damage, lower housing": the same shape once more. */
function saysAgain(scene: Scene, from: number): boolean {
  let at = from;
  if (has(scene.at(at), "not")) at += 1;
  if (!scene.at(at)?.senses.condition) return false;
  at += 1;
  while (has(scene.at(at), "prep") || has(scene.at(at), "det")) at += 1;
  return scene.noun(at)?.part !== undefined;
}

/** "torn at the center, that lower diaphragm": the part said last, with nothing more said of it. */
function verdictFirst(scene: Scene, from: number): { nouns: Noun[]; end: number } | undefined {
  let at = from;
  while (scene.isPlain(at) && !has(scene.at(at), "det") && !has(scene.at(at), "it") && !has(scene.at(at), "is") && !has(scene.at(at), "and") && at < from + 2) at += 1;
  if (scene.chunks.slice(0, from).some((one) => one.talk)) return undefined;
  const behind = scene.nouns(at, "object");
  if (!behind?.nouns[0]?.part || behind.nouns.some((one) => one.fresh) || (scene.predicateFollows(behind.end) && !saysAgain(scene, behind.end))) return undefined;
  if (scene.at(behind.end)?.senses.work || scene.at(behind.end)?.senses.placing || scene.at(behind.end)?.unknown || scene.at(behind.end)?.number) return undefined;
  return behind;
}

function prepositionAt(scene: Scene, from: number): number {
  let at = from;
  while (scene.isPlain(at) && !has(scene.at(at), "prep") && at < from + 3 && !has(scene.at(at), "is") && !has(scene.at(at), "it")) at += 1;
  while (has(scene.at(at), "prep") && has(scene.at(at + 1), "prep")) at += 1;
  return has(scene.at(at), "prep") ? at : -1;
}

/** "a leak in the gasket on his truck". */
export function talkBehind(scene: Scene, to: number): boolean {
  for (let at = to; at < to + 5; at += 1) {
    const chunk = scene.at(at);
    if (!chunk) return false;
    if (chunk.talk) return has(scene.at(at - 1), "prep") || has(scene.at(at - 2), "prep") || has(scene.at(at - 1), "det");
    if (chunk.senses.part || chunk.senses.condition || chunk.senses.work) return false;
  }
  return false;
}

function emit(scene: Scene, state: ClauseState, said: readonly Said[], nouns: readonly Named[], named: boolean, span: [number, number]): boolean {
  if (state.elsewhere !== undefined) return false;
  for (const noun of nouns) {
    for (const one of said) {
      const code = sharpen(one.code, scene.at(one.at)?.text ?? "", noun.part) ?? one.code;
      const entry: Finding = { type: "finding", condition: code };
      if (noun.part) entry.part = noun.part;
      if (one.extent) entry.extent = one.extent;
      if (one.severity && code !== "ok" && code !== "intact" && !(code === "missing" && one.severity === "slight")) entry.severity = one.severity;
      const place = one.place ?? noun.place;
      if (place && !noun.part?.startsWith(`${place}_`)) entry.place = place;
      if (noun.count !== undefined) entry.count = noun.count;
      if (one.absent) entry.absent = true;
      if (state.hedge !== undefined) entry.unsure = true;
      const chunks = [...range(Math.max(0, span[0]), span[1])];
      for (const mark of [state.not, state.hedge]) if (mark !== undefined && !chunks.includes(mark)) chunks.unshift(mark);
      if (state.not !== undefined) scene.use(state.not);
      if (state.hedge !== undefined) scene.use(state.hedge);
      scene.drafts.push({ entry, chunks, rule: one.absent ? "finding_absent" : `finding_${one.form}`, named });
    }
  }
  state.said = true;
  return nouns.length > 0;
}
