import { useState as useAnyState, useEffect as useEffectSometime, useLayoutEffect, useRef } from "hono/jsx/dom";

export { useRef };

/**
 * The hooks of the page, with one thing more than the library's: what is gone from the screen stays gone. There an
 * effect that waited for its frame still starts on a component removed meanwhile, and the second late change of state
 * draws that component again beside what stands in its place. Every component takes its hooks from here.
 */
function useLife(): { over: boolean } {
  const life = useRef({ over: false });
  // of all hooks only this one is sure to have begun before the component can be removed
  useLayoutEffect(
    () => () => {
      if (life.current) life.current.over = true;
    },
    [],
  );
  return life.current ?? { over: false };
}

type Setter<T> = (next: T | ((before: T) => T)) => void;

/** State whose setter does nothing once the component is gone. */
export function useState<T>(initial: T | (() => T)): [T, Setter<T>] {
  const life = useLife();
  const [value, set] = useAnyState(initial);
  const setter = useRef<Setter<T>>((next) => {
    if (!life.over) set(next);
  });
  return [value, setter.current ?? set];
}

/** An effect that does not begin once the component is gone. */
export function useEffect(effect: () => undefined | (() => void), deps?: readonly unknown[]): void {
  const life = useLife();
  useEffectSometime(() => (life.over ? undefined : effect()), deps);
}
