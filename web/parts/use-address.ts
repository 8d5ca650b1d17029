import type { Answer } from "../sync/ask.ts";
import { useEffect, useState } from "./hooks.ts";

export interface Addressed {
  url?: string;
  /** why there is none, in words */
  problem?: string;
}

/**
 * Bytes as an address for an element to show: an element cannot send the token of the device with its own fetch.
 * Asked for once `wanted`; given back when the element goes.
 */
export function useAddress(key: string, wanted: boolean, load: () => Promise<Answer<Blob>>): Addressed {
  const [held, setHeld] = useState<Addressed>({});
  useEffect(() => {
    if (!wanted) return;
    let current = true;
    let url: string | undefined;
    void load().then((got) => {
      if (!current) return;
      if (got.ok) url = URL.createObjectURL(got.value);
      setHeld(got.ok ? { url } : { problem: got.problem });
    });
    return () => {
      current = false;
      if (url) URL.revokeObjectURL(url);
    };
  }, [key, wanted]);
  return held;
}
