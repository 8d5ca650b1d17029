import type { Reporter, SerializedError, TestModule } from "vitest/node";

/**
 * Ends the run with one line, `N passed, N failed` (and `, N skipped`), for whoever reads only the end of a log.
 * A file that could not be loaded and an error outside of every test count as failed: nothing of them passed.
 */
export default class CountReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandled: readonly SerializedError[]): void {
    const count = { passed: 0, failed: unhandled.length, skipped: 0 };
    for (const module of modules) {
      count.failed += module.errors().length;
      for (const test of module.children.allTests()) {
        const { state } = test.result();
        // a test that never ran because its file broke off was not skipped on purpose
        count[state === "pending" ? "failed" : state] += 1;
      }
    }
    const skipped = count.skipped > 0 ? `, ${count.skipped} skipped` : "";
    process.stdout.write(`\n${count.passed} passed, ${count.failed} failed${skipped}\n`);
  }
}
