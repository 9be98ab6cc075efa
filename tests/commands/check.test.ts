import { describe, expect, test } from 'vitest';
import { CHECKS, runCheck } from '../../plugins/commands/support/checks.ts';

describe('the project', () => {
  test.each(CHECKS)('passes the check of $name', (check) => {
    const { passed, said } = runCheck(check);
    expect(passed, said).toBe(true);
  });
});
