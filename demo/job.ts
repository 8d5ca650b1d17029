import type { Style } from "./field.ts";
import type { Saying } from "./sayings.ts";

/** One invented job: what was said at which valve, by whom, in what order. Nothing of what it means. */
export interface DemoJob {
  site: string;
  tag: string;
  day: string;
  /** seconds after midnight by the site's clock */
  starts: number;
  person: string;
  style: Style;
  say: Saying[];
}
