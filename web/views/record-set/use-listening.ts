import { useEffect, useRef, useState } from "../../parts/hooks.ts";
import type { LentEar } from "../../speech/own-ear/lent-ear.ts";
import type { TurnTells } from "../../speech/own-ear/messages.ts";
import { troubleWords } from "../../speech/trouble.ts";
import type { Caught } from "./sitting.ts";

export type Listens = "shut" | "opening" | "open" | "hearing";

export interface Listening {
  is: Listens;
  /** why it cannot hear, in words */
  trouble: string | undefined;
  /** it was shut and nobody had said anything */
  silent: boolean;
  open(): void;
  shut(): void;
}

/** Listens until somebody has said one phrase, or with `forMs` so long, and tells each stretch of speech it caught. */
export function useListening(ear: LentEar, caught: (what: Caught) => void, forMs?: number): Listening {
  const [is, setIs] = useState<Listens>("shut");
  const [trouble, setTrouble] = useState<string | undefined>(undefined);
  const [silent, setSilent] = useState(false);
  const told = useRef(caught);
  told.current = caught;
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  useEffect(
    () => () => {
      clearTimeout(timer.current ?? undefined);
      ear.abort();
    },
    [],
  );

  const open = () => {
    setTrouble(undefined);
    setSilent(false);
    setIs("opening");
    let any = false;
    const catchIt = (what: Caught) => {
      // one phrase was wanted: what is said until it has shut is none of it
      if (any && forMs === undefined) return;
      any = true;
      told.current?.(what);
      if (forMs === undefined) ear.stop();
    };
    const tells = (what: TurnTells) => {
      if (what.is === "listening") {
        setIs("open");
        if (forMs !== undefined) timer.current = setTimeout(() => ear.stop(), forMs);
      } else if (what.is === "speechend" && forMs === undefined) setIs("hearing");
      else if (what.is === "heard") catchIt({ heard: what.text, confidence: what.confidence, samples: what.samples });
      else if (what.is === "nothing") catchIt({ heard: "", confidence: 0, samples: what.samples });
      else if (what.is === "stopped") {
        clearTimeout(timer.current ?? undefined);
        setIs("shut");
        setSilent(!any);
      }
    };
    const fails = (error: string) => {
      clearTimeout(timer.current ?? undefined);
      setIs("shut");
      setTrouble(troubleWords(error) ?? "Listening was cut short. Touch to try again.");
    };
    ear.listen({ interim: false, tells, fails });
  };
  const shut = () => {
    if (is !== "opening") return ear.stop();
    ear.abort();
    setIs("shut");
  };
  return { is, trouble, silent, open, shut };
}
