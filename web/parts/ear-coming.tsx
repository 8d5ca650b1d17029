import type { EarView } from "../state/state.ts";

const MEGA = 1_000_000;

/** How the first load of the ear gets on; an empty place once it is here. Typing needs none of it. */
export function EarComing({
  coming,
  meanwhile = "Type meanwhile.",
}: {
  coming: EarView["coming"];
  meanwhile?: string;
}) {
  // a place that is always there: what is drawn from nothing beside others may be drawn twice
  return (
    <div class="ear-place" role="status">
      {coming && <Bar got={coming.got} of={coming.of} meanwhile={meanwhile} />}
    </div>
  );
}

function Bar({ got, of, meanwhile }: { got: number; of: number; meanwhile: string }) {
  const words =
    got < of
      ? `The ear is coming: ${Math.floor(got / MEGA)} of ${Math.ceil(of / MEGA)} MB.`
      : "The ear is here and gets ready.";
  return (
    <p class="ear-coming">
      <label for="ear-coming">
        {words} {meanwhile}
      </label>
      <progress id="ear-coming" max={of} value={got} />
    </p>
  );
}
