import type { ReportSettings, ReportState } from "../../../core/index.ts";
import { useRef, useState } from "../../parts/hooks.ts";
import { ask } from "../../sync/ask.ts";

const UNLESS_SAID: ReportSettings = { recipients: [], hour: "18:00", weekends: true, quiet: false };

/** Who gets a site's report, and when. */
export function ReportSettingsForm({ report, kept }: { report: ReportState; kept: () => void }) {
  const set = report.settings ?? UNLESS_SAID;
  const recipients = useRef<HTMLTextAreaElement>(null);
  const hour = useRef<HTMLInputElement>(null);
  const weekends = useRef<HTMLInputElement>(null);
  const quiet = useRef<HTMLInputElement>(null);
  const [told, setTold] = useState<{ ok: boolean; words: string } | undefined>(undefined);

  const onSubmit = async (event: Event) => {
    event.preventDefault();
    const wanted: ReportSettings = {
      recipients: (recipients.current?.value ?? "").split(/[\s,;]+/).filter(Boolean),
      hour: (hour.current?.value ?? "").slice(0, 5),
      weekends: weekends.current?.checked ?? true,
      quiet: quiet.current?.checked ?? false,
    };
    const answer = await ask<ReportSettings>(`/api/sites/${encodeURIComponent(report.site)}/report`, wanted);
    setTold(answer.ok ? { ok: true, words: "Kept." } : { ok: false, words: answer.problem });
    if (answer.ok) kept();
  };

  return (
    <form class="teach" onSubmit={(event: Event) => void onSubmit(event)}>
      <h2 class="rule-head">Who gets it, and when</h2>
      <label>
        <span>Mail addresses, one a line</span>
        <textarea ref={recipients} class="field" rows={3} spellcheck={false} autocapitalize="off" autocomplete="off">
          {set.recipients.join("\n")}
        </textarea>
      </label>
      <label>
        <span>Hour at the site ({report.zone})</span>
        <input ref={hour} class="field" type="time" required value={set.hour} />
      </label>
      <p class="source">An hour before noon is the morning after the day.</p>
      <label class="tick">
        <input ref={weekends} type="checkbox" checked={set.weekends} />
        <span>On Saturdays and Sundays too; else theirs go on Monday</span>
      </label>
      <label class="tick">
        <input ref={quiet} type="checkbox" checked={set.quiet} />
        <span>On days with nothing said too</span>
      </label>
      <button type="submit" class="glove">
        Keep
      </button>
      <p role="status" class={told ? `tell${told.ok ? "" : " tell-bad"}` : "unseen"}>
        {told?.words ?? ""}
      </p>
    </form>
  );
}
