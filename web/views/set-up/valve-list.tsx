import type { Site, ValveListRead } from "../../../core/index.ts";
import { useRef, useState } from "../../parts/hooks.ts";
import { type Answer, send } from "../../sync/ask.ts";

/** Most valves are in a spreadsheet already: it is looked at row by row, and kept once nothing in it is wrong. */
export function ValveList({ site }: { site: Site }) {
  const [csv, setCsv] = useState("");
  const [told, setTold] = useState<Answer<ValveListRead> | undefined>(undefined);
  const [busy, setBusy] = useState(false);
  const file = useRef<HTMLInputElement>(null);
  const at = `/api/sites/${encodeURIComponent(site.site)}/valve-list`;
  const look = async (text: string, apply: boolean) => {
    setBusy(true);
    setTold(await send<ValveListRead>("POST", at, { csv: text, apply }));
    setBusy(false);
  };
  const take = async () => {
    const text = await file.current?.files?.[0]?.text();
    if (!text) return;
    setCsv(text);
    await look(text, false);
  };
  const read = told?.ok ? told.value : undefined;
  const does = read ? read.new + read.changed : 0;
  return (
    <>
      <h2 class="rule-head">Valves of {site.name}</h2>
      <form
        class="teach"
        onSubmit={(event: Event) => {
          event.preventDefault();
          void look(csv, false);
        }}
      >
        <label>
          <span>A list out of a spreadsheet (CSV)</span>
          <input ref={file} class="field" type="file" accept=".csv,text/csv,text/plain" onChange={() => void take()} />
        </label>
        <label>
          <span>or its rows, typed or pasted; the first names the columns</span>
          <textarea
            class="field"
            rows={5}
            spellcheck={false}
            placeholder={"tag,family,size_in,service,interval_months\nLCV-213,balanced_dump,2,severe,4"}
            value={csv}
            onInput={(event: Event) => {
              setTold(undefined);
              setCsv((event.target as HTMLTextAreaElement).value);
            }}
          />
        </label>
        <button type="submit" class="glove" disabled={busy || csv.trim() === ""}>
          Look at it<small>nothing is kept yet</small>
        </button>
      </form>
      {told && !told.ok && (
        <p class="tell tell-bad" role="alert">
          {told.problem}
        </p>
      )}
      {read && (
        <div role="status">
          <p class="count">
            {read.applied ? "Kept: " : ""}
            {read.new} new, {read.changed} changed, {read.same} as they were
            {read.refused > 0 ? `, ${read.refused} refused` : ""}.
          </p>
          <ol class="valve-rows">
            {read.rows
              .filter((row) => row.becomes !== "same")
              .slice(0, MOST_SHOWN)
              .map((row) => (
                <li key={row.row}>
                  <span class={`stamp${row.becomes === "refused" ? " reason-hazard" : ""}`}>{row.becomes}</span>
                  <span class="line-words">
                    <b>{row.tag ?? `row ${row.row}`}</b>{" "}
                    {row.tag && row.becomes === "refused" ? `(row ${row.row}) ` : ""}
                    {[...row.problems, ...row.changes].join("; ")}
                  </span>
                </li>
              ))}
          </ol>
          {!read.applied && read.refused === 0 && does > 0 && (
            <button type="button" class="glove" disabled={busy} onClick={() => void look(csv, true)}>
              Keep {does === 1 ? "it" : `all ${does}`}
            </button>
          )}
          {!read.applied && read.refused > 0 && (
            <p class="none">Mend the rows that are refused; then all are kept together.</p>
          )}
        </div>
      )}
    </>
  );
}

const MOST_SHOWN = 200;
