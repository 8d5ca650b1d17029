import { Stencil } from "./stencil.tsx";

/** A valve's tag as the plate riveted to it. A tag too long to cut in stencil is written. */
export function Plate({ tag, small }: { tag: string | undefined; small?: boolean }) {
  const text = tag ?? "NO TAG";
  return (
    <span class={`plate${small ? " plate-small" : ""}`}>
      {text.length <= 12 ? <Stencil text={text} /> : <span class="plate-written">{text}</span>}
    </span>
  );
}
