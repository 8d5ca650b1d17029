import type { Child } from "hono/jsx";
import type { Site } from "../../core/index.ts";
import { everySite } from "../state/door.ts";
import type { State } from "../state/state.ts";
import { useAnswer } from "./use-answer.ts";

/** Which site a sheet is about, and whatever else is chosen beside it. */
export function SitePicker({
  site,
  state,
  choose,
  children,
}: {
  site: string | undefined;
  state: State;
  choose: (site: string | undefined) => void;
  children?: Child;
}) {
  const [sites] = useAnswer<{ sites: Site[] }>("/api/sites");
  const known = sites?.ok ? sites.value.sites : [];
  return (
    <form class="pickers" aria-label="Which valves" onSubmit={(event: Event) => event.preventDefault()}>
      <label>
        <span>Site</span>
        <select
          value={site ?? ""}
          onChange={(event: Event) => choose((event.target as HTMLSelectElement).value || undefined)}
        >
          <option value="">{everySite(state)}</option>
          {known.map((one) => (
            <option key={one.site} value={one.site}>
              {one.name}
            </option>
          ))}
        </select>
      </label>
      {children}
    </form>
  );
}
