import type { ReportState } from "../../../core/index.ts";
import { useState } from "../../parts/hooks.ts";

/** What the button does, by what sending would do now. */
function buttonWords(report: ReportState): string {
  const last = report.versions[0]?.version ?? 0;
  const words = {
    send: "Send now",
    correct: `Send correction ${last} now`,
    repeat: "Try again now",
    again: "Send it once more",
    nothing: "",
  };
  return words[report.next];
}

/** Where a day's report stands, in words, and what can be done about it. */
export function Standing({ report, send }: { report: ReportState; send?: (body: object) => Promise<void> }) {
  const [busy, setBusy] = useState(false);
  const words = buttonWords(report);
  const press = async () => {
    setBusy(true);
    await send?.(report.next === "again" ? { again: true } : {});
    setBusy(false);
  };
  return (
    <div class="standing" role="status">
      {report.says.map((line) => (
        <p key={line} class="standing-line">
          {line}
        </p>
      ))}
      {report.versions.map((one) => (
        <div key={one.version} class={`tell${isTrouble(one.state) ? " tell-bad" : ""}`}>
          {one.says.map((line) => (
            <p key={line} class={/^Refused/.test(line) ? "bad" : ""}>
              {line}
            </p>
          ))}
        </div>
      ))}
      {send && words && (
        <div>
          <button type="button" class="glove" disabled={busy} onClick={() => void press()}>
            {words}
            {report.next === "again" && <small>it may then arrive twice</small>}
          </button>
        </div>
      )}
    </div>
  );
}

const isTrouble = (state: string) => state === "stopped" || state === "unknown";
