import { daleChall } from "dale-chall";
import { inflect, plurals } from "./inflect.ts";

/**
 * Everyday English, so that a plain word is never taken for a trade word it sounds like. The words are the
 * New Dale-Chall list (Chall and Dale, 1995: about 3,000 words that four in five fourth-graders know).
 */
const FAMILIAR = new Set(daleChall);

/** What stands on desks, forms and in yards, and is too grown-up for that list (from memory). */
const GROWN_UP = new Set(
  `item office copier stapler monitor screen budget contract schedule vendor invoice document label checklist section permit
  antenna cable sensor supply vehicle engine coupon lease pasture culvert cattle guard contractor inspector supervisor
  security password internet software laptop tablet printer scanner folder binder clipboard calendar deadline
  appointment insurance mortgage deposit account receipt warranty discount catalog survey inventory shipment
  delivery warehouse terminal platform dispatcher forecast humidity traffic detour intersection interstate
  transmission alternator radiator carburetor windshield dashboard odometer muffler exhaust bumper fender
  sedan pickup semi tanker flatbed hitch winch bobcat backhoe excavator dozer loader scaffold ladder harness
  helmet goggles respirator apron coverall sunscreen bandage aspirin medicine surgery therapy diabetes allergy
  restaurant cafeteria buffet barbecue casserole spaghetti lasagna broccoli casino stadium quarterback playoffs
  tournament referee concert guitar keyboard novel sequel episode channel podcast video camera
  marriage divorce nephew niece cousin fiance roommate landlord tenant attorney lawyer judge jury
  election mayor senator congress policy union strike pension salary bonus payroll raise resume interview
  project phase budget proposal estimate quote agenda minutes memo draft version revision signature`.split(/\s+/),
);

/** Whether a word, or the word it is an everyday form of, is plain English: "slipped", "biggest", "runny". */
export function isEnglish(word: string): boolean {
  // "retested", "rechecked": once more what the plain word says
  return isPlainEnglish(word) || (word.startsWith("re") && isPlainEnglish(word.slice(2)));
}

function isPlainEnglish(word: string): boolean {
  if (FAMILIAR.has(word) || GROWN_UP.has(word)) return true;
  for (const ending of ["s", "es", "ed", "d", "ing", "er", "ly", "est", "y"]) {
    if (!word.endsWith(ending)) continue;
    const stem = word.slice(0, -ending.length);
    if (stem.length < 3) continue;
    if (
      FAMILIAR.has(stem) ||
      GROWN_UP.has(stem) ||
      // "carried", "easier", "copier"
      (stem.endsWith("i") && FAMILIAR.has(`${stem.slice(0, -1)}y`)) ||
      FAMILIAR.has(`${stem}e`) ||
      (stem.at(-1) === stem.at(-2) && FAMILIAR.has(stem.slice(0, -1)))
    )
      return true;
  }
  return false;
}

/** The words themselves and their regular forms. */
export function everydayWords(): Set<string> {
  const all = new Set<string>();
  for (const word of [...FAMILIAR, ...GROWN_UP]) {
    all.add(word);
    // "he" has no "hing"
    if (word.length < 3) continue;
    const { base, past, ing } = inflect(word);
    for (const form of [...base, ...past, ...ing, ...plurals(word)]) all.add(form);
  }
  return all;
}
