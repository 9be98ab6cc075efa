/** Loaded into a build: at its end, each of its processes writes the seconds of CPU that its threads took to BENCH_CPU. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { isMainThread } from 'node:worker_threads';

const folder = process.env.BENCH_CPU;
if (isMainThread && folder !== undefined) {
  process.on('exit', () => {
    const { user, system } = process.cpuUsage();
    writeFileSync(join(folder, `${process.pid}`), `${(user + system) / 1e6}`);
  });
}
