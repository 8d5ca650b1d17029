import { firstState, type Happening, next } from "./next.ts";
import type { Route } from "./route.ts";
import type { State } from "./state.ts";

/** The one store: what happened goes in, the next state comes out, whoever watches is told. */
export interface Store {
  state(): State;
  happen(now: Happening): void;
  /** returns the way to stop watching */
  watch(told: () => void): () => void;
}

export function createStore(route: Route): Store {
  let state = firstState(route);
  const watchers = new Set<() => void>();
  return {
    state: () => state,
    happen(now) {
      state = next(state, now);
      for (const told of watchers) told();
    },
    watch(told) {
      watchers.add(told);
      return () => watchers.delete(told);
    },
  };
}
