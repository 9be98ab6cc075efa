/**
 * Builds a tiny site in a process of its own, which may kill itself.
 * Arguments: DIST, VERSION, MOMENT to be killed at (or `never`), milliseconds that the build takes.
 */
import { appendFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as delay } from 'node:timers/promises';
import { safeBuild } from '../../../plugins/astro/safe-build.ts';
import { tinySite } from './tiny-site.ts';

const [dist = '', version = '', killAt = 'never', takes = '0'] = process.argv.slice(2);

await safeBuild({
  dist,
  build: async (folder) => {
    appendFileSync(`${dist}.log`, `begin ${version}\n`);
    for (const [name, text] of Object.entries(tinySite(version))) {
      writeFileSync(join(folder, name), text);
      await delay(Number(takes) / 4);
    }
    appendFileSync(`${dist}.log`, `end ${version}\n`);
  },
  reached: (moment) => {
    if (moment === killAt) process.kill(process.pid, 'SIGKILL');
  },
});
