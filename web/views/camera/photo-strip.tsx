import { Photo } from "../../parts/photo.tsx";
import type { CardKeepsake } from "../../state/keepsake.ts";
import type { KeepsakeDeeds } from "../../state/keepsake-deeds.ts";
import type { State } from "../../state/state.ts";

const WORDS: Record<CardKeepsake["delivery"], string> = {
  waiting: "kept on this device",
  kept: "kept by the server",
  refused: "refused by the server",
  unwanted: "not kept by the site",
};

/** The photographs of the job at hand, the last one first, each with how far it has come. */
export function PhotoStrip({ state, deeds }: { state: State; deeds: KeepsakeDeeds }) {
  const photos = state.keepsakes.filter((one) => one.kind === "photo").reverse();
  return (
    <div class="keepsakes">
      {photos.map(({ id, at, width, height, phrase, delivery, problem }) => (
        <div key={id} class="strip-photo">
          <Photo
            id={id}
            at={at}
            width={width}
            height={height}
            of={state.phrases.find((one) => one.id === phrase)?.text}
            load={() => deeds.photo(id)}
          />
          <p class={`kept kept-${delivery}`}>
            {WORDS[delivery]}
            {problem ? `: ${problem}` : ""}
          </p>
        </div>
      ))}
    </div>
  );
}
