import type { Reporter, TestModule } from 'vitest/node';

/** Ends a run of every suite with one plain line that a person or a script can read. */
export default class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], errors: readonly unknown[]): void {
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
    const line = `${passed} passed, ${failed} failed${skipped ? `, ${skipped} skipped` : ''}`;
    process.once('exit', () => process.stdout.write(`${line}\n`));
  }
}
