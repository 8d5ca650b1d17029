/** Step 6: an amendment: "make that five eighths", "correction, the lower one". */

import type { Entry, Finding, ValveEntry } from "../shapes/entry.ts";
import { ROLE } from "../vocabulary/grammar.ts";
import { amendNumber, bareNumberLeads } from "./amend-number.ts";
import { amendDetail, amendWhole } from "./amend-said.ts";
import { has } from "./chunks.ts";
import type { Fragment } from "./fragment.ts";
import type { Named } from "./noun.ts";
import type { Draft } from "./scene.ts";
import { lastIndex, replaceAt } from "./standing.ts";
import { readTagDigits } from "./tags.ts";

/**
 * The new words replace the matching slot of the last entry of their kind; a new part
 * amends every entry of that phrase that shares the old one; digits alone amend a number or a tag.
 * Returns what the entries become, or nothing where the words amend nothing (then they are plain talk).
 */
export function amend(before: readonly Entry[], words: readonly string[], whole: Fragment): Entry[] | undefined {
  if (before.length === 0 || whole.scene.chunks.some((one) => one.talk)) return undefined;
  // what is said first amends; what follows it in the same breath is new
  const byPlace = [...whole.drafts].sort((a, b) => Math.min(...a.chunks) - Math.min(...b.chunks));
  if (takesBack(before, byPlace)) byPlace.shift();
  const first = byPlace[0];
  const same = (draft: Draft) =>
    draft === first ||
    (first?.entry.type === "reading" && draft.entry.type === "test" && draft.entry.result === null) ||
    (draft.entry.type === first?.entry.type && draft.entry.type === "reading" && byPlace.length === 2);
  const renamed = partThenWork(before, whole, byPlace);
  if (renamed) return renamed;
  const leads = bareNumberLeads(whole.scene);
  const fragment: Fragment = { ...whole, drafts: leads ? [] : whole.drafts.filter(same) };
  const rest = whole.drafts
    .filter((draft) => byPlace.includes(draft) && (leads || !same(draft)))
    .map((draft) => draft.entry);
  const amended = amendBy(before, words, fragment);
  return amended && [...amended, ...rest];
}

/** "cracked, no wait, not cracked, scratched": what is denied makes room for what it was. */
function takesBack(before: readonly Entry[], [denied, instead]: readonly Draft[]): boolean {
  const old = before[lastIndex(before, "finding")] as Finding | undefined;
  return (
    denied?.entry.type === "finding" &&
    denied.entry.absent === true &&
    denied.entry.condition === old?.condition &&
    instead?.entry.type === "finding"
  );
}

/** "I mean the actuator spring, gonna have to change it": the part is put right, the work is new. */
function partThenWork(before: readonly Entry[], whole: Fragment, byPlace: readonly Draft[]): Entry[] | undefined {
  const first = byPlace[0];
  if (first?.entry.type !== "work" || !first.entry.part) return undefined;
  const at = whole.scene.chunks.findIndex((one) => !one.senses.plain && !has(one, ROLE.det));
  const noun = whole.scene.noun(at);
  const last = [...before].reverse().find((one) => "part" in one && one.part);
  if (!noun?.part || noun.part !== first.entry.part || !last || !("part" in last) || last.part === noun.part)
    return undefined;
  if (whole.scene.chunks[noun.to]?.senses.work) return undefined;
  const { part } = noun;
  return [
    ...before.map((one) => ("part" in one && one.part === last.part ? ({ ...one, part } as Entry) : one)),
    ...whole.drafts.map((draft) => draft.entry),
  ];
}

/** The first slot that the words fit. */
function amendBy(before: readonly Entry[], words: readonly string[], fragment: Fragment): Entry[] | undefined {
  return (
    amendTag(before, words, fragment) ??
    amendValve(before, fragment) ??
    amendNumber(before, fragment) ??
    amendTest(before, fragment) ??
    amendWhole(before, fragment) ??
    amendDetail(before, fragment) ??
    amendPart(before, fragment)
  );
}

