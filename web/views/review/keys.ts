import { useEffect, useRef } from "../../parts/hooks.ts";

/** What a key does while the review has the focus; elsewhere, and in a field, it types its letter. */
export type Act = "next" | "previous" | "accept" | "amend" | "strike" | "ask" | "teach" | "sign" | "back" | "hear";

const KEYS: Record<string, Act> = {
  j: "next",
  ArrowDown: "next",
  k: "previous",
  ArrowUp: "previous",
  a: "accept",
  e: "amend",
  x: "strike",
  q: "ask",
  t: "teach",
  s: "sign",
  u: "back",
  p: "hear",
};

/** The act that a key asks for; undefined where it is typed into a field, or is a browser's own. */
function actOf(event: KeyboardEvent): Act | undefined {
  if (event.ctrlKey || event.metaKey || event.altKey || event.isComposing) return undefined;
  const at = event.target;
  if (at instanceof HTMLElement && at.closest("input, textarea, select, [contenteditable], dialog")) return undefined;
  return KEYS[event.key.length === 1 ? event.key.toLowerCase() : event.key];
}

/** The keys of whatever the answer is put on as `ref`: heard only while the focus is in it. */
export function useKeys(act: (what: Act) => void) {
  const keyed = useRef<HTMLDivElement>(null);
  const now = useRef(act);
  now.current = act;
  useEffect(() => {
    // the element may come later than this, and go: so it is asked for with every key
    const hear = (event: KeyboardEvent) => {
      const what = keyed.current?.contains(document.activeElement) ? actOf(event) : undefined;
      if (!what) return;
      event.preventDefault();
      now.current(what);
    };
    document.addEventListener("keydown", hear);
    return () => document.removeEventListener("keydown", hear);
  }, []);
  return keyed;
}
