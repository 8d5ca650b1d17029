import { register } from "tsx/esm/api";

/** The thread as it stands in source: a thread does not take over how its server was started. Plain JavaScript for that. */
register();
await import("./thread.ts");
