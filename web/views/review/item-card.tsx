import type { Decision, ReviewItem } from "../../../core/index.ts";
import { Clip } from "../../parts/clip.tsx";
import { EntryLines } from "../../parts/entry-lines.tsx";
import { useEffect, useRef } from "../../parts/hooks.ts";
import { MarkedPhrase } from "../../parts/marked-phrase.tsx";
import { Photo } from "../../parts/photo.tsx";
import { Plate } from "../../parts/plate.tsx";
import { addressOf } from "../../state/route.ts";
import { siteName } from "../../state/seen.ts";
import type { State } from "../../state/state.ts";
import { clockHere, clockThere, dayWords } from "../../state/time-words.ts";
import { REASON_STAMPS } from "./reason-words.ts";

/** A phrase to look at: why, the words with what each became, what goes into the record, and what was decided of it. */
export function ItemCard({ item, state }: { item: ReviewItem; state: State }) {
  const amended = item.text !== item.said;
  return (
    <>
      <div class="docket-head">
        <Plate tag={item.tag} small />
        <p class="docket-when">
          {dayWords(item.day)}, {clockThere(item.saidAt)} {item.how}
          {item.by ? ` by ${item.by}` : ""}
          {item.site ? `, ${siteName(state, item.site)}` : ""}{" "}
          <a href={addressOf({ screen: "job", id: item.job })}>whole job</a>
        </p>
      </div>
      <ul class="reasons" aria-label="Why it is shown">
        {item.reasons.map((one) => (
          <li key={`${one.reason} ${one.why}`} class="reason">
            <span class={`stamp reason-${one.reason}`}>{REASON_STAMPS[one.reason]}</span>
            <span>{one.why}</span>
          </li>
        ))}
      </ul>
      {item.before.length > 0 && (
        <p class="said-before">
          {item.before.map((words) => (
            <span key={words}>“{words}” </span>
          ))}
        </p>
      )}
      {amended && (
        <p class="said-first">
          Said: <s>“{item.said}”</s>
        </p>
      )}
      <MarkedPhrase reading={{ ...item, unread: item.unread.map((one) => ({ ...one, phrase: 0 })) }} />
      {(item.clips.length > 0 || item.photos.length > 0) && (
        <div class="docket-kept">
          {item.clips.map((clip) => (
            <Clip key={clip.id} id={clip.id} seconds={clip.seconds} of={item.said} />
          ))}
          {item.photos.map((photo) => (
            <Photo
              key={photo.id}
              id={photo.id}
              at={photo.at}
              of={item.said}
              width={photo.width}
              height={photo.height}
            />
          ))}
        </div>
      )}
      <h2 class="rule-head">Goes into the record</h2>
      {item.entries.length > 0 ? <EntryLines entries={item.entries} /> : <p class="none">Nothing of it.</p>}
      {item.decisions.map((one) => (
        <p key={one.id} class="touched">
          {decisionWords(one)}
        </p>
      ))}
      {item.answers.map((one) => (
        <p key={one.id} class="answer">
          {one.by ?? "The technician"} answers at {clockHere(one.at)}: <b>“{one.text}”</b>
        </p>
      ))}
    </>
  );
}

export function decisionWords(one: Decision): string {
  const did = {
    accepted: "Accepted",
    amended: `Amended to “${one.words ?? ""}”`,
    struck: `Struck${one.words ? ` (${one.words})` : ""}`,
    asked: `Asked “${one.words ?? ""}”`,
    returned: "Put back to be looked at",
  };
  return `${did[one.what]}${one.by ? ` by ${one.by}` : ""} at ${clockHere(one.at)}`;
}

/** The card that is at hand takes the focus, so that its keys work and a reader says what it is. */
export function useFocus(key: string, held: boolean) {
  const card = useRef<HTMLElement>(null);
  useEffect(() => {
    if (!held) card.current?.focus({ preventScroll: false });
  }, [key, held]);
  return card;
}
