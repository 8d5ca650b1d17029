import { count, inArray } from "drizzle-orm";
import type { BackPressure } from "../../back-pressure.ts";
import { reportVersions } from "../../db/report-tables.ts";
import { type Given, router } from "../kit.ts";

/**
 * `/healthz` alive; `/readyz` the store answers; `/metrics` in the open text format. Whoever watches has no device:
 * they are open to all, and tell how much and how fast, never who or what.
 */
export function healthRoutes({ store, metrics, log }: Given, pressure: BackPressure) {
  const routes = router();
  routes.get("/healthz", (c) => c.json({ status: "alive" }));
  routes.get("/readyz", async (c) => {
    try {
      await store.ping();
      return c.json({ status: "ready" });
    } catch (cause) {
      log.error("store does not answer", { problem: String(cause) });
      return c.json({ status: "not ready", detail: "The store does not answer: look at the server's log." }, 503);
    }
  });
  routes.get("/metrics", async (c) => {
    const { waiting, commits, jobs } = store.figures();
    const [outbox] = await store.db
      .select({ waiting: count() })
      .from(reportVersions)
      .where(inArray(reportVersions.state, ["waiting", "sending", "handing"]));
    const text = metrics.text({
      handsfull_requests_open: pressure.open(),
      handsfull_writes_waiting: waiting,
      handsfull_commits: commits,
      handsfull_writes: jobs,
      handsfull_outbox_waiting: outbox?.waiting ?? 0,
      handsfull_store_bytes: store.bytes(),
      handsfull_uptime_seconds: Math.round(process.uptime()),
      handsfull_memory_bytes: process.memoryUsage().rss,
    });
    return c.body(text, 200, { "content-type": "application/openmetrics-text; version=1.0.0; charset=utf-8" });
  });
  return routes;
}
