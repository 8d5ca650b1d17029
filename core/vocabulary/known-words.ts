import type { Part, Work } from "../shapes/codes.ts";
import type { TaughtWord } from "../shapes/taught-word.ts";
import { CONDITION_ROWS } from "./conditions.ts";
import { ACTS_ROWS, EXTENT_ROWS, PLACE_ROWS, SERVICE_ROWS, SEVERITY_ROWS } from "./details.ts";
import { GRAMMAR, type GrammarRole, PLAIN, ROLE } from "./grammar.ts";
import { inflect, plurals } from "./inflect.ts";
import { BOUND_ROWS, QUANTITY_ROWS, UNIT_ROWS } from "./measures.ts";
import { spell, wordTable } from "./notation.ts";
import { PART_ROWS } from "./parts.ts";
import type { Senses } from "./senses.ts";
import { HOLDS_LIQUID, NAMELESS, OF_THE_JOB, TALK } from "./talk.ts";
import { TEST_ROWS, VERDICTS } from "./tests.ts";
import type { WordTree } from "./word-tree.ts";
import { PLACING_VERBS, WORK_ROWS } from "./work.ts";

const VERB_FORMS = ["base", "past", "ing"] as const;

/** Lays all rows into the tree; returns the words that parts, conditions, work, tests and units are made of. */
export function layRows(tree: WordTree): Set<string> {
  /** orders ("unplug"): too short a form to be known by sound */
  const bases = new Set<string>();
  for (const row of PART_ROWS) for (const line of row.say) layPart(tree, line, row.code);
  layConditions(tree);
  layWorks(tree, bases);
  layPlacing(tree);
  layCodes(tree, "place", PLACE_ROWS);
  layCodes(tree, "severity", SEVERITY_ROWS);
  layCodes(tree, "extent", EXTENT_ROWS);
  layCodes(tree, "acts", ACTS_ROWS);
  layCodes(tree, "service", SERVICE_ROWS);
  layCodes(tree, "unit", UNIT_ROWS);
  layCodes(tree, "quantity", QUANTITY_ROWS);
  layCodes(tree, "bound", BOUND_ROWS);
  layCodes(tree, "test", TEST_ROWS);
  layOutcomes(tree);
  const tradeWords = new Set([...tree.words].filter((word) => !PLAIN.has(word) && !TALK.has(word) && !bases.has(word)));
  for (const role of Object.keys(GRAMMAR) as GrammarRole[])
    layLines(tree, GRAMMAR[role], (senses) => {
      senses.roles |= ROLE[role];
    });
  // without a speaker before it, "says" is a small word like any other
  for (const word of GRAMMAR.tells)
    if (PLAIN.has(word))
      tree.put(word, (senses) => {
        senses.plain = true;
      });
  for (const word of [...OF_THE_JOB, ...NAMELESS, ...HOLDS_LIQUID]) tree.put(word, () => undefined);
  return tradeWords;
}

