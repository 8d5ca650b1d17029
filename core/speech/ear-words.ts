import { lexicon } from "../vocabulary/lexicon.ts";
import { dictionaryText } from "./dictionary.ts";
import { KINDS } from "./kinds.ts";
import { counted, languageModel, type SaidLines } from "./language-model.ts";
import { letterSound } from "./letter-sound.ts";
import { type MayBeAll, mayBeAll } from "./may-be-all.ts";
import { networkText } from "./network.ts";
import { learntNextWord } from "./next-word/weights.ts";
import { SaidChances } from "./said-chances.ts";
import { SAID_ALONE, saidTexts } from "./said-texts.ts";
import { spokenTag } from "./spoken-tag.ts";
import { spokenWords } from "./spoken-words.ts";
import { WORD_CLASSES } from "./word-classes.ts";

/** What a site adds to what anyone would say. */
export interface SiteWords {
  /** the tags of its valves */
  tags: readonly string[];
  /** ways of saying that it taught */
  taught: readonly string[];
  /** phrases said there before and left as they were understood */
  accepted: readonly string[];
  /** what calls the ear where it listens hands-free, a word or a few */
  call?: string;
}

export const NO_SITE: SiteWords = { tags: [], taught: [], accepted: [] };

/** What the engine listens for: the words with their sounds, and how they follow one another. */
export interface EarWords {
  dictionary: string;
  network: string;
  /** what weighs the ways in which something may have been said */
  chances: SaidChances;
  /** words that nobody knows the sound of: they cannot be heard */
  unheard: string[];
  /** whether these words of the network may be all that somebody has to say */
  mayBeAll(words: readonly string[]): MayBeAll;
}

/** How a job is opened on a tag; `TAG` stands for it. */
const TAG_LINES = [
  "TAG",
  "starting on TAG",
  "okay TAG",
  "next is TAG",
  "now on TAG",
  "back to TAG",
  "going back to TAG",
  "working on TAG",
];
/** Words of the trade that no line has: this share of what may come where nothing is known. */
const UNSAID_SHARE = 0.03;
const TAG = "T_site";
/** How often a phrase begins with the call word, where somebody may call. */
const CALLED_SHARE = 0.2;
/** How often somebody calls and waits for the tone before going on. */
const CALL_ALONE = 0.3;

/** Counts what is said, ours and the site's, and makes network and dictionary from it. */
export function earWords(soundsOf: (word: string) => readonly string[], site: SiteWords = NO_SITE): EarWords {
  const tags = site.tags
    .map((tag) => ({ word: tagWord(tag), sounds: tagSounds(tag, soundsOf) }))
    .filter(({ sounds }) => sounds.length > 0);
  const ofSite = new Set([...site.taught, ...site.accepted, site.call ?? ""].flatMap(spokenWords));
  const soundsHere = (word: string): readonly string[] => {
    const known = soundsOf(word);
    // what everybody says stands in a table, and a gap in it is to be seen; a site's own words are guessed at
    return known.length > 0 || !ofSite.has(word) ? known : [letterSound(word)].filter(Boolean);
  };
  const call = site.call === undefined ? undefined : callWord(site.call, soundsHere);
  const sounds = new Map([...tags, ...(call ? [call] : [])].map(({ word, sounds }) => [word, sounds]));
  const allSounds = (word: string) => sounds.get(word) ?? soundsHere(word);
  const texts: SaidLines[] = [
    ...saidTexts(),
    { lines: site.accepted.map(spokenWords), weight: 2 },
    { lines: site.taught.map(spokenWords), weight: 3 },
  ];
  const classes: Record<string, readonly string[]> = { ...WORD_CLASSES };
  if (tags.length > 0) {
    classes[TAG] = tags.map(({ word }) => word);
    const first = tags[0]?.word as string;
    texts.push({
      lines: TAG_LINES.map((line) => line.split(" ").map((word) => (word === "TAG" ? first : word))),
      weight: SAID_ALONE,
    });
  }
  const heard = (word: string) => allSounds(word).length > 0;
  const unsaid = new Map(
    [...lexicon().tradeWords]
      .filter((word) => word.length > 2 && /^[a-z]+$/.test(word) && heard(word))
      .map((word) => [word, 1]),
  );
  const ofKinds = tags.length > 0 ? { ...KINDS, [TAG]: classes[TAG] as readonly string[] } : KINDS;
  const counts = counted(texts, { classes, unsaid, unsaidShare: UNSAID_SHARE });
  const kinds = counted(texts, { classes: ofKinds, unsaid, unsaidShare: UNSAID_SHARE });
  const model = languageModel(counts);
  const words = new Set<string>();
  for (const { next } of model.after.values()) for (const word of next.keys()) words.add(word);
  for (const word of model.classes.keys()) words.add(word);
  for (const name of [...Object.keys(classes), "</s>"]) words.delete(name);
  if (call) words.add(call.word);
  const known = [...words].filter(heard);
  const calling = call && { word: call.word, share: CALLED_SHARE, alone: CALL_ALONE };
  const chances = new SaidChances(counts, kinds, calling, learntNextWord());
  return {
    dictionary: dictionaryText(known, allSounds),
    network: networkText(model, allSounds, calling),
    chances,
    unheard: [...words].filter((word) => !heard(word)).sort(),
    // who called and says nothing more waits for its tone
    mayBeAll: (words) =>
      words.length === 1 && words.every(isCall)
        ? "maybe"
        : mayBeAll(
            chances,
            words.filter((word) => !isCall(word)),
          ),
  };
}

const tagWord = (tag: string) => `T_${tag.replace(/\s+/g, "_")}`;

function tagSounds(tag: string, soundsOf: (word: string) => readonly string[]): string[] {
  return spokenTag(tag).flatMap((way) => {
    const sounds = way.split(" ").map((word) => soundsOf(word)[0]);
    return sounds.every((sound) => sound !== undefined) && sounds.length > 0 ? [sounds.join(" ")] : [];
  });
}

/** The call as one word, said in one breath: its words one by one would be heard in much that is said. */
function callWord(call: string, soundsOf: (word: string) => readonly string[]) {
  const words = spokenWords(call);
  const ways = words.reduce<string[]>(
    (said, word) => said.flatMap((before) => soundsOf(word).map((sound) => `${before} ${sound}`.trim())),
    words.length > 0 ? [""] : [],
  );
  return { word: `C_${words.join("_")}`, sounds: ways };
}

export const isCall = (word: string): boolean => word.startsWith("C_");

/** A heard word as it is written: a letter and the call without their marks, a tag as the site writes it, an O-ring as two words. */
export const writtenWord = (word: string): string =>
  /^[CLT]_/.test(word) ? word.slice(2).replace(/_/g, " ") : word.replace(/^O_/, "o ");
