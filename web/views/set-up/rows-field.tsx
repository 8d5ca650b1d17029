import { useState } from "../../parts/hooks.ts";

/** Lines of a table that a person fills in, one thing a line; as many as he likes. */

export interface Column {
  key: string;
  label: string;
  is: "number" | "text" | "tick" | "choice";
  choices?: readonly { code: string; name: string }[];
  /** not every line has one */
  optional?: true;
}
export type Row = Readonly<Record<string, string | number | boolean | undefined>>;

export function RowsField({
  name,
  columns,
  rows,
  add,
}: {
  name: string;
  columns: readonly Column[];
  rows: readonly Row[];
  /** what one more line is called */
  add: string;
}) {
  const [kept, setKept] = useState(() => rows.map((row, at) => ({ row, at })));
  const more = () => setKept((before) => [...before, { row: {}, at: (before.at(-1)?.at ?? -1) + 1 }]);
  const less = (at: number) => setKept((before) => before.filter((one) => one.at !== at));
  const choose = (at: number, key: string, value: string) =>
    setKept((before) => before.map((one) => (one.at === at ? { ...one, row: { ...one.row, [key]: value } } : one)));
  return (
    <div class="rows-field">
      {kept.length > 0 && (
        // it scrolls sideways, so the keyboard must reach it
        <section class="rows-scroll" tabindex={0} aria-label={`${name}, scrolls sideways`}>
          <table>
            <thead>
              <tr>
                {columns.map((one) => (
                  <th key={one.key} scope="col">
                    {one.label}
                  </th>
                ))}
                <th scope="col">
                  <span class="unseen">Take it off</span>
                </th>
              </tr>
            </thead>
            <tbody>
              {kept.map(({ row, at }, line) => (
                <tr key={at} data-rows={name}>
                  {columns.map((one) => (
                    <td key={one.key}>
                      <Cell
                        column={one}
                        value={row[one.key]}
                        of={`${one.label}, line ${line + 1}`}
                        choose={(value) => choose(at, one.key, value)}
                      />
                    </td>
                  ))}
                  <td>
                    <button type="button" class="tab" aria-label={`Take off line ${line + 1}`} onClick={() => less(at)}>
                      ×
                    </button>
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      )}
      <button type="button" class="tab" onClick={more}>
        {add}
      </button>
    </div>
  );
}

function Cell({
  column,
  value,
  of,
  choose,
}: {
  column: Column;
  value: Row[string];
  of: string;
  choose: (value: string) => void;
}) {
  const { key, is, choices = [], optional } = column;
  if (is === "tick") return <input type="checkbox" data-key={key} aria-label={of} checked={value === true} />;
  if (is === "choice")
    return (
      // what was chosen is kept: the value is put back whenever the form is drawn again
      <select
        data-key={key}
        aria-label={of}
        required
        value={value === undefined ? "" : String(value)}
        onChange={(event: Event) => choose((event.target as HTMLSelectElement).value)}
      >
        <option value="">choose</option>
        {choices.map((one) => (
          <option key={one.code} value={one.code}>
            {one.name}
          </option>
        ))}
      </select>
    );
  return (
    <input
      data-key={key}
      aria-label={of}
      required={!optional}
      type={is === "number" ? "number" : "text"}
      step={is === "number" ? "any" : undefined}
      maxlength={300}
      value={value === undefined ? "" : String(value)}
    />
  );
}

/** The lines as they stand in the form now; what is left empty is left out. */
export function rowsOf(form: HTMLFormElement, name: string): Record<string, string | number | boolean>[] {
  return [...form.querySelectorAll<HTMLElement>("tr[data-rows]")]
    .filter((line) => line.dataset.rows === name)
    .map((line) => {
      const row: Record<string, string | number | boolean> = {};
      for (const cell of line.querySelectorAll<HTMLInputElement | HTMLSelectElement>("[data-key]")) {
        const key = cell.dataset.key ?? "";
        if (cell.type === "checkbox") row[key] = (cell as HTMLInputElement).checked;
        else if (cell.value !== "") row[key] = cell.type === "number" ? Number(cell.value) : cell.value;
      }
      return row;
    });
}
