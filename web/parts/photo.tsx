import { clockThere } from "../state/time-words.ts";
import type { Answer } from "../sync/ask.ts";
import { fetchBytes } from "../sync/bytes.ts";
import { useEffect, useRef, useState } from "./hooks.ts";
import { useAddress } from "./use-address.ts";

/**
 * A photograph, small beside its words; a touch shows it as large as the screen. `of`: what it was taken of, for who
 * cannot see it. It comes from the server unless `load` gives it from elsewhere, and not before it is scrolled near.
 */
export function Photo({
  id,
  at,
  of,
  width,
  height,
  load = () => fetchBytes(`/api/photos/${encodeURIComponent(id)}`),
}: {
  id: string;
  at: string;
  of?: string;
  width?: number;
  height?: number;
  load?: () => Promise<Answer<Blob>>;
}) {
  const frame = useRef<HTMLElement>(null);
  const large = useRef<HTMLDialogElement>(null);
  const [near, setNear] = useState(false);
  const { url, problem } = useAddress(id, near, load);
  useEffect(() => {
    const watch = new IntersectionObserver(
      (seen) => {
        if (seen.some((one) => one.isIntersecting)) setNear(true);
      },
      { rootMargin: "400px" },
    );
    if (frame.current) watch.observe(frame.current);
    return () => watch.disconnect();
  }, []);
  const words = `Photograph taken ${clockThere(at)}${of ? `, of “${of}”` : ""}`;
  return (
    <figure class="photo" ref={frame}>
      <button
        type="button"
        class="photo-small"
        aria-label={`${words}. Show it large`}
        disabled={!url}
        onClick={() => large.current?.showModal()}
      >
        {url ? (
          <img src={url} alt="" width={width} height={height} />
        ) : (
          <span class="photo-none">{problem ?? "Fetching the photograph…"}</span>
        )}
      </button>
      <dialog class="photo-large" ref={large} aria-label={words}>
        {url && <img src={url} alt={words} width={width} height={height} />}
        <button type="button" class="glove" onClick={() => large.current?.close()}>
          Shut
        </button>
      </dialog>
    </figure>
  );
}
