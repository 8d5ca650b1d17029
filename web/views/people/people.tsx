import type { AuditRecord, OneTimeCode, Person, Site } from "../../../core/index.ts";
import { DeskFrame, Waiting } from "../../parts/desk-frame.tsx";
import { ENROL_FIRST } from "../../parts/door-band.tsx";
import { useState } from "../../parts/hooks.ts";
import { useAnswer } from "../../parts/use-answer.ts";
import type { Deeds } from "../../state/deeds.ts";
import { may } from "../../state/door.ts";
import type { State } from "../../state/state.ts";
import { type Answer, send } from "../../sync/ask.ts";
import { CodeCard } from "./code-card.tsx";
import { NewPerson } from "./new-person.tsx";
import { actWords, momentWords } from "./people-words.ts";
import { PersonCard } from "./person-card.tsx";

interface Served {
  people: Person[];
}

/** Everybody enrolled here: who may do what, on which devices; codes for new ones; and the latest acts. */
export function People({ state, deeds }: { state: State; deeds: Deeds }) {
  const [answer, again] = useAnswer<Served>("/api/people");
  const open = may(state, "every_site");
  const [acts, lookAgain] = useAnswer<{ records: AuditRecord[] }>(open ? "/api/audit?most=30" : undefined);
  const [places] = useAnswer<{ sites: Site[] }>("/api/sites");
  const [made, setMade] = useState<{ code: OneTimeCode; name: string } | undefined>(undefined);
  const [problem, setProblem] = useState<string | undefined>(undefined);

  const act = async (method: string, path: string, body?: object) => {
    const done = await send<Served>(method, path, body);
    setProblem(done.ok ? undefined : done.problem);
    again();
    lookAgain();
    return done;
  };
  const makeCode = async (person: Person, wish: { for: OneTimeCode["for"]; until?: string }) => {
    const done = await send<OneTimeCode>("POST", `/api/people/${person.id}/codes`, wish);
    setProblem(done.ok ? undefined : done.problem);
    setMade(done.ok ? { code: done.value, name: person.name } : undefined);
    lookAgain();
    if (done.ok) scrollTo({ top: 0 });
  };

  if (!answer?.ok || !places?.ok)
    return (
      <DeskFrame sign="PEOPLE" state={state} deeds={deeds}>
        <Waiting problem={problemOf(answer) ?? problemOf(places)} again={again} />
      </DeskFrame>
    );
  const { people } = answer.value;
  const { sites } = places.value;
  const names = new Map(people.map((one) => [one.id, one.name]));
  return (
    <DeskFrame sign="PEOPLE" state={state} deeds={deeds}>
      <div class="sheet">
        <section class="paper-column" aria-label="People">
          {problem && (
            <p class="tell tell-bad" role="alert">
              {problem}
            </p>
          )}
          {made && <CodeCard key={made.code.code} {...made} shut={() => setMade(undefined)} />}
          <h2 class="rule-head">People ({people.filter((one) => !one.leftAt).length})</h2>
          {people.length ? (
            <ul class="people">
              {people.map((person) => (
                <PersonCard key={person.id} person={person} sites={sites} open={open} act={act} makeCode={makeCode} />
              ))}
            </ul>
          ) : (
            <p>
              Nobody yet. The first lead is enrolled at the server’s own machine, with <code>{ENROL_FIRST}</code>. From
              then on this page enrols everybody else.
            </p>
          )}
        </section>
        <div class="paper-column">
          {people.length > 0 && (
            <NewPerson sites={sites} open={open} add={(person) => act("POST", "/api/people", person)} />
          )}
          {open && <LatestActs acts={acts} names={names} />}
        </div>
      </div>
    </DeskFrame>
  );
}

const problemOf = (answer: Answer<unknown> | undefined) => (answer && !answer.ok ? answer.problem : undefined);

function LatestActs({
  acts,
  names,
}: {
  acts: Answer<{ records: AuditRecord[] }> | undefined;
  names: ReadonlyMap<string, string>;
}) {
  return (
    <>
      <h2 class="rule-head">Latest acts</h2>
      {acts?.ok && acts.value.records.length > 0 ? (
        <ul class="act-list">
          {acts.value.records.map((record) => (
            <li key={record.n}>
              {actWords(record, names)}
              <span class="act-when">{momentWords(record.at)}</span>
            </li>
          ))}
        </ul>
      ) : (
        <p class="none">None yet.</p>
      )}
      <p class="source">
        Each is chained to the one before it. <code>npm run -s audit</code> verifies the chain.
      </p>
    </>
  );
}
