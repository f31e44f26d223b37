import type { Reporter, TestModule } from 'vitest/node';

/** Ends a run with one plain line, `N passed, N failed`, which the build service reads; skipped tests are named above it. */
export default class CountReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], errors: readonly unknown[]): void {
    const count = { passed: 0, failed: errors.length, skipped: 0, pending: 0 };
    for (const module of modules) {
      // A file or suite can fail on its own, in a hook, with its tests merely skipped.
      const groups = [module, ...module.children.allSuites()];
      count.failed += groups.filter((group) => group.errors().length > 0).length;
      for (const test of module.children.allTests()) count[test.result().state] += 1;
    }
    const skipped = count.skipped + count.pending;
    // The default reporter writes after us in the same turn; the plain line must be the last.
    process.on('exit', () => {
      if (skipped > 0) console.log(`${skipped} skipped`);
      console.log(`${count.passed} passed, ${count.failed} failed`);
    });
  }
}
