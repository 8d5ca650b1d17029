import { useEffect } from "../../parts/hooks.ts";
import type { Deeds } from "../../state/deeds.ts";
import { headsetButton } from "./headset-button.ts";

/** A headset's button opens and shuts the microphone, where that was chosen. */
export function useHeadset(chosen: boolean, deeds: Deeds): void {
  useEffect(() => {
    if (chosen) return headsetButton(() => deeds.turned({ is: "tapped" }));
  }, [chosen, deeds]);
}