/** A word that a site taught counts before what the shipped rows say of it. */
export function layTaught(tree: WordTree, { say, as }: TaughtWord): void {
  const text = say
    .toLowerCase()
    .replace(/['’]/g, "")
    .replace(/[^a-z0-9]+/g, " ")
    .trim();
  if (!text) return;
  if ("part" in as) {
    for (const form of plurals(text))
      tree.put(form, (senses) => {
        senses.part = as.part;
      });
  } else if ("condition" in as) {
    tree.put(text, (senses) => {
      senses.condition = [{ code: as.condition, form: as.form ?? "is" }];
    });
  } else layVerb(tree, as.work, text);
}

const LONG_FORMS: Record<string, string> = wordTable({
  wont: "will not",
  wouldnt: "would not",
  doesnt: "does not",
  didnt: "did not",
  isnt: "is not",
  wasnt: "was not",
  arent: "are not",
  werent: "were not",
  cant: "can not",
  havent: "have not",
  hasnt: "has not",
  couldnt: "could not",
});

/** "won't hold" is also said "will not hold". */
function uncontracted(text: string): string[] {
  const words = text.split(" ");
  const at = words.findIndex((word) => LONG_FORMS[word] !== undefined);
  return at < 0 ? [text] : [text, words.map((word, nth) => (nth === at ? LONG_FORMS[word] : word)).join(" ")];
}

function layLines(tree: WordTree, lines: readonly string[], add: (senses: Senses) => void): void {
  for (const line of lines)
    for (const text of spell(line)) for (const variant of uncontracted(text)) if (variant) tree.put(variant, add);
}

/** Rows that say one code each: of two rows with the same words the first counts. */
function layCodes<Kind extends keyof Senses>(
  tree: WordTree,
  kind: Kind,
  rows: readonly { code: Senses[Kind]; say: readonly string[] }[],
): void {
  for (const row of rows)
    layLines(tree, row.say, (senses) => {
      senses[kind] ??= row.code;
    });
}

function layPart(tree: WordTree, line: string, code: Part): void {
  for (const name of spell(line)) {
    for (const [nth, form] of plurals(name).entries()) {
      const add = (senses: Senses) => {
        senses.part ??= code;
        if (nth > 0 || /s$/.test(form)) senses.plural ??= true;
      };
      tree.put(form, add);
      // "locknut", "orings": two short words are often written or heard as one
      const pieces = form.split(" ");
      if (pieces.length === 2 && form.length <= 16) tree.put(pieces.join(""), add);
    }
  }
}

/** "not tight" is also said "isn't tight", "wasn't tight", "aren't tight". */
function denied(lines: readonly string[]): string[] {
  return lines.flatMap((line) =>
    /^not /.test(line) ? [line, `(isnt|wasnt|arent|werent|aint) ${line.slice(4)}`] : [line],
  );
}

function layConditions(tree: WordTree): void {
  for (const row of CONDITION_ROWS)
    for (const form of ["is", "has", "does"] as const)
      layLines(tree, denied(row[form] ?? []), (senses) => {
        senses.condition ??= [];
        if (!senses.condition.some((one) => one.code === row.code && one.form === form))
          senses.condition.push({ code: row.code, form });
      });
}

function addWork(senses: Senses, work: NonNullable<Senses["work"]>[number]): void {
  senses.work ??= [];
  senses.work.push(work);
}

/** A verb in all its forms; `along`: the small words it needs to be this work ("took … off"). */
function layVerb(tree: WordTree, code: Work, verb: string, along?: string[], bases?: Set<string>): void {
  const forms = inflect(verb);
  for (const form of VERB_FORMS)
    for (const text of forms[form]) {
      if (form === "base" && !text.includes(" ")) bases?.add(text);
      tree.put(text, (senses) => addWork(senses, { code, form, with: along }));
    }
}

function layWorks(tree: WordTree, bases: Set<string>): void {
  for (const row of WORK_ROWS) {
    for (const verb of row.verbs) layVerb(tree, row.code, verb, undefined, bases);
    layLines(tree, row.past ?? [], (senses) => addWork(senses, { code: row.code, form: "past" }));
    for (const { verb, words: along } of row.with ?? []) {
      layVerb(tree, row.code, verb, along, bases);
      // said together ("blew out the strainer") the two words are one verb
      const forms = inflect(verb);
      for (const form of VERB_FORMS)
        for (const text of forms[form])
          for (const small of along)
            tree.put(`${text} ${small}`, (senses) => addWork(senses, { code: row.code, form }));
    }
    layLines(tree, row.nouns ?? [], (senses) => addWork(senses, { code: row.code, form: "noun" }));
    layLines(tree, row.where ?? [], (senses) => addWork(senses, { code: row.code, form: "where" }));
    layLines(tree, row.tools ?? [], (senses) => {
      senses.tool ??= row.code;
    });
  }
}

function layPlacing(tree: WordTree): void {
  for (const verb of PLACING_VERBS) {
    const forms = inflect(verb);
    for (const form of VERB_FORMS)
      for (const text of forms[form])
        tree.put(text, (senses) => {
          senses.placing ??= form === "base" && forms.past.includes(text) ? "past" : form;
        });
  }
  // the past of these is spelled like the base: what is said at the valve has mostly been done
  for (const text of ["put", "set"])
    tree.put(text, (senses) => {
      senses.placing = "past";
    });
}

function layOutcomes(tree: WordTree): void {
  for (const row of TEST_ROWS)
    for (const result of ["pass", "fail"] as const)
      layLines(tree, denied(row[result]), (senses) => {
        senses.outcome ??= { test: row.code, result };
      });
  for (const result of ["pass", "fail"] as const)
    layLines(tree, denied(VERDICTS[result]), (senses) => {
      senses.verdict ??= result;
    });
  for (const text of ["test", "tests"])
    tree.put(text, (senses) => {
      senses.testing = true;
    });
}
