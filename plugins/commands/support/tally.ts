/** What a test run came to. */
export interface Tally {
  readonly passed: number;
  readonly failed: number;
}

/** The part of vitest's JSON report that is read here. */
export interface TestReport {
  readonly testResults: readonly {
    readonly name: string;
    readonly status: string;
    readonly assertionResults: readonly { readonly status: string }[];
  }[];
}

/**
 * Counts a run. What could not run counts as failed: a file that does not load, a test that was passed over, a run
 * without a report, and a run that ended badly although every test that it names passed.
 */
export function tally(report: TestReport | undefined, endedWell: boolean): Tally {
  const files = report?.testResults ?? [];
  const tests = files.flatMap((file) => file.assertionResults);
  const passed = tests.filter((test) => test.status === 'passed').length;
  const unloaded = files.filter((file) => file.assertionResults.length === 0 && file.status !== 'passed').length;
  const failed = tests.length - passed + unloaded;
  return { passed, failed: failed === 0 && (!endedWell || passed === 0) ? 1 : failed };
}

/** The last line of every test run. */
export function formatTally({ passed, failed }: Tally): string {
  return `${passed} passed, ${failed} failed`;
}
