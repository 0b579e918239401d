import type { Reporter, TestModule } from 'vitest/node';

/** Prints `N passed, N failed, N skipped` alone on a line; a file that does not load counts as one failure. */
export default class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandled: readonly unknown[]): void {
    const count = { passed: 0, failed: unhandled.length, skipped: 0 };
    for (const module of modules) {
      if (module.errors().length > 0) count.failed++;
      for (const test of module.children.allTests()) {
        const { state } = test.result();
        count[state === 'pending' ? 'skipped' : state]++;
      }
    }
    process.stdout.write(`\n${count.passed} passed, ${count.failed} failed, ${count.skipped} skipped\n`);
  }
}
