import { useEffect } from "../../parts/hooks.ts";

/**
 * Keeps the screen lit while a job is open: a dark screen at the valve is a button to look for. Where a device does not
 * know how, or saves power, it goes dark as usual.
 */
export function useAwake(wanted: boolean): void {
  useEffect(() => {
    if (!wanted || !("wakeLock" in navigator)) return;
    let lock: WakeLockSentinel | undefined;
    let over = false;
    const hold = () => {
      // the lock is lost whenever the page is out of sight, and may only be asked for in sight
      if (document.visibilityState !== "visible") return;
      navigator.wakeLock.request("screen").then(
        (got) => {
          if (over) void got.release();
          else lock = got;
        },
        () => {
          // refused, as with a nearly empty battery: it is asked for again when the page is next looked at
          lock = undefined;
        },
      );
    };
    hold();
    document.addEventListener("visibilitychange", hold);
    return () => {
      over = true;
      document.removeEventListener("visibilitychange", hold);
      void lock?.release();
    };
  }, [wanted]);
}
