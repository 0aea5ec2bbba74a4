import type { Reporter, TestModule, TestRunEndReason } from 'vitest/node';

/** Ends a run of every suite with one plain line that a person or a script can read. */
export default class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], errors: readonly unknown[], reason: TestRunEndReason): void {
    let passed = 0;
    let failed = errors.length;
    let skipped = 0;
    for (const module of modules) {
      const tests = [...module.children.allTests()];
      for (const test of tests) {
        const state = test.result().state;
        if (state === 'passed') passed++;
        else if (state === 'failed') failed++;
        else skipped++;
      }
      if (tests.every((test) => test.result().state !== 'failed') && module.state() === 'failed') failed++;
    }
    // What kept the tests from running at all, a page that does not build, say, has failed too.
    if (reason === 'failed' && failed === 0) failed = 1;
    const line = `${passed} passed, ${failed} failed${skipped ? `, ${skipped} skipped` : ''}`;
    process.once('exit', () => process.stdout.write(`${line}\n`));
  }
}
