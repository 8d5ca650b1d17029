import { type Answer, ask } from "../sync/ask.ts";
import { useEffect, useState } from "./hooks.ts";

/**
 * What the server answers for a path: undefined while asked. Asked again whenever the page is looked at again,
 * and by calling the second value.
 */
export function useAnswer<T>(path: string | undefined): [Answer<T> | undefined, () => void] {
  const [answer, setAnswer] = useState<Answer<T> | undefined>(undefined);
  const [turn, setTurn] = useState(0);
  useEffect(() => {
    if (!path) return;
    let current = true;
    void ask<T>(path).then((got) => {
      if (current) setAnswer(got);
    });
    return () => {
      current = false;
    };
  }, [path, turn]);
  useEffect(() => {
    const onLook = () => {
      if (document.visibilityState === "visible") setTurn((before) => before + 1);
    };
    document.addEventListener("visibilitychange", onLook);
    return () => document.removeEventListener("visibilitychange", onLook);
  }, []);
  return [answer, () => setTurn((before) => before + 1)];
}
