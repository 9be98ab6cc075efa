/** Goes through all worst cases in one process, drawings as well, and prints the most memory that it ever held, in MB. */
import { goTheWholeWay } from '../support/whole-way.ts';
import { WORST_CASES } from './worst-cases.ts';

for (const { text } of WORST_CASES) goTheWholeWay(text, { draws: true });
process.stdout.write(String(process.resourceUsage().maxRSS / 1024));