/** "correction, two one four": digits alone, or a tag, rename the valve. */
function amendTag(before: readonly Entry[], words: readonly string[], fragment: Fragment): Entry[] | undefined {
  const at = lastIndex(before, "valve");
  const valve = before[at] as ValveEntry | undefined;
  const named = fragment.drafts.find((draft) => draft.entry.type === "valve" && draft.entry.tag);
  if (named && named.entry.type === "valve")
    return valve ? replaceAt(before, at, { ...valve, ...named.entry }) : undefined;
  if (!valve?.tag || at !== before.length - 1) return undefined;
  const start = words.findIndex((word, nth) => nth < 3 && readTagDigits(words, nth) !== undefined && word !== "to");
  if (start < 0) return undefined;
  const digits = readTagDigits(words, start);
  if (!digits || fragment.drafts.some((draft) => draft.entry.type === "reading")) return undefined;
  if (
    fragment.drafts.some((draft) => draft.entry.type === "valve") ||
    fragment.scene.chunks.some((one) => one.unknown || one.talk)
  )
    return undefined;
  const [letters, old = ""] = valve.tag.split("-");
  const trailing = /[A-Z]$/.exec(old)?.[0] ?? "";
  return replaceAt(before, at, { ...valve, tag: `${letters}-${digits.digits}${trailing}` });
}

/** "I mean three inch". */
function amendValve(before: readonly Entry[], fragment: Fragment): Entry[] | undefined {
  const draft = fragment.drafts.find((one) => one.entry.type === "valve");
  const at = lastIndex(before, "valve");
  if (!draft || at < 0) return undefined;
  return replaceAt(before, at, { ...(before[at] as ValveEntry), ...draft.entry } as Entry);
}

/** "correction, it failed". */
function amendTest(before: readonly Entry[], fragment: Fragment): Entry[] | undefined {
  const at = lastIndex(before, "test");
  const said = fragment.drafts.find((draft) => draft.entry.type === "test")?.entry;
  if (said?.type === "test" && at >= 0) {
    const old = before[at];
    if (old?.type === "test")
      return replaceAt(before, at, { ...old, test: said.test, result: said.result ?? old.result });
  }
  if (at === before.length - 1 && at >= 0 && fragment.drafts.length === 0) {
    const verdict = fragment.scene.chunks.find((one) => one.senses.verdict)?.senses.verdict;
    const old = before[at];
    if (verdict && old?.type === "test") return replaceAt(before, at, { ...old, result: verdict });
  }
  return undefined;
}

/** "correction, bonnet": every entry of that phrase that shares the old part. */
function amendPart(before: readonly Entry[], fragment: Fragment): Entry[] | undefined {
  const { chunks } = fragment.scene;
  if (fragment.drafts.length > 0 || chunks.some((one) => one.unknown || one.talk)) return undefined;
  const index = chunks.findIndex((_, at) => fragment.scene.noun(at)?.part !== undefined);
  if (index < 0 || index > 3) return undefined;
  const noun = fragment.scene.noun(index) as Named;
  const last = [...before].reverse().find((one) => "part" in one && one.part);
  const bare = before.at(-1);
  if (!last || !("part" in last)) {
    if (bare && (bare.type === "finding" || bare.type === "work"))
      return replaceAt(before, before.length - 1, { ...bare, part: noun.part } as Entry);
    return undefined;
  }
  const old = last.part;
  for (const [at, chunk] of fragment.scene.chunks.entries()) if (chunk.senses.part) fragment.scene.use(at);
  return before.map((one) => {
    if (!("part" in one) || one.part !== old) return one;
    const next = { ...one, part: noun.part } as Finding;
    if (next.type === "finding") {
      if (noun.place) next.place = noun.place;
    }
    if (noun.count !== undefined) next.count = noun.count;
    return next as Entry;
  });
}
