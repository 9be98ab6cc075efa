/** Loaded into a build: on its end it writes the processor's seconds that all its threads took to BENCH_CPU_FILE. */
import { writeFileSync } from 'node:fs';

const file = process.env.BENCH_CPU_FILE;
process.on('exit', () => {
  const { user, system } = process.cpuUsage();
  if (file !== undefined) writeFileSync(file, `${(user + system) / 1e6}`);
});
