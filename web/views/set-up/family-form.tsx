import { type Family, nameOf, type Test } from "../../../core/index.ts";
import { glossary } from "../../../core/pages/index.ts";
import { useState } from "../../parts/hooks.ts";
import { capital } from "../../parts/words.ts";
import { send } from "../../sync/ask.ts";
import { DoorForm, TextField, typed } from "../people/door-form.tsx";
import { type Column, type Row, RowsField, rowsOf } from "./rows-field.tsx";

const PARTS = glossary()
  .filter((line) => line.kind === "part")
  .map(({ code, name }) => ({ code, name }));
const TESTS = glossary().filter((line) => line.kind === "test");
const CLASSES = ["II", "III", "IV", "V", "VI"];
const UNITS = (["ft_lbf", "in_lbf", "N_m"] as const).map((code) => ({ code, name: nameOf(code, "unit") }));

const PART: Column = { key: "part", label: "Part", is: "choice", choices: PARTS };
const SIZES: Column[] = [
  { key: "from", label: "From, inch", is: "number" },
  { key: "to", label: "To, inch", is: "number" },
];
const SOURCE: Column = { key: "source", label: "Where from", is: "text" };
const BILL: Column[] = [
  PART,
  { key: "count", label: "How many", is: "number" },
  { key: "soft", label: "Soft good", is: "tick" },
  { key: "trim", label: "Trim", is: "tick" },
  { key: "holes", label: "Has passages", is: "tick" },
  { key: "inspected", label: "Looked at", is: "tick" },
];
const TORQUE: Column[] = [
  PART,
  ...SIZES,
  { key: "min", label: "At least", is: "number" },
  { key: "max", label: "At most", is: "number" },
  { key: "unit", label: "Unit", is: "choice", choices: UNITS },
  SOURCE,
];
const BOLTS: Column[] = [PART, ...SIZES, { key: "count", label: "Bolts", is: "number" }];
const CV: Column[] = [
  { key: "size_in", label: "Size, inch", is: "number" },
  { key: "cv", label: "Rated Cv", is: "number" },
  SOURCE,
];

/** A valve family of the site's own: begun from one there is, since most differ in a few figures only. */
export function FamilyForm({ site, from, kept }: { site: string; from: Family; kept: () => void }) {
  const [leakClass, setLeakClass] = useState<string>(from.leak_class ?? "");
  const submit = async (form: HTMLFormElement) => {
    const answer = await send("PUT", `/api/sites/${encodeURIComponent(site)}/families`, { family: told(form, from) });
    if (answer.ok) kept();
    return answer;
  };
  return (
    <DoorForm button="Keep the family" submit={submit}>
      <TextField label="Code, as lists of valves name it" name="family" autocomplete="off" value={from.family} />
      <TextField label="Name" name="name" autocomplete="off" value={from.name} />
      <TextField label="Where its figures are from" name="source" autocomplete="off" value={from.source} />
      <div class="pickers">
        <Months label="Seat looked at every, months" name="seat" value={from.intervals.seat_inspection_months} />
        <Months label="Seals replaced every, months" name="seals" value={from.intervals.seal_replacement_months} />
        <label>
          <span>Leakage class of the seat</span>
          <select
            name="leak_class"
            value={leakClass}
            onChange={(event: Event) => setLeakClass((event.target as HTMLSelectElement).value)}
          >
            <option value="">not said</option>
            {CLASSES.map((one) => (
              <option key={one} value={one}>
                {one}
              </option>
            ))}
          </select>
        </label>
      </div>
      <TextField
        label="Where the intervals are from"
        name="intervals"
        autocomplete="off"
        value={from.intervals.source}
      />
      <Tick name="reversible" label="Its seat can be flipped" checked={from.reversible_seat} />
      <h3>Bill of parts</h3>
      <RowsField name="Bill of parts" columns={BILL} rows={billRows(from)} add="One more part" />
      <h3>Torque limits</h3>
      <RowsField name="Torque limits" columns={TORQUE} rows={from.torque.map(apart)} add="One more limit" />
      <h3>Bolts in the circle</h3>
      <RowsField name="Bolts in the circle" columns={BOLTS} rows={from.bolts.map(apart)} add="One more circle" />
      <h3>Rated flow</h3>
      <RowsField name="Rated flow" columns={CV} rows={from.rated_cv} add="One more size" />
      <h3>Tests owed once it is together again</h3>
      {TESTS.map(({ code, name }) => (
        <Tick
          key={code}
          name={`test ${code}`}
          label={capital(name)}
          checked={(from.tests as readonly string[]).includes(code)}
        />
      ))}
    </DoorForm>
  );
}

function Months({ label, name, value }: { label: string; name: string; value: number }) {
  return (
    <label>
      <span>{label}</span>
      <input name={name} type="number" min={0.25} max={240} step="any" required value={String(value)} />
    </label>
  );
}

function Tick({ name, label, checked }: { name: string; label: string; checked: boolean }) {
  return (
    <label class="tick">
      <input type="checkbox" name={name} checked={checked} />
      <span>{label}</span>
    </label>
  );
}

const billRows = ({ bill, inspection }: Family): Row[] =>
  bill.map((line) => ({ ...line, inspected: inspection.includes(line.part) }));

/** A span of sizes as two figures. */
const apart = <T extends { size_in: [number, number] }>({ size_in: [from, to], ...rest }: T): Row => ({
  ...rest,
  from,
  to,
});
const together = ({ from, to, ...rest }: Record<string, unknown>) => ({ ...rest, size_in: [from, to] });

/** What the form says; whether it can be is for the server, which says what is wrong in which line. */
function told(form: HTMLFormElement, from: Family): object {
  const ticked = (name: string) => (form.elements.namedItem(name) as HTMLInputElement | null)?.checked ?? false;
  const bill = rowsOf(form, "Bill of parts");
  const leakClass = typed(form, "leak_class");
  const { sources: _sources, leak_class: _class, ...rest } = from;
  return {
    ...rest,
    family: typed(form, "family").trim(),
    name: typed(form, "name").trim(),
    about: "",
    source: typed(form, "source").trim(),
    reversible_seat: ticked("reversible"),
    bill: bill.map(({ part, count, soft, trim, holes }) => ({
      ...{ part, count },
      ...(soft ? { soft: true } : {}),
      ...(trim ? { trim: true } : {}),
      ...(holes ? { holes: true } : {}),
    })),
    inspection: bill.filter((line) => line.inspected).map((line) => line.part),
    torque: rowsOf(form, "Torque limits").map(together),
    bolts: rowsOf(form, "Bolts in the circle").map(together),
    rated_cv: rowsOf(form, "Rated flow"),
    intervals: {
      seat_inspection_months: Number(typed(form, "seat")),
      seal_replacement_months: Number(typed(form, "seals")),
      source: typed(form, "intervals").trim(),
    },
    ...(leakClass ? { leak_class: leakClass } : {}),
    tests: TESTS.map((one) => one.code as Test).filter((code) => ticked(`test ${code}`)),
  };
}
