import { nameOf, type Part, type Site } from "../../../core/index.ts";
import { glossary } from "../../../core/pages/index.ts";
import { useState } from "../../parts/hooks.ts";
import { useAnswer } from "../../parts/use-answer.ts";
import { capital } from "../../parts/words.ts";
import { type Answer, ask } from "../../sync/ask.ts";

type Stock = Record<string, number>;
const PARTS = glossary().filter((line) => line.kind === "part");

/** What a site has on its shelf, line by line; what to carry is set against it. */
export function StockForm({ site }: { site: Site }) {
  const at = `/api/sites/${encodeURIComponent(site.site)}/stock`;
  const [answer, again] = useAnswer<{ stock: Stock }>(at);
  const [problem, setProblem] = useState<string | undefined>(undefined);
  const stock: Stock = answer?.ok ? answer.value.stock : {};
  const keep = async (changed: Stock) => {
    const kept: Answer<unknown> = await ask(at, { stock: changed });
    setProblem(kept.ok ? undefined : kept.problem);
    again();
  };
  const onSubmit = (event: Event) => {
    event.preventDefault();
    const form = new FormData(event.target as HTMLFormElement);
    void keep({ ...stock, [String(form.get("part"))]: Number(form.get("count")) });
  };
  return (
    <>
      <h2 class="rule-head">On the shelf</h2>
      {answer && !answer.ok && <p class="bad">{answer.problem}</p>}
      {problem && (
        <p class="tell tell-bad" role="alert">
          {problem}
        </p>
      )}
      <ul class="site-lines">
        {Object.entries(stock).map(([name, count]) => (
          <li key={name}>
            <b>{count}</b> × {stockName(name)}{" "}
            <button
              type="button"
              class="tab"
              aria-label={`Forget ${stockName(name)}`}
              onClick={() => void keep(Object.fromEntries(Object.entries(stock).filter(([one]) => one !== name)))}
            >
              Forget
            </button>
          </li>
        ))}
      </ul>
      <form class="pickers" aria-label="On the shelf" onSubmit={onSubmit}>
        <label>
          <span>Part</span>
          <select name="part">
            {PARTS.map((line) => (
              <option key={line.code} value={line.code}>
                {line.name}
              </option>
            ))}
          </select>
        </label>
        <label>
          <span>How many</span>
          <input name="count" type="number" min={0} max={999_999} step={1} required value="1" />
        </label>
        <button type="submit" class="tab">
          Set it
        </button>
      </form>
    </>
  );
}

/** "seat/balanced_dump/2" as a person says it. */
function stockName(name: string): string {
  const [part = "", family, size] = name.split("/");
  const of = [family?.replaceAll("_", " "), size && `${size} inch`].filter(Boolean).join(", ");
  return `${capital(nameOf(part as Part, "part"))}${of ? ` (${of})` : ""}`;
}
