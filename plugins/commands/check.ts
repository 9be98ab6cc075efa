/** `npm run check`: format, lint, types and layer rules; all run, and one that fails does not hide the next. */
import { CHECKS, runCheck } from './support/checks.ts';

for (const check of CHECKS) {
  const { passed, said } = runCheck(check);
  console.log(`${passed ? 'passed' : 'FAILED'}  ${check.name}`);
  if (!passed) {
    console.log(said);
    process.exitCode = 1;
  }
}
