/**
 * One tab of a device listens at a time: two would each take down the same words. Who claims the ear last has it, and
 * `lost` is told in the tab that had it.
 */
export function oneEar(lost: () => void): { claim(): void } {
  let held = false;
  return {
    claim() {
      if (held) return;
      held = true;
      // a browser that refuses locks keeps nothing either: there each tab is by itself
      void navigator.locks
        ?.request("handsfull-ear", { steal: true }, () => new Promise<void>(() => {}))
        .catch((problem: unknown) => {
          held = false;
          if (problem instanceof DOMException && problem.name === "AbortError") lost();
        });
    },
  };
}
