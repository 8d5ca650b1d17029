import type { JobView, PhraseView } from "../../../core/index.ts";
import { Clip } from "../../parts/clip.tsx";
import { DeskFrame, Waiting } from "../../parts/desk-frame.tsx";
import { EntryLines } from "../../parts/entry-lines.tsx";
import { MarkedPhrase } from "../../parts/marked-phrase.tsx";
import { Photo } from "../../parts/photo.tsx";
import { Plate } from "../../parts/plate.tsx";
import { useAnswer } from "../../parts/use-answer.ts";
import { hazardName, listed } from "../../parts/words.ts";
import type { Deeds } from "../../state/deeds.ts";
import { may } from "../../state/door.ts";
import { addressOf } from "../../state/route.ts";
import { siteName } from "../../state/seen.ts";
import type { State } from "../../state/state.ts";
import { clockThere, dayWords } from "../../state/time-words.ts";
import { ShareSheet } from "./share-sheet.tsx";

/** One job: every phrase in the order said with what became of it, and what follows for each valve named in it. */
export function JobSheet({ id, state, deeds }: { id: string; state: State; deeds: Deeds }) {
  const [answer, again] = useAnswer<JobView>(`/api/jobs/${encodeURIComponent(id)}`);
  if (!answer?.ok)
    return (
      <DeskFrame sign="JOB" state={state} deeds={deeds}>
        <Waiting problem={answer?.problem} again={again} />
      </DeskFrame>
    );
  const job = answer.value;
  const hazards = job.phrases.flatMap((phrase) =>
    phrase.alerts.flatMap((one) => (one.type === "hazard" ? [one.hazard] : [])),
  );
  return (
    <DeskFrame sign="JOB" state={state} deeds={deeds}>
      <div class="job-head">
        <Plate tag={job.tag ?? job.valves[0]?.tag} />
        <p>
          {dayWords(job.day)}, begun {clockThere(job.startedAt)}
          {job.site ? `, ${siteName(state, job.site)}` : ""}
        </p>
        <p>
          {job.site && may(state, "read_all") && (
            <a href={`/report?${new URLSearchParams({ site: job.site, day: job.day })}`}>The day’s report</a>
          )}{" "}
          <a href={addressOf({ screen: "desk", site: job.site, day: job.day })}>Jobs of that day</a>
        </p>
      </div>
      {hazards.length > 0 && (
        <p class="hazard-band">
          <b>HAZARD SAID: {listed([...new Set(hazards)].map(hazardName))}.</b> Only site procedure clears this.
        </p>
      )}
      <div class="sheet">
        <section class="paper-column" aria-label="What was said">
          <h2 class="rule-head">What was said</h2>
          <ol class="phrases">
            {job.phrases.map((phrase) => (
              <PhraseLine key={phrase.id} phrase={phrase} all={job.phrases} />
            ))}
          </ol>
          {job.photos.length > 0 && (
            <>
              <h2 class="rule-head">Photographs of the job</h2>
              <div class="keepsakes">
                {job.photos.map((photo) => (
                  <Photo key={photo.id} {...photo} of={job.tag} />
                ))}
              </div>
            </>
          )}
          {job.ask.length > 0 && (
            <>
              <h2 class="rule-head">Open questions</h2>
              {job.ask.map((one) => (
                <p key={`${one.phrase} ${one.question}`} class="ask">
                  {one.question}
                </p>
              ))}
            </>
          )}
        </section>
        <div class="paper-column">
          {job.valves.map((share) => (
            <ShareSheet key={share.tag ?? ""} share={share} site={job.site} today={job.day} />
          ))}
        </div>
      </div>
    </DeskFrame>
  );
}

function PhraseLine({ phrase, all }: { phrase: PhraseView; all: readonly PhraseView[] }) {
  const touched = all.filter((one) => phrase.touched.includes(one.id)).map((one) => `“${one.text}”`);
  return (
    <li class="phrase">
      <p class="phrase-when">
        {clockThere(phrase.saidAt)} {phrase.how}
        {phrase.confidence === undefined ? "" : `, ${Math.round(phrase.confidence * 100)} % sure`}
        {phrase.by === undefined ? "" : `, by ${phrase.by}`}
      </p>
      <MarkedPhrase reading={{ ...phrase, unread: phrase.unread.map((one) => ({ ...one, phrase: 0 })) }} />
      <EntryLines entries={phrase.entries} />
      {phrase.clips.length + phrase.photos.length > 0 && (
        <div class="keepsakes">
          {phrase.clips.map((clip) => (
            <Clip key={clip.id} id={clip.id} seconds={clip.seconds} of={phrase.text} />
          ))}
          {phrase.photos.map((photo) => (
            <Photo key={photo.id} {...photo} of={phrase.text} />
          ))}
        </div>
      )}
      {phrase.unread.length > 0 && (
        <p class="not-read">
          Not read: <b>{phrase.unread.map((one) => one.text.trim()).join(" … ")}</b>
        </p>
      )}
      {touched.length > 0 && <p class="touched">Scratches or amends {listed(touched)}</p>}
      {phrase.corrections.map((one) => (
        <p key={one.id} class="touched">
          {one.text === undefined ? "Struck" : `Corrected to “${one.text}”`} {clockThere(one.madeAt)}
          {one.why ? `: ${one.why}` : ""}
        </p>
      ))}
    </li>
  );
}
