import type { State } from "../state/state.ts";
import type { Store } from "../state/store.ts";
import { useEffect, useState } from "./hooks.ts";

/** The store's state, with a new drawing after each change. */
export function useStateOf(store: Store): State {
  const [state, setState] = useState(store.state());
  useEffect(() => {
    setState(store.state());
    return store.watch(() => setState(store.state()));
  }, [store]);
  return state;
}
