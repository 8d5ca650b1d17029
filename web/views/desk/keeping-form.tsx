import type { Keeping, Site } from "../../../core/index.ts";
import { useRef, useState } from "../../parts/hooks.ts";
import { ask } from "../../sync/ask.ts";

const CHOICES: Record<Keeping["clips"], string> = {
  for_days: "Kept for some days",
  for_good: "Kept for good",
  none: "Not kept, not even recorded",
};

/** What a site does with the sound of phrases. */
export function KeepingForm({ site, kept }: { site: Site & { keeping: Keeping }; kept: () => void }) {
  const clips = useRef<HTMLSelectElement>(null);
  const days = useRef<HTMLInputElement>(null);
  const [told, setTold] = useState<{ ok: boolean; words: string } | undefined>(undefined);
  const onSubmit = async (event: Event) => {
    event.preventDefault();
    const wanted = { clips: clips.current?.value, days: Number(days.current?.value) };
    const answer = await ask<Keeping>(`/api/sites/${encodeURIComponent(site.site)}/keeping`, wanted);
    setTold(answer.ok ? { ok: true, words: "Kept." } : { ok: false, words: answer.problem });
    if (answer.ok) kept();
  };
  return (
    <details class="keeping">
      <summary>Sound of phrases at {site.name}</summary>
      <form class="pickers" onSubmit={(event: Event) => void onSubmit(event)}>
        <label>
          <span>The sound is</span>
          <select ref={clips} value={site.keeping.clips}>
            {Object.entries(CHOICES).map(([choice, words]) => (
              <option key={choice} value={choice}>
                {words}
              </option>
            ))}
          </select>
        </label>
        <label>
          <span>Days</span>
          <input ref={days} type="number" min={1} max={3650} required value={String(site.keeping.days)} />
        </label>
        <button type="submit" class="tab">
          Keep
        </button>
        <p role="status" class={told?.ok === false ? "bad" : ""}>
          {told?.words ?? ""}
        </p>
      </form>
      <p class="source">
        It stays on the device and on this server, and goes nowhere else. Sound kept so far grows old by the days given,
        unless it is now kept for good. Photographs stay with the record.
      </p>
    </details>
  );
}
