import { type Entry, nameOf } from "../../core/index.ts";
import { entryWords } from "./entry-words.ts";
import { capital } from "./words.ts";

/** Entries as lines of the job card: a stamp, then plain words. */
export function EntryLines({ entries }: { entries: readonly Entry[] }) {
  if (!entries.length) return null;
  return (
    <ul class="lines">
      {entries.map((entry, index) => {
        const { stamp, subject, told, unsure, sound } = entryWords(entry);
        return (
          <li key={index} class="line">
            <span class={`stamp stamp-${sound ? "sound" : stamp.toLowerCase().replace(" ", "-")}`}>{stamp}</span>
            <span class="line-words">
              {subject && <b>{capital(subject)}</b>} {told}
              {unsure && <em class="unsure"> not sure</em>}
              {entry.doubtful && <em class="unsure"> heard in doubt</em>}
              {"assumed" in entry && entry.assumed && entry.resolved && (
                <em class="unsure"> taken to be the {nameOf(entry.resolved, "part")}</em>
              )}
            </span>
          </li>
        );
      })}
    </ul>
  );
}
