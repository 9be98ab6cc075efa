/** `npm run build [-- --out FOLDER] [--quiet]`: the site to `dist`; exit 1 and the last good site when it fails. */
import { resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { buildSite } from './support/build-site.ts';
import { DIST } from './support/project.ts';
import { sayFailure } from './support/say-failure.ts';

const { values } = parseArgs({ options: { out: { type: 'string' }, quiet: { type: 'boolean', default: false } } });

try {
  await buildSite({ dist: values.out === undefined ? DIST : resolve(values.out), quiet: values.quiet });
} catch (error) {
  sayFailure(error);
  process.exitCode = 1;
}
