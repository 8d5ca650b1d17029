import type { Clock } from "../clock.ts";
import type { Post } from "./outbox.ts";

/** What routes need to know of how reports go out. */
export interface Mailing {
  clock: Clock;
  /** sender, as in MAIL_FROM */
  from: string;
  post: Post;
  /** something was put into the outbox: look now */
  wake(): void;
}
