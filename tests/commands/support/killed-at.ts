/** Builds a project's site and kills itself at a moment. Arguments: project folder, moment. */
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

const [folder = '', killAt = ''] = process.argv.slice(2);
const module = pathToFileURL(join(folder, 'plugins/commands/support/build-site.ts')).href;
const { buildSite } = (await import(module)) as typeof import('../../../plugins/commands/support/build-site.ts');

await buildSite({
  dist: join(folder, 'dist'),
  quiet: true,
  reached: (moment) => {
    if (moment === killAt) process.kill(process.pid, 'SIGKILL');
  },
});
